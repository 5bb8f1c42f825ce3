"""The forms of answers about orders, for the schema."""

from typing import Any

from rest_framework import serializers

from pieces.models import TestReport
from studio.api.envelopes import ActOut

from .bench_shapes import PartnerOut, PersonNamedOut
from .shapes import PieceBriefOut, SpotOut, WordOut

Shape = serializers.Serializer[Any]


class OrderCountsOut(Shape):
    """Sets, but what ends in `pieces`. Finished sets are among those alive, delivered ones too."""

    wanted = serializers.IntegerField()
    delivered = serializers.IntegerField()
    finished = serializers.IntegerField()
    alive = serializers.IntegerField()
    planned = serializers.IntegerField()
    in_doubt = serializers.IntegerField()
    pieces = serializers.IntegerField()
    lost_pieces = serializers.IntegerField()
    damaged_pieces = serializers.IntegerField()
    outside_pieces = serializers.IntegerField(help_text="In no set: of another design.")


class CommissionRowOut(Shape):
    id = serializers.UUIDField()
    number = serializers.CharField()
    client_name = serializers.CharField()
    what = serializers.CharField()
    use = serializers.ChoiceField(["food", "display"])
    maker = PersonNamedOut()
    mine = serializers.BooleanField()
    promised_date = serializers.DateField(allow_null=True)
    days_left = serializers.IntegerField(allow_null=True)
    promise_words = serializers.CharField()
    state = serializers.ChoiceField(["open", "closed", "cancelled"])
    counts = OrderCountsOut()
    words = serializers.CharField()
    is_at_risk = serializers.BooleanField()
    risk_words = serializers.CharField()
    likely_from = serializers.DateField(allow_null=True)
    likely_until = serializers.DateField(allow_null=True)
    judged_at = serializers.DateTimeField(allow_null=True)


class CommissionListOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    at_risk = CommissionRowOut(many=True)
    on_course = CommissionRowOut(many=True)
    closed = CommissionRowOut(many=True)


class OrderMayOut(Shape):
    """What this member may do to the order."""

    change = serializers.BooleanField()
    plan = serializers.BooleanField()
    lift_display = serializers.BooleanField()


class CommissionWholeOut(CommissionRowOut):
    client_contact = serializers.CharField(
        required=False, help_text="Only for the owner and the order's own maker."
    )
    taken_at = serializers.DateTimeField()
    closed_at = serializers.DateTimeField(allow_null=True)
    cancelled_at = serializers.DateTimeField(allow_null=True)
    revision = serializers.IntegerField()
    may = OrderMayOut()


class SetRoleOut(Shape):
    role = serializers.CharField()
    design_id = serializers.UUIDField()
    design_name = serializers.CharField()
    noun = serializers.CharField()
    count = serializers.IntegerField()


class OrderPieceOut(PieceBriefOut):
    use = serializers.ChoiceField(["food", "display"])
    grade = serializers.CharField()
    role = serializers.CharField(allow_null=True)
    set = serializers.IntegerField(allow_null=True, help_text="Which set it is counted in.")
    partners = PartnerOut(many=True)
    words = serializers.CharField(help_text="What it stands with, as in “lid for J06”.")


class StageCountOut(SpotOut):
    count = serializers.IntegerField()


class OrderLineOut(Shape):
    id = serializers.UUIDField()
    what = serializers.CharField()
    wanted_sets = serializers.IntegerField()
    order = serializers.IntegerField()
    counts = OrderCountsOut()
    sentence = serializers.CharField()
    recipe = SetRoleOut(many=True)
    stages = StageCountOut(many=True)
    pieces = OrderPieceOut(many=True)


class ReportedPieceOut(Shape):
    id = serializers.UUIDField()
    mark = serializers.CharField()


class GlazeNamedOut(Shape):
    id = serializers.UUIDField()
    label = serializers.CharField()  # type: ignore[assignment]


