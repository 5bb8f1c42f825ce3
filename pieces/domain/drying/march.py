"""The march of many lanes through their steps in plain numpy: what the compiled one must equal.

The two-stage, stiffly accurate, L-stable method with gamma = 1 - 1/sqrt 2 [4]_ of the package: the
second stage is the same solve as the first from x_n + (1 - gamma)/gamma (x_1 - x_n).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying.lanes import Lanes, Timetable
from pieces.domain.drying.newton import implicit_stage

Floats = NDArray[np.float64]

GAMMA: Final = 1.0 - 0.5**0.5
BEYOND: Final = (1.0 - GAMMA) / GAMMA
LEAST_WETNESS: Final = 1e-6  # of plaster set anew: a retention curve has no end at 0


class Progress(NamedTuple):
    """Where all lanes stand; a march moves the arrays on in place.

    The first four as in `State`; means, dampest : (steps + 1, lanes), or (0, lanes) where no
    track is wanted.
    """

    x: Floats
    saturation: Floats
    crossed: Floats
    left: Floats
    means: Floats
    dampest: Floats


#: Carry all lanes through all their steps; return how many lane-stages did not settle.
March = Callable[[Lanes, Timetable, Progress], int]


def march(lanes: Lanes, table: Timetable, progress: Progress) -> int:
    """Carry all lanes on, step by step; a `March`."""
    walk = _Walk(lanes, table, progress, progress.x, progress.saturation)
    unsettled = walk.go()
    progress.x[:], progress.saturation[:] = walk.x, walk.saturation
    return unsettled


@dataclass(slots=True)
class _Walk:
    """A march under way; moisture and saturation are replaced step by step."""

    lanes: Lanes
    table: Timetable
    progress: Progress
    x: Floats
    saturation: Floats

    def go(self) -> int:
        """March through all steps; return how many lane-stages did not settle."""
        margins = self._margins()
        self._note(0, margins)
        unsettled = 0
        for step in range(self.table.count):
            unsettled += self._step(step)
            now = self._margins()
            self._cross(step, margins, now)
            margins = now
            self._note(step + 1, margins)
        return unsettled

    def _step(self, step: int) -> int:
        lanes = self.lanes
        moment = self.table.moment(step, lanes)
        if moment.fresh is not None:
            set_anew = ~np.isnan(moment.fresh)
            wetness = np.maximum(moment.fresh, LEAST_WETNESS)
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
        self.progress.left[:] += BEYOND * first.left + second.left
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
        reached &= np.isinf(self.progress.crossed)
        if not reached.any():
            return
        row, lane = np.nonzero(reached)
        piece = self.lanes.piece[lane]
        start, end = self.table.at_s[step, piece], self.table.at_s[step + 1, piece]
        lasts = end > start  # a step of no length brings nothing about
        row, lane, start, end = row[lasts], lane[lasts], start[lasts], end[lasts]
        part = _fraction(was[row, lane], now[row, lane])
        freed = _fraction(was[5, lane], now[5, lane])
        part = np.where(row == 0, np.maximum(part, freed), part)
        self.progress.crossed[row, lane] = start + part * (end - start)

    def _note(self, place: int, margins: Floats) -> None:
        if len(self.progress.means):
            self.progress.means[place], self.progress.dampest[place] = margins[6], margins[7]


def _fraction(was: Floats, now: Floats) -> Floats:
    """Return where from `was` to `now` a line falls through 0; 0 where it does not."""
    falls = (was > 0.0) & (now <= 0.0)
    return np.where(falls, was / np.where(falls, was - now, 1.0), 0.0)
