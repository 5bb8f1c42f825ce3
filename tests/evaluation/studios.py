"""Simulated studios: clays, rooms and hands drawn at random, and pieces whose truth is known.

The truth is integrated on a grid of 33 nodes where the shipped model takes 9 or 17. A misspecified
studio dries by other laws than the model's: its diffusivity depends less on moisture, each of
its clays holds half as much water again at rest, and its hands are less steady.
"""

import math
from dataclasses import dataclass, replace

import numpy as np

from pieces.domain.drying import (
    BODIES,
    STAGES,
    Batch,
    Body,
    Climate,
    Cover,
    FaceEvent,
    Plaster,
    Problem,
    Reading,
    Section,
    Shape,
    climate_from,
    in_mould,
    out_of_mould,
    simulate,
)
from pieces.domain.drying.belief import PIECE_SD
from pieces.domain.drying.draws import ensemble_of
from pieces.domain.learning.belief import FIRST_SD
from pieces.domain.learning.likelihood import MIS_TAP_SHARE, TOUCH_SD, WEIGHING_SD, Feel
from studio.domain import moist_air

HOUR_S = 3600
DAY_S = 24 * HOUR_S
HORIZON_S = 21 * DAY_S
TRUE_NODES = 33
READ_EACH_H = 3
FINISHED = 30
UNSEEN = 8
CLAYS = ("red_earthenware", "smooth_stoneware")
ROOMS = ("bench room", "drying room")
HANDS = ("first", "second")


@dataclass(frozen=True)
class Piece:
    """One piece: how it truly is, what was seen, and what is known of it.

    `problem` is what is known when it is dry, `foreseen` what was known at its pressing: the air
    from then on is a forecast.
    """

    body: str
    place: str
    problem: Problem
    foreseen: Problem
    crossed_s: np.ndarray
    checks: tuple[tuple[float, Feel, str], ...]
    weighings: tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Studio:
    """The finished pieces in order of pressing, then those nobody has looked at."""

    finished: list[Piece]
    unseen: list[Piece]


@dataclass(frozen=True)
class Family:
    """The law by which a simulated studio dries.

    `rest_factor`, of the water that its clays hold at rest by what the model first takes: None
    where it is drawn from the first belief, as everything else is.
    """

    name: str = "as the model"
    slope_factor: float = 1.0
    rest_factor: float | None = None
    touch_factor: float = 1.0

    def ln_rest(self, rng: np.random.Generator) -> float:
        """Return how much more water than the model takes a clay holds at rest."""
        drawn = float(rng.normal(0, FIRST_SD["rest"]))
        return drawn if self.rest_factor is None else math.log(self.rest_factor)

    def body(self, known: Body) -> Body:
        """Return the true body beside the one the model knows."""
        return replace(known, diffusivity_slope=known.diffusivity_slope * self.slope_factor)


AS_THE_MODEL = Family()
MISSPECIFIED = Family("another law", slope_factor=0.6, rest_factor=1.5, touch_factor=1.6)


def weather(rng: np.random.Generator, days: int) -> Climate:
    """Return the air of a room: a level, a day, and weather that wanders (hourly)."""
    hours = days * 24
    hour = np.arange(hours)
    wander = np.zeros((2, hours))
    steps = rng.normal(size=(2, hours))
    for i in range(1, hours):
        wander[:, i] = 0.985 * wander[:, i - 1] + np.array([0.25, 0.006]) * steps[:, i]
    day = np.cos(2 * np.pi * (hour - 15) / 24)
    air = rng.uniform(12, 20) + rng.uniform(0.5, 2.5) * day + wander[0]
    humidity = rng.uniform(0.50, 0.72) - rng.uniform(0.01, 0.05) * day + wander[1]
    air, humidity = np.clip(air, 3, 35), np.clip(humidity, 0.2, 0.92)
    vapour = moist_air.vapour_density_kg_m3(air, humidity)
    return Climate(0, air, vapour, np.zeros(hours, bool), None)


