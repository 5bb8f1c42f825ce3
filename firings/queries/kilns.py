"""What each kiln is doing, till when and who watches: a fixed number of queries for all of them."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from uuid import UUID
from zoneinfo import ZoneInfo

from django.db.models import Count, Q, QuerySet

from firings.domain.driving import Leg, lasts_h
from firings.domain.firing_times import Point, in_order
from firings.domain.load_rules import STATE_WORDS
from firings.models import Kiln, Load, Programme
from studio.models import Member, Studio

from .kiln_health import Health, health_of
from .loads import BUSY, COMING, listed
from .opening import OpensAt, openings_of
from .told import points_of

COMING_MOST = 8


@dataclass(frozen=True, slots=True)
class Doing:
    """What a kiln is doing now."""

    word: str
    words: str
    till: datetime | None = None
    watcher: Member | None = None
    load: Load | None = None
    reading: Point | None = None


@dataclass(frozen=True, slots=True)
class KilnNow:
    """A kiln with what it is doing, its health, and its next loads with how many pieces each."""

    kiln: Kiln
    doing: Doing
    health: Health
    opening: OpensAt | None
    coming: list[Load] = field(default_factory=list)


def all_of(studio: Studio) -> "QuerySet[Kiln]":
    """Return the kilns of a studio. Three queries when read."""
    rows = Kiln.objects.filter(studio=studio).select_related("place", "studio")
    return rows.prefetch_related("shelves", "posts")


def now_of(kilns: Iterable[Kiln], *, studio: Studio, at: datetime) -> list[KilnNow]:
    """Return what each kiln is doing at the instant `at`. At most thirteen queries."""
    kilns = list(kilns)
    ids = [kiln.pk for kiln in kilns]
    rows = listed(studio).filter(kiln__in=ids, state__in=(*BUSY, *COMING))
    rows = rows.prefetch_related("programme__segments").annotate(
        pieces_in=Count("placements", filter=Q(placements__removed_at=None))
    )
    by_kiln: defaultdict[UUID, list[Load]] = defaultdict(list)
    for load in rows.order_by("starts_at", "id"):
        by_kiln[load.kiln_id].append(load)
    busy = [load for loads in by_kiln.values() for load in loads if load.state in BUSY]
    points = points_of(busy)
    openings = openings_of(studio, busy, points, at)
    health = health_of(kilns)
    zone = ZoneInfo(studio.zone)
    found = []
    for kiln in kilns:
        loads = by_kiln[kiln.pk]
        current = next((load for load in loads if load.state in BUSY), None)
        coming = [load for load in loads if load.state in COMING]
        opening = openings.get(current.pk) if current is not None else None
        doing = _doing(kiln, current, coming, points, opening, zone)
        found.append(
            KilnNow(
                kiln=kiln,
                doing=doing,
                health=health[kiln.pk],
                opening=opening,
                coming=coming[:COMING_MOST],
            )
        )
    return found


def expected_h(load: Load) -> float | None:
    """Return how long the firing is meant to last: as somebody said, else by its programme. [h]"""
    if load.expected_h is not None:
        return load.expected_h
    return lasts_h(legs_of(load.programme)) if load.programme is not None else None


def expected_end_at(load: Load) -> datetime | None:
    """Return when the firing is meant to end, None where nobody can say."""
    hours = expected_h(load)
    if hours is None or load.ended_at is not None:
        return load.ended_at
    return (load.started_at or load.starts_at) + timedelta(hours=hours)


def legs_of(programme: Programme) -> list[Leg]:
    """Return the legs of a programme. One query unless they are at hand."""
    rows = programme.segments.all()
    return [Leg(row.to_c, row.rate_c_per_h, row.hold_min) for row in rows]


def _doing(
    kiln: Kiln,
    load: Load | None,
    coming: list[Load],
    points: dict[UUID, list[Point]],
    opening: OpensAt | None,
    zone: ZoneInfo,
) -> Doing:
    if load is not None:
        ordered = in_order(points.get(load.pk, []))
        last = ordered[-1] if ordered else None
        till = opening.likely if opening is not None else None
        if load.state in (Load.State.FIRING, Load.State.LOADING):
            till = expected_end_at(load)
        words = STATE_WORDS[load.state]
        if last is not None:
            words += f", {last[1]:.0f} °C at {last[0].astimezone(zone):%H:%M}"
        return Doing(load.state, words, till, load.watcher, load, last)
    if kiln.is_out_of_use:
        return Doing("out_of_use", f"out of use: {kiln.out_of_use_reason}")
    if coming:
        first = coming[0]
        words = f"{first.number} is {STATE_WORDS[first.state]}"
        return Doing(first.state, words, first.starts_at, first.watcher, first)
    return Doing("empty", "empty")
