"""A cover plan: the fastest drying that keeps the index under its limit, by the hours of people.

At each hour when somebody is in, the most open of {open, loose, tucked} is taken that keeps the
index under the limit until the next such hour; to open up it must stay well under, so that the plan
does not flutter. It looks ahead only to the next hour of decision and is not proven the best; it
was compared with one cover throughout and with one change of cover. What usually comes out is to
leave a piece open while it is plastic, to cover it loosely from late leather-hard to the end of
shrinkage, and then to open it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Final

import numpy as np

from pieces.domain.covering.cracking import LIMIT, crack_index
from pieces.domain.drying import Batch, Cover, Ensemble, out_of_mould, simulate
from pieces.domain.drying.problem import State

HOUR_S: Final = 3600
SAMPLED_S: Final = 3 * HOUR_S  # how often the index is taken: it rises and falls over half a day
CHOICES: Final = (Cover.OPEN, Cover.LOOSE, Cover.TUCKED)
OPENS_UP_BELOW: Final = 0.85  # of the limit: hysteresis; tried, not measured
LONGEST_H: Final = 14 * 24


@dataclass(frozen=True, slots=True)
class PieceNow:
    """A piece out of its mould: its draws where they stand, and how it is covered."""

    state: Ensemble
    cover: Cover


@dataclass(frozen=True, slots=True)
class CoverStep:
    """From `at_s` [s since 1970] on it stands under `cover`."""

    at_s: int
    cover: Cover


@dataclass(frozen=True, slots=True)
class CoverPlan:
    """What to do with a piece's cover.

    steps : changes in order of time, the first where the cover of now should change; empty when it
    may stay as it is until shrinkage has ended
    index_now, peak : of the middle way, now and at its worst under the plan; peak_as_it_stands :
    at its worst when the cover stays
    ends_s : when shrinkage has ended under the plan; None when not within a fortnight
    """

    steps: tuple[CoverStep, ...]
    index_now: float
    peak: float
    peak_as_it_stands: float
    ends_s: int | None


def plan_covers(
    pieces: Sequence[PieceNow], changes_at_s: Sequence[int], *, limit: float = LIMIT
) -> list[CoverPlan]:
    """Return a plan for every piece, all reckoned side by side.

    Parameters
    ----------
    pieces
        All advanced to the same whole hour, which is now.
    changes_at_s
        Whole hours at which somebody may change a cover, rising, the first not before now.
    limit
        Index to stay under, above 0.

    Raises
    ------
    ValueError
        When the pieces stand at different hours, or the hours do not rise.
    """
    if not pieces:
        return []
    now_s = pieces[0].state.advanced_to_s
    if any(piece.state.advanced_to_s != now_s for piece in pieces):
        raise ValueError("All pieces must be advanced to the same hour.")
    # As far as the air is told, and no further than a fortnight.
    end_s = min(now_s + LONGEST_H * HOUR_S, *(p.state.problem.climate.end_s for p in pieces))
    hours = [at for at in changes_at_s if at < end_s]
    if any(later <= sooner for sooner, later in pairwise(hours)):
        raise ValueError("changes_at_s must rise.")
    staying = [_Way(middle(piece.state), piece.cover) for piece in pieces]
    for begin in range(now_s, end_s, SAMPLED_S):
        _stay([way for way in staying if not way.has_ended], min(begin + SAMPLED_S, end_s))
    # Who stands open and keeps under the limit has nothing to change.
    asked = [way for way in staying if way.cover is not Cover.OPEN or way.peak > limit]
    changing = {id(way): _Way(way.begun, way.cover) for way in asked if not _has_shrunk(way.begun)}
    bounds = [now_s, *[at for at in hours if at > now_s], end_s]
    for begin, end in pairwise(bounds):
        under_way = [way for way in changing.values() if not way.has_ended]
        if begin in hours:
            _choose(under_way, begin, end, limit)
        else:
            _stay(under_way, end)
    return [_told(changing.get(id(way), way), way) for way in staying]


def _told(way: _Way, staying: _Way) -> CoverPlan:
    index = float(crack_index(way.begun)[0])
    return CoverPlan(tuple(way.steps), index, way.peak, staying.peak, way.ends_s)


def middle(state: Ensemble) -> Ensemble:
    """Return the ensemble as its one middle draw: weighted means of what is unknown and of where
    it stands.
    """
    weights = state.weights[:, None]
    at = state.state
    one = State(
        at.moisture_kg_per_kg @ weights,
        at.saturation @ weights,
        np.median(at.crossed_s, axis=1, keepdims=True),
        at.left_kg_m2 @ weights,
    )
    return replace(state, theta=state.theta @ weights, state=one, weights=np.ones(1))


class _Way:
    """One piece under way through its plan."""

    def __init__(self, begun: Ensemble, cover: Cover) -> None:
        self.begun = begun
        self.state, self.cover = begun, cover
        self.steps: list[CoverStep] = []
        self.peak = float(crack_index(begun)[0])
        self.ends_s = begun.advanced_to_s if _has_shrunk(begun) else None

    @property
    def has_ended(self) -> bool:
        return self.ends_s is not None

    def under(self, cover: Cover) -> Ensemble:
        """Return the piece as it stands, under `cover` from now on."""
        if cover is self.cover:
            return self.state
        return covered(self.state, cover)

    def goes(self, after: Ensemble, peak: float, cover: Cover) -> None:
        if cover is not self.cover:
            self.steps.append(CoverStep(self.state.advanced_to_s, cover))
        self.state, self.cover = after, cover
        self.peak = max(self.peak, peak)
        if _has_shrunk(after):
            self.ends_s = after.advanced_to_s


def covered(state: Ensemble, cover: Cover) -> Ensemble:
    """Return an ensemble as it stands, under `cover` from where it has come to.

    A plaster bat that it stands on goes on drawing.
    """
    at = state.advanced_to_s
    met = [event for event in state.problem.events if round(event.at_s) <= at]
    under = met[-1].inner.plaster if met else None
    bat = replace(under, free_water_fraction=None) if under is not None else None
    before = tuple(event for event in state.problem.events if round(event.at_s) < at)
    events = (*before, out_of_mould(at, state.problem.section, cover=cover, bat=bat))
    return replace(state, problem=replace(state.problem, events=events))


def _choose(ways: Sequence[_Way], begin: int, end: int, limit: float) -> None:
    if not ways:
        return
    tried = [(way, cover) for way in ways for cover in CHOICES]
    after, peaks = _onward([way.under(cover) for way, cover in tried], begin, end)
    for i, way in enumerate(ways):
        at = [i * len(CHOICES) + k for k in range(len(CHOICES))]
        picked = next((k for k in at if peaks[k] <= limit * _leave(way.cover, tried[k][1])), at[-1])
        way.goes(after[picked], peaks[picked], tried[picked][1])


def _leave(now: Cover, then: Cover) -> float:
    return OPENS_UP_BELOW if then.factor > now.factor else 1.0


def _stay(ways: Sequence[_Way], end: int) -> None:
    if not ways:
        return
    begin = ways[0].state.advanced_to_s
    after, peaks = _onward([way.state for way in ways], begin, end)
    for way, state, peak in zip(ways, after, peaks, strict=True):
        way.goes(state, peak, way.cover)


def _onward(states: list[Ensemble], begin: int, end: int) -> tuple[list[Ensemble], list[float]]:
    """Carry all on; return where they come to and the worst index of each on the way."""
    peaks = [0.0] * len(states)
    for at in [*range(begin + SAMPLED_S, end, SAMPLED_S), end]:
        states = list(simulate(Batch(tuple(states), at)).after)
        peaks = [max(p, float(crack_index(s)[0])) for p, s in zip(peaks, states, strict=True)]
    return states, peaks


def _has_shrunk(state: Ensemble) -> bool:
    ends = state.problem.body.shrinkage_ends_kg_per_kg
    return bool(state.state.moisture_kg_per_kg.max() <= ends)