def read_off(air: Climate, until_s: float, end_s: float) -> Climate:
    """Return the air as a studio knows it: a meter read each three hours, then a forecast."""
    hours = range(0, min(len(air.air_c), int(until_s // HOUR_S) + 1), READ_EACH_H)
    full = moist_air.saturation_density_kg_m3(air.air_c)
    humidity = air.vapour_kg_m3 / full
    readings = [
        Reading((hour + 0.5) * HOUR_S, float(air.air_c[hour]), float(humidity[hour]))
        for hour in hours
    ]
    return climate_from(readings, 0, end_s)


def a_section(rng: np.random.Generator) -> Section:
    """Return a wall (most often), a rod or a lump."""
    kind = rng.choice(["wall", "board", "rod", "lump"], p=[0.55, 0.2, 0.15, 0.1])
    if kind == "rod":
        return Section(Shape.ROD, float(rng.uniform(0.008, 0.016)))
    if kind == "lump":
        return Section(Shape.LUMP, float(rng.uniform(0.012, 0.030)))
    inside = 0.1 if kind == "board" else 0.4
    return Section(Shape.FLAT, float(rng.uniform(0.006, 0.014)), inside_factor=inside)


def a_schedule(rng: np.random.Generator, section: Section, pressed_s: float) -> list[FaceEvent]:
    """Return the faces of a piece: its mould, then the open air, and for half a cover between."""
    events = [in_mould(pressed_s, section, Plaster(float(rng.uniform(0.04, 0.25))))]
    out_s = pressed_s + float(rng.uniform(3, 16)) * HOUR_S
    events.append(out_of_mould(out_s, section))
    if rng.random() < 0.5:
        covered_s = out_s + float(rng.uniform(1, 10)) * HOUR_S
        events.append(out_of_mould(covered_s, section, cover=Cover.LOOSE))
        open_s = covered_s + float(rng.uniform(10, 60)) * HOUR_S
        events.append(out_of_mould(open_s, section))
    return events


def make(seed: int, family: Family = AS_THE_MODEL) -> Studio:
    """Return a studio drawn by `seed`: two clays, two rooms, two hands."""
    rng = np.random.default_rng(seed)
    shared = {
        **{f"diffusivity:{clay}": rng.normal(0, FIRST_SD["diffusivity"]) for clay in CLAYS},
        **{f"exchange:{room}": rng.normal(0, FIRST_SD["exchange"]) for room in ROOMS},
        **{f"pressed:{clay}": rng.normal(0, FIRST_SD["pressed"]) for clay in CLAYS},
        "cover": rng.normal(0, FIRST_SD["cover"]),
        **{f"rest:{clay}": family.ln_rest(rng) for clay in CLAYS},
        **{f"touch:{hand}": rng.normal(0, FIRST_SD["touch"]) for hand in HANDS},
    }
    air = {room: weather(rng, 64) for room in ROOMS}
    drawn = []
    for i in range(FINISHED + UNSEEN):
        clay, room = str(rng.choice(CLAYS)), str(rng.choice(ROOMS))
        section = a_section(rng)
        pressed_s = DAY_S * (1 + i) + float(rng.uniform(8, 17)) * HOUR_S
        events = tuple(a_schedule(rng, section, pressed_s))
        true = Problem(family.body(BODIES[clay]), section, events, air[room])
        end_s = pressed_s + HORIZON_S + DAY_S
        known, foreseen = (
            Problem(BODIES[clay], section, events, read_off(air[room], until_s, end_s))
            for until_s in (end_s, pressed_s)
        )
        own = rng.normal(0, 1, 3) * np.array(PIECE_SD[:3])
        theta = np.array(
            [
                shared[f"diffusivity:{clay}"] + own[0],
                shared[f"exchange:{room}"] + own[1],
                true.body.pressed_kg_per_kg + shared[f"pressed:{clay}"] + own[2],
                shared["cover"],
                shared[f"rest:{clay}"],
            ]
        )
        drawn.append((clay, room, (known, foreseen), true, theta[:, None]))
    truths = tuple(ensemble_of(true, theta, nodes=TRUE_NODES) for _, _, _, true, theta in drawn)
    until = tuple(true.problem.pressed_at_s + float(HORIZON_S) for true in truths)
    run = simulate(Batch(truths, until, keeps_track=True))
    pieces = [
        Piece(
            clay,
            room,
            *known,
            after.state.crossed_s[:, 0] - true.pressed_at_s,
            *_seen(rng, after, track, true, shared, family),
        )
        for (clay, room, known, true, _), after, track in zip(
            drawn, run.after, run.tracks, strict=True
        )
    ]
    return Studio(pieces[:FINISHED], pieces[FINISHED:])


def _seen(rng, after, track, true, shared, family):
    """Return two to four touches after the demoulding, and for half of the pieces weighings."""
    out_s = float(true.events[1].at_s)
    dry = after.state.crossed_s[STAGES.index("bisque"), 0]
    end_s = min(float(track.at_s[-1]), (dry if np.isfinite(dry) else track.at_s[-1]) + 12 * HOUR_S)

    def moisture(at_s: float) -> tuple[float, float]:
        mean = float(np.interp(at_s, track.at_s, track.mean_kg_per_kg[:, 0]))
        return mean, float(np.interp(at_s, track.at_s, track.dampest_kg_per_kg[:, 0]))

    checks = []
    for at_s in np.sort(rng.uniform(out_s, end_s, int(rng.integers(2, 5)))):
        hand = str(rng.choice(HANDS))
        checks.append((float(at_s), _feel(rng, moisture(at_s), true, shared, hand, family), hand))
    if rng.random() < 0.5:
        return tuple(checks), ()
    times = np.array([out_s + HOUR_S, *np.sort(rng.uniform(out_s + 2 * HOUR_S, end_s, 2))])
    masses = []
    for at_s in times:
        noise = 1.0 + WEIGHING_SD / np.sqrt(2.0) * rng.standard_t(4)
        masses.append((float(at_s), float((1.0 + moisture(at_s)[0]) * noise)))
    return tuple(checks), tuple(masses)


def _feel(rng, moisture, true, shared, hand, family) -> Feel:
    if rng.random() < MIS_TAP_SHARE:
        return Feel(str(rng.choice([feel.value for feel in Feel])))
    mean, dampest = moisture
    body, offset = true.body, shared[f"touch:{hand}"]
    noise = rng.normal(0, TOUCH_SD * family.touch_factor)
    if dampest + noise < body.bisque_kg_per_kg + offset:
        return Feel.BONE_DRY
    if mean + noise < body.leather_closes_kg_per_kg + offset:
        return Feel.TOO_STIFF
    if mean + noise < body.leather_opens_kg_per_kg + offset:
        return Feel.LEATHER_HARD
    return Feel.SOFT
