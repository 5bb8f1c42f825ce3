"""Telling people: one message for each group of reminders, sent once and marked as sent.

The row is made and leased before anything is sent. A worker that dies between sending and marking
leaves a lease that ends; then the message is sent once more, under the same Message-ID, so that a
mail program can tell that it is the same. Nothing else is ever sent twice.
"""

import smtplib
from collections import defaultdict
from collections.abc import Callable
from datetime import datetime, timedelta
from typing import Final

from django.conf import settings
from django.core.mail import EmailMessage
from django.db import transaction
from django.db.models import F, Q

from studio.domain import messages, telling
from studio.models import Delivery, Member, Reminder
from studio.queries import reminders as queries

State = Reminder.State

LEASE: Final = timedelta(minutes=5)
TRIES_MOST: Final = 10
LATER_MOST: Final = timedelta(hours=1)
EMAIL: Final = "email"
IN_APP: Final = "app"


def send_due(*, at: datetime, clock: Callable[[], datetime] | None = None) -> int:
    """Tell everybody what they are to be told at the instant `at`; return how many were told.

    `clock` gives the instant at which a message is marked as sent; `at` where there is none.
    """
    group(at=at)
    waiting = (
        Delivery.objects.filter(_is_free(at), sent_at=None, channel=EMAIL, tries__lt=TRIES_MOST)
        .select_related("person__studio__settings", "studio")
        .order_by("made_at")
    )
    return sum(send(delivery, at=at, clock=clock) for delivery in waiting)


def group(*, at: datetime) -> None:
    """Make a delivery of each group of reminders that may be told now; twice is harmless."""
    by_person: defaultdict[Member, list[Reminder]] = defaultdict(list)
    for reminder in queries.to_tell(at):
        by_person[reminder.person].append(reminder)
    for person, rows in by_person.items():
        ear = queries.ear_of(person)
        found = telling.messages([queries.as_due(row) for row in rows], ear=ear, at=at)
        for key, ids in found.items():
            _make(person, key, [row for row in rows if row.pk in set(ids)], at)


def send(delivery: Delivery, *, at: datetime, clock: Callable[[], datetime] | None = None) -> bool:
    """Send one delivery that is free and still worth sending; return whether it went."""
    person = delivery.person
    if not _is_urgent(delivery) and queries.ear_of(person).is_quiet(at):
        return False
    taken = Delivery.objects.filter(_is_free(at), pk=delivery.pk, sent_at=None).update(
        lease_until=at + LEASE, tries=F("tries") + 1
    )
    if not taken:
        return False
    told = list(delivery.reminders.filter(state=State.DUE).order_by("due_at", "id"))
    if not told or person.left_at is not None:
        _give_up(delivery, "There was nothing left to tell.")
        return False
    try:
        _email(delivery, told).send()
    except (smtplib.SMTPException, OSError) as error:
        _try_later(delivery, at, str(error))
        return False
    _mark(delivery, told, clock() if clock is not None else at)
    return True


@transaction.atomic
def _make(person: Member, key: str, rows: list[Reminder], at: datetime) -> None:
    """Make the delivery of a group unless it is there; who has no e-mail is told in the app."""
    channel = EMAIL if person.wants_email and person.email else IN_APP
    delivery, is_new = Delivery.objects.get_or_create(
        studio=person.studio,
        key=f"{person.pk} {key}",
        channel=channel,
        defaults={"person": person, "made_at": at},
    )
    if not is_new:
        return
    delivery.reminders.set(rows)
    # What was put off and is due again is told like anything that is due.
    delivery.reminders.filter(state=State.SNOOZED).update(state=State.DUE)
    if channel == IN_APP:
        _mark(delivery, rows, at)


def _email(delivery: Delivery, told: list[Reminder]) -> EmailMessage:
    message = messages.compose(
        [messages.Item(title=row.title, body=row.body, link=row.link) for row in told],
        studio_name=delivery.studio.name,
        address=settings.NATCH_ADDRESS,
        is_urgent=_is_urgent(delivery),
    )
    return EmailMessage(
        subject=message.subject,
        body=message.text,
        to=[delivery.person.email],
        headers={"Message-ID": f"<{delivery.pk}@natch>", "Auto-Submitted": "auto-generated"},
    )


@transaction.atomic
def _mark(delivery: Delivery, told: list[Reminder], at: datetime) -> None:
    Delivery.objects.filter(pk=delivery.pk).update(sent_at=at, lease_until=None, failure="")
    ids = [row.pk for row in told]
    Reminder.objects.filter(pk__in=ids, state=State.DUE).update(state=State.SENT)


def _try_later(delivery: Delivery, at: datetime, failure: str) -> None:
    tries = Delivery.objects.values_list("tries", flat=True).get(pk=delivery.pk)
    wait = min(timedelta(minutes=2**tries), LATER_MOST)
    Delivery.objects.filter(pk=delivery.pk).update(lease_until=at + wait, failure=failure[:300])


def _give_up(delivery: Delivery, why: str) -> None:
    Delivery.objects.filter(pk=delivery.pk).update(tries=TRIES_MOST, lease_until=None, failure=why)


def _is_free(at: datetime) -> Q:
    return Q(lease_until=None) | Q(lease_until__lt=at)


def _is_urgent(delivery: Delivery) -> bool:
    return telling.may_break_quiet(delivery.key.partition(" ")[2])
