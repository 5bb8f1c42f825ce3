"""Kilns with their furniture: what they hold, how hot they go, whether they may be used."""

from typing import ClassVar

from django.db import models

from studio.models import Fact, FactQuerySet, Place, StudioOwned


class FiringFact(Fact):
    """Something that happened to a kiln, to a load, or to a piece for the sake of its firing."""

    objects: ClassVar = FactQuerySet.as_manager()

    class Meta:
        abstract = True


class Kiln(StudioOwned):
    """One kiln, with the place that ware in it stands at.

    What was fired before Natch came is taken over in the `_before` figures. Only the fold of its
    events writes `is_out_of_use` and what goes with it.
    """

    class Kind(models.TextChoices):
        FRONT = "front"
        TOP = "top"

    class Chamber(models.TextChoices):
        RECT = "rect"
        ROUND = "round"

    number = models.CharField(max_length=8)
    name = models.CharField(max_length=60)
    kind = models.CharField(max_length=5, choices=Kind)
    chamber = models.CharField(max_length=5, choices=Chamber)
    width_mm = models.FloatField(null=True)
    depth_mm = models.FloatField(null=True)
    diameter_mm = models.FloatField(null=True)
    height_mm = models.FloatField()
    top_c = models.FloatField()
    place = models.OneToOneField(Place, on_delete=models.PROTECT, related_name="kiln")
    elements_changed_on = models.DateField(null=True)
    firings_before = models.PositiveIntegerField(default=0)
    hot_hours_before = models.FloatField(default=0.0)
    sensor_firings_before = models.PositiveIntegerField(default=0)
    cooling_k_per_h = models.FloatField(null=True)
    remarks = models.CharField(max_length=300, blank=True)
    is_out_of_use = models.BooleanField(default=False)
    out_of_use_reason = models.CharField(max_length=200, blank=True)
    out_of_use_since = models.DateTimeField(null=True)
    revision = models.PositiveIntegerField(default=1)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "number"], name="kiln_once")]

    def __str__(self) -> str:
        return f"{self.number} {self.name}"

    @property
    def is_round(self) -> bool:
        return self.chamber == self.Chamber.ROUND


class Shelf(StudioOwned):
    """Some alike shelves of a kiln."""

    kiln = models.ForeignKey(Kiln, on_delete=models.PROTECT, related_name="shelves")
    shape = models.CharField(max_length=5, choices=Kiln.Chamber)
    width_mm = models.FloatField(null=True)
    depth_mm = models.FloatField(null=True)
    diameter_mm = models.FloatField(null=True)
    thickness_mm = models.FloatField()
    count = models.PositiveSmallIntegerField()


class Post(StudioOwned):
    """Some alike posts of a kiln; those that stand inside the edge cost a place."""

    kiln = models.ForeignKey(Kiln, on_delete=models.PROTECT, related_name="posts")
    height_mm = models.FloatField()
    count = models.PositiveSmallIntegerField()
    footprint_mm = models.FloatField()
    stands_inside = models.BooleanField(default=False)


class KilnEvent(FiringFact):
    """A kiln was taken out of use, or is in use again."""

    class Kind(models.TextChoices):
        OUT_OF_USE = "out_of_use"
        IN_USE = "in_use"

    kiln = models.ForeignKey(Kiln, on_delete=models.PROTECT, related_name="events")
    kind = models.CharField(max_length=10, choices=Kind)
    reason = models.CharField(max_length=200, blank=True)
