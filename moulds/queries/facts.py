"""What stands about castings, as plain values: what was taken back is left out."""

from collections import defaultdict
from collections.abc import Iterable
from uuid import UUID

from moulds.domain.folds import Pressed, StateChanged, Weighed
from moulds.models import MouldPartEvent, MouldWeighing, Pressing


def weighings_of(castings: Iterable[UUID]) -> dict[UUID, list[Weighed]]:
    """Return the standing weighings of each casting, oldest first. One query."""
    rows = (
        MouldWeighing.objects.standing()
        .filter(casting__in=list(castings))
        .order_by("happened_at", "id")
        .values_list("casting_id", "happened_at", "id", "mass_g", "is_dry")
    )
    found: dict[UUID, list[Weighed]] = defaultdict(list)
    for casting_id, *weighed in rows:
        found[casting_id].append(Weighed(*weighed))
    return found


def pressings_of(castings: Iterable[UUID]) -> dict[UUID, list[Pressed]]:
    """Return each casting's standing pressings, oldest first, with parts. Two queries."""
    rows = list(
        Pressing.objects.standing()
        .filter(casting__in=list(castings))
        .order_by("happened_at", "id")
        .values_list("casting_id", "happened_at", "id", "count")
    )
    used: dict[UUID, set[UUID]] = defaultdict(set)
    through = Pressing.mould_parts.through.objects.filter(
        pressing__casting__in={casting_id for casting_id, *_ in rows}
    )
    for pressing_id, part_id in through.values_list("pressing_id", "mouldpart_id"):
        used[pressing_id].add(part_id)
    found: dict[UUID, list[Pressed]] = defaultdict(list)
    for casting_id, happened_at, pressing_id, count in rows:
        parts = frozenset(used[pressing_id])
        found[casting_id].append(Pressed(happened_at, pressing_id, count, parts))
    return found


def counts_of(castings: Iterable[UUID]) -> dict[UUID, list[Pressed]]:
    """Return each casting's standing pressings, oldest first, without parts. One query."""
    rows = (
        Pressing.objects.standing()
        .filter(casting__in=list(castings))
        .order_by("happened_at", "id")
        .values_list("casting_id", "happened_at", "id", "count")
    )
    found: dict[UUID, list[Pressed]] = defaultdict(list)
    for casting_id, *pressed in rows:
        found[casting_id].append(Pressed(*pressed))
    return found


def state_changes_of(mould_parts: Iterable[UUID]) -> dict[UUID, list[StateChanged]]:
    """Return what was said of each mould part, oldest first. One query."""
    rows = (
        MouldPartEvent.objects.standing()
        .filter(mould_part__in=list(mould_parts))
        .order_by("happened_at", "id")
        .values_list("mould_part_id", "happened_at", "id", "state", "reason")
    )
    found: dict[UUID, list[StateChanged]] = defaultdict(list)
    for part_id, *changed in rows:
        found[part_id].append(StateChanged(*changed))
    return found
