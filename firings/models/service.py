"""What was done to kilns: the book that a technician keeps of each."""

from django.db import models

from .kilns import FiringFact, Kiln


class KilnService(FiringFact):
    """One thing done to a kiln, or found on it.

    `over_new_fraction` is by how much the elements' resistance lies over that of new ones;
    `shelf_count` how many whole shelves were counted.
    """

    class Kind(models.TextChoices):
        ELEMENTS = "elements"
        OHMS = "ohms"
        SENSOR = "sensor"
        VENT = "vent"
        RELAY = "relay"
        SHELVES = "shelves"
        NOTE = "note"

    kiln = models.ForeignKey(Kiln, on_delete=models.PROTECT, related_name="services")
    kind = models.CharField(max_length=8, choices=Kind)
    over_new_fraction = models.FloatField(null=True)
    shelf_count = models.PositiveSmallIntegerField(null=True)
    words = models.CharField(max_length=200, blank=True)

    class Meta:
        indexes = [models.Index(fields=["kiln", "happened_at"], name="kiln_service_by_time")]
