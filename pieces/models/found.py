"""Ware that nobody knows, and who says it is theirs."""

from django.db import models

from studio.models import ClayBody, Fact, Member, Place, StudioOwned

from .pieces import Piece


class FoundPiece(StudioOwned):
    """Something stood somewhere without a name. Until it is given back nobody may fire it.

    `piece` is its record where there is one. From `notice_date` on the owner may let it go.
    """

    class State(models.TextChoices):
        OPEN = "open"
        RETURNED = "returned"
        DISPOSED = "disposed"

    what = models.CharField(max_length=120)
    mark_seen = models.CharField(max_length=60, blank=True)
    place = models.ForeignKey(Place, null=True, on_delete=models.PROTECT, related_name="+")
    piece = models.ForeignKey(Piece, null=True, on_delete=models.PROTECT, related_name="found_as")
    x_mm = models.FloatField(null=True)
    y_mm = models.FloatField(null=True)
    height_mm = models.FloatField(null=True)
    body = models.ForeignKey(ClayBody, null=True, on_delete=models.PROTECT, related_name="+")
    looks = models.CharField(max_length=14, blank=True)
    found_at = models.DateTimeField()
    found_by = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    notice_date = models.DateField()
    state = models.CharField(max_length=10, choices=State, default=State.OPEN, db_index=True)
    ended_at = models.DateTimeField(null=True)
    returned_to = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="+")


class Claim(Fact):
    """Somebody says that the found thing is theirs; two may say so."""

    found = models.ForeignKey(FoundPiece, on_delete=models.PROTECT, related_name="claims")
    member = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    piece = models.ForeignKey(Piece, null=True, on_delete=models.PROTECT, related_name="+")
