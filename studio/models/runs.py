"""Long computations and the answers to writes that may be sent again."""

from django.db import models

from .tenancy import Device, Member, StudioOwned


class Run(StudioOwned):
    """A question that takes a while; asking it twice is the same run."""

    export_order = None

    class State(models.TextChoices):
        QUEUED = "queued"
        RUNNING = "running"
        DONE = "done"
        REFUSED = "refused"
        FAILED = "failed"
        CANCELLED = "cancelled"

    task = models.CharField(max_length=60)
    inputs = models.JSONField(default=dict)
    digest = models.CharField(max_length=64)
    state = models.CharField(max_length=10, choices=State, default=State.QUEUED)
    progress_fraction = models.FloatField(default=0.0)
    result = models.JSONField(null=True)
    problem = models.JSONField(null=True)
    asked_by = models.ForeignKey(Member, null=True, on_delete=models.PROTECT, related_name="+")
    asked_at = models.DateTimeField()
    lease_until = models.DateTimeField(null=True)
    tries = models.PositiveSmallIntegerField(default=0)
    done_at = models.DateTimeField(null=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "digest"], name="asked_once")]

    def belongs_to(self, member: Member) -> bool:
        return self.asked_by_id == member.pk


class Replay(models.Model):
    """The answer an act got, so that the same act sent again gets the same answer."""

    act_id = models.UUIDField(primary_key=True)
    studio = models.ForeignKey("studio.Studio", on_delete=models.PROTECT, related_name="+")
    digest = models.CharField(max_length=64)
    status = models.PositiveSmallIntegerField()
    answer = models.JSONField(null=True)
    written_at = models.DateTimeField(db_index=True)


class NumberSeries(StudioOwned):
    """The counter behind the marks of one letter: a number is never given twice."""

    letters = models.CharField(max_length=4)
    next_number = models.PositiveIntegerField(default=1)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "letters"], name="series_once")]


class NumberBlock(StudioOwned):
    """Numbers lent to one device, so that phones without signal never collide."""

    export_order = None

    device = models.ForeignKey(Device, on_delete=models.PROTECT, related_name="blocks")
    letters = models.CharField(max_length=4)
    first = models.PositiveIntegerField()
    last = models.PositiveIntegerField()
    leased_at = models.DateTimeField()
