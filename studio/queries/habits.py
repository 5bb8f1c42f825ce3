"""What a studio decided for itself."""

from django.db.models import QuerySet

from studio.models import Away, ClosedDay, OpeningHours, Studio, StudioSettings


def settings(studio: Studio) -> StudioSettings:
    """Return the limits and habits of the studio."""
    return StudioSettings.objects.get(studio=studio)


def weekly(studio: Studio) -> "QuerySet[OpeningHours]":
    """Return the usual hours, Monday first."""
    return OpeningHours.objects.filter(studio=studio).order_by("weekday")


def closed_days(studio: Studio) -> "QuerySet[ClosedDay]":
    """Return the days on which nobody is in."""
    return ClosedDay.objects.filter(studio=studio).order_by("date")


def away(studio: Studio) -> "QuerySet[Away]":
    """Return who is or was away, without what was called off."""
    return Away.objects.filter(studio=studio, called_off_at=None)
