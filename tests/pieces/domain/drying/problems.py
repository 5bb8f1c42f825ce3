"""Problems the drying tests share."""

import csv
from dataclasses import replace
from pathlib import Path

import numpy as np

from pieces.domain.drying import (
    BODIES,
    Batch,
    Body,
    Climate,
    Cover,
    Ensemble,
    Exchange,
    Face,
    FaceEvent,
    Plaster,
    Problem,
    Reading,
    Run,
    Section,
    Shape,
    climate_from,
    constant_climate,
    in_mould,
    out_of_mould,
    simulate,
)
from pieces.domain.drying.draws import ensemble_of
from studio.domain import moist_air

DATA = Path(__file__).parent.parent / "data"
HOUR_S = 3600.0
RED = BODIES["red_earthenware"]
WALL = Section(Shape.FLAT, 0.008)
PRESSED = np.array([[0.0], [0.0], [0.25], [0.0], [0.0]])  # one draw: the body's own figures
OPEN = FaceEvent(0.0, inner=Face(0.4), outer=Face(1.0))
SECTIONS = (
    WALL,
    Section(Shape.FLAT, 0.015, inside_factor=0.1),
    Section(Shape.ROD, 0.010, open_fraction=0.8),
    Section(Shape.ROD, 0.020),
    Section(Shape.LUMP, 0.035),
)


def rows(name: str) -> list[dict[str, str]]:
    """Return the rows of a file of published values."""
    with (DATA / name).open(newline="") as lines:
        return list(csv.DictReader(lines))


def wall(
    events: tuple[FaceEvent, ...] = (OPEN,),
    *,
    section: Section = WALL,
    body: Body = RED,
    air_c: float = 20.0,
    humidity: float = 0.5,
    hours: float = 120,
) -> Problem:
    """Return a section in air that does not change."""
    return Problem(body, section, events, constant_climate(0, hours * HOUR_S, air_c, humidity))


def carried(problem: Problem, hours: float, nodes: int | None = None) -> Run:
    """Return the run of the one-draw ensemble of `problem`."""
    made = ensemble_of(problem, PRESSED, nodes)
    return simulate(Batch((made,), hours * HOUR_S, keeps_track=True))


def hours_of(run: Run) -> list[float]:
    """Return the hours at which the only draw of the only ensemble came to each stage."""
    return [float(each) / HOUR_S for each in run.after[0].state.crossed_s[:, 0]]


def plain_diffusion(
    shape: Shape,
    biot: float,
    fourier: float,
    hours: int,
    *,
    nodes: int,
    thickest_m: float = 0.02,
    outside_kg_per_kg: float = 0.0,
    pressed_kg_per_kg: float = 0.25,
    one_face: bool = False,
) -> Ensemble:
    """Return a section whose diffusivity is constant and whose surface resistance is linear.

    All by extreme figures of the ordinary model: an isotherm so stretched that it is straight
    (X = A a), radiation so strong that nothing cools, a slope of diffusivity next to nothing. It
    is pressed long before it is carried on, so that all steps are whole hours.
    """
    section = Section(shape, thickest_m)
    length = section.thickest_m * (1.0 if one_face else 0.5)
    diffusivity = fourier * length**2 / (hours * HOUR_S)
    stretch = 1e5
    body = replace(
        RED,
        diffusivity_m2_s=diffusivity,
        diffusivity_slope=1e-5,
        isotherm_scale_kg_per_kg=stretch,
        isotherm_power=1.0,
        activation_j_mol=1e-9,
        pressed_kg_per_kg=pressed_kg_per_kg,
    )
    full = float(moist_air.saturation_density_kg_m3(20.0))
    k_m_s = biot * diffusivity / length * stretch * body.dry_density_kg_m3 / full
    exchange = Exchange(k_m_s * 1.204 * 1006.0 * 0.90, 1e18)
    total = hours + 12
    climate = Climate(
        0,
        np.full(total, 20.0),
        np.full(total, full * outside_kg_per_kg / stretch),
        np.zeros(total, bool),
        None,
    )
    inner = Face(0.0 if one_face else 1.0)
    problem = Problem(body, section, (FaceEvent(0.0, inner, Face(1.0)),), climate, exchange)
    theta = np.array([[0.0], [0.0], [pressed_kg_per_kg], [0.0], [0.0]])
    return replace(ensemble_of(problem, theta, nodes), advanced_to_s=12 * int(HOUR_S))


def a_week(section: Section, body: str, began_s: float) -> Problem:
    """Return a section that is pressed, demoulded, covered, uncovered in changing air."""
    readings = [
        Reading(4 * HOUR_S * i, 16.0 + 3.0 * np.sin(i), 0.6 + 0.15 * np.cos(1.7 * i))
        for i in range(60)
    ]
    events = (
        in_mould(began_s, section, Plaster(0.1)),
        out_of_mould(began_s + 5.3 * HOUR_S, section),
        out_of_mould(began_s + 20 * HOUR_S, section, cover=Cover.LOOSE),
        out_of_mould(began_s + 50.7 * HOUR_S, section),
    )
    return Problem(BODIES[body], section, events, climate_from(readings, 0, 240 * HOUR_S))