class TestReportOut(Shape):
    """What a laboratory wrote, as it wrote it."""

    __test__ = False

    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    piece = ReportedPieceOut(allow_null=True)
    occasion_id = serializers.UUIDField(allow_null=True)
    occasion_name = serializers.CharField()
    glaze = serializers.CharField()
    laboratory = serializers.CharField()
    reported_on = serializers.DateField()
    lead_value = serializers.FloatField()
    lead_is_below = serializers.BooleanField()
    cadmium_value = serializers.FloatField()
    cadmium_is_below = serializers.BooleanField()
    unit = serializers.ChoiceField(TestReport.Unit.choices)
    contact = serializers.CharField()
    depth_mm = serializers.FloatField(allow_null=True)
    volume_ml = serializers.FloatField(allow_null=True)
    area_dm2 = serializers.FloatField(allow_null=True)
    is_lid_tested = serializers.BooleanField()
    lid_lead_mg = serializers.FloatField(allow_null=True)
    lid_lead_is_below = serializers.BooleanField()
    lid_cadmium_mg = serializers.FloatField(allow_null=True)
    lid_cadmium_is_below = serializers.BooleanField()
    commission_id = serializers.UUIDField(allow_null=True)
    glaze_batch = GlazeNamedOut(allow_null=True)
    member = PersonNamedOut()


class CommissionOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    commission = CommissionWholeOut()
    lines = OrderLineOut(many=True)
    reports = TestReportOut(many=True)
    cautions = WordOut(many=True)
    warnings = WordOut(many=True)


class CommissionActOut(ActOut):
    """The order as it is now."""

    commission = CommissionWholeOut()
    lines = OrderLineOut(many=True)


class OrderLineActOut(ActOut):
    line = OrderLineOut()


class SetsPlannedOut(ActOut):
    pieces = PieceBriefOut(many=True)
    matches = serializers.IntegerField()
    warnings = WordOut(many=True)


class AssignedOut(ActOut):
    pieces = PieceBriefOut(many=True)
    warnings = WordOut(many=True)


class DeliveryOut(ActOut):
    commission = CommissionWholeOut()
    lines = OrderLineOut(many=True)
    pieces = PieceBriefOut(many=True)
    cautions = WordOut(many=True)


class MatchOut(Shape):
    id = serializers.UUIDField()
    kind = serializers.ChoiceField(["matched", "parted"])
    piece_ids = serializers.ListField(child=serializers.UUIDField())
    marks = serializers.ListField(child=serializers.CharField())
    seat_gap_mm = serializers.FloatField(allow_null=True)
    happened_at = serializers.DateTimeField()
    member = PersonNamedOut()


class MatchActOut(ActOut):
    match = MatchOut()
    pieces = PieceBriefOut(many=True)
    warnings = WordOut(many=True)


class OrderToldLineOut(Shape):
    words = serializers.CharField()
    marks = serializers.ListField(child=serializers.CharField())
    piece_ids = serializers.ListField(child=serializers.UUIDField())


class OrderToldOut(Shape):
    """One act about an order or its pieces; both times where it was told late."""

    id = serializers.UUIDField()
    seq = serializers.IntegerField()
    verb = serializers.CharField()
    kind = serializers.ChoiceField(["loss", "firing", "promise", "client", "making"])
    words = serializers.CharField(help_text="Of the order itself; empty where it is of pieces.")
    lines = OrderToldLineOut(many=True)
    happened_at = serializers.DateTimeField()
    written_at = serializers.DateTimeField()
    is_late = serializers.BooleanField()
    member = PersonNamedOut()
    device = serializers.CharField()
    note = serializers.CharField(allow_null=True)
    has_hidden_note = serializers.BooleanField(
        help_text="Said about other orders too; the piece's own story has it."
    )
    photo_ids = serializers.ListField(child=serializers.UUIDField())
    has_hidden_photos = serializers.BooleanField(help_text="As with a note.")
    corrects = serializers.UUIDField(allow_null=True)
    is_taken_back = serializers.BooleanField()
    taken_back_by = PersonNamedOut(allow_null=True)
    taken_back_at = serializers.DateTimeField(allow_null=True)
    came_from_other_order = serializers.BooleanField()
