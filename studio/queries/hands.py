"""What was refused, and acts that wait for an owner's word."""

from django.db.models import QuerySet

from studio.models import HeldAct, RefusedTry, Studio


def refused(studio: Studio) -> "QuerySet[RefusedTry]":
    """Return what members of the studio tried and may not do."""
    return RefusedTry.objects.filter(studio=studio).select_related("member", "device")


def held(studio: Studio) -> "QuerySet[HeldAct]":
    """Return the acts that nobody has answered yet."""
    return HeldAct.objects.filter(studio=studio, answer=None).select_related("member", "device")
