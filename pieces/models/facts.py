"""What happened to pieces and their parts: rows that are never changed."""

from typing import Any, ClassVar, Self

from django.db import models

from studio.models import Fact, FactQuerySet, GlazeBatch, Place

from .clashes import ClashAnswer
from .pieces import Part, Piece


class PieceFactQuerySet(FactQuerySet):
    """Facts about pieces of one studio."""

    def agreed(self) -> Self:
        """Leave out what was taken back, and what lost when two stories were settled."""
        lost = ClashAnswer.objects.filter(
            clash__piece=models.OuterRef("piece_id"), left_out=models.OuterRef("entry_id")
        ).standing()
        return self.standing().filter(~models.Exists(lost))


class PieceFact(Fact):
    """Something that happened to one piece; each kind of fact has its own `piece`."""

    piece: Any
    piece_id: Any

    objects: ClassVar = PieceFactQuerySet.as_manager()

    class Meta:
        abstract = True


class StageEvent(PieceFact):
    """A piece came to a stage: one row for each visit; if glazed, from which batch, where known."""

    class Grade(models.TextChoices):
        FIRST = "first"
        SECOND = "second"

    class Reclaim(models.TextChoices):
        NONE = "none"
        PLAIN = "plain"
        MIXED = "mixed"

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="visits")
    stage = models.CharField(max_length=10)
    state = models.CharField(max_length=14)
    reason = models.CharField(max_length=200, blank=True)
    place = models.ForeignKey(Place, null=True, on_delete=models.PROTECT, related_name="+")
    occasion_id = models.UUIDField(null=True)
    occasion_name = models.CharField(max_length=40, blank=True)
    cause = models.CharField(max_length=40, blank=True)
    cause_is_guess = models.BooleanField(default=False)
    reclaim = models.CharField(max_length=6, choices=Reclaim, blank=True)
    part = models.ForeignKey(Part, null=True, on_delete=models.PROTECT, related_name="+")
    grade = models.CharField(max_length=6, choices=Grade, blank=True)
    is_interrupted = models.BooleanField(default=False)
    glaze_batch = models.ForeignKey(
        GlazeBatch, null=True, on_delete=models.PROTECT, related_name="dips"
    )

    class Meta:
        indexes = [models.Index(fields=["piece", "happened_at"], name="visit_by_time")]


class PartEvent(PieceFact):
    """Something happened to one part."""

    class Kind(models.TextChoices):
        PRESSED = "pressed"
        DEMOULDED = "demoulded"
        NOT_YET = "not_yet"
        STUCK = "stuck"
        JOINED = "joined"
        CRACKED = "cracked"
        SCRAPPED = "scrapped"
        REPLACED = "replaced"

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="part_events")
    part = models.ForeignKey(Part, on_delete=models.PROTECT, related_name="events")
    kind = models.CharField(max_length=10, choices=Kind)
    how = models.CharField(max_length=40, blank=True)
    cause = models.CharField(max_length=40, blank=True)

    class Meta:
        indexes = [models.Index(fields=["piece", "happened_at"], name="part_event_by_time")]


class Cover(PieceFact):
    """A piece was covered or uncovered, or one part of it: then until the whole piece is again."""

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="covers")
    part = models.ForeignKey(Part, null=True, on_delete=models.PROTECT, related_name="covers")
    state = models.CharField(max_length=8, choices=Piece.CoverState)


class PieceWeighing(PieceFact):
    """A piece on the scale."""

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="weighings")
    mass_g = models.FloatField()


class TouchCheck(PieceFact):
    """How a piece feels to a hand. `fine`: somebody looked under its cover, and it may go on so."""

    class Feel(models.TextChoices):
        FINE = "fine"
        SOFT = "soft"
        LEATHER_HARD = "leather_hard"
        TOO_STIFF = "too_stiff"
        BONE_DRY = "bone_dry"

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="checks")
    part = models.ForeignKey(Part, null=True, on_delete=models.PROTECT, related_name="checks")
    feel = models.CharField(max_length=14, choices=Feel)


class Move(PieceFact):
    """A piece was put somewhere; what it stands on there, where somebody said so."""

    class On(models.TextChoices):
        BOARD = "board"
        BAT = "bat"  # of plaster: it draws water
        SLATS = "slats"  # open to the air below

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="moves")
    place = models.ForeignKey(Place, on_delete=models.PROTECT, related_name="+")
    stands_on = models.CharField(max_length=5, choices=On, blank=True, default="")
