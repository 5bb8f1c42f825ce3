"""How a kiln is driven: segments of so many degrees an hour, to a cone."""

from django.db import models

from studio.models import StudioOwned


class FiringKind(models.TextChoices):
    """What a firing is for."""

    BISQUE = "bisque"
    GLAZE = "glaze"
    TEST = "test"


class Programme(StudioOwned):
    """A named way to fire."""

    name = models.CharField(max_length=60)
    kind = models.CharField(max_length=6, choices=FiringKind)
    cone = models.CharField(max_length=4)
    top_c = models.FloatField()
    revision = models.PositiveIntegerField(default=1)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "name"], name="programme_once")]

    def __str__(self) -> str:
        return self.name


class Segment(StudioOwned):
    """One leg of a programme; without a rate the kiln goes as fast as it can."""

    programme = models.ForeignKey(Programme, on_delete=models.PROTECT, related_name="segments")
    order = models.PositiveSmallIntegerField()
    to_c = models.FloatField()
    rate_c_per_h = models.FloatField(null=True)
    hold_min = models.PositiveIntegerField(default=0)

    class Meta:
        ordering = ["order"]
        constraints = [models.UniqueConstraint(fields=["programme", "order"], name="segment_once")]
