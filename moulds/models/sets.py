"""Plaster: a set is a label on a shelf, a casting one pouring of it, a mould part one block."""

from django.db import models

from studio.models import Member, Place, StudioOwned

from .designs import DesignPart, Master


class MouldSet(StudioOwned):
    """All plaster parts that give one clay part, under one label on a shelf.

    `release_h` is the studio's own figure: hours until the first press in the dry mould lets go.
    """

    label = models.CharField(max_length=20)
    makes = models.ForeignKey(DesignPart, on_delete=models.PROTECT, related_name="mould_sets")
    owner = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="moulds")
    place = models.ForeignKey(Place, null=True, on_delete=models.PROTECT, related_name="moulds")
    plaster_mm = models.FloatField(default=30.0)
    inspect_at_presses = models.PositiveIntegerField(null=True)
    retire_at_presses = models.PositiveIntegerField(null=True)
    is_hump = models.BooleanField(default=False)
    rest_after_presses = models.PositiveSmallIntegerField(default=5)
    release_h = models.FloatField(null=True)
    revision = models.PositiveIntegerField(default=1)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "label"], name="set_label_once")]

    def __str__(self) -> str:
        return self.label

    def belongs_to(self, member: Member) -> bool:
        return self.owner is None or member.speaks_for(self.owner)


class Casting(StudioOwned):
    """One pouring. `dry_g`, `now_g` and `weighed_at` are folded from its weighings."""

    mould_set = models.ForeignKey(MouldSet, on_delete=models.PROTECT, related_name="castings")
    master = models.ForeignKey(Master, on_delete=models.PROTECT, related_name="castings")
    generation = models.PositiveSmallIntegerField()
    poured_at = models.DateTimeField(null=True)
    is_in_use = models.BooleanField(default=True)
    capacity_fraction = models.FloatField(default=0.43)
    dry_g = models.FloatField(null=True)
    now_g = models.FloatField(null=True)
    weighed_at = models.DateTimeField(null=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["master", "generation"], name="generation_once"),
            models.UniqueConstraint(
                fields=["mould_set"],
                condition=models.Q(is_in_use=True),
                name="one_casting_in_use",
            ),
        ]

    def belongs_to(self, member: Member) -> bool:
        return self.mould_set.belongs_to(member)


class MouldPart(StudioOwned):
    """One plaster block of a casting. `presses` and `state` are folded.

    `presses_before` was taken over from earlier notes on the word of `presses_before_by`.
    """

    class State(models.TextChoices):
        WHOLE = "whole"
        CHIPPED = "chipped"
        OUT_OF_USE = "out_of_use"
        MISSING = "missing"

    casting = models.ForeignKey(Casting, on_delete=models.PROTECT, related_name="parts")
    name = models.CharField(max_length=24)
    order = models.PositiveSmallIntegerField(default=0)
    state = models.CharField(max_length=10, choices=State, default=State.WHOLE)
    state_reason = models.CharField(max_length=200, blank=True)
    presses_before = models.PositiveIntegerField(default=0)
    presses_before_by = models.ForeignKey(
        Member, null=True, on_delete=models.PROTECT, related_name="+"
    )
    presses = models.PositiveIntegerField(default=0)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["casting", "name"], name="mould_part_once")]

    def belongs_to(self, member: Member) -> bool:
        return self.casting.belongs_to(member)
