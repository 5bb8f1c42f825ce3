"""What people decided about loads: who pays what."""

from django.db import models

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
