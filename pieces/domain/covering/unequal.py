"""Which part of a joined piece dries first: thin handles lead, and pull at their joints.

By surface over volume a rod dries like the wall it stands on at about 20 mm; a thinner one is ahead
of it. The strain that this makes is overstated several times by a model that holds everything
fast, so that only the sign is told: which part to cover.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

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
