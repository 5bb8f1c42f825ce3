"""Loads of a kiln, and what is in them."""

from django.db import models

from pieces.models import Piece
from studio.models import Member, StudioOwned

from .kilns import Kiln
from .programmes import FiringKind, Programme


class Load(StudioOwned):
    """One loading of a kiln. The columns from `state` on are folded from its events and readings.

    `is_in_doubt` says that two people told of it what cannot both be so.
    """

    class State(models.TextChoices):
        OPEN = "open"
        SETTLED = "settled"
        LOADING = "loading"
        FIRING = "firing"
        STOPPED = "stopped"
        COOLING = "cooling"
        OPENED = "opened"
        UNLOADED = "unloaded"
        CALLED_OFF = "called_off"

    number = models.CharField(max_length=12)
    kiln = models.ForeignKey(Kiln, on_delete=models.PROTECT, related_name="loads")
    kind = models.CharField(max_length=6, choices=FiringKind)
    cone = models.CharField(max_length=4)
    programme = models.ForeignKey(
        Programme, null=True, on_delete=models.PROTECT, related_name="loads"
    )
    starts_at = models.DateTimeField(db_index=True)
    cutoff_at = models.DateTimeField()
    watcher = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="+")
    is_unplanned = models.BooleanField(default=False)
    reading_every_min = models.PositiveSmallIntegerField(default=60)
    expected_h = models.FloatField(null=True)
    made_at = models.DateTimeField()
    revision = models.PositiveIntegerField(default=1)
    state = models.CharField(max_length=10, choices=State, default=State.OPEN, db_index=True)
    outcome = models.CharField(max_length=10, blank=True)
    settled_at = models.DateTimeField(null=True)
    loaded_at = models.DateTimeField(null=True)
    started_at = models.DateTimeField(null=True)
    stopped_at = models.DateTimeField(null=True)
    resumed_at = models.DateTimeField(null=True)
    ended_at = models.DateTimeField(null=True)
    opened_at = models.DateTimeField(null=True)
    opened_c = models.FloatField(null=True)
    unloaded_at = models.DateTimeField(null=True)
    called_off_at = models.DateTimeField(null=True)
    is_interrupted = models.BooleanField(default=False)
    is_in_doubt = models.BooleanField(default=False)
    hot_h = models.FloatField(default=0.0)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "number"], name="load_once")]

    def __str__(self) -> str:
        return self.number

    @property
    def is_over(self) -> bool:
        return self.state in (self.State.UNLOADED, self.State.CALLED_OFF)


class Placement(StudioOwned):
    """A piece in a load, or so many of something else; a claim, won in the order it was heard.

    `came_from` is where the piece was before it went into the kiln. `result` is folded from the
    unloading. `is_live` while it is in a load that is not over: no piece is in two.
    """

    load = models.ForeignKey(Load, on_delete=models.PROTECT, related_name="placements")
    piece = models.ForeignKey(Piece, null=True, on_delete=models.PROTECT, related_name="placements")
    what = models.CharField(max_length=120, blank=True)
    count = models.PositiveSmallIntegerField(default=1)
    width_mm = models.FloatField(null=True)
    depth_mm = models.FloatField(null=True)
    height_mm = models.FloatField(null=True)
    is_round = models.BooleanField(default=False)
    level = models.PositiveSmallIntegerField(null=True)
    x_mm = models.FloatField(null=True)
    y_mm = models.FloatField(null=True)
    rotation_deg = models.FloatField(default=0.0)
    asked_by = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="+")
    act_id = models.UUIDField(db_index=True)
    placed_at = models.DateTimeField()
    removed_at = models.DateTimeField(null=True)
    removed_because = models.CharField(max_length=200, blank=True)
    is_live = models.BooleanField(default=True)
    override_reason = models.CharField(max_length=200, blank=True)
    overrides = models.JSONField(default=list)
    came_from = models.JSONField(null=True)
    result = models.CharField(max_length=10, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["piece"], condition=models.Q(is_live=True), name="piece_in_one_load"
            ),
            models.CheckConstraint(
                condition=models.Q(piece__isnull=False) | ~models.Q(what=""),
                name="placement_holds_something",
            ),
        ]

    def belongs_to(self, member: Member) -> bool:
        if self.piece is None:
            return member.speaks_for(self.asked_by)
        return self.piece.belongs_to(member)
