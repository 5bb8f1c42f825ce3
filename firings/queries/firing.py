"""One load with all that a screen of it shows: a fixed number of queries."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, Final
from zoneinfo import ZoneInfo

from firings.domain import firing_times
from firings.domain.driving import Leg, curve, planned_c
from firings.domain.firing_times import Choice, ConeSeen, Point, StoppedFacts
from firings.domain.loads import Now, fold
from firings.models import KilnReading, Load, LoadEvent, Placement, WitnessCone
from studio.domain.hours import elapsed_h
from studio.models import JournalEntry

from .kilns import expected_end_at, legs_of
from .loads import listed, next_load, placements_of
from .opening import OpensAt, openings_of
from .slots import SUGGESTED_FOR, Slot, next_slot
from .told import USED, event_of, points_of

FIRED_AT_MOST: Final = timedelta(hours=24)


@dataclass(frozen=True, slots=True)
class EventTold:
    """One thing told of a load, what was taken back too."""

    row: LoadEvent
    is_taken_back: bool
    is_misfit: bool


@dataclass(frozen=True, slots=True)
class LoadWhole:
    """A load, its ware and its log."""

    load: Load
    now: Now
    placements: list[Placement]
    events: list[EventTold]
    readings: list[KilnReading]
    points: list[Point]
    cones: list[WitnessCone]
    legs: list[Leg]
    opening: OpensAt | None
    next_load: Load | None
    next_slot: Slot | None
    at: datetime

    @property
    def firing_h(self) -> float | None:
        return firing_times.firing_h(self.now, self.at)

    @property
    def gap_h(self) -> float:
        return firing_times.gap_h(self.now, self.at)

    @property
    def corners(self) -> list[tuple[float, float]]:
        """The programme as (hours since it was lit, °C)."""
        return curve(self.legs) if self.legs else []

    @property
    def planned_now_c(self) -> float | None:
        if self.load.state != Load.State.FIRING or self.now.started_at is None:
            return None
        return planned_c(self.legs, elapsed_h(self.now.started_at, self.at))

    @property
    def worst_gap(self) -> tuple[KilnReading, float] | None:
        """The reading farthest from what the kiln was set to, and by how much. [°C]"""
        gaps = [
            (row, row.reading_c - row.set_c)
            for row in self.readings
            if row.set_c is not None and row.use in USED
        ]
        return max(gaps, key=lambda gap: abs(gap[1]), default=None)

    @property
    def stopped(self) -> tuple[StoppedFacts, tuple[Choice, ...]] | None:
        """What to see before deciding about a firing that stopped, and what it may become."""
        if self.load.state != Load.State.STOPPED:
            return None
        seen = [ConeSeen(row.level, row.role, row.cone, row.clock_hand) for row in self.cones]
        facts = firing_times.stopped_facts(self.now, self.points, self.at, seen)
        return facts, firing_times.choices(facts, self.load.cone)


def whole(load: Load, *, at: datetime) -> LoadWhole:
    """Return the load with its ware and its log. At most fifty queries."""
    load = listed(load.studio).prefetch_related("programme__segments").get(pk=load.pk)
    rows, taken_back = _events(load)
    standing = [row for row in rows if row.entry_id not in taken_back]
    now = fold(event_of(row, row.entry.written_at) for row in standing)
    points = points_of([load]).get(load.pk, [])
    readings: Any = KilnReading.objects.filter(load=load).standing().select_related("entry__member")
    cones: Any = WitnessCone.objects.filter(load=load).standing().select_related("entry__member")
    placements = placements_of([load]).get(load.pk, [])
    return LoadWhole(
        load=load,
        now=now,
        placements=placements,
        events=[EventTold(row, row.entry_id in taken_back, row.pk in now.misfits) for row in rows],
        readings=list(readings.order_by("happened_at", "id")),
        points=points,
        cones=list(cones.order_by("level", "role", "happened_at", "id")),
        legs=legs_of(load.programme) if load.programme is not None else [],
        opening=openings_of(load.studio, [load], {load.pk: points}, at).get(load.pk),
        next_load=next_load(load),
        next_slot=_next_slot(load, placements, at),
        at=at,
    )


def _next_slot(load: Load, placements: Sequence[Placement], at: datetime) -> Slot | None:
    if load.called_off_at is None or at - load.called_off_at > SUGGESTED_FOR:
        return None
    pieces = [row.piece for row in placements if row.piece is not None]
    left = [piece for piece in pieces if piece.stage != "lost"]
    return next_slot(load, left, at=at)


def clock_change(load: Load) -> tuple[datetime, str] | None:
    """Return when the clocks change while it fires, and what to say; None when they do not."""
    zone = ZoneInfo(load.studio.zone)
    start = load.started_at or load.starts_at
    end = expected_end_at(load) or start + FIRED_AT_MOST
    before, after = (moment.astimezone(zone).utcoffset() for moment in (start, end))
    if before is None or after is None or before == after:
        return None
    low, high = start, end
    while high - low > timedelta(minutes=1):
        middle = low + (high - low) / 2
        low, high = (
            (middle, high) if middle.astimezone(zone).utcoffset() == before else (low, middle)
        )
    way = "back" if after < before else "forward"
    return high.replace(second=0, microsecond=0), (
        f"The clocks go {way} during this firing: count hours, not what the clock shows."
    )


def _events(load: Load) -> tuple[Sequence[LoadEvent], set[object]]:
    rows: list[Any] = list(
        LoadEvent.objects.filter(load=load)
        .select_related("entry__member", "place")
        .prefetch_related("entry__notes")
        .order_by("happened_at", "id")
    )
    corrections = JournalEntry.objects.filter(corrects__in=[row.entry_id for row in rows])
    return rows, set(corrections.values_list("corrects", flat=True))
