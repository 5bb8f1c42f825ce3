"""The form of a piece before any piece exists: designs, their parts, their masters."""

from django.db import models

from studio.models import ClayBody, Fact, StudioOwned


class Design(StudioOwned):
    """What is made: a form with one or more clay parts.

    `inside_depth_mm` and `capacity_ml` are as finished; with `contact` they say which limits of
    lead and cadmium a form for food falls under.
    """

    class Contact(models.TextChoices):
        TABLE = "table"
        COOKING = "cooking"
        STORAGE = "storage"
        LID = "lid"

    name = models.CharField(max_length=80)
    noun = models.CharField(max_length=24)
    series = models.CharField(max_length=4)
    body = models.ForeignKey(ClayBody, null=True, on_delete=models.PROTECT, related_name="+")
    uses_moulds = models.BooleanField(default=True)
    footprint_x_mm = models.FloatField(null=True)
    footprint_y_mm = models.FloatField(null=True)
    height_mm = models.FloatField(null=True)
    is_round = models.BooleanField(default=False)
    inside_depth_mm = models.FloatField(null=True)
    capacity_ml = models.FloatField(null=True)
    contact = models.CharField(max_length=8, choices=Contact, default=Contact.TABLE)
    revision = models.PositiveIntegerField(default=1)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "name"], name="design_once")]

    def __str__(self) -> str:
        return self.name


class DesignPart(StudioOwned):
    """One clay element of a design, with its sections as pressed."""

    class Shape(models.TextChoices):
        FLAT = "flat"
        ROD = "rod"
        LUMP = "lump"

    class Method(models.TextChoices):
        PRESSED = "pressed"
        THROWN = "thrown"
        COILED = "coiled"
        SPRIGGED = "sprigged"
        CARVED = "carved"

    design = models.ForeignKey(Design, on_delete=models.PROTECT, related_name="parts")
    role = models.CharField(max_length=24)
    count = models.PositiveSmallIntegerField(default=1)
    order = models.PositiveSmallIntegerField(default=0)
    is_required = models.BooleanField(default=True)
    shape = models.CharField(max_length=6, choices=Shape, default=Shape.FLAT)
    method = models.CharField(max_length=10, choices=Method, default=Method.PRESSED)
    thickest_mm = models.FloatField()
    thinnest_mm = models.FloatField()
    footprint_x_mm = models.FloatField(null=True)
    footprint_y_mm = models.FloatField(null=True)
    height_mm = models.FloatField(null=True)
    clay_g = models.FloatField(null=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["design", "role"], name="role_once_a_design")
        ]


class Master(StudioOwned):
    """The enlarged original model of a design, or of one part of it."""

    label = models.CharField(max_length=20)
    design = models.ForeignKey(Design, on_delete=models.PROTECT, related_name="masters")
    part = models.ForeignKey(DesignPart, null=True, on_delete=models.PROTECT, related_name="+")
    is_ready = models.BooleanField(default=False)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "label"], name="master_once")]


class MasterEvent(Fact):
    """A master became ready, was mended or is lost."""

    master = models.ForeignKey(Master, on_delete=models.PROTECT, related_name="events")
    is_ready = models.BooleanField()
    reason = models.CharField(max_length=200, blank=True)
