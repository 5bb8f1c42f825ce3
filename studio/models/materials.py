"""Clays and glazes: what a wall is made of, what covers it, and where it came from."""

from django.db import models

from .tenancy import Member, StudioOwned


class ClayBody(StudioOwned):
    """A clay mixture with known behaviour.

    The drying figures are moistures on the dry basis, kg of water to a kg of dry clay.
    """

    code = models.CharField(max_length=8)
    name = models.CharField(max_length=80)
    drying_body = models.CharField(max_length=40)
    dry_shrinkage_fraction = models.FloatField(null=True)
    total_shrinkage_fraction = models.FloatField(null=True)
    top_cone = models.CharField(max_length=6, blank=True)
    caution = models.CharField(max_length=300, blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "code"], name="body_code_once")]

    def __str__(self) -> str:
        return self.code


class TestBar(StudioOwned):
    """The lengths of one bar: wet, dry, after bisque, after the glaze firing."""

    __test__ = False

    body = models.ForeignKey(ClayBody, on_delete=models.PROTECT, related_name="bars")
    made_by = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    measured_at = models.DateTimeField()
    wet_mm = models.FloatField()
    dry_mm = models.FloatField(null=True)
    bisque_mm = models.FloatField(null=True)
    fired_mm = models.FloatField(null=True)


class ColourBatch(StudioOwned):
    """One mixing of a coloured clay."""

    label = models.CharField(max_length=20)
    body = models.ForeignKey(ClayBody, on_delete=models.PROTECT, related_name="batches")
    mixed_on = models.DateField(null=True)
    stain_g = models.FloatField(null=True)
    clay_g = models.FloatField(null=True)
    caution = models.CharField(max_length=300, blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "label"], name="batch_label_once")]


class GlazeBatch(StudioOwned):
    """One mixing of a glaze: what a report of lead and cadmium is about.

    `density_g_per_l` is of the slop as it was dipped; `cone` is what it is meant to be fired to.
    """

    label = models.CharField(max_length=20)
    name = models.CharField(max_length=80)
    mixed_on = models.DateField(null=True)
    mixed_by = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="+")
    density_g_per_l = models.FloatField(null=True)
    cone = models.CharField(max_length=4, blank=True)
    caution = models.CharField(max_length=300, blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "label"], name="glaze_label_once")]


class SlabBlock(StudioOwned):
    """A stack of coloured clays from which slabs are cut."""

    label = models.CharField(max_length=20)
    laid_on = models.DateField(null=True)
    bodies = models.ManyToManyField(ClayBody, related_name="blocks")
    batches = models.ManyToManyField(ColourBatch, related_name="blocks", blank=True)
    used_up_at = models.DateTimeField(null=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "label"], name="block_label_once")]
