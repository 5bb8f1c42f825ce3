"""What makers are told of loads: closing soon, settled, called off, moved, stopped, ware out.

A sweep finds what is to be told and sets each reminder once. What was heard more than a day ago is
told to nobody, and what is no longer so is taken back.
"""

from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Final
from uuid import UUID
from zoneinfo import ZoneInfo

from firings.models import Load
from firings.queries import affected, loads, picture
from firings.queries.affected import Heard, marks
from firings.queries.slots import next_slot
from pieces.models import Piece
from studio.actions import reminders
from studio.actions.reminders import About
from studio.domain.telling import Grade
from studio.models import Member, Reminder, Studio

from .telling import technicians

CLOSING: Final = "load_closing"
SETTLED: Final = "load_settled"
CALLED_OFF: Final = "load_called_off"
MOVED: Final = "load_moved"
UNPLANNED: Final = "load_unplanned"
STOPPED: Final = "load_stopped"
OUT: Final = "ware_out"
NEEDS_KILN: Final = "load_needs_kiln"
CLOSES_SOON: Final = timedelta(hours=4)
DAY: Final = timedelta(days=1)
OUT_AGAIN: Final = (timedelta(days=7), timedelta(days=21))

Wish = tuple[Member, About, datetime] | tuple[Member, About, datetime, int]


def tell_makers(*, studio: Studio, at: datetime) -> int:
    """Set what makers are to be told of loads; return how many are wanted now."""
    wishes = [
        *_closing(studio, at),
        *_settled(studio, at),
        *_called_off(studio, at),
        *_moved(studio, at),
        *_unplanned(studio, at),
        *_stopped(studio, at),
        *_out(studio, at),
        *_needs_kiln(studio, at),
    ]
    for person, about, due_at, *turn in wishes:
        if due_at <= at:
            reminders.set_for(
                studio=studio,
                person=person,
                about=about,
                due_at=due_at,
                at=at,
                round=turn[0] if turn else 0,
            )
    _again(studio, CALLED_OFF, (DAY,), at)
    _again(studio, OUT, OUT_AGAIN, at)
    _take_back(studio, at)
    return len(wishes)


def _closing(studio: Studio, at: datetime) -> Iterator[Wish]:
    rows = loads.listed(studio).filter(
        state=Load.State.OPEN, cutoff_at__gt=at, cutoff_at__lte=at + CLOSES_SOON
    )
    for load in rows.exclude(kind="test"):
        waiting = affected.left_waiting(load, at=at)
        going = picture.could_go(load, [row for mine in waiting.values() for row in mine])
        fit: dict[Member, list[Piece]] = {}
        for row in going:
            maker = row.waiting.piece.maker
            if maker is not None and row.refused is None and row.fits != "does_not_fit":
                fit.setdefault(maker, []).append(row.waiting.piece)
        for maker, pieces in fit.items():
            title = f"{load.number} closes at {_clock(load.cutoff_at, studio)}"
            body = f"Ready and not on it: {marks(pieces)}. Put them on, or they wait for the next."
            due_at = load.cutoff_at - CLOSES_SOON
            yield maker, _about(CLOSING, "C", load, title, body), due_at


def _settled(studio: Studio, at: datetime) -> Iterator[Wish]:
    heard = affected.recent_events(studio, ["settled"], at)
    heard = [one for one in heard if one.load.settled_at is not None]
    inside = affected.makers_inside(one.load for one in heard)
    for one in heard:
        load, mine = one.load, inside.get(one.load.pk, {})
        waiting = affected.left_waiting(load, at=at)
        for maker in dict.fromkeys((*mine, *waiting)):
            ins, outs = mine.get(maker, []), waiting.get(maker, [])
            said = [f"In: {marks(ins)}."] if ins else ["Nothing of yours is in it."]
            if outs:
                why = outs[0].reason if outs[0].evidence.is_ok else outs[0].evidence.detail
                said.append(f"Out: {marks([row.piece for row in outs])}. {why}")
            title = f"{load.number} is settled, {_day(load.starts_at, studio)}"
            yield maker, _about(SETTLED, "C", load, title, " ".join(said)), one.entry.written_at


