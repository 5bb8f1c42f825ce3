"""Carry ensembles on through time: SDIRK2 steps, crossings of the stages, tracks.

The two-stage, stiffly accurate, L-stable method with gamma = 1 - 1/sqrt 2 [4]_ of the package: the
second stage is the same solve as the first from x_n + (1 - gamma)/gamma (x_1 - x_n).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying.lanes import Lanes, Timetable
from pieces.domain.drying.newton import implicit_stage
from pieces.domain.drying.problem import Batch, Ensemble, Run, State, Track
from pieces.domain.drying.steps import Steps, steps_of

Floats = NDArray[np.float64]

MODEL_VERSION: Final = "drying-1"
GAMMA: Final = 1.0 - 0.5**0.5
BEYOND: Final = (1.0 - GAMMA) / GAMMA
LANES_AT_ONCE: Final = 1024  # what stays in the cache of an ordinary processor


def advance(ensembles: Sequence[Ensemble], to_s: float) -> list[Ensemble]:
    """Return the ensembles carried on to `to_s` [s since 1970]; see `simulate`."""
    return list(simulate(Batch(tuple(ensembles), to_s)).after)


def simulate(batch: Batch) -> Run:
    """Carry every ensemble of `batch` on to its instant, all draws of all pieces side by side.

    Parameters
    ----------
    batch
        Any mixture of shapes, bodies, schedules and rooms.

    Returns
    -------
    Run, with the ensembles in the order given.

    Raises
    ------
    ValueError
        When a climate does not cover the time asked for, or the instants do not match in number.
    """
    count = len(batch.ensembles)
    until = batch.until_s if isinstance(batch.until_s, tuple) else (batch.until_s,) * count
    if len(until) != count:
        raise ValueError("until_s must be one instant or one for each ensemble.")
    steps = [
        steps_of(each.problem, each.advanced_to_s, at)
        for each, at in zip(batch.ensembles, until, strict=True)
    ]
    after: list[Ensemble] = list(batch.ensembles)
    tracks: list[Track | None] = [None] * count
    unsettled = 0
    for chosen in _chunks(batch.ensembles, steps):
        march = _March.begin([after[i] for i in chosen], [steps[i] for i in chosen])
        unsettled += march.go(keeps_track=batch.keeps_track)
        for place, i in enumerate(chosen):
            after[i] = march.ended(place)
            tracks[i] = march.track(place) if batch.keeps_track else None
    kept = tuple(track for track in tracks if track is not None)
    return Run(tuple(after), kept, unsettled)


def _chunks(ensembles: Sequence[Ensemble], steps: Sequence[Steps]) -> Iterator[list[int]]:
    """Yield indices that go together: equal nodes, like shapes, lengths and bounded width."""

    def sort_key(i: int) -> tuple[int, int, int]:
        return ensembles[i].nodes, ensembles[i].problem.section.power, steps[i].count

    chunk: list[int] = []
    width = 0
    for i in sorted(range(len(ensembles)), key=sort_key):
        fits = width + ensembles[i].draws <= LANES_AT_ONCE
        if chunk and not (fits and sort_key(i)[0] == sort_key(chunk[0])[0]):
            yield chunk
            chunk, width = [], 0
        chunk.append(i)
        width += ensembles[i].draws
    if chunk:
        yield chunk


@dataclass(slots=True)
class _March:
    """A chunk under way. Arrays as in `State`, with all lanes side by side."""

    ensembles: list[Ensemble]
    lanes: Lanes
    table: Timetable
    x: Floats
    saturation: Floats
    crossed: Floats
    left: Floats
    counts: list[int]
    means: Floats
    dampest: Floats

    @classmethod
    def begin(cls, ensembles: list[Ensemble], steps: list[Steps]) -> _March:
        states = [each.state for each in ensembles]
        return cls(
            ensembles=ensembles,
            lanes=Lanes.of(ensembles),
            table=Timetable.of(steps),
            x=np.concatenate([each.moisture_kg_per_kg for each in states], axis=1),
            saturation=np.concatenate([each.saturation for each in states], axis=1),
            crossed=np.concatenate([each.crossed_s for each in states], axis=1),
            left=np.concatenate([each.left_kg_m2 for each in states]),
            counts=[each.count for each in steps],
            means=np.empty((0, 0)),
            dampest=np.empty((0, 0)),
        )

    def go(self, *, keeps_track: bool) -> int:
        """March through all steps; return how many lane-steps did not settle."""
        margins = self._margins()
        count = self.table.count if keeps_track else 0
        self.means = np.empty((count + 1, self.x.shape[1]))
        self.dampest = np.empty_like(self.means)
        self._note(0, margins)
        unsettled = 0
        for step in range(self.table.count):
            unsettled += self._step(step)
            now = self._margins()
            self._cross(step, margins, now)
            margins = now
            if keeps_track:
                self._note(step + 1, margins)
        return unsettled

    def _step(self, step: int) -> int:
        lanes = self.lanes
        moment = self.table.moment(step, lanes.piece)
        if moment.fresh is not None:
            set_anew = ~np.isnan(moment.fresh)
            wetness = np.maximum(moment.fresh, 1e-6)  # a retention curve has no end at 0
            self.saturation = np.where(set_anew, wetness, self.saturation)
        x, saturation = self.x, self.saturation
        span = GAMMA * moment.span_s
        first = implicit_stage(lanes, moment, span, (x, saturation), (x, saturation))
        grown, filled = first.x - x, first.saturation - saturation
        base = (x + BEYOND * grown, saturation + BEYOND * filled)
        guess = (
            np.maximum(x + grown / GAMMA, 0.1 * first.x),
            np.maximum(saturation + filled / GAMMA, 0.1 * first.saturation),
        )
        second = implicit_stage(lanes, moment, span, base, guess)
        self.x, self.saturation = second.x, second.saturation
        self.left += BEYOND * first.left + second.left
        return first.unsettled + second.unsettled

    def _margins(self) -> Floats:
        """Return (8, lanes): how far the stages are off, then mean and dampest moisture.

        Rows 0-4 follow `STAGES`; row 5 is the second condition of demoulding, a face shrunk free.
        """
        share = self.lanes.share
        mean = share[:, 0] @ self.x if share.shape[1] == 1 else (share * self.x).sum(axis=0)
        dampest = self.x.max(axis=0)
        face = np.minimum(self.x[0], self.x[-1])
        limits = self.lanes.limits
        return np.stack(
            [
                mean - limits[0],
                mean - limits[1],
                mean - limits[2],
                dampest - limits[3],
                dampest - limits[4],
                face - self.lanes.freed,
                mean,
                dampest,
            ]
        )

    def _cross(self, step: int, was: Floats, now: Floats) -> None:
        """Record the instants of stages come to in this step, by a line through its ends."""
        reached = now[:5] <= 0.0
        reached[0] &= now[5] <= 0.0
        reached &= np.isinf(self.crossed)
        if not reached.any():
            return
        row, lane = np.nonzero(reached)
        part = _fraction(was[row, lane], now[row, lane])
        freed = _fraction(was[5, lane], now[5, lane])
        part = np.where(row == 0, np.maximum(part, freed), part)
        piece = self.lanes.piece[lane]
        start, end = self.table.at_s[step, piece], self.table.at_s[step + 1, piece]
        self.crossed[row, lane] = start + part * (end - start)

    def _note(self, place: int, margins: Floats) -> None:
        self.means[place], self.dampest[place] = margins[6], margins[7]

    def _columns(self, place: int) -> slice:
        first = sum(each.draws for each in self.ensembles[:place])
        return slice(first, first + self.ensembles[place].draws)

    def ended(self, place: int) -> Ensemble:
        """Return the ensemble at `place`, where it has come to."""
        own = self._columns(place)
        state = State(
            self.x[:, own].copy(),
            self.saturation[:, own].copy(),
            self.crossed[:, own].copy(),
            self.left[own].copy(),
        )
        end = int(self.table.at_s[-1, place])
        return replace(self.ensembles[place], state=state, advanced_to_s=end)

    def track(self, place: int) -> Track:
        """Return how the ensemble at `place` went."""
        own, bounds = self._columns(place), self.counts[place] + 1
        return Track(
            self.table.at_s[:bounds, place].copy(),
            self.means[:bounds, own].copy(),
            self.dampest[:bounds, own].copy(),
        )


def _fraction(was: Floats, now: Floats) -> Floats:
    """Return where from `was` to `now` a line falls through 0; 0 where it does not."""
    falls = (was > 0.0) & (now <= 0.0)
    return np.where(falls, was / np.where(falls, was - now, 1.0), 0.0)
