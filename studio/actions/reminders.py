"""Reminders: set once however often they are set, withdrawn when done, answered by a person.

Apps above set them from their sweeps; nothing is ever addressed to a client here.
"""

from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime
from typing import Final, Literal
from uuid import UUID
from zoneinfo import ZoneInfo

from django.db import transaction
from django.db.models import Q

from studio.actions import journal
from studio.domain import telling
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, Member, Reminder, Studio
from studio.queries import reminders as queries

State = Reminder.State
Answer = Literal["done", "snooze", "let_go"]

OPEN: Final = (State.DUE, State.SENT, State.SNOOZED)


class AnsweredAlready(Conflict):
    code = "answered-already"
    title = "That has been answered already."


class SnoozedEnough(Conflict):
    code = "snoozed-enough"
    title = "That cannot be put off any more."


class NotLater(Unworkable):
    code = "not-later"
    title = "Put it off to a later time."


@dataclass(frozen=True, slots=True)
class About:
    """What a reminder is about: `cause` and the thing name it, the rest is what is said.

    `title` says what and where, `body` by when and the one act, `link` the path of the screen.
    """

    cause: str
    grade: telling.Grade
    kind: str
    object_id: UUID
    mark: str
    title: str
    body: str = ""
    link: str = ""


@transaction.atomic
def set_for(
    *,
    studio: Studio,
    person: Member,
    about: About,
    due_at: datetime,
    at: datetime,
    round: int = 0,
    heard_at: datetime | None = None,
) -> Reminder | None:
    """Set a reminder; the same cause, thing, person, day and round is the same reminder.

    While untold it takes on the newer words and time. Whoever is away is stood in for. `heard_at`
    is when the act behind it was heard: what was past by then is not worth telling (None is
    returned, as for somebody who left). Class A has one row a day, which is told again by a later
    `round`, and by a later `due_at` once it was answered.
    """
    if person.is_clockwork or (heard_at is not None and due_at < heard_at):
        return None
    day = due_at.astimezone(ZoneInfo(studio.zone)).date()
    person = queries.stands_in_for(person, day)
    if person.left_at is not None:
        return None
    said = {
        "grade": about.grade,
        "object_kind": about.kind,
        "object_mark": about.mark[:60],
        "title": about.title[:200],
        "body": about.body[:500],
        "link": about.link[:200],
    }
    same_thing = Reminder.objects.filter(
        studio=studio, cause=about.cause, object_id=about.object_id, person=person
    )
    if about.grade == "A":
        live = same_thing.filter(Q(state__in=OPEN) | Q(due_date=day)).select_for_update()
        row = live.order_by("-updated_at").first()
        if row is not None:
            return _tell_again(row, said, due_at=due_at, at=at, round=round)
    same_thing.filter(state=State.DUE, round=round).exclude(due_date=day).update(
        state=State.WITHDRAWN
    )
    reminder, is_new = Reminder.objects.get_or_create(
        studio=studio,
        cause=about.cause,
        object_id=about.object_id,
        person=person,
        due_date=day,
        round=round,
        defaults={**said, "due_at": due_at, "updated_at": at},
    )
    return reminder if is_new else _freshen(reminder, said, due_at=due_at, at=at)


@transaction.atomic
def withdraw(*, studio: Studio, object_id: UUID, causes: list[str] | None = None) -> int:
    """Take back what nobody need be told any more, since somebody did it; return how many."""
    pending = Reminder.objects.filter(studio=studio, object_id=object_id, state__in=OPEN)
    if causes is not None:
        pending = pending.filter(cause__in=causes)
    return pending.update(state=State.WITHDRAWN)


def withdraw_all_but(
    *, studio: Studio, causes: Collection[str], still: Collection[tuple[str, UUID]]
) -> None:
    """Take back what a sweep no longer asks for.

    `still` holds the (cause, thing) that it does ask for, of the `causes` that are its own.
    """
    pending = Reminder.objects.filter(studio=studio, cause__in=causes, state__in=OPEN)
    for cause, object_id in set(pending.values_list("cause", "object_id")) - set(still):
        withdraw(studio=studio, object_id=object_id, causes=[cause])


@transaction.atomic
def answer(
    *, act: Act, reminder: Reminder, answer: Answer, until: datetime | None = None
) -> Reminder:
    """Answer a reminder: done, put off until later, or let go.

    Done and let go hold for everybody who was told of the same thing for the same cause. Raises
    `AnsweredAlready`, `SnoozedEnough` and `NotLater`.
    """
    reminder = Reminder.objects.select_for_update().get(pk=reminder.pk)
    if reminder.state not in OPEN:
        raise AnsweredAlready(f"It is {_words(reminder)}.", state=reminder.state)
    if answer == "snooze":
        _snooze(act, reminder, until)
    else:
        reminder.state = State.DONE if answer == "done" else State.LET_GO
        Reminder.objects.filter(
            studio=act.studio,
            cause=reminder.cause,
            object_id=reminder.object_id,
            state__in=OPEN,
        ).exclude(pk=reminder.pk).update(state=State.WITHDRAWN)
    reminder.answered_by, reminder.answered_at = act.member, act.happened_at
    reminder.save()
    journal.write(
        act=act,
        verb="answered_reminder",
        subjects=[("reminder", reminder.pk), (reminder.object_kind, reminder.object_id)],
        facts={"cause": reminder.cause, "answer": answer, "until": reminder.snoozed_until},
    )
    return reminder


def asks_to_let_go(reminder: Reminder) -> bool:
    """Say whether it was put off so often that the person is asked to let it go."""
    return reminder.grade != "A" and reminder.snoozes >= telling.LET_GO_ASKED_AT


def _snooze(act: Act, reminder: Reminder, until: datetime | None) -> None:
    if until is None or until <= act.happened_at:
        raise NotLater("Say until when.", pointer="#/until")
    if reminder.grade == "A":
        if reminder.snoozes >= telling.A_SNOOZES_MOST:
            raise SnoozedEnough("Go and look, or ring somebody who can.")
        until = min(until, act.happened_at + telling.A_SNOOZE_MOST)
    reminder.state = State.SNOOZED
    reminder.snoozes += 1
    reminder.snoozed_until = until


def _freshen(
    reminder: Reminder, said: dict[str, str], *, due_at: datetime, at: datetime
) -> Reminder:
    """Take on newer words while untold; what was withdrawn untold is due again."""
    is_back = reminder.state == State.WITHDRAWN and not reminder.deliveries.exists()
    if is_back:
        reminder.state, reminder.updated_at = State.DUE, at
    if not is_back and reminder.state != State.DUE:
        return reminder
    new = {**said, "due_at": due_at}
    if is_back or any(getattr(reminder, name) != value for name, value in new.items()):
        for name, value in new.items():
            setattr(reminder, name, value)
        reminder.save()
    return reminder


def _tell_again(
    row: Reminder, said: dict[str, str], *, due_at: datetime, at: datetime, round: int
) -> Reminder:
    if row.state in OPEN:
        is_news = round > row.round
    else:
        is_news = due_at > max(row.due_at, row.answered_at or row.due_at)
    if not is_news:
        return row
    if row.state not in OPEN:
        row.snoozes = 0
    for name, value in said.items():
        setattr(row, name, value)
    row.state, row.round, row.due_at, row.updated_at = State.DUE, round, due_at, at
    row.snoozed_until = None
    row.save()
    return row


def _words(reminder: Reminder) -> str:
    return reminder.get_state_display().lower().replace("_", " ")
