"""What stands under plastic untouched: its maker is told, then who minds their things, the owner.

Ware that nobody has looked at for a week may stand in its own water. One message tells of all that
one maker has forgotten in one place; any look at the piece begins its age anew.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator
from datetime import date, datetime, time, timedelta
from typing import Final
from uuid import UUID
from zoneinfo import ZoneInfo

from django.db.models import Max

from pieces.models import Piece
from studio.actions import reminders
from studio.actions.reminders import About
from studio.domain.hours import instant
from studio.models import Away, JournalSubject, Member, Studio
from studio.permissions import Role
from studio.queries import people

CAUSE: Final = "untouched_under_plastic"
TOLD_AT: Final = time(9, 0)
AFTER_DAYS: Final = (7, 14, 21)  # a first figure, no source: a week, and again
COVERED: Final = ("loose", "tucked", "sealed")
WET: Final = ("out", "joined", "drying")
MARKS_SHOWN: Final = 12

Wish = tuple[Member, About, datetime, int, datetime]


def tell_of_forgotten(*, studio: Studio, at: datetime) -> int:
    """Set what has come due, take back what somebody has touched; return how many are wanted."""
    zone = ZoneInfo(studio.zone)
    groups = list(_groups(studio, at, zone))
    heard = _heard(piece for pieces in groups for piece in pieces)
    owners = people.with_role(studio, Role.OWNER)
    wishes = [
        wish for pieces in groups for wish in _wishes(pieces, heard, owners, at=at, zone=zone)
    ]
    for person, about, due_at, turn, heard_at in wishes:
        reminders.set_for(
            studio=studio,
            person=person,
            about=about,
            due_at=due_at,
            at=at,
            round=turn,
            heard_at=heard_at,
        )
    still = {(CAUSE, pieces[0].pk) for pieces in groups}
    reminders.withdraw_all_but(studio=studio, causes=[CAUSE], still=still)
    return len(wishes)


def told_at(touched_at: datetime, turn: int, zone: ZoneInfo) -> datetime:
    """Return when the turn comes: nine in the morning, so many days after the day of the touch."""
    return instant(_day(touched_at, zone) + timedelta(days=AFTER_DAYS[turn]), TOLD_AT, zone)


def _groups(studio: Studio, at: datetime, zone: ZoneInfo) -> Iterator[list[Piece]]:
    """Yield what each maker has forgotten in each place, the longest untouched first."""
    rows = Piece.objects.filter(
        studio=studio,
        is_undone=False,
        has_clash=False,
        maker__isnull=False,
        state__in=WET,
        cover__in=COVERED,
        touched_at__lte=at - timedelta(days=AFTER_DAYS[0] - 1),
    ).select_related("maker__studio", "design", "place")
    found: defaultdict[tuple[UUID | None, UUID | None], list[Piece]] = defaultdict(list)
    for piece in rows.order_by("touched_at", "mark_key", "id"):
        if told_at(piece.touched_at, 0, zone) <= at:
            found[piece.maker_id, piece.place_id].append(piece)
    yield from found.values()


def _wishes(
    pieces: list[Piece],
    heard: dict[UUID, datetime],
    owners: list[Member],
    *,
    at: datetime,
    zone: ZoneInfo,
) -> Iterator[Wish]:
    oldest, maker = pieces[0], pieces[0].maker
    assert maker is not None  # filtered above
    days = (_day(at, zone) - _day(oldest.touched_at, zone)).days
    for turn in range(len(AFTER_DAYS)):
        due_at = told_at(oldest.touched_at, turn, zone)
        if due_at > at:
            return
        whom = [maker] if turn == 0 else owners
        if turn == 1:
            whom = _minders(maker, due_at.astimezone(zone).date()) or owners
        for person in whom:
            yield person, _about(pieces, days), due_at, turn, heard.get(oldest.pk, due_at)


def _minders(maker: Member, day: date) -> list[Member]:
    """Return who minds a maker's things: whom they named for that day, else who helps them."""
    away = Away.objects.filter(
        member=maker,
        called_off_at=None,
        from_date__lte=day,
        until_date__gte=day,
        buddy__isnull=False,
    ).select_related("buddy__studio")
    named = [row.buddy for row in away if row.buddy is not None]
    helpers = people.members(maker.studio).filter(helps=maker).order_by("first_name", "id")
    return named or list(helpers)


def _about(pieces: list[Piece], days: int) -> About:
    oldest = pieces[0]
    where = f", {oldest.place.name}" if oldest.place is not None else ""
    marks = ", ".join(piece.shown_mark for piece in pieces[:MARKS_SHOWN])
    more = f" and {len(pieces) - MARKS_SHOWN} more" if len(pieces) > MARKS_SHOWN else ""
    return About(
        cause=CAUSE,
        grade="C",
        kind="piece",
        object_id=oldest.pk,
        mark=oldest.shown_mark,
        title=f"Under plastic and untouched for {days} days{where}: {marks}{more}.",
        body="Lift it and look for water inside. Say seen, fine, or what is wrong.",
        link=f"/pieces/{oldest.pk}" if len(pieces) == 1 else _shelf(oldest),
    )


def _shelf(piece: Piece) -> str:
    return f"/racks/{piece.place_id}" if piece.place_id is not None else "/racks"


def _heard(pieces: Iterable[Piece]) -> dict[UUID, datetime]:
    """Return when the last word about each piece was heard. One query."""
    rows = JournalSubject.objects.filter(subject_id__in=[piece.pk for piece in pieces])
    last = rows.values_list("subject_id").annotate(last=Max("entry__written_at"))
    return {subject_id: at for subject_id, at in last if at is not None}


def _day(moment: datetime, zone: ZoneInfo) -> date:
    return moment.astimezone(zone).date()
