"""Who is to be told of what, and what was answered."""

from collections.abc import Iterable
from datetime import date, datetime
from uuid import UUID
from zoneinfo import ZoneInfo

from django.db.models import Q, QuerySet

from studio.domain.hours import Span
from studio.domain.telling import Due, Ear
from studio.models import Away, Member, Reminder, Studio

State = Reminder.State


def mine(member: Member, state: str, at: datetime) -> "QuerySet[Reminder]":
    """Return a person's reminders that are `due`, `snoozed` or `done`."""
    is_awake = Q(state=State.SNOOZED, snoozed_until__lte=at)
    wanted = {
        "due": Q(state=State.DUE, due_at__lte=at) | Q(state=State.SENT) | is_awake,
        "snoozed": Q(state=State.SNOOZED, snoozed_until__gt=at),
        "done": Q(state__in=[State.DONE, State.LET_GO, State.WITHDRAWN]),
    }
    return Reminder.objects.filter(wanted[state], person=member)


def to_tell(at: datetime) -> "QuerySet[Reminder]":
    """Return what somebody could be told now, of every studio."""
    is_awake = Q(state=State.SNOOZED, snoozed_until__lte=at)
    return Reminder.objects.filter(
        Q(state=State.DUE, due_at__lte=at) | is_awake, person__left_at=None
    ).select_related("person__studio__settings")


def as_due(reminder: Reminder) -> Due:
    """Return the reminder as the rules of telling see it."""
    ready_at = max(reminder.due_at, reminder.updated_at)
    if reminder.snoozed_until is not None:
        ready_at = max(ready_at, reminder.snoozed_until)
    turn = f"{reminder.snoozes}.{reminder.updated_at.timestamp():.3f}"
    return Due(id=reminder.pk, grade=reminder.grade, ready_at=ready_at, turn=turn)  # type: ignore[arg-type]  # one of A to D


def ear_of(member: Member) -> Ear:
    """Return when the person listens: the studio's quiet hours and their own both hold."""
    settings = member.studio.settings
    quiet = [Span(settings.quiet_from, settings.quiet_until)]
    if member.quiet_from is not None and member.quiet_until is not None:
        quiet.append(Span(member.quiet_from, member.quiet_until))
    return Ear(zone=ZoneInfo(member.studio.zone), quiet=quiet)


def stands_in_for(member: Member, day: date) -> Member:
    """Return who is told in the person's stead on a day: the buddy of somebody away."""
    away = (
        Away.objects.filter(
            member=member,
            called_off_at=None,
            from_date__lte=day,
            until_date__gte=day,
            buddy__isnull=False,
        )
        .select_related("buddy__studio")
        .first()
    )
    return away.buddy if away is not None and away.buddy is not None else member


def known(studio: Studio, cause: str, object_ids: Iterable[UUID]) -> set[tuple[UUID, date, int]]:
    """Return (object, due date, round) of what is set already, so that a sweep can pass it over."""
    rows = Reminder.objects.filter(studio=studio, cause=cause, object_id__in=list(object_ids))
    return set(rows.values_list("object_id", "due_date", "round"))
