"""The steps of a run: whole hours, events, and quarter hours where things change fast."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying.climate import HOUR_S, Climate
from pieces.domain.drying.problem import Problem
from pieces.domain.drying.sections import Face, FaceEvent
from studio.domain import moist_air

Floats = NDArray[np.float64]

QUARTER_S: Final = 900
FAST_FOR_S: Final = 6 * HOUR_S
GAS_CONSTANT_J_MOL_K: Final = 8.314462


@dataclass(frozen=True, slots=True)
class Steps:
    """What one problem meets, step by step.

    at_s : (steps + 1,), bounds of the steps [s since 1970]
    hour : (steps,), the hour of its climate; event : (steps,), the last event of its schedule
    begins : (steps,), whether the step begins with that event
    """

    at_s: Floats
    hour: NDArray[np.int32]
    event: NDArray[np.int32]
    begins: NDArray[np.bool_]

    @property
    def count(self) -> int:
        """Return the number of steps."""
        return len(self.hour)


def steps_of(problem: Problem, from_s: int, until_s: float) -> Steps:
    """Return the steps of `problem` from a stored state to `until_s` (none when that is past).

    Raises
    ------
    ValueError
        When the climate does not cover them, or `from_s` lies before the pressing.
    """
    end = max(round(until_s), from_s)
    climate = problem.climate
    if from_s < problem.pressed_at_s:
        raise ValueError("A piece cannot be carried on from before its pressing.")
    if end > from_s and (from_s < climate.start_s or end > climate.end_s):
        raise ValueError("The climate does not cover the time asked for.")
    instants = np.array([round(event.at_s) for event in problem.events])
    at = _bounds(problem.events, instants, from_s, end)
    starts = at[:-1]
    event = instants.searchsorted(starts, side="right") - 1
    return Steps(
        at_s=at.astype(np.float64),
        hour=((starts - climate.start_s) // HOUR_S).astype(np.int32),
        event=event.astype(np.int32),
        begins=instants[event] == starts,
    )


def _bounds(
    events: Sequence[FaceEvent], instants: NDArray[np.int64], from_s: int, end: int
) -> NDArray[np.int64]:
    parts = [np.array([from_s, end]), instants, np.arange(_up(from_s, HOUR_S), end, HOUR_S)]
    for sooner, event, at in zip((None, *events), events, instants.tolist(), strict=False):
        if at + FAST_FOR_S >= from_s and (sooner is None or _quickens(sooner, event)):
            parts.append(np.arange(_up(at, QUARTER_S), at + FAST_FOR_S + 1, QUARTER_S))
    every = np.sort(np.concatenate(parts))
    every = every[every.searchsorted(from_s) : every.searchsorted(end, side="right")]
    is_new = np.ones(len(every), dtype=bool)
    np.not_equal(every[1:], every[:-1], out=is_new[1:])
    return every[is_new]


def _up(instant_s: int, span_s: int) -> int:
    """Return the first multiple of `span_s` that is not before an instant."""
    return -(-instant_s // span_s) * span_s


def _quickens(sooner: FaceEvent, event: FaceEvent) -> bool:
    """Return whether a face is laid on plaster or more open than it was."""
    pairs = ((sooner.inner, event.inner), (sooner.outer, event.outer))
    return any(
        new.plaster is not None or old.plaster is not None or new.factor > old.factor
        for old, new in pairs
    )


def airs_of(climate: Climate, activation_j_mol: float) -> Floats:
    """Return (hours, 4) of a room's air.

    Columns: saturation density, its slope by temperature, vapour density, and the diffusivity of
    clay over that at 20 °C.
    """
    air = climate.air_c
    warmth = activation_j_mol / GAS_CONSTANT_J_MOL_K
    return np.stack(
        [
            moist_air.saturation_density_kg_m3(air),
            moist_air.saturation_density_slope_kg_m3_k(air),
            climate.vapour_kg_m3,
            np.exp(-warmth * (1.0 / (air + 273.15) - 1.0 / 293.15)),
        ],
        axis=1,
    )


def faces_of(event: FaceEvent) -> tuple[float, ...]:
    """Return eleven figures of what the two faces meet from an event on, inner before outer.

    Openness to the air (0 against plaster); conductance, what it holds and openness of its far
    side, of the plaster (0 in air); the saturation it begins with (nan: it goes on); last whether
    the openness of either is a cover's (1 or 0).
    """
    pairs = zip(_row(event.inner), _row(event.outer), strict=True)
    return (*(figure for pair in pairs for figure in pair), float(event.is_covered))


def _row(face: Face) -> tuple[float, float, float, float, float]:
    plaster = face.plaster
    if plaster is None:
        return (face.factor, 0.0, 0.0, 0.0, np.nan)
    return (
        0.0,
        plaster.conductance_kg_m2_s,
        plaster.holds_kg_m2,
        plaster.outside_factor,
        np.nan if plaster.free_water_fraction is None else plaster.free_water_fraction,
    )
