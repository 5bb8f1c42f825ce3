"""What a studio has decided for itself: limits, hours, units."""

from datetime import time

from django.db import models

from .tenancy import Member, Studio, StudioOwned


class FeeMeasured(models.TextChoices):
    """At which moment of the job a piece is measured for its kiln fee."""

    WET = "wet"
    DRY = "dry"
    BISQUE = "bisque"
    FIRED = "fired"


class StudioSettings(models.Model):
    """The limits and habits of one studio; every figure is a setting, not a constant."""

    export_order = 20

    studio = models.OneToOneField(
        Studio, primary_key=True, on_delete=models.PROTECT, related_name="settings"
    )
    revision = models.PositiveIntegerField(default=1)
    quiet_from = models.TimeField(default=time(20, 0))
    quiet_until = models.TimeField(default=time(7, 30))
    mould_dry_below_fraction = models.FloatField(default=0.05)
    mould_usable_below_fraction = models.FloatField(default=0.15)
    wall_limit_mm = models.FloatField(default=12.0)
    open_kiln_below_c = models.FloatField(default=100.0)
    glaze_gap_mm = models.FloatField(default=6.0)
    refire_headroom_mm = models.FloatField(default=4.0)
    bisque_may_touch = models.BooleanField(default=True)
    assumed_air_c = models.FloatField(default=15.0)
    assumed_humidity_fraction = models.FloatField(default=0.65)
    currency = models.CharField(max_length=3, default="GBP")
    bisque_fee_minor_per_l = models.PositiveIntegerField(null=True)
    glaze_fee_minor_per_l = models.PositiveIntegerField(null=True)
    fee_measured = models.CharField(max_length=6, choices=FeeMeasured, default="dry")
    found_notice_days = models.PositiveSmallIntegerField(default=30)


class OpeningHours(StudioOwned):
    """When somebody is usually in, per weekday (Monday is 0)."""

    weekday = models.PositiveSmallIntegerField()
    opens = models.TimeField()
    closes = models.TimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["studio", "weekday"], name="one_opening_a_weekday")
        ]


class ClosedDay(StudioOwned):
    """A day on which nobody is in."""

    date = models.DateField()
    why = models.CharField(max_length=120, blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "date"], name="closed_day_once")]


class Away(StudioOwned):
    """A member is away, and who minds their things."""

    member = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="away")
    from_date = models.DateField()
    until_date = models.DateField()
    buddy = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="+")
    called_off_at = models.DateTimeField(null=True)

    def belongs_to(self, member: Member) -> bool:
        return self.member_id == member.pk
