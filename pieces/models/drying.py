"""Stored drying: states of many draws, advanced as the air becomes known."""

from django.db import models

from studio.models import StudioOwned

from .pieces import Part, Piece


class Forecast(StudioOwned):
    """What the drying model says of one part; refreshed by sweeps, read by the bench.

    `key` tells the part's own story from others, `air_key` the air up to `advanced_to`,
    `looks_key` what was seen of it, `lore_key` what the studio believed; `drawn_from` is what its
    draws were taken from;
    `known_since` is when the part's present story was first reckoned: nobody is reminded of what
    was past by then.
    """

    export_order = None

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="forecasts")
    part = models.OneToOneField(Part, on_delete=models.PROTECT, related_name="forecast")
    key = models.CharField(max_length=64)
    draws = models.PositiveSmallIntegerField()
    states = models.BinaryField(null=True)
    advanced_to = models.DateTimeField(null=True)
    air_key = models.CharField(max_length=64, default="")
    looks_key = models.CharField(max_length=64, default="", blank=True)
    lore_key = models.CharField(max_length=16, default="", blank=True)
    drawn_from = models.JSONField(default=dict)
    windows = models.JSONField(default=dict)
    curve = models.JSONField(default=dict)
    covering = models.JSONField(default=dict)
    inputs = models.JSONField(default=dict)
    computed_at = models.DateTimeField(null=True)
    known_since = models.DateTimeField(null=True)
