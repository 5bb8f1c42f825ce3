"""What the acts about orders are told: shapes only, no rules."""

from datetime import date
from typing import Any

from rest_framework import serializers

from moulds.models import Design
from pieces.models import CommissionLine, Match, Use
from pieces.queries.commission_history import FILTERS
from studio.api.envelopes import ActIn, ChangeIn
from studio.api.fields import QuantityField
from studio.api.related import RowField
from studio.domain.refusals import Refusal
from studio.domain.text import clean_name
from studio.models import ClayBody, Member, Place

from .given import MANY

Shape = serializers.Serializer[Any]
LINES_MOST = 40
SETS_MOST = 999
PLANNED_MOST = 60
CONTACT_MOST = 300
FIRST_YEAR, LAST_YEAR = 1990, 2190


class NameField(serializers.CharField):
    """A name on one line; what cannot be shown is refused, not dropped."""

    def to_internal_value(self, data: Any) -> str:
        text = super().to_internal_value(data)
        try:
            return clean_name(text, most=self.max_length or CONTACT_MOST) if text else text
        except Refusal as refusal:
            raise serializers.ValidationError(refusal.detail, code=refusal.code) from refusal


class DayField(serializers.DateField):
    """A day of this age: a year with a slip of the finger is asked back."""

    def to_internal_value(self, value: Any) -> date:
        day: date = super().to_internal_value(value)
        if not FIRST_YEAR <= day.year <= LAST_YEAR:
            raise serializers.ValidationError(
                f"A year from {FIRST_YEAR} to {LAST_YEAR}, not {day.year}.", code="odd-year"
            )
        return day


def _reason() -> serializers.CharField:
    return serializers.CharField(max_length=200, required=False, allow_blank=True, default="")


class SetRoleIn(Shape):
    """How many pieces of a design one set holds, and as what."""

    role = NameField(max_length=24)
    design_id = RowField(Design, source="design")
    count = serializers.IntegerField(min_value=1, max_value=12, default=1)


class OrderLineFields(Shape):
    """So many sets of one thing; without a recipe any piece is a set."""

    id = serializers.UUIDField(required=False, allow_null=True, default=None)
    what = NameField(max_length=120)
    wanted_sets = serializers.IntegerField(min_value=1, max_value=SETS_MOST)
    recipe = serializers.ListField(child=SetRoleIn(), required=False, default=list, max_length=6)


class CommissionIn(ActIn):
    """An order; without a number it gets the next one."""

    number = serializers.RegexField(
        r"^[A-Za-z0-9][A-Za-z0-9/.-]{0,11}\Z", required=False, allow_null=True, default=None
    )
    client_name = NameField(max_length=120)
    client_contact = NameField(
        max_length=CONTACT_MOST, required=False, allow_blank=True, default=""
    )
    what = NameField(max_length=200)
    use = serializers.ChoiceField(Use.choices, default=Use.FOOD)
    maker_id = RowField(Member, source="maker", required=False, allow_null=True, default=None)
    promised_date = DayField(required=False, allow_null=True, default=None)
    lines = serializers.ListField(
        child=OrderLineFields(), required=False, default=list, max_length=LINES_MOST
    )


class CommissionChangeIn(ChangeIn):
    """What is to change; what is left out stays. `display` is lifted by the owner only."""

    client_name = NameField(max_length=120, required=False)
    client_contact = NameField(max_length=CONTACT_MOST, required=False, allow_blank=True)
    what = NameField(max_length=200, required=False)
    use = serializers.ChoiceField(Use.choices, required=False)
    maker_id = RowField(Member, source="maker", required=False)


class OrderLineIn(ActIn):
    """A line to add."""

    line_id = serializers.UUIDField(required=False, allow_null=True, default=None)
    what = NameField(max_length=120)
    wanted_sets = serializers.IntegerField(min_value=1, max_value=SETS_MOST)
    recipe = serializers.ListField(child=SetRoleIn(), required=False, default=list, max_length=6)


class OrderLineChangeIn(ChangeIn):
    what = NameField(max_length=120, required=False)
    wanted_sets = serializers.IntegerField(min_value=1, max_value=SETS_MOST, required=False)


class RecipeIn(ActIn):
    """The whole recipe, in the place of the one before."""

    recipe = serializers.ListField(child=SetRoleIn(), max_length=6)


class SetPieceIn(Shape):
    """A piece of a planned set that has an id or a mark already."""

    id = serializers.UUIDField()
    role = serializers.CharField(max_length=24)
    mark = serializers.CharField(max_length=60, required=False, allow_null=True, default=None)


class SetsPlanIn(ActIn):
    """Plan whole sets of a line; those of one set are matched."""

    sets = serializers.IntegerField(min_value=1, max_value=PLANNED_MOST)
    pieces = serializers.ListField(
        child=SetPieceIn(), required=False, default=list, max_length=MANY
    )
    maker_id = RowField(Member, source="maker", required=False, allow_null=True, default=None)
    body_id = RowField(ClayBody, source="body", required=False, allow_null=True, default=None)
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)


class AssignmentIn(ActIn):
    """Promise pieces to a line; no line takes them out of their order."""

    piece_ids = serializers.ListField(
        child=serializers.UUIDField(), allow_empty=False, max_length=MANY
    )
    line_id = RowField(CommissionLine, source="line", allow_null=True)
    reason = _reason()


class PromiseIn(ActIn):
    promised_date = DayField(allow_null=True)
    reason = _reason()


class ClosingIn(ActIn):
    kind = serializers.ChoiceField(["closed", "cancelled", "reopened"])
    reason = _reason()


class DeliveryIn(ActIn):
    """Hand over those pieces, else all that are finished; `closes` null: when no more is wanted."""

    piece_ids = serializers.ListField(
        child=serializers.UUIDField(),
        required=False,
        allow_null=True,
        default=None,
        max_length=MANY,
    )
    closes = serializers.BooleanField(required=False, allow_null=True, default=None)


class MatchIn(ActIn):
    """Two pieces stand together, or not any more."""

    kind = serializers.ChoiceField(Match.Kind.choices)
    piece_ids = serializers.ListField(child=serializers.UUIDField(), min_length=2, max_length=2)
    seat_gap_mm = QuantityField(
        unit="mm", least=0, most=50, required=False, allow_null=True, default=None
    )


class MatchFilterIn(Shape):
    piece = serializers.UUIDField(required=False)


class HistoryFilterIn(Shape):
    filter = serializers.ChoiceField(FILTERS, default="all")
