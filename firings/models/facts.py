"""What happened to loads: rows that are never changed."""

from django.db import models

from pieces.models import Piece
from studio.models import Place

from .kilns import FiringFact
from .loads import Load
from .programmes import FiringKind


class LoadEvent(FiringFact):
    """A load was settled, lit, opened …; `results` goes from placement id to how it came out."""

    class Kind(models.TextChoices):
        SETTLED = "settled"
        REOPENED = "reopened"
        LOADING = "loading"
        STARTED = "started"
        STOPPED = "stopped"
        RESUMED = "resumed"
        ENDED = "ended"
        OPENED = "opened"
        UNLOADED = "unloaded"
        CALLED_OFF = "called_off"

    load = models.ForeignKey(Load, on_delete=models.PROTECT, related_name="events")
    kind = models.CharField(max_length=10, choices=Kind)
    celsius = models.FloatField(null=True)
    outcome = models.CharField(max_length=10, blank=True)
    reason = models.CharField(max_length=200, blank=True)
    results = models.JSONField(default=dict)
    place = models.ForeignKey(Place, null=True, on_delete=models.PROTECT, related_name="+")
    is_catching_up = models.BooleanField(default=False)

    class Meta:
        indexes = [models.Index(fields=["load", "happened_at"], name="load_event_by_time")]


class KilnReading(FiringFact):
    """What a kiln showed at `happened_at`. Only what was taken, or was over the top, is used."""

    class Use(models.TextChoices):
        TAKEN = "taken"
        ASKED = "asked"
        OVER_TOP = "over_top"
        LEFT_OUT = "left_out"

    load = models.ForeignKey(Load, on_delete=models.PROTECT, related_name="readings")
    reading_c = models.FloatField()
    set_c = models.FloatField(null=True)
    words = models.CharField(max_length=200, blank=True)
    use = models.CharField(max_length=12, choices=Use, default=Use.TAKEN)
    why = models.CharField(max_length=200, blank=True)
    instead_c = models.FloatField(null=True)

    class Meta:
        indexes = [models.Index(fields=["load", "happened_at"], name="kiln_reading_by_time")]


class WitnessCone(FiringFact):
    """How a cone stood after the firing, on which shelf; `clock_hand` as the hand of a clock."""

    class Role(models.TextChoices):
        GUIDE = "guide"
        FIRING = "firing"
        GUARD = "guard"

    load = models.ForeignKey(Load, on_delete=models.PROTECT, related_name="cones")
    level = models.PositiveSmallIntegerField(null=True)
    role = models.CharField(max_length=6, choices=Role)
    cone = models.CharField(max_length=4)
    clock_hand = models.PositiveSmallIntegerField(null=True)
    words = models.CharField(max_length=200, blank=True)


class FiringTicket(FiringFact):
    """Which cone a piece waits for, and what to mind: above all before a second firing.

    Of ware that is fired again it says what was wrong with it, and what was mended since.
    """

    class Fault(models.TextChoices):
        CRAWLED = "crawled"
        BLISTERED = "blistered"
        PINHOLED = "pinholed"
        CRAZED = "crazed"
        UNDERFIRED = "underfired"
        THIN = "thin"
        RAN = "ran"
        COLOUR = "colour"
        OTHER = "other"

    class Mended(models.TextChoices):
        GROUND = "ground"
        WASHED = "washed"
        FILLED = "filled"
        GLAZED_AGAIN = "glazed_again"
        GLAZED_THICKER = "glazed_thicker"
        NOTHING = "nothing"

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="firing_tickets")
    kind = models.CharField(max_length=6, choices=FiringKind)
    cone = models.CharField(max_length=4)
    words = models.CharField(max_length=200, blank=True)
    fault = models.CharField(max_length=10, choices=Fault, blank=True)
    mended = models.JSONField(default=list)

    class Meta:
        indexes = [models.Index(fields=["piece", "happened_at"], name="ticket_by_time")]


class QueueTurn(FiringFact):
    """Somebody set the rule of the queue aside for a piece, and said why for all to read."""

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="queue_turns")
    kind = models.CharField(max_length=6, choices=FiringKind)
    reason = models.CharField(max_length=200)
