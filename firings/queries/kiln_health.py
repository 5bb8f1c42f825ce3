"""How old each kiln's elements and sensor are, and what its book says: three queries for all."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any
from uuid import UUID

from firings.domain import kiln_health
from firings.domain.cautions import Caution
from firings.domain.kiln_health import Age, Fired, Ohms, Shelf
from firings.models import Kiln, KilnService, Load, WitnessCone

Kind = KilnService.Kind
CONES_OF_LAST = 4
"""Loads back whose cones are read: two that agree, and some that nobody read; common sense."""


@dataclass(frozen=True, slots=True)
class Health:
    """What the book of a kiln says.

    `trend` is hot, cool, on, or "" where two loads do not agree yet.
    """

    elements: Age
    sensor: Age
    ohms: tuple[Ohms, ...]
    trend: str
    shelf_count: int | None
    notes: tuple[Caution, ...]


def health_of(kilns: Iterable[Kiln]) -> dict[UUID, Health]:
    """Return the health of each kiln. Three queries."""
    kilns = list(kilns)
    ids = [kiln.pk for kiln in kilns]
    acts: defaultdict[UUID, list[KilnService]] = defaultdict(list)
    rows: Any = KilnService.objects.filter(kiln__in=ids).standing().order_by("happened_at", "id")
    for row in rows:
        acts[row.kiln_id].append(row)
    loads: defaultdict[UUID, list[Load]] = defaultdict(list)
    lit = Load.objects.filter(kiln__in=ids, started_at__isnull=False)
    for load in lit.order_by("started_at", "id"):
        loads[load.kiln_id].append(load)
    read = _cones(load for rows in loads.values() for load in _ended(rows)[-CONES_OF_LAST:])
    return {kiln.pk: _health(kiln, acts[kiln.pk], loads[kiln.pk], read) for kiln in kilns}


def _health(
    kiln: Kiln, acts: list[KilnService], loads: list[Load], read: dict[UUID, list[Shelf]]
) -> Health:
    changed_at = _last(acts, Kind.ELEMENTS)
    fired = [
        Fired(
            ended_at=load.ended_at or load.started_at or load.starts_at,
            hot_h=load.hot_h,
            counts=load.outcome == "fired" and load.ended_at is not None,
        )
        for load in loads
    ]
    elements = kiln_health.age(
        fired,
        changed_at=changed_at,
        firings_before=kiln.firings_before,
        hot_hours_before=kiln.hot_hours_before,
    )
    sensor = kiln_health.age(
        fired,
        changed_at=_last(acts, Kind.SENSOR),
        firings_before=kiln.sensor_firings_before,
        hot_hours_before=0.0,
    )
    ohms = tuple(
        Ohms(row.happened_at, row.over_new_fraction)
        for row in acts
        if row.kind == Kind.OHMS
        and row.over_new_fraction is not None
        and (changed_at is None or row.happened_at >= changed_at)
    )
    leanings = [kiln_health.leaning(read.get(load.pk, ())) for load in _ended(loads)]
    counted = [row.shelf_count for row in acts if row.shelf_count is not None]
    return Health(
        elements=elements,
        sensor=sensor,
        ohms=ohms,
        trend=kiln_health.trend(leanings),
        shelf_count=counted[-1] if counted else None,
        notes=kiln_health.notes(elements=elements, ohms=ohms, leanings=leanings),
    )


def _ended(loads: Iterable[Load]) -> list[Load]:
    return [load for load in loads if load.outcome == "fired" and load.ended_at is not None]


def _last(acts: Iterable[KilnService], kind: str) -> Any:
    found = [row.happened_at for row in acts if row.kind == kind]
    return found[-1] if found else None


def _cones(loads: Iterable[Load]) -> dict[UUID, list[Shelf]]:
    found: defaultdict[UUID, list[Shelf]] = defaultdict(list)
    rows: Any = WitnessCone.objects.filter(load__in=[load.pk for load in loads]).standing()
    for load_id, role, hand in rows.values_list("load_id", "role", "clock_hand"):
        found[load_id].append(Shelf(role, hand))
    return found
