"""Promises to clients: orders, their lines, what makes a set, and which pieces stand together."""

from typing import ClassVar

from django.db import models

from moulds.models import Design
from studio.models import Fact, FactQuerySet, GlazeBatch, Member, StudioOwned

from .pieces import CommissionLine, Piece, Use


class Commission(StudioOwned):
    """A promise of pieces to somebody.

    How to reach the client is told to the owner and to the order's maker only, and is never in the
    journal. The last judgement of whether the promise will be kept is written by a sweep: `risk` is
    empty until it was judged.
    """

    class Risk(models.TextChoices):
        ON_COURSE = "on_course"
        AT_RISK = "at_risk"

    # Never shown on a shared phone, wherever somebody wrote them.
    private_columns: ClassVar = ("client_name", "client_contact")

    number = models.CharField(max_length=12)
    client_name = models.CharField(max_length=120)
    client_contact = models.CharField(max_length=300, blank=True)
    maker = models.ForeignKey(Member, on_delete=models.PROTECT, related_name="commissions")
    what = models.CharField(max_length=200)
    use = models.CharField(max_length=8, choices=Use, default=Use.FOOD)
    promised_date = models.DateField(null=True)
    taken_at = models.DateTimeField()
    closed_at = models.DateTimeField(null=True)
    cancelled_at = models.DateTimeField(null=True)
    revision = models.PositiveIntegerField(default=1)
    risk = models.CharField(max_length=10, choices=Risk, blank=True)
    risk_words = models.CharField(max_length=200, blank=True)
    likely_from = models.DateField(null=True)
    likely_until = models.DateField(null=True)
    judged_at = models.DateTimeField(null=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["studio", "number"], name="commission_number_once")
        ]

    def __str__(self) -> str:
        return self.number

    @property
    def state(self) -> str:
        """Return `open`, `closed` or `cancelled`."""
        if self.cancelled_at is not None:
            return "cancelled"
        return "open" if self.closed_at is None else "closed"

    def belongs_to(self, member: Member) -> bool:
        return member.speaks_for(self.maker)


class SetRecipe(StudioOwned):
    """What one set of a line holds in one role: a jar and a lid, or two brackets."""

    line = models.ForeignKey(CommissionLine, on_delete=models.PROTECT, related_name="recipe")
    role = models.CharField(max_length=24)
    design = models.ForeignKey(Design, on_delete=models.PROTECT, related_name="+")
    count = models.PositiveSmallIntegerField(default=1)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["line", "role"], name="role_once_a_line")]


class OrderFact(Fact):
    """Something that happened about a piece and its order."""

    objects: ClassVar = FactQuerySet.as_manager()

    class Meta:
        abstract = True


class Assignment(OrderFact):
    """A piece came to a line, from another one or from none, or was taken out of its order."""

    piece = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="assignments")
    came_from = models.ForeignKey(
        CommissionLine, null=True, on_delete=models.PROTECT, related_name="left"
    )
    line = models.ForeignKey(
        CommissionLine, null=True, on_delete=models.PROTECT, related_name="came"
    )
    reason = models.CharField(max_length=200, blank=True)


class Match(OrderFact):
    """Two pieces were said to stand together, as a lid with its jar, or not to any more."""

    class Kind(models.TextChoices):
        MATCHED = "matched"
        PARTED = "parted"

    kind = models.CharField(max_length=7, choices=Kind)
    first = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="+")
    second = models.ForeignKey(Piece, on_delete=models.PROTECT, related_name="+")
    seat_gap_mm = models.FloatField(null=True)

    class Meta:
        indexes = [
            models.Index(fields=["first"], name="match_by_first"),
            models.Index(fields=["second"], name="match_by_second"),
        ]


class TestReport(OrderFact):
    """What a laboratory wrote about lead and cadmium given off; a record, not a judgement.

    It is about one glaze batch, fired on one occasion, on ware of one depth and volume. A lid is
    tested apart: what its inside gave off is in milligrams, to be added on the vessel's. The
    occasion is opaque here: it names the load.
    """

    __test__ = False

    class Unit(models.TextChoices):
        PER_LITRE = "mg_per_l"
        PER_AREA = "mg_per_dm2"

    commission = models.ForeignKey(
        Commission, null=True, on_delete=models.PROTECT, related_name="reports"
    )
    piece = models.ForeignKey(Piece, null=True, on_delete=models.PROTECT, related_name="+")
    glaze_batch = models.ForeignKey(
        GlazeBatch, null=True, on_delete=models.PROTECT, related_name="reports"
    )
    occasion_id = models.UUIDField(null=True)
    occasion_name = models.CharField(max_length=40, blank=True)
    glaze = models.CharField(max_length=80, blank=True)
    laboratory = models.CharField(max_length=120)
    reported_on = models.DateField()
    lead_value = models.FloatField()
    lead_is_below = models.BooleanField(default=False)
    cadmium_value = models.FloatField()
    cadmium_is_below = models.BooleanField(default=False)
    unit = models.CharField(max_length=10, choices=Unit)
    contact = models.CharField(max_length=8, choices=Design.Contact, default=Design.Contact.TABLE)
    depth_mm = models.FloatField(null=True)
    volume_ml = models.FloatField(null=True)
    area_dm2 = models.FloatField(null=True)
    is_lid_tested = models.BooleanField(default=False)
    lid_lead_mg = models.FloatField(null=True)
    lid_lead_is_below = models.BooleanField(default=False)
    lid_cadmium_mg = models.FloatField(null=True)
    lid_cadmium_is_below = models.BooleanField(default=False)
