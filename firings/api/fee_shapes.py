"""What is told and answered about the fees of a load."""

from rest_framework import serializers

from pieces.api.bench_shapes import PersonNamedOut
from pieces.api.shapes import Shape
from studio.api.envelopes import ActIn, ActOut
from studio.api.fields import FiniteField
from studio.api.related import RowField
from studio.models import Member
from studio.models.settings import FeeMeasured

from .given_kilns import words
from .shapes_kilns import LoadNamedOut

MOST_MINOR = 10**9
MOST_PEOPLE = 100
STAGES = ["estimate", "due", "nothing"]


class FeeFilterIn(Shape):
    cost_minor = serializers.IntegerField(
        min_value=0,
        max_value=MOST_MINOR,
        required=False,
        help_text="Show this cost shared by volume in place of the tariff.",
    )


class LitresSaidIn(Shape):
    """Litres that a person says of one maker's ware; the reckoned ones are kept beside them."""

    member_id = RowField(Member, source="member")
    litres = FiniteField(min_value=0.0, max_value=100_000.0)
    why = words()


class FeesIn(ActIn):
    """What a load cost, to be shared by volume; without it everybody pays by the tariff."""

    cost_minor = serializers.IntegerField(
        min_value=0, max_value=MOST_MINOR, required=False, allow_null=True, default=None
    )
    litres = serializers.ListField(
        child=LitresSaidIn(), required=False, default=list, max_length=MOST_PEOPLE
    )
    words = words()


class FeeBoxOut(Shape):
    x_mm = serializers.FloatField()
    y_mm = serializers.FloatField()
    height_mm = serializers.FloatField()


class FeeLineOut(Shape):
    placement_id = serializers.UUIDField()
    mark = serializers.CharField()
    count = serializers.IntegerField()
    box = FeeBoxOut(allow_null=True)
    litres = serializers.FloatField()
    which = serializers.CharField(help_text="The how manieth firing: second glaze firing.")
    is_charged = serializers.BooleanField(help_text="What did not fire is not charged.")
    minor = serializers.IntegerField(allow_null=True)


class FeeShareOut(Shape):
    person = PersonNamedOut(allow_null=True)
    mine = serializers.BooleanField()
    litres = serializers.FloatField()
    minor = serializers.IntegerField(allow_null=True)
    lines = FeeLineOut(many=True)


class FeeRecordedShareOut(Shape):
    person = PersonNamedOut(allow_null=True)
    mine = serializers.BooleanField()
    litres = serializers.FloatField(help_text="As reckoned when it was recorded.")
    said_l = serializers.FloatField(allow_null=True, help_text="As somebody said instead.")
    why = serializers.CharField()
    minor = serializers.IntegerField(allow_null=True)


class FeesRecordedOut(Shape):
    """What was recorded last; it stands until it is recorded anew."""

    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    member = PersonNamedOut()
    basis = serializers.ChoiceField(["tariff", "cost"])
    cost_minor = serializers.IntegerField(allow_null=True)
    words = serializers.CharField()
    shares = FeeRecordedShareOut(many=True)


class FeesOut(Shape):
    """What a load costs each maker. Who may see only their own prices sees only their own share."""

    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    load = LoadNamedOut()
    stage = serializers.ChoiceField(STAGES, help_text="Due once it is unloaded.")
    words = serializers.CharField()
    currency = serializers.CharField()
    measured = serializers.ChoiceField(FeeMeasured.choices)
    per_litre_minor = serializers.IntegerField(allow_null=True)
    cost_minor = serializers.IntegerField(allow_null=True)
    shares = FeeShareOut(many=True)
    total_minor = serializers.IntegerField(
        allow_null=True, help_text="Null where there is no tariff, and to who sees only their own."
    )
    recorded = FeesRecordedOut(allow_null=True)
    may_record = serializers.BooleanField()


class FeesActOut(ActOut):
    fees = FeesOut()
