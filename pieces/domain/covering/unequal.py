"""Which part of a joined piece dries first: thin handles lead, and pull at their joints.

By surface over volume a rod dries like the wall it stands on at about 20 mm; a thinner one is ahead
of it. The strain that this makes is overstated several times by a model that holds everything
fast, so that only the sign is told: which part to cover.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying import Cover

Floats = NDArray[np.float64]

HOUR_S: Final = 3600
NOTICEABLE_KG_PER_KG: Final = 0.02  # a gap that a hand can feel; common practice, no source


def drying_first(
    means_kg_per_kg: Sequence[float], shrinkage_ends_kg_per_kg: float
) -> tuple[int, int] | None:
    """Return (the part that is ahead, the part that is last), or None when they keep together.

    Parameters
    ----------
    means_kg_per_kg
        Mean moisture of each part that is joined. [kg/kg]
    shrinkage_ends_kg_per_kg
        Of the body: once the last part is below it, nothing pulls any more. [kg/kg]
    """
    if len(means_kg_per_kg) < 2:
        return None
    ahead = min(range(len(means_kg_per_kg)), key=lambda i: means_kg_per_kg[i])
    last = max(range(len(means_kg_per_kg)), key=lambda i: means_kg_per_kg[i])
    if means_kg_per_kg[last] <= shrinkage_ends_kg_per_kg:
        return None
    if means_kg_per_kg[last] - means_kg_per_kg[ahead] < NOTICEABLE_KG_PER_KG:
        return None
    return ahead, last


@dataclass(frozen=True, slots=True)
class PartLine:
    """How a joined part is told to dry: its mean moisture [kg/kg] at instants [s since 1970]."""

    at_s: Floats
    mean_kg_per_kg: Floats
    cover: Cover


@dataclass(frozen=True, slots=True)
class Levelling:
    """One part is to be covered otherwise than the rest: `which` of the parts, from `at_s` on.

    `last` is the part that it is ahead of; None where it is to stand like the others again.
    """

    at_s: float
    which: int
    cover: Cover
    last: int | None


def level_out(
    parts: Sequence[PartLine], shrinkage_ends_kg_per_kg: float, *, from_s: float, until_s: float
) -> Levelling | None:
    """Return the next change that keeps joined parts alike, or None when there is none to make.

    A part that is open and gets ahead is covered loosely; one that stands tighter than another is
    let stand like it once it leads no more.

    Parameters
    ----------
    shrinkage_ends_kg_per_kg
        Of the body. [kg/kg]
    from_s, until_s
        The hours looked at. [s since 1970]
    """
    for at_s in np.arange(from_s, until_s + 1.0, HOUR_S):
        means = [float(np.interp(at_s, part.at_s, part.mean_kg_per_kg)) for part in parts]
        found = drying_first(means, shrinkage_ends_kg_per_kg)
        if found is not None and parts[found[0]].cover is Cover.OPEN:
            return Levelling(float(at_s), found[0], Cover.LOOSE, found[1])
        free = _let_go(parts, means, shrinkage_ends_kg_per_kg)
        if free is not None:
            loosest = max((part.cover for part in parts), key=lambda cover: cover.factor)
            return Levelling(float(at_s), free, loosest, None)
    return None


def held_back(parts: Sequence[PartLine]) -> list[int]:
    """Return the parts that stand under a tighter cover than another of the same piece."""
    loosest = max((part.cover.factor for part in parts), default=0.0)
    return [i for i, part in enumerate(parts) if part.cover.factor < loosest]


def _let_go(
    parts: Sequence[PartLine], means: Sequence[float], shrinkage_ends_kg_per_kg: float
) -> int | None:
    """Return a part that is held back and leads no more, or that nothing pulls at any more."""
    others_pull = max(means) > shrinkage_ends_kg_per_kg
    for i in held_back(parts):
        rest = [mean for j, mean in enumerate(means) if j != i]
        if not others_pull or means[i] >= min(rest):
            return i
    return None