def _called_off(studio: Studio, at: datetime) -> Iterator[Wish]:
    rows = Reminder.objects.filter(studio=studio, cause=CALLED_OFF)
    told = set(rows.values_list("object_id", "person_id"))
    for one, maker, pieces in _makers(affected.recent_events(studio, ["called_off"], at)):
        if (one.load.pk, maker.pk) in told:
            continue  # each is told once, and a slot takes long to find
        then = next_slot(one.load, pieces, at=at).words
        title = f"{one.load.number} is called off"
        body = f"{one.reason.rstrip('.')}. {marks(pieces)}: back where they were. {then}"
        yield maker, _about(CALLED_OFF, "B", one.load, title, body), one.entry.written_at


def _moved(studio: Studio, at: datetime) -> Iterator[Wish]:
    moved = affected.recently_moved(studio, at)
    turns = {
        one.entry.pk: sum(o.load == one.load for o in moved[:n]) for n, one in enumerate(moved)
    }
    for one, maker, pieces in _makers(moved):
        load = one.load
        if load.is_over:
            continue
        title = f"{load.number} is now {_day(load.starts_at, studio)} in {load.kiln}"
        body = f"It closes at {_clock(load.cutoff_at, studio)}. Yours in it: {marks(pieces)}."
        about = _about(MOVED, "B", load, title, body)
        yield maker, about, one.entry.written_at, turns[one.entry.pk]


def _unplanned(studio: Studio, at: datetime) -> Iterator[Wish]:
    """Tell those with ware in the next loads of a kiln that somebody fired without a slot."""
    heard = affected.recently_unplanned(studio, at)
    after = affected.next_in_kiln([one.load for one in heard])
    inside = affected.makers_inside(after.values())
    for one in heard:
        following = after.get(one.load.pk)
        if following is None:
            continue
        title = f"{one.load.number} was fired in {one.load.kiln} without a slot"
        for maker, pieces in inside.get(following.pk, {}).items():
            body = (
                f"Yours in {following.number}, {_day(following.starts_at, studio)}: "
                f"{marks(pieces)}. It keeps its slot; look whether the kiln is cold by then."
            )
            yield maker, _about(UNPLANNED, "C", one.load, title, body), one.entry.written_at


