"""On Mondays the technicians hear which kilns want looking at; after a fortnight the owners too."""

from collections.abc import Iterator
from datetime import datetime, time, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from firings.models import Kiln
from firings.queries.kiln_health import Health, health_of
from studio.actions import reminders
from studio.actions.reminders import About
from studio.domain.hours import instant
from studio.models import Member, Reminder, Studio

from . import telling

HEALTH: Final = "kiln_health"
TOLD_AT: Final = time(9, 0)
TOLD_FOR: Final = timedelta(hours=12)
"""A sweep later than this waits for the next Monday; common sense, no source."""

IGNORED_AFTER: Final = timedelta(days=14)


def tell_technicians(*, studio: Studio, at: datetime) -> int:
    """Set what technicians are to hear of kilns; return for how many kilns."""
    due_at = _monday(studio, at)
    kilns = list(Kiln.objects.filter(studio=studio).order_by("number"))
    health = health_of(kilns)
    for kiln in kilns:
        if not health[kiln.pk].notes:
            reminders.withdraw(studio=studio, object_id=kiln.pk, causes=[HEALTH])
    if not due_at <= at <= due_at + TOLD_FOR:
        return 0
    wanting = [kiln for kiln in kilns if health[kiln.pk].notes]
    for kiln in wanting:
        for person in dict.fromkeys(_people(studio, kiln, at)):
            about = _about(kiln, health[kiln.pk])
            reminders.set_for(studio=studio, person=person, about=about, due_at=due_at, at=at)
    return len(wanting)


def _monday(studio: Studio, at: datetime) -> datetime:
    zone = ZoneInfo(studio.zone)
    today = at.astimezone(zone).date()
    return instant(today - timedelta(days=today.weekday()), TOLD_AT, zone)


def _people(studio: Studio, kiln: Kiln, at: datetime) -> Iterator[Member]:
    yield from telling.technicians(studio)
    is_ignored = Reminder.objects.filter(
        studio=studio,
        cause=HEALTH,
        object_id=kiln.pk,
        state=Reminder.State.SENT,
        due_at__lte=at - IGNORED_AFTER,
    ).exists()
    if is_ignored:
        yield from telling.owners(studio)


def _about(kiln: Kiln, health: Health) -> About:
    return About(
        cause=HEALTH,
        grade="D",
        kind="kiln",
        object_id=kiln.pk,
        mark=kiln.number,
        title=f"{kiln.number} wants looking at.",
        body=" ".join(note.detail for note in health.notes),
        link=f"/kilns/{kiln.pk}",
    )
