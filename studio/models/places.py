"""Rooms and shelves, and the air in them."""

from django.db import models

from .journal import JournalEntry
from .tenancy import StudioOwned


class Place(StudioOwned):
    """Somewhere a thing can stand."""

    class Kind(models.TextChoices):
        ROOM = "room"
        RACK = "rack"
        SHELF = "shelf"
        CUPBOARD = "cupboard"
        BENCH = "bench"
        KILN = "kiln"
        CRATE = "crate"
        BAT = "bat"  # of plaster: it draws water from what stands on it

    name = models.CharField(max_length=80)
    kind = models.CharField(max_length=10, choices=Kind)
    parent = models.ForeignKey("self", null=True, on_delete=models.PROTECT, related_name="inside")
    air_from = models.ForeignKey("self", null=True, on_delete=models.PROTECT, related_name="+")
    order = models.PositiveSmallIntegerField(default=0)
    # How fast the air moves there, as somebody judges it; None: as what it stands in, else still.
    air_m_s = models.FloatField(null=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "name"], name="place_name_once")]

    def __str__(self) -> str:
        return self.name


class ClimateReading(StudioOwned):
    """One look at the meter of a place: kept as given, used, left out or asked about."""

    class Use(models.TextChoices):
        USED = "used"
        LEFT_OUT = "left_out"
        ASKED = "asked"

    entry = models.ForeignKey(JournalEntry, on_delete=models.PROTECT, related_name="+")
    place = models.ForeignKey(Place, on_delete=models.PROTECT, related_name="readings")
    taken_at = models.DateTimeField()
    air_c = models.FloatField(null=True)
    humidity_fraction = models.FloatField(null=True)
    use = models.CharField(max_length=10, choices=Use, default=Use.USED)
    why = models.CharField(max_length=200, blank=True)

    class Meta:
        indexes = [models.Index(fields=["place", "taken_at"], name="reading_by_time")]