def _stopped(studio: Studio, at: datetime) -> Iterator[Wish]:
    """Tell makers once a day until somebody decides; technicians at once, whatever the hour."""
    rows = list(loads.listed(studio).filter(state=Load.State.STOPPED))
    inside = affected.makers_inside(rows)
    for load in rows:
        if load.stopped_at is None or at - load.stopped_at > 30 * DAY:
            continue
        title = f"{load.number} went out in {load.kiln}"
        decide = "Look at the cones, then decide: light it again, fire it anew, or accept it."
        due_at = load.stopped_at + ((at - load.stopped_at) // DAY) * DAY
        people = [*([load.watcher] if load.watcher else []), *technicians(studio)]
        for person in dict.fromkeys(people):
            yield person, _about(STOPPED, "A", load, title, decide), load.stopped_at
        for maker, pieces in inside.get(load.pk, {}).items():
            if maker not in people:
                body = f"Nothing has moved on. Yours in it: {marks(pieces)}."
                yield maker, _about(STOPPED, "B", load, title, body), due_at


def _out(studio: Studio, at: datetime) -> Iterator[Wish]:
    for one, maker, pieces in _makers(affected.recent_events(studio, ["unloaded"], at)):
        places: dict[str, list[Piece]] = {}
        for piece in pieces:
            places.setdefault(piece.place.name if piece.place else "", []).append(piece)
        said = [f"{marks(rows)}: {name or 'place not said'}." for name, rows in places.items()]
        broken = [piece for piece in pieces if piece.is_damaged]
        said += [f"Damaged: {marks(broken)}."] if broken else []
        title = f"Your ware of {one.load.number} is out"
        yield maker, _about(OUT, "C", one.load, title, " ".join(said)), one.entry.written_at


def _needs_kiln(studio: Studio, at: datetime) -> Iterator[Wish]:
    rows = loads.listed(studio).filter(
        state__in=loads.COMING, kiln__is_out_of_use=True, starts_at__gt=at
    )
    for load in rows:
        since = load.kiln.out_of_use_since or at
        title = f"{load.number} needs a kiln"
        body = f"{load.kiln.number} is out of use: {load.kiln.out_of_use_reason}. Nothing is lost."
        for person in technicians(studio):
            yield person, _about(NEEDS_KILN, "B", load, title, body), since


def _makers(heard: list[Heard]) -> Iterator[tuple[Heard, Member, list[Piece]]]:
    inside = affected.makers_inside(one.load for one in heard)
    for one in heard:
        for maker, pieces in inside.get(one.load.pk, {}).items():
            yield one, maker, pieces


def _again(studio: Studio, cause: str, after: tuple[timedelta, ...], at: datetime) -> None:
    """Tell once more, by the next round, what nobody has answered."""
    first = Reminder.objects.filter(
        studio=studio, cause=cause, round=0, state=Reminder.State.SENT
    ).select_related("person__studio")
    for row in first:
        due = [number for number, wait in enumerate(after, 1) if row.due_at + wait <= at]
        if not due:
            continue
        about = About(
            cause=cause,
            grade=row.grade,  # type: ignore[arg-type]  # one of A to D
            kind=row.object_kind,
            object_id=row.object_id,
            mark=row.object_mark,
            title=row.title,
            body=row.body,
            link=row.link,
        )
        reminders.set_for(
            studio=studio,
            person=row.person,
            about=about,
            due_at=row.due_at + after[due[-1] - 1],
            at=at,
            round=due[-1],
        )


def _take_back(studio: Studio, at: datetime) -> None:
    """Withdraw what is no longer so: reopened, decided, in another kiln, closed."""
    rows = Reminder.objects.filter(
        studio=studio,
        cause__in=[CLOSING, SETTLED, STOPPED, NEEDS_KILN],
        state__in=reminders.OPEN,
    )
    pending: list[tuple[str, UUID]] = list(rows.values_list("cause", "object_id").distinct())
    by_id = {
        load.pk: load for load in loads.listed(studio).filter(pk__in={pk for _, pk in pending})
    }
    for cause, pk in pending:
        load = by_id.get(pk)
        if load is None or not _still(cause, load, at):
            reminders.withdraw(studio=studio, object_id=pk, causes=[cause])


def _still(cause: str, load: Load, at: datetime) -> bool:
    match cause:
        case "load_closing":
            return load.state == Load.State.OPEN and load.cutoff_at > at
        case "load_settled":
            return load.settled_at is not None and load.state != Load.State.CALLED_OFF
        case "load_stopped":
            return load.state == Load.State.STOPPED
        case _:
            return load.kiln.is_out_of_use and load.state in loads.COMING


def _about(cause: str, grade: Grade, load: Load, title: str, body: str) -> About:
    return About(
        cause=cause,
        grade=grade,
        kind="load",
        object_id=load.pk,
        mark=load.number,
        title=f"{title.rstrip('.')}.",
        body=body,
        link=f"/loads/{load.pk}",
    )


def _clock(moment: datetime, studio: Studio) -> str:
    return f"{moment.astimezone(ZoneInfo(studio.zone)):%a %H:%M}"


def _day(moment: datetime, studio: Studio) -> str:
    local = moment.astimezone(ZoneInfo(studio.zone))
    return f"{local:%a} {local.day} {local:%b}, {local:%H:%M}"
