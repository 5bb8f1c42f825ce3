"""Wrong hands: what was refused, and acts that wait for an owner's word."""

from django.db import models

from .journal import Fact
from .tenancy import Device, Member, StudioOwned


class RefusedTry(StudioOwned):
    """Something a member tried and may not do: who, on which device, what and when; never changed.

    It holds ids and codes only: neither what was typed nor where from.
    """

    member = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    device = models.ForeignKey(Device, null=True, on_delete=models.PROTECT, related_name="+")
    code = models.CharField(max_length=60)
    needed = models.CharField(max_length=40, blank=True)
    method = models.CharField(max_length=8)
    path = models.CharField(max_length=200)
    tried_at = models.DateTimeField()

    class Meta:
        indexes = [
            models.Index(fields=["studio", "-tried_at"], name="refused_by_time"),
            models.Index(fields=["member", "-tried_at"], name="refused_by_member"),
        ]


class HeldAct(StudioOwned):
    """An act that came after its member had left or its phone was signed off; never changed.

    It happened before, so it is kept as it was sent until an owner takes it or not.
    """

    class Why(models.TextChoices):
        LEFT = "left"
        SIGNED_OFF = "signed_off"

    member = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    device = models.ForeignKey(Device, on_delete=models.PROTECT, related_name="+")
    why = models.CharField(max_length=12, choices=Why.choices)
    path = models.CharField(max_length=200)
    body = models.JSONField()
    happened_at = models.DateTimeField()
    written_at = models.DateTimeField()


class HeldAnswer(Fact):
    """An owner's word on a held act: taken into the story, or not."""

    held = models.OneToOneField(HeldAct, on_delete=models.PROTECT, related_name="answer")
    is_taken = models.BooleanField()
