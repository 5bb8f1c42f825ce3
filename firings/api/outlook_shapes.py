"""The form of an outlook, for the schema."""

from typing import Any

from rest_framework import serializers

Shape = serializers.Serializer[Any]


class RiskOut(Shape):
    code = serializers.CharField()
    words = serializers.CharField()


class RoleCountOut(Shape):
    role = serializers.CharField()
    count = serializers.IntegerField()


class MorePressOut(Shape):
    """How many more to press so that enough survive in nine cases of ten."""

    more = serializers.IntegerField(allow_null=True)
    by_role = RoleCountOut(many=True)
    words = serializers.CharField()


class LatestPressOut(Shape):
    confidence = serializers.FloatField()
    date = serializers.DateField()
    words = serializers.CharField()


class OutlookLineOut(Shape):
    line_id = serializers.UUIDField()
    what = serializers.CharField()
    wanted_sets = serializers.IntegerField()
    still_needed = serializers.IntegerField(help_text="Sets wanted and not finished yet.")
    is_all_there = serializers.BooleanField()
    chance = serializers.FloatField(
        allow_null=True, help_text="Only from 20 own outcomes on; before, there are words."
    )
    chance_words = serializers.CharField()
    press = MorePressOut()
    latest_press = LatestPressOut(many=True)
    likely_from = serializers.DateField(allow_null=True)
    likely_until = serializers.DateField(allow_null=True)
    risks = RiskOut(many=True)


class StepFigureOut(Shape):
    """What one step costs: the share that survives it, and its days."""

    step = serializers.CharField()
    words = serializers.CharField()
    lost = serializers.IntegerField(help_text="Of the studio's own pieces.")
    entered = serializers.IntegerField()
    survival_fraction = serializers.FloatField()
    least_days = serializers.FloatField()
    usual_days = serializers.FloatField()
    most_days = serializers.FloatField()


class PartLostOut(Shape):
    """Parts of one role that were lost before their piece was, of those joined or lost."""

    role = serializers.CharField()
    lost = serializers.IntegerField()
    of = serializers.IntegerField()
    words = serializers.CharField()


class FirstTimeOut(Shape):
    """Of pieces whose first glaze firing was judged; fired again counts as not good."""

    good = serializers.IntegerField()
    of = serializers.IntegerField()
    words = serializers.CharField()


class OutlookOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    commission_id = serializers.UUIDField()
    promised_date = serializers.DateField(allow_null=True)
    words = serializers.CharField()
    chance = serializers.FloatField(allow_null=True)
    is_at_risk = serializers.BooleanField()
    likely_from = serializers.DateField(allow_null=True)
    likely_middle = serializers.DateField(
        allow_null=True, help_text="The day by which it is as likely there as not."
    )
    likely_until = serializers.DateField(allow_null=True)
    basis = serializers.ChoiceField(["guess", "outcomes"])
    basis_words = serializers.CharField()
    outcomes = serializers.IntegerField(help_text="Own pieces whose fate is known.")
    lines = OutlookLineOut(many=True)
    steps = StepFigureOut(many=True)
    parts = PartLostOut(many=True)
    first_time = FirstTimeOut()
    cautions = RiskOut(many=True)
    sources = serializers.ListField(child=serializers.CharField())
