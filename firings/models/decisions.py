"""What people decided about loads: who pays what, who goes first, which story stands."""

from django.db import models

from pieces.models import Piece

from .kilns import FiringFact
from .loads import Load


class LoadFees(FiringFact):
    """What a load costs each maker, as it was recorded; the last that stands counts.

    `cost_minor` is what was shared out, nothing where the tariff was asked. A row of `shares` holds
    member, litres as reckoned and as said, why they differ, and the money in the smallest coin.
    """

    load = models.ForeignKey(Load, on_delete=models.PROTECT, related_name="fees")
    basis = models.CharField(max_length=6)
    currency = models.CharField(max_length=3)
    cost_minor = models.PositiveIntegerField(null=True)
    per_litre_minor = models.PositiveIntegerField(null=True)
    measured = models.CharField(max_length=6)
    shares = models.JSONField(default=list)
    words = models.CharField(max_length=200, blank=True)


class LayerTurn(FiringFact):
    """An owner lets a piece go before the others on a load, against the rule, and says why."""

    load = models.ForeignKey(Load, on_delete=models.PROTECT, related_name="turns")
    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="turns")
    reason = models.CharField(max_length=200)


class LoadClashAnswer(FiringFact):
    """Which of two events of a load stands: the first answer counts.

    `left_out` names the one that did not happen, `beside` the one that told the same again.
    """

    class Choice(models.TextChoices):
        FIRST = "first"
        SECOND = "second"
        BOTH = "both"

    load = models.ForeignKey(Load, on_delete=models.PROTECT, related_name="clash_answers")
    clash_id = models.UUIDField(db_index=True)
    choice = models.CharField(max_length=6, choices=Choice)
    act_ids = models.JSONField(default=list)
    left_out = models.UUIDField(null=True)
    beside = models.UUIDField(null=True)
