"""When all parts of a piece are leather-hard together, and what to cover to bring that about.

Parts join well only at like dampness. As they stand the last one may come to leather-hard after the
first has grown too stiff: then the quick one is covered, or a slow one that is covered is opened,
whichever changes fewest covers and lets them meet soonest.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import product
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.covering.plan import covered
from pieces.domain.drying import STAGES, Batch, Cover, Ensemble, Stage, Window, simulate
from pieces.domain.drying.windows import quantiles

Floats = NDArray[np.float64]

HOUR_S: Final = 3600
LOOKS_AHEAD_S: Final = 7 * 24 * HOUR_S
LONG_ENOUGH_S: Final = 2 * HOUR_S  # to score, slip and join; common practice, no source
COVERS: Final = (Cover.OPEN, Cover.LOOSE, Cover.TUCKED, Cover.SEALED)


@dataclass(frozen=True, slots=True)
class PartNow:
    """A part where it stands; `cover` is None while it is in its mould and cannot be covered."""

    state: Ensemble
    cover: Cover | None


@dataclass(frozen=True, slots=True)
class Meeting:
    """When the parts are leather-hard together.

    window : as they stand, or with `covers` where those are given; None when they do not meet
    covers : (index of the part, cover from now on), what to change; empty when nothing
    """

    window: Window | None
    covers: tuple[tuple[int, Cover], ...] = ()


@dataclass(frozen=True, slots=True)
class _Way:
    cover: Cover | None
    opens_s: Floats
    closes_s: Floats
    changes: bool


def meet(parts: Sequence[PartNow], now_s: float) -> Meeting:
    """Return when parts meet, and which covers to change now where they would not.

    Parameters
    ----------
    parts
        Two or more, with equal numbers of draws, each advanced to one hour.
    now_s
        The present. [s since 1970]

    Raises
    ------
    ValueError
        With fewer than two parts, or different numbers of draws.
    """
    if len(parts) < 2 or len({part.state.draws for part in parts}) > 1:
        raise ValueError("Two parts or more meet, each with the same number of draws.")
    told_to = min(part.state.problem.climate.end_s for part in parts)
    ways = _ways(parts, min(now_s + LOOKS_AHEAD_S, told_to))
    weights = _weights(parts)
    as_it_stands = [next(way for way in each if not way.changes) for each in ways]
    plain = _window(as_it_stands, weights)
    if _is_long_enough(plain, now_s):
        return Meeting(plain)
    better = [
        (sum(way.changes for way in chosen), _window(chosen, weights), chosen)
        for chosen in product(*ways)
    ]
    fit = [each for each in better if each[0] and _is_long_enough(each[1], now_s)]
    if not fit:
        return Meeting(None)
    _, window, chosen = min(fit, key=lambda each: (each[0], each[1].opens.p50_s))
    covers = tuple(
        (i, way.cover) for i, way in enumerate(chosen) if way.changes and way.cover is not None
    )
    return Meeting(window, covers)


def _ways(parts: Sequence[PartNow], until_s: float) -> list[list[_Way]]:
    asked: list[tuple[int, Cover | None, Ensemble]] = []
    for i, part in enumerate(parts):
        asked.append((i, part.cover, part.state))
        others = [cover for cover in COVERS if cover is not part.cover] if part.cover else []
        asked += [(i, cover, covered(part.state, cover)) for cover in others]
    after = simulate(Batch(tuple(state for _, _, state in asked), until_s)).after
    found: list[list[_Way]] = [[] for _ in parts]
    for (i, cover, _), end in zip(asked, after, strict=True):
        crossed = end.state.crossed_s
        opens, closes = (
            crossed[STAGES.index(stage)] for stage in (Stage.JOIN_OPENS, Stage.JOIN_CLOSES)
        )
        found[i].append(_Way(cover, opens, closes, changes=bool(found[i])))
    return found


def _weights(parts: Sequence[PartNow]) -> Floats:
    """Return weights of the draws taken together: the parts of one piece share clay and room."""
    joint: Floats = np.prod([part.state.weights for part in parts], axis=0)
    total = joint.sum()
    return joint / total if total > 0.0 else parts[0].state.weights


def _window(ways: Sequence[_Way], weights: Floats) -> Window:
    """Return when the last has opened and the first closes, draw by draw."""
    opens = np.max([way.opens_s for way in ways], axis=0)
    closes = np.min([way.closes_s for way in ways], axis=0)
    return Window(quantiles(opens, weights), quantiles(closes, weights))


def _is_long_enough(window: Window, now_s: float) -> bool:
    opens, closes = window.opens.p50_s, window.closes.p50_s
    if math.isinf(opens):
        return False
    return closes - max(opens, now_s) >= LONG_ENOUGH_S
