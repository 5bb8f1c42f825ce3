"""The steps of a run: whole hours, events, and quarter hours where things change fast."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying.climate import HOUR_S
from pieces.domain.drying.problem import Problem
from pieces.domain.drying.sections import Face, FaceEvent
from studio.domain import moist_air

Floats = NDArray[np.float64]

QUARTER_S: Final = 900
FAST_FOR_S: Final = 6 * HOUR_S
SIDES: Final = 2  # 0 the inner face, 1 the outer


@dataclass(frozen=True, slots=True)
class Steps:
    """What one problem meets, step by step. Arrays: (steps,) or (steps, 2) for the two faces.

    at_s : (steps + 1,), bounds of the steps; `span_s` their lengths
    full, slope, vapour : saturation density, its slope by temperature, vapour density of the room
    arrhenius : diffusivity over that at 20 °C
    openness : of a face to the air; 0 against plaster
    conductance, holds, outside : of the plaster; 0 in air
    fresh : saturation the plaster is set to at the beginning of a step; nan: left as it is
    """

    at_s: Floats
    span_s: Floats
    full: Floats
    slope: Floats
    vapour: Floats
    arrhenius: Floats
    openness: Floats
    conductance: Floats
    holds: Floats
    outside: Floats
    fresh: Floats

    @property
    def count(self) -> int:
        """Return the number of steps."""
        return len(self.span_s)


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
    at = _bounds(problem.events, from_s, end)
    starts = at[:-1]
    hour = ((starts - climate.start_s) // HOUR_S).astype(int)
    air = climate.air_c[hour]
    faces = _Faces.of(problem.events, starts)
    gas_constant = 8.314462
    warmth = problem.body.activation_j_mol / gas_constant
    return Steps(
        at_s=at,
        span_s=np.diff(at),
        full=moist_air.saturation_density_kg_m3(air),
        slope=moist_air.saturation_density_slope_kg_m3_k(air),
        vapour=climate.vapour_kg_m3[hour],
        arrhenius=np.exp(-warmth * (1.0 / (air + 273.15) - 1.0 / 293.15)),
        openness=faces.openness,
        conductance=faces.conductance,
        holds=faces.holds,
        outside=faces.outside,
        fresh=faces.fresh,
    )


def _bounds(events: Sequence[FaceEvent], from_s: int, end: int) -> Floats:
    hours = np.arange(-(-from_s // HOUR_S) * HOUR_S, end, HOUR_S)
    parts = [np.array([from_s, end]), hours]
    for sooner, event in zip((None, *events), events, strict=False):
        at = round(event.at_s)
        parts.append(np.array([at]))
        if sooner is None or _quickens(sooner, event):
            parts.append(np.arange(-(-at // QUARTER_S) * QUARTER_S, at + FAST_FOR_S + 1, QUARTER_S))
    every = np.unique(np.concatenate(parts)).astype(np.float64)
    return every[(every >= from_s) & (every <= end)]


def _quickens(sooner: FaceEvent, event: FaceEvent) -> bool:
    """Return whether a face is laid on plaster or more open than it was."""
    pairs = ((sooner.inner, event.inner), (sooner.outer, event.outer))
    return any(
        new.plaster is not None or old.plaster is not None or new.factor > old.factor
        for old, new in pairs
    )


@dataclass(frozen=True, slots=True)
class _Faces:
    openness: Floats
    conductance: Floats
    holds: Floats
    outside: Floats
    fresh: Floats

    @classmethod
    def of(cls, events: Sequence[FaceEvent], starts: Floats) -> _Faces:
        """Return what each step's two faces meet: the last event at or before its start."""
        instants = np.array([round(event.at_s) for event in events], dtype=np.float64)
        which = np.searchsorted(instants, starts, side="right") - 1
        table = np.array([[_row(face) for face in (event.inner, event.outer)] for event in events])
        chosen = table[which]
        begins = np.isin(starts, instants)[:, None]
        fresh = np.where(begins, chosen[..., 4], np.nan)
        return cls(chosen[..., 0], chosen[..., 1], chosen[..., 2], chosen[..., 3], fresh)


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
