"""From crossing times to windows: quantiles that rank "not reached" last, and joined parts."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying.problem import STAGES, Ensemble, Problem, Stage

Floats = NDArray[np.float64]

LOOKS_AHEAD_S: Final = 48 * 3600  # how much of the coming air decides what the room can reach


@dataclass(frozen=True, slots=True)
class Quantiles:
    """When something comes to pass: instants [s since 1970], +inf where not within the horizon.

    `p_never` is the share of draws that do not come to it within the horizon, 0 to 1.
    """

    p10_s: float
    p50_s: float
    p90_s: float
    p_never: float

    @property
    def is_reached(self) -> bool:
        """Return whether at least the earliest tenth comes to it."""
        return math.isfinite(self.p10_s)


NEVER: Final = Quantiles(math.inf, math.inf, math.inf, 1.0)


@dataclass(frozen=True, slots=True)
class Window:
    """A time to act: from `opens` to `closes`."""

    opens: Quantiles
    closes: Quantiles


@dataclass(frozen=True, slots=True)
class ReadinessWindows:
    """When a piece or part is worth looking at.

    demould
        Opens at the release from the plaster; closes when leather-hard closes.
    join
        Leather-hard: opens and closes.
    shrinkage_ended, bisque
        When the dampest point has passed. A person still says that it is dry.
    not_in_this_room
        Stages that the room's own air cannot bring about (*not in this room*: candle, or a warm
        cupboard). Their quantiles are all +inf: no date is given.
    """

    demould: Window
    join: Window
    shrinkage_ended: Quantiles
    bisque: Quantiles
    not_in_this_room: frozenset[Stage]


def quantiles(instants_s: Floats, weights: Floats) -> Quantiles:
    """Return weighted quantiles of (draws,) instants, +inf ranking last.

    Mid-ranks (Hazen) with straight lines between them; where the next rank is +inf, so is the
    quantile. Weights sum 1.
    """
    order = np.argsort(instants_s, kind="stable")
    ranked, share = instants_s[order], weights[order]
    middle = np.cumsum(share) - 0.5 * share

    def at(level: float) -> float:
        above = int(np.searchsorted(middle, level))
        if above == 0 or above == len(ranked):
            return float(ranked[min(above, len(ranked) - 1)])
        low, high = float(ranked[above - 1]), float(ranked[above])
        if math.isinf(high):
            return math.inf
        part = (level - middle[above - 1]) / (middle[above] - middle[above - 1])
        return low + float(part) * (high - low)

    never = float(min(1.0, weights[np.isinf(instants_s)].sum()))
    return Quantiles(at(0.1), at(0.5), at(0.9), never)


def limits_kg_per_kg(problem: Problem) -> dict[Stage, float]:
    """Return the moisture at which each stage begins, in the order of `STAGES`."""
    body = problem.body
    return {
        Stage.DEMOULD: body.demould_kg_per_kg,
        Stage.JOIN_OPENS: body.leather_opens_kg_per_kg,
        Stage.JOIN_CLOSES: body.leather_closes_kg_per_kg,
        Stage.SHRINKAGE_ENDED: body.shrinkage_ends_kg_per_kg,
        Stage.BISQUE: body.bisque_kg_per_kg,
    }


def unreachable(problem: Problem, from_s: float) -> frozenset[Stage]:
    """Return the stages whose moisture the room's mean air from `from_s` on cannot reach.

    Looks at the 48 h of air from `from_s` (less at the end of the climate).
    """
    begin = min(from_s, problem.climate.end_s - 1)
    humidity = problem.climate.humidity_between(begin, begin + LOOKS_AHEAD_S)
    if humidity >= 1.0:
        return frozenset(STAGES)
    rest = problem.body.at_rest_kg_per_kg(humidity)
    return frozenset(stage for stage, x in limits_kg_per_kg(problem).items() if rest >= x)


def readiness(after: Ensemble, now_s: float) -> ReadinessWindows:
    """Return the windows of an ensemble carried on to its horizon.

    Parameters
    ----------
    after
        From `simulate`, at the end of the forecast.
    now_s
        The present: a stage most draws have passed by now keeps its time even if the room's
        coming air could not bring it about.

    Raises
    ------
    ValueError
        When `now_s` lies after `after.advanced_to_s`: nothing is known of that time.
    """
    if now_s > after.advanced_to_s:
        raise ValueError("Carry the ensemble on to a time after now_s first.")
    shut = unreachable(after.problem, now_s)
    found: dict[Stage, Quantiles] = {}
    closed: set[Stage] = set()
    for row, stage in enumerate(STAGES):
        said = quantiles(after.state.crossed_s[row], after.weights)
        if stage in shut and not said.p50_s <= now_s:
            said = NEVER
            closed.add(stage)
        found[stage] = said
    closes = found[Stage.JOIN_CLOSES]
    return ReadinessWindows(
        demould=Window(found[Stage.DEMOULD], closes),
        join=Window(found[Stage.JOIN_OPENS], closes),
        shrinkage_ended=found[Stage.SHRINKAGE_ENDED],
        bisque=found[Stage.BISQUE],
        not_in_this_room=frozenset(closed),
    )


def latest(parts: Sequence[ReadinessWindows]) -> ReadinessWindows:
    """Return the windows of a piece as damp as its dampest part: the latest of every quantile.

    Exact when the parts' unknowns move together (one body, one room), else a little late at p10.
    Raises `ValueError` without parts.
    """
    return _joined(parts, closing=max)


def together(parts: Sequence[ReadinessWindows]) -> ReadinessWindows:
    """Return when all parts are fit at once: windows open with the last and close with the first.

    For *join today*. Raises `ValueError` without parts.
    """
    return _joined(parts, closing=min)


_Pick = Callable[[list[float]], float]


def _joined(parts: Sequence[ReadinessWindows], *, closing: _Pick) -> ReadinessWindows:
    if not parts:
        raise ValueError("A piece has at least one part.")

    def window(of: Callable[[ReadinessWindows], Window]) -> Window:
        return Window(
            _pick([of(part).opens for part in parts], max),
            _pick([of(part).closes for part in parts], closing),
        )

    return ReadinessWindows(
        demould=window(lambda part: part.demould),
        join=window(lambda part: part.join),
        shrinkage_ended=_pick([part.shrinkage_ended for part in parts], max),
        bisque=_pick([part.bisque for part in parts], max),
        not_in_this_room=frozenset().union(*(part.not_in_this_room for part in parts)),
    )


def _pick(said: list[Quantiles], pick: _Pick) -> Quantiles:
    return Quantiles(
        p10_s=pick([each.p10_s for each in said]),
        p50_s=pick([each.p50_s for each in said]),
        p90_s=pick([each.p90_s for each in said]),
        p_never=pick([each.p_never for each in said]),
    )
