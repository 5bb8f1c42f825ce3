"""When somebody is in: the week, and today's closing time."""

from datetime import datetime, time
from zoneinfo import ZoneInfo

from studio.domain.hours import Opening, Span
from studio.models import ClosedDay, OpeningHours, Studio, StudioSettings


def closing_at(studio: Studio, at: datetime) -> datetime:
    """Return when the last person is expected to leave on the local day of `at`.

    That is the end of the opening hours, or on closed days and where none are set the start of the
    quiet hours; once that is past, the end of the day.
    """
    zone = ZoneInfo(studio.zone)
    local = at.astimezone(zone)
    opening = None
    if not ClosedDay.objects.of(studio).filter(date=local.date()).exists():
        opening = OpeningHours.objects.of(studio).filter(weekday=local.weekday()).first()
    settings = StudioSettings.objects.get(studio=studio)
    closes = opening.closes if opening is not None else settings.quiet_from
    closing = datetime.combine(local.date(), closes, tzinfo=zone)
    if closing <= at:
        return datetime.combine(local.date(), time(23, 59, 59), tzinfo=zone)
    return closing


def opening_of(studio: Studio) -> Opening:
    """Return when somebody is usually in. Two queries."""
    week = {row.weekday: Span(row.opens, row.closes) for row in OpeningHours.objects.of(studio)}
    closed = frozenset(ClosedDay.objects.of(studio).values_list("date", flat=True))
    return Opening(week, closed)
