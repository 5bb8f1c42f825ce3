"""A piece is a tree of parts; its present is folded from its acts."""

from django.db import models

from moulds.models import Design, DesignPart, Pressing
from studio.models import ClayBody, Member, Place, StudioOwned


class Use(models.TextChoices):
    """What ware is meant for. `display` is lifted by the owner only."""

    FOOD = "food"
    DISPLAY = "display"


class CommissionLine(StudioOwned):
    """So many sets of one thing in an order; a piece is promised to one line at most."""

    commission = models.ForeignKey(
        "pieces.Commission", on_delete=models.PROTECT, related_name="lines"
    )
    what = models.CharField(max_length=120)
    wanted_sets = models.PositiveSmallIntegerField()
    order = models.PositiveSmallIntegerField(default=0)

    class Meta:
        ordering = ["order", "id"]

    def belongs_to(self, member: Member) -> bool:
        return self.commission.belongs_to(member)


class Piece(StudioOwned):
    """What is delivered. Only the fold writes stage, state, since, place and cover.

    `is_undone` marks a piece whose making was taken back: it is in no list, and its mark is free.
    `line` is written by planning and assigning, `unclaimed_since` by finding: while it is set the
    piece is nobody's, and no load may take it. `find_key` is the mark as a search compares it.
    """

    Use = Use

    class CoverState(models.TextChoices):
        OPEN = "open"
        LOOSE = "loose"
        TUCKED = "tucked"
        SEALED = "sealed"

    mark = models.CharField(max_length=24)
    mark_key = models.CharField(max_length=72)
    find_key = models.CharField(max_length=160)
    suffix = models.CharField(max_length=4, blank=True)
    design = models.ForeignKey(Design, on_delete=models.PROTECT, related_name="pieces")
    body = models.ForeignKey(ClayBody, null=True, on_delete=models.PROTECT, related_name="+")
    maker = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="pieces")
    use = models.CharField(max_length=8, choices=Use, default=Use.FOOD)
    begun_at = models.DateTimeField()
    stage = models.CharField(max_length=10, default="model", db_index=True)
    state = models.CharField(max_length=14, default="wants_model", db_index=True)
    since_at = models.DateTimeField()
    place = models.ForeignKey(Place, null=True, on_delete=models.PROTECT, related_name="pieces")
    cover = models.CharField(max_length=8, choices=CoverState, blank=True)
    cover_since_at = models.DateTimeField(null=True)
    touched_at = models.DateTimeField()
    is_damaged = models.BooleanField(default=False)
    grade = models.CharField(max_length=6, blank=True)
    has_interrupted_bisque = models.BooleanField(default=False)
    is_undone = models.BooleanField(default=False)
    has_clash = models.BooleanField(default=False)
    look_again_at = models.DateTimeField(null=True)
    line = models.ForeignKey(
        CommissionLine, null=True, on_delete=models.PROTECT, related_name="pieces"
    )
    unclaimed_since = models.DateTimeField(null=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["studio", "mark_key", "suffix"], name="mark_once_a_studio"
            )
        ]
        indexes = [models.Index(fields=["studio", "stage", "mark_key"], name="piece_by_stage")]

    def __str__(self) -> str:
        return self.shown_mark

    @property
    def shown_mark(self) -> str:
        return f"{self.mark}·{self.suffix}" if self.suffix else self.mark

    def belongs_to(self, member: Member) -> bool:
        return member.speaks_for(self.maker)


class Part(StudioOwned):
    """One clay element of a piece, with the pressing it came from."""

    class State(models.TextChoices):
        TO_PRESS = "to_press"
        IN_MOULD = "in_mould"
        OUT = "out"
        JOINED = "joined"
        SCRAPPED = "scrapped"
        REPLACED = "replaced"

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="parts")
    design_part = models.ForeignKey(DesignPart, on_delete=models.PROTECT, related_name="+")
    role = models.CharField(max_length=24)
    number = models.PositiveSmallIntegerField(default=1)
    pressing = models.ForeignKey(
        Pressing, null=True, on_delete=models.PROTECT, related_name="clay_parts"
    )
    replaces = models.ForeignKey("self", null=True, on_delete=models.PROTECT, related_name="+")
    state = models.CharField(max_length=10, choices=State, default=State.TO_PRESS)
    pressed_at = models.DateTimeField(null=True)
    out_at = models.DateTimeField(null=True)
    joined_at = models.DateTimeField(null=True)
    ended_at = models.DateTimeField(null=True)
    look_again_at = models.DateTimeField(null=True)
    cover = models.CharField(max_length=8, choices=Piece.CoverState, blank=True, default="")

    def belongs_to(self, member: Member) -> bool:
        return self.piece.belongs_to(member)
