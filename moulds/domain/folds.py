"""What is so now of a casting and its parts, folded from what happened.

Each fold is a pure function of the set of facts, taken in the order `(happened_at, id)`: the order
in which they arrive cannot matter.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final
from uuid import UUID

from moulds.domain.moisture import (
    LIGHTEST_FRACTION,
    USUAL_CAPACITY_FRACTION,
    USUAL_DRY_BELOW,
)

# An unweighed mould that has stood this long counts as dry: large ones take 10-14 days at 27 °C
# with moving air. http://potters.org/subject81292.htm
DRY_AFTER_STANDING: Final = timedelta(days=14)


@dataclass(frozen=True, slots=True, order=True)
class Weighed:
    """One look at the scale, `mass_g` above 0 [g]; `is_dry` when it was known to be dry."""

    happened_at: datetime
    id: UUID
    mass_g: float
    is_dry: bool = False


@dataclass(frozen=True, slots=True, order=True)
class Pressed:
    """A pressing, `count` times over, with the mould parts that were used."""

    happened_at: datetime
    id: UUID
    count: int
    mould_parts: frozenset[UUID] = frozenset()


@dataclass(frozen=True, slots=True, order=True)
class StateChanged:
    """Somebody said how a mould part is."""

    happened_at: datetime
    id: UUID
    state: str
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Weights:
    """The weights that stand: of the dry casting, and the latest. [g]"""

    dry_g: float | None = None
    now_g: float | None = None
    weighed_at: datetime | None = None


@dataclass(frozen=True, slots=True)
class SinceDry:
    """Pressings since the casting was last dry.

    `unweighed` counts those after the latest weighing; `last_at` is the latest pressing of all.
    """

    count: int
    unweighed: int
    last_at: datetime | None


def weights_of(weighings: Iterable[Weighed]) -> Weights:
    """Return the latest weight, and the latest that was known to be dry."""
    ordered = sorted(weighings)
    if not ordered:
        return Weights()
    dry = [weighed for weighed in ordered if weighed.is_dry]
    return Weights(
        dry_g=dry[-1].mass_g if dry else None,
        now_g=ordered[-1].mass_g,
        weighed_at=ordered[-1].happened_at,
    )


def count_of(mould_part: UUID, *, before: int, pressings: Iterable[Pressed]) -> int:
    """Return how often a part was pressed: what was taken over, and every pressing with it."""
    return before + sum(p.count for p in pressings if mould_part in p.mould_parts)


def state_of(changes: Iterable[StateChanged]) -> tuple[str, str]:
    """Return the state that stands and why: the latest said, else whole."""
    latest = max(changes, default=None)
    return (latest.state, latest.reason) if latest else ("whole", "")


def dry_at(
    weighings: Iterable[Weighed],
    *,
    capacity_fraction: float = USUAL_CAPACITY_FRACTION,
    dry_below: float = USUAL_DRY_BELOW,
) -> datetime | None:
    """Return when the casting was last dry by the scale, None when it never was.

    `dry_below` is the studio's limit, a fraction of capacity. A weighing called dry is one.
    """
    ordered = sorted(weighings)
    dry_g = weights_of(ordered).dry_g
    if dry_g is None:
        return None
    for weighed in reversed(ordered):
        fraction = (weighed.mass_g - dry_g) / (capacity_fraction * dry_g)
        if weighed.is_dry or LIGHTEST_FRACTION <= fraction < dry_below:
            return weighed.happened_at
    return None


def since_dry(
    pressings: Iterable[Pressed],
    *,
    dry_at: datetime | None,
    weighed_at: datetime | None,
    at: datetime,
) -> SinceDry:
    """Count the pressings since the casting was last dry, as it stands at `at`.

    Without any weighing, one that stood two weeks counts as dry again.
    """
    ordered = sorted(pressings)
    counted = [p for p in ordered if dry_at is None or p.happened_at > dry_at]
    if weighed_at is None:
        counted = _after_longest_rest(counted, at)
    return SinceDry(
        count=sum(p.count for p in counted),
        unweighed=sum(p.count for p in ordered if weighed_at is None or p.happened_at > weighed_at),
        last_at=ordered[-1].happened_at if ordered else None,
    )


def ordinal_of(
    pressing: Pressed,
    pressings: Iterable[Pressed],
    weighings: Iterable[Weighed],
    *,
    capacity_fraction: float = USUAL_CAPACITY_FRACTION,
    dry_below: float = USUAL_DRY_BELOW,
) -> int:
    """Return which press since dry a pressing was: 1 for the first."""
    known = [w for w in weighings if w.happened_at <= pressing.happened_at]
    upto = [p for p in pressings if (p.happened_at, p.id) < (pressing.happened_at, pressing.id)]
    dry = dry_at(known, capacity_fraction=capacity_fraction, dry_below=dry_below)
    weighed = weights_of(known).weighed_at
    before = since_dry(upto, dry_at=dry, weighed_at=weighed, at=pressing.happened_at)
    return before.count + 1


def _after_longest_rest(ordered: list[Pressed], at: datetime) -> list[Pressed]:
    ends = [*(p.happened_at for p in ordered[1:]), at]
    begins = 0
    for place, (pressed, end) in enumerate(zip(ordered, ends, strict=False), start=1):
        if end - pressed.happened_at >= DRY_AFTER_STANDING:
            begins = place
    return ordered[begins:]
