"""An independent look at what the solver says: laws that hold whatever the method."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

import numpy as np

from pieces.domain.drying.climate import HOUR_S
from pieces.domain.drying.grid import grid
from pieces.domain.drying.problem import STAGES, Ensemble, Stage, Track
from pieces.domain.drying.surface import LATENT_J_KG, vapour_conductance_m_s
from pieces.domain.drying.windows import limits_kg_per_kg
from studio.domain import moist_air

ROUND_OFF: Final = 1e-12
LOOSE: Final = 1e-7  # kg/kg, for inequalities that the discrete scheme meets to its tolerance


def faults(result: Ensemble, track: Track | None = None) -> list[str]:
    """Return what is wrong with a result, one sentence each; an empty list when nothing is.

    Checks, without the solver's own sums: water balance to round-off, bounds of moisture and
    saturation, order of the stages, crossings against the track, and that the clay never gave
    off more than the heat of the room can evaporate.
    """
    found = [
        *_bounds(result),
        *_balance(result),
        *_order(result),
    ]
    if track is not None:
        found += [*_crossings(result, track), *_speed(result, track)]
    return found


def mass_error(result: Ensemble) -> float:
    """Return the largest water missing or too much, as a fraction of the water as pressed."""
    section, body = result.problem.section, result.problem.body
    cells = grid(section.power, result.nodes).volume[:, None]
    per_face = body.dry_density_kg_m3 * section.depth_m
    began = per_face * (cells * result.theta[2]).sum(axis=0)
    holds = per_face * (cells * result.state.moisture_kg_per_kg).sum(axis=0)
    return float(np.max(np.abs(holds + result.state.left_kg_m2 - began) / began))


def _balance(result: Ensemble) -> list[str]:
    error = mass_error(result)
    return [] if error <= ROUND_OFF else [f"Water does not balance: {error:.1e} of it is missing."]


def _bounds(result: Ensemble) -> list[str]:
    found = []
    x, saturation = result.state.moisture_kg_per_kg, result.state.saturation
    if not (np.all(np.isfinite(x)) and np.all(np.isfinite(saturation))):
        return ["A moisture is not a number."]
    if np.any(x <= 0.0):
        found.append("A moisture is not positive.")
    if np.any((saturation < 0.0) | (saturation > 1.0)):
        found.append("A plaster holds less than nothing or more than it can.")
    return found


def _order(result: Ensemble) -> list[str]:
    crossed = dict(zip(STAGES, result.state.crossed_s, strict=True))
    found = []
    mean = (Stage.JOIN_OPENS, Stage.JOIN_CLOSES)
    dampest = (Stage.SHRINKAGE_ENDED, Stage.BISQUE)
    for sooner, later in [*pairwise(mean), *pairwise(dampest)]:
        if np.any(crossed[later] < crossed[sooner]):
            found.append(f"{later} comes before {sooner}.")
    begun = crossed[Stage.DEMOULD] < result.problem.pressed_at_s
    reached = np.isfinite(result.state.crossed_s)
    if np.any(begun) or np.any(result.state.crossed_s[reached] > result.advanced_to_s):
        found.append("A stage is reached outside the time that was reckoned.")
    return found


def _crossings(result: Ensemble, track: Track) -> list[str]:
    """Compare the instants with the track, looked up anew."""
    limits = limits_kg_per_kg(result.problem)
    looked_up = {
        Stage.JOIN_OPENS: track.mean_kg_per_kg,
        Stage.JOIN_CLOSES: track.mean_kg_per_kg,
        Stage.SHRINKAGE_ENDED: track.dampest_kg_per_kg,
        Stage.BISQUE: track.dampest_kg_per_kg,
    }
    found = []
    for stage, moisture in looked_up.items():
        said = result.state.crossed_s[STAGES.index(stage)]
        below = moisture <= limits[stage]
        ever = below.any(axis=0)
        first = below.argmax(axis=0)
        end = track.at_s[first]
        start = track.at_s[np.maximum(first - 1, 0)]
        here = np.isfinite(said) & (said > track.at_s[0])
        wrong = here & ~(ever & (said >= start) & (said <= end))
        wrong |= np.isinf(said) & ever
        if np.any(wrong):
            found.append(f"{stage} is not where the track has it.")
    return found


def _speed(result: Ensemble, track: Track) -> list[str]:
    """Bound the loss between any two bounds by vapour transfer and by the heat of the room."""
    problem, climate = result.problem, result.problem.climate
    hour = ((track.at_s[:-1] - climate.start_s) // HOUR_S).astype(int)
    hour = np.clip(hour, 0, len(climate.air_c) - 1)
    full = moist_air.saturation_density_kg_m3(climate.air_c[hour])
    dry = np.maximum(full - climate.vapour_kg_m3[hour], 0.0)[:, None]
    convection = problem.exchange.convection_w_m2_k * np.exp(result.theta[1])
    by_vapour = vapour_conductance_m_s(convection) * dry
    by_heat = (convection + problem.exchange.radiation_w_m2_k) * 40.0 / LATENT_J_KG
    section, body = problem.section, problem.body
    cells = grid(section.power, result.nodes)
    faces = (1.0 + cells.inner_area) / cells.volume.sum()
    per_kg = faces / (body.dry_density_kg_m3 * section.depth_m)
    plaster = max(_plaster_flows(result))
    most = per_kg * (np.minimum(by_vapour, by_heat) + plaster)
    lost = -np.diff(track.mean_kg_per_kg, axis=0) / np.diff(track.at_s)[:, None]
    if np.any(lost > most * (1.0 + 1e-6) + LOOSE / HOUR_S):
        return ["The clay lost water faster than the room and the plaster can take it."]
    return []


def _plaster_flows(result: Ensemble) -> list[float]:
    """Return the most that each plaster met can draw, from a saturation of 1 to 0. [kg/(m² s)]"""
    faces = [face for event in result.problem.events for face in (event.inner, event.outer)]
    return [0.0, *(face.plaster.conductance_kg_m2_s for face in faces if face.plaster)]
