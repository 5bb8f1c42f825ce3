"""What a section would do in air, under covers and at a thickness that somebody asks about.

A sum for the calculator and the "what if" of no piece: it goes by the first belief, or by what a
studio believes of such clay in such a room.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final

import numpy as np

from pieces.domain.drying import (
    Batch,
    Belief,
    Body,
    Climate,
    Cover,
    Curve,
    Ensemble,
    Plaster,
    Problem,
    ReadinessWindows,
    Section,
    Shape,
    curve,
    ensemble,
    exchange_in,
    readiness,
    simulate,
)
from pieces.domain.drying.belief import FIRST_BELIEF
from pieces.domain.drying.problem import STILL_AIR
from pieces.domain.drying.surface import vapour_conductance_m_s
from pieces.domain.drying.windows import quantiles
from pieces.domain.schedule import Standing, face_events
from studio.domain import moist_air

HOUR_S: Final = 3600
HORIZON_H: Final = 21 * 24
POINTS: Final = 60
DRAWS: Final = 64

# Where the model's figures mean something: common practice, no source.
SOUND_AIR_C: Final = (5.0, 30.0)
SOUND_HUMIDITY: Final = (0.20, 0.95)
REFERENCE_MM: Final = {Shape.FLAT: 8.0, Shape.ROD: 16.0, Shape.LUMP: 16.0}
MOST_TIMES_REFERENCE: Final = 3.0

SOURCE: Final = (
    "Natch's own model of drying in one dimension; convection along a flat plate by "
    "Nu = 0.664 Re^(1/2) Pr^(1/3) (from memory), never less than still air."
)


@dataclass(frozen=True, slots=True)
class AirFrom:
    """The room's air from `from_h` hours after the beginning on, until the next."""

    from_h: float
    air_c: float
    humidity_fraction: float


@dataclass(frozen=True, slots=True)
class CoverFrom:
    """The cover from `from_h` hours after the beginning on, until the next."""

    from_h: float
    cover: Cover


@dataclass(frozen=True, slots=True)
class Mould:
    """Plaster all round or behind one face; `until_h` None: until the middle guess lets go."""

    free_water_fraction: float
    until_h: float | None = None


@dataclass(frozen=True, slots=True)
class Asked:
    """What is asked: a section of a body, pressed at `begins_s`, and what surrounds it.

    `air` is not empty, in order of time, its first at 0; `covers` likewise in order of time.
    """

    begins_s: int
    section: Section
    body: Body
    air: Sequence[AirFrom]
    covers: Sequence[CoverFrom] = ()
    mould: Mould | None = None
    air_m_s: float = 0.0
    belief: Belief = FIRST_BELIEF


@dataclass(frozen=True, slots=True)
class Told:
    """What comes of it; without windows and curve where no estimate would be sound."""

    windows: ReadinessWindows | None
    curve: Curve | None
    working: tuple[str, ...]
    warnings: tuple[tuple[str, str], ...] = field(default=())


def unsound(asked: Asked) -> list[str]:
    """Return why no estimate would be sound, in sentences; empty where one may be made."""
    said = [unsound_air(air.air_c, air.humidity_fraction) for air in asked.air]
    found = list(dict.fromkeys(word for words in said for word in words))
    return [*found, *too_thick(asked.section)]


def unsound_air(air_c: float, humidity_fraction: float) -> list[str]:
    """Return why no estimate would be sound in that air, in sentences; empty where it would."""
    found = []
    if not SOUND_AIR_C[0] <= air_c <= SOUND_AIR_C[1]:
        found.append("The air is outside 5 to 30 °C.")
    low, high = SOUND_HUMIDITY
    if not low <= humidity_fraction <= high:
        found.append("The air is outside 20 to 95 % humidity.")
    return found


def too_thick(section: Section) -> list[str]:
    """Return in a sentence that a section is too thick for a sound estimate; empty where not."""
    most_mm = MOST_TIMES_REFERENCE * REFERENCE_MM[section.shape]
    if section.thickest_m * 1000.0 <= most_mm * (1.0 + 1e-9):
        return []
    return [f"It is thicker than {most_mm:g} mm, three times what the model was made for."]


def what_if(asked: Asked) -> Told:
    """Return windows, curve and how they were reckoned. Raises `ValueError` on a bad schedule."""
    working = _working(asked)
    if doubts := unsound(asked):
        return Told(None, None, working, (no_estimate(doubts),))
    out_h, sentence = _out_of_mould_h(asked)
    begun = _begun(asked, out_h)
    until_s = float(_hour(asked.begins_s) + HORIZON_H * HOUR_S)
    run = simulate(Batch((begun,), until_s, keeps_track=True))
    after, track = run.after[0], run.tracks[0]
    # What the room can reach is judged by the air that stays; what came before keeps its time.
    windows = readiness(after, asked.begins_s + asked.air[-1].from_h * HOUR_S)
    late_s = windows.bisque.p90_s
    end_s = min(until_s, late_s + 24 * HOUR_S)
    line = curve(after, track, np.linspace(asked.begins_s, end_s, POINTS))
    return Told(windows, line, (*working, *sentence), tuple(unreached(windows)))


