"""Carry ensembles on through time: cut a batch into chunks, have each marched, take it apart."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying import engine
from pieces.domain.drying.lanes import Lanes, Timetable
from pieces.domain.drying.march import March, Progress
from pieces.domain.drying.problem import Batch, Ensemble, Run, State, Track
from pieces.domain.drying.steps import Steps, steps_of

Floats = NDArray[np.float64]

MODEL_VERSION: Final = "drying-2"
LANES_AT_ONCE: Final = 1024  # what stays in the cache of an ordinary processor


def advance(ensembles: Sequence[Ensemble], to_s: float) -> list[Ensemble]:
    """Return the ensembles carried on to `to_s` [s since 1970]; see `simulate`."""
    return list(simulate(Batch(tuple(ensembles), to_s)).after)


def simulate(batch: Batch, march: March | None = None) -> Run:
    """Carry every ensemble of `batch` on to its instant, all draws of all pieces side by side.

    Parameters
    ----------
    batch
        Any mixture of shapes, bodies, schedules and rooms.
    march
        How: by default the compiled loop where this process has made it ready (`engine`), else
        plain numpy. They agree to 1e-9.

    Returns
    -------
    Run, with the ensembles in the order given.

    Raises
    ------
    ValueError
        When a climate does not cover the time asked for, or the instants do not match in number.
    """
    go = march or engine.march
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
        chunk = _Chunk.of(
            [after[i] for i in chosen],
            [steps[i] for i in chosen],
            keeps_track=batch.keeps_track,
        )
        unsettled += go(chunk.lanes, chunk.table, chunk.progress)
        for place, i in enumerate(chosen):
            after[i] = chunk.ended(place)
            tracks[i] = chunk.track(place) if batch.keeps_track else None
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


def _beside(arrays: Iterable[Floats]) -> Floats:
    """Return (rows, draws) arrays side by side, rows whole in memory whatever theirs were."""
    return np.ascontiguousarray(np.concatenate(list(arrays), axis=1))


@dataclass(frozen=True, slots=True)
class _Chunk:
    """Ensembles that are carried on side by side; `starts` are their first lanes."""

    ensembles: list[Ensemble]
    lanes: Lanes
    table: Timetable
    progress: Progress
    starts: list[int]

    @classmethod
    def of(cls, ensembles: list[Ensemble], steps: list[Steps], *, keeps_track: bool) -> _Chunk:
        """Lay the ensembles side by side, ready to go."""
        states = [each.state for each in ensembles]
        table = Timetable.of([each.problem for each in ensembles], steps)
        width = sum(each.draws for each in ensembles)
        track = (table.count + 1 if keeps_track else 0, width)
        progress = Progress(
            x=_beside(each.moisture_kg_per_kg for each in states),
            saturation=_beside(each.saturation for each in states),
            crossed=_beside(each.crossed_s for each in states),
            left=np.concatenate([each.left_kg_m2 for each in states]),
            means=np.empty(track),
            dampest=np.empty(track),
        )
        starts = [0, *accumulate(each.draws for each in ensembles)]
        return cls(ensembles, Lanes.of(ensembles), table, progress, starts)

    def columns(self, place: int) -> slice:
        """Return the lanes of the ensemble at `place`."""
        return slice(self.starts[place], self.starts[place + 1])

    def ended(self, place: int) -> Ensemble:
        """Return the ensemble at `place`, where it has come to."""
        own, made = self.columns(place), self.ensembles[place]
        state = State(*(array[..., own].copy() for array in self.progress[:4]))
        end = int(self.table.at_s[-1, place])
        return Ensemble(made.problem, made.theta, state, end, made.weights)

    def track(self, place: int) -> Track:
        """Return how the ensemble at `place` went."""
        own, bounds = self.columns(place), int(self.table.counts[place]) + 1
        return Track(
            self.table.at_s[:bounds, place].copy(),
            self.progress.means[:bounds, own].copy(),
            self.progress.dampest[:bounds, own].copy(),
        )
