"""What was told of loads, as the fold takes it: a fixed number of queries, however many loads."""

from collections import defaultdict
from collections.abc import Iterable
from datetime import datetime
from typing import Any
from uuid import UUID

from firings.domain.firing_times import Point
from firings.domain.loads import CLAIMS, Event, Now, fold
from firings.models import KilnReading, Load, LoadEvent

USED = (KilnReading.Use.TAKEN, KilnReading.Use.OVER_TOP)


def event_of(row: LoadEvent, written_at: datetime) -> Event:
    """Return a row as the fold takes it: claims count from when the server took them."""
    return Event(
        id=row.pk,
        happened_at=written_at if row.kind in CLAIMS else row.happened_at,
        kind=row.kind,
        celsius=row.celsius,
        outcome=row.outcome,
        reason=row.reason,
        results=row.results,
    )


def events_of(loads: Iterable[Load]) -> dict[UUID, list[Event]]:
    """Return what stands of what was told of each load. One query."""
    found: defaultdict[UUID, list[Event]] = defaultdict(list)
    rows: Any = LoadEvent.objects.filter(load__in=[load.pk for load in loads]).standing()
    for row in rows.select_related("entry"):
        found[row.load_id].append(event_of(row, row.entry.written_at))
    return found


def nows(loads: Iterable[Load]) -> dict[UUID, Now]:
    """Return each load as it is now. One query."""
    loads = list(loads)
    events = events_of(loads)
    return {load.pk: fold(events.get(load.pk, ())) for load in loads}


def points_of(loads: Iterable[Load]) -> dict[UUID, list[Point]]:
    """Return the temperatures read of each load, those told with its events too. Two queries."""
    ids = [load.pk for load in loads]
    found: defaultdict[UUID, set[Point]] = defaultdict(set)
    readings = KilnReading.objects.filter(load__in=ids, use__in=USED).standing()
    for load_id, at, reading_c in readings.values_list("load_id", "happened_at", "reading_c"):
        found[load_id].add((at, reading_c))
    events = LoadEvent.objects.filter(load__in=ids, celsius__isnull=False).standing()
    for load_id, at, celsius in events.values_list("load_id", "happened_at", "celsius"):
        found[load_id].add((at, celsius))
    return {load_id: sorted(points) for load_id, points in found.items()}