def no_estimate(doubts: Sequence[str]) -> tuple[str, str]:
    """Return code and sentence of no estimate, for the reasons given."""
    return "no-sound-estimate", "No sound estimate. " + " ".join(doubts)


def unreached(windows: ReadinessWindows) -> list[tuple[str, str]]:
    """Return code and sentence of every stage that the air cannot bring about."""
    shut = sorted(stage.value for stage in windows.not_in_this_room)
    return [(f"not-in-this-room-{stage}", _unreached(stage)) for stage in shut]


def _unreached(stage: str) -> str:
    return f"This air cannot bring it to “{stage.replace('_', ' ')}”: no date is given."


def _out_of_mould_h(asked: Asked) -> tuple[float | None, tuple[str, ...]]:
    """Return when it leaves its plaster, None for never, and the sentence about it."""
    if asked.mould is None:
        return 0.0, ()
    if asked.mould.until_h is not None:
        return asked.mould.until_h, (f"Out of its mould after {asked.mould.until_h:g} h.",)
    until_s = float(_hour(asked.begins_s) + HORIZON_H * HOUR_S)
    after = simulate(Batch((_begun(asked, None),), until_s)).after[0]
    lets_go_s = quantiles(after.state.crossed_s[0], after.weights).p50_s
    if np.isinf(lets_go_s):
        return None, ("It does not let go of its mould within 21 days.",)
    out_h = (lets_go_s - asked.begins_s) / HOUR_S
    return out_h, (f"Taken out when the middle guess lets go, after {out_h:.1f} h.",)


def _begun(asked: Asked, out_h: float | None) -> Ensemble:
    out_at_s = None if out_h is None else asked.begins_s + out_h * HOUR_S
    mould = asked.mould
    events = face_events(
        asked.section,
        begun_at_s=float(asked.begins_s),
        plaster=None if mould is None else Plaster(mould.free_water_fraction),
        out_at_s=out_at_s,
        standings=[
            Standing(asked.begins_s + cover.from_h * HOUR_S, cover.cover) for cover in asked.covers
        ],
    )
    exchange = exchange_in(asked.air_m_s)
    problem = Problem(asked.body, asked.section, events, _climate(asked), exchange, asked.belief)
    return ensemble(problem, DRAWS)


def _climate(asked: Asked) -> Climate:
    """Return the hourly air: each hour has the air of its middle."""
    start_s = _hour(asked.begins_s)
    middles_h = (start_s - asked.begins_s) / HOUR_S + np.arange(HORIZON_H + 1) + 0.5
    since = np.array([air.from_h for air in asked.air])
    place = np.maximum(0, np.searchsorted(since, middles_h, side="right") - 1)
    air_c = np.array([air.air_c for air in asked.air])[place]
    humidity = np.array([air.humidity_fraction for air in asked.air])[place]
    vapour = moist_air.vapour_density_kg_m3(air_c, humidity)
    return Climate(start_s, air_c, vapour, np.zeros(len(air_c), bool), None)


def _hour(at_s: int) -> int:
    return at_s // HOUR_S * HOUR_S


def _working(asked: Asked) -> tuple[str, ...]:
    section, body, air = asked.section, asked.body, asked.air[-1]
    heat = exchange_in(asked.air_m_s).convection_w_m2_k
    k_mm_s = 1000.0 * float(vapour_conductance_m_s(heat))
    vapour_g_m3 = 1000.0 * float(moist_air.vapour_density_kg_m3(air.air_c, air.humidity_fraction))
    moves = f"air at {asked.air_m_s:g} m/s" if heat > STILL_AIR.convection_w_m2_k else "still air"
    limits = (
        f"leather-hard {_percent(body.leather_opens_kg_per_kg)} to "
        f"{_percent(body.leather_closes_kg_per_kg)}, shrinkage ends at "
        f"{_percent(body.shrinkage_ends_kg_per_kg)}, fit to fire at "
        f"{_percent(body.bisque_kg_per_kg)}"
    )
    return (
        f"Section: {section.shape.value}, {1000.0 * section.thickest_m:g} mm, "
        f"reckoned at {section.nodes} points.",
        f"Body: {body.name}, pressed with {_percent(body.pressed_kg_per_kg)} water of dry clay; "
        f"{limits}.",
        f"Air in the end: {air.air_c:g} °C, {100.0 * air.humidity_fraction:g} %, which is "
        f"{vapour_g_m3:.2f} g/m³ of vapour.",
        f"Surface: {moves}, h = {heat:.2f} W/(m² K), k = {k_mm_s:.2f} mm/s.",
        f"{DRAWS} likely ways it may be, each over 21 days; the range holds 80 % of them.",
    )


def _percent(share: float) -> str:
    return f"{100.0 * share:g} %"
