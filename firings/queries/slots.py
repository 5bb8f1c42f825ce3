"""Where ware goes whose load was called off: the next load with room, else a kiln that is free."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Final
from uuid import UUID
from zoneinfo import ZoneInfo

from firings.domain.cones import CONES_C, needed
from firings.domain.slots import ONE_DAY, Taken, free_day, taken
from firings.models import Kiln, Load
from pieces.models import Piece
from studio.queries.hours import opening_of

from .fitting import TRIED_AT_THE_GATE, answer_to, problem_of
from .kilns import expected_end_at
from .loads import BUSY, COMING, listed, placements_of
from .sizes import Sizes

SUGGESTED_FOR: Final = timedelta(days=14)
"""A load called off longer ago suggests nothing any more; common sense, no source."""
LOADS_TRIED: Final = 4
USUAL_RATE_C_PER_H: Final = 60.0


@dataclass(frozen=True, slots=True)
class Slot:
    """A load with room, else a kiln and its free day, else neither; `words` says which."""

    load: Load | None
    kiln: Kiln | None
    day: date | None
    words: str


def next_slot(load: Load, pieces: Sequence[Piece], *, at: datetime) -> Slot:
    """Return where the ware of a load that was called off could go next.

    What starts after `at` is asked in its order, and whether all of `pieces` fit beside what is
    there. At most thirty queries.
    """
    zone = ZoneInfo(load.studio.zone)
    rows = listed(load.studio).filter(
        kind=load.kind,
        cone=load.cone,
        state=Load.State.OPEN,
        starts_at__gt=at,
        kiln__is_out_of_use=False,
    )
    for row in rows.exclude(pk=load.pk).order_by("starts_at", "id")[:LOADS_TRIED]:
        if _has_room(row, pieces):
            local = row.starts_at.astimezone(zone)
            words = f"Next: {row.number}, {local:%a} {local.day} {local:%b}, {local:%H:%M}."
            return Slot(row, row.kiln, local.date(), words)
    free = _free(load, at.astimezone(zone).date() + ONE_DAY, zone)
    if free is None:
        return Slot(None, None, None, "No load is open for it, and no kiln is free in four weeks.")
    kiln, day = free
    words = f"No load is open for it yet; {kiln.number} is free on {day:%a} {day.day} {day:%b}."
    return Slot(None, kiln, day, words)


def _has_room(load: Load, pieces: Sequence[Piece]) -> bool:
    placed = placements_of([load])[load.pk] if pieces else []
    inside = [row.piece for row in placed if row.piece is not None]
    known = {piece.pk for piece in inside}
    more = [piece for piece in pieces if piece.pk not in known]
    problem = problem_of(load, placed, sizes=Sizes([*inside, *more]), more=more)
    if problem is None:
        return True
    return answer_to(problem, most_tried=TRIED_AT_THE_GATE).verdict != "does_not_fit"


def _free(load: Load, first: date, zone: ZoneInfo) -> tuple[Kiln, date] | None:
    """Return the kiln that is free soonest, the one it was meant for before others."""
    is_known = load.cone in CONES_C
    hot_c = needed(load.cone, USUAL_RATE_C_PER_H).celsius if is_known else 0.0
    kilns = Kiln.objects.filter(studio=load.studio_id, is_out_of_use=False, top_c__gte=hot_c)
    spans: defaultdict[UUID, list[Taken]] = defaultdict(list)
    busy = listed(load.studio).filter(state__in=(*BUSY, *COMING))
    for row in busy.exclude(pk=load.pk).prefetch_related("programme__segments"):
        starts, ends = row.started_at or row.starts_at, expected_end_at(row) or row.starts_at
        spans[row.kiln_id].append(
            taken(starts.astimezone(zone).date(), ends.astimezone(zone).date())
        )
    opening = opening_of(load.studio)
    closed = set(range(7)) - set(opening.week) if opening.week else set()
    days = [
        (day, kiln.pk != load.kiln_id, kiln.number, kiln)
        for kiln in kilns
        for day in [
            free_day(first, spans[kiln.pk], closed_weekdays=closed, closed_dates=opening.closed)
        ]
        if day is not None
    ]
    if not days:
        return None
    day, _, _, kiln = min(days, key=lambda one: one[:3])
    return kiln, day
