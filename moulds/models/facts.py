"""What happened to moulds: rows that are never changed."""

from django.db import models

from studio.models import Fact, Member, SlabBlock, StudioOwned

from .sets import Casting, MouldPart, MouldSet


class Pressing(Fact):
    """Clay was pressed into some mould parts of a casting, `count` times over."""

    casting = models.ForeignKey(Casting, on_delete=models.PROTECT, related_name="pressings")
    mould_parts = models.ManyToManyField(MouldPart, related_name="pressings")
    count = models.PositiveSmallIntegerField(default=1)
    slab_block = models.ForeignKey(
        SlabBlock, null=True, on_delete=models.PROTECT, related_name="pressings"
    )


class MouldWeighing(Fact):
    """A casting on the scale; `is_dry` when it was known to be dry."""

    casting = models.ForeignKey(Casting, on_delete=models.PROTECT, related_name="weighings")
    mass_g = models.FloatField()
    is_dry = models.BooleanField(default=False)


class Inspection(Fact):
    """Somebody looked at the detail of a mould part."""

    class Finding(models.TextChoices):
        CRISP = "crisp"
        SOFTENING = "softening"
        WORN = "worn"
        CHIPPED = "chipped"

    mould_part = models.ForeignKey(MouldPart, on_delete=models.PROTECT, related_name="inspections")
    finding = models.CharField(max_length=10, choices=Finding)


class MouldPartEvent(Fact):
    """A mould part was chipped, taken out of use, lost, mended or found."""

    mould_part = models.ForeignKey(MouldPart, on_delete=models.PROTECT, related_name="events")
    state = models.CharField(max_length=10, choices=MouldPart.State)
    reason = models.CharField(max_length=200, blank=True)


class Booking(StudioOwned):
    """Somebody means to use a set for a while: a claim, first come first served."""

    mould_set = models.ForeignKey(MouldSet, on_delete=models.PROTECT, related_name="bookings")
    member = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    from_at = models.DateTimeField()
    until_at = models.DateTimeField()
    given_up_at = models.DateTimeField(null=True)

    def belongs_to(self, member: Member) -> bool:
        return member.speaks_for(self.member)
