"""Places, as a tree and one by one."""

from django.db.models import QuerySet

from studio.models import Place, Studio


def all_of(studio: Studio) -> "QuerySet[Place]":
    """Return the places of a studio in the order in which they are shown."""
    return Place.objects.filter(studio=studio).order_by("order", "name")
