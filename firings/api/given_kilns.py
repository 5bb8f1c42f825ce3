"""What is told of kilns and programmes: shapes only, no rules."""

from datetime import UTC, datetime
from typing import Any

from rest_framework import serializers

from firings.models import FiringKind, Kiln, KilnEvent
from studio.api.envelopes import ActIn, ChangeIn
from studio.api.fields import FiniteField, MomentField, QuantityField
from studio.api.related import RowField
from studio.models import Place

Shape = serializers.Serializer[Any]

LONGEST_MM = 5000.0
MANY = 40
EARLIEST = datetime(1970, 1, 1, tzinfo=UTC)
LATEST = datetime(2200, 1, 1, tzinfo=UTC)


def length(**kw: Any) -> QuantityField:
    """Return a field for a length of a kiln or of what is in it. [mm]"""
    return QuantityField(unit="mm", least=1.0, most=LONGEST_MM, **kw)


def words(most: int = 200, **kw: Any) -> serializers.CharField:
    """Return a field for a few words that may be left out."""
    return serializers.CharField(
        max_length=most, required=False, allow_blank=True, default="", **kw
    )


class SlotField(MomentField):
    """An instant that a firing can have been at: what lies far off is a slip."""

    def to_internal_value(self, data: Any) -> datetime:
        value = super().to_internal_value(data)
        if not EARLIEST <= value <= LATEST:
            raise serializers.ValidationError("Look at the year again.", code="far-off")
        return value


class ShelfIn(Shape):
    """Some alike shelves: a round one has a diameter, any other a width and a depth."""

    shape = serializers.ChoiceField(Kiln.Chamber.choices)
    width_mm = length(required=False, allow_null=True, default=None)
    depth_mm = length(required=False, allow_null=True, default=None)
    diameter_mm = length(required=False, allow_null=True, default=None)
    thickness_mm = length()
    count = serializers.IntegerField(min_value=1, max_value=99)


class PostIn(Shape):
    """Some alike posts; those that stand inside the edge of the shelf cost a place."""

    height_mm = length()
    count = serializers.IntegerField(min_value=1, max_value=999)
    footprint_mm = length()
    stands_inside = serializers.BooleanField(default=False)


class KilnFields(Shape):
    """What may be said of a kiln."""

    width_mm = length(required=False, allow_null=True)
    depth_mm = length(required=False, allow_null=True)
    diameter_mm = length(required=False, allow_null=True)
    elements_changed_on = serializers.DateField(required=False, allow_null=True)
    firings_before = serializers.IntegerField(min_value=0, max_value=100_000, required=False)
    hot_hours_before = FiniteField(min_value=0, max_value=1e6, required=False)
    sensor_firings_before = serializers.IntegerField(min_value=0, max_value=100_000, required=False)
    cooling_k_per_h = FiniteField(
        min_value=0.01,
        max_value=5.0,
        required=False,
        allow_null=True,
        help_text="How fast it cooled before: share of its heat above the air lost in an hour.",
    )
    remarks = serializers.CharField(max_length=300, required=False, allow_blank=True)


class KilnIn(ActIn, KilnFields):
    """A kiln; without `place_id` it gets a place of its own, in `parent_place_id` if given."""

    number = serializers.RegexField(r"^[A-Za-z]{1,3}\d{1,3}$", max_length=8)
    name = serializers.CharField(max_length=60)
    kind = serializers.ChoiceField(Kiln.Kind.choices)
    chamber = serializers.ChoiceField(Kiln.Chamber.choices)
    height_mm = length()
    top_c = QuantityField(unit="c", least=200.0, most=1500.0)
    place_id = RowField(Place, source="place", required=False, allow_null=True, default=None)
    parent_place_id = RowField(
        Place, source="parent", required=False, allow_null=True, default=None
    )
    shelves = serializers.ListField(child=ShelfIn(), required=False, default=list, max_length=MANY)
    posts = serializers.ListField(child=PostIn(), required=False, default=list, max_length=MANY)


class KilnChangeIn(ChangeIn, KilnFields):
    """What is to change of a kiln; shelves and posts, where given, stand for all it had."""

    number = serializers.RegexField(r"^[A-Za-z]{1,3}\d{1,3}$", max_length=8, required=False)
    name = serializers.CharField(max_length=60, required=False)
    kind = serializers.ChoiceField(Kiln.Kind.choices, required=False)
    chamber = serializers.ChoiceField(Kiln.Chamber.choices, required=False)
    height_mm = length(required=False)
    top_c = QuantityField(unit="c", least=200.0, most=1500.0, required=False)
    shelves = serializers.ListField(child=ShelfIn(), required=False, max_length=MANY)
    posts = serializers.ListField(child=PostIn(), required=False, max_length=MANY)


class KilnEventIn(ActIn):
    """A kiln is out of use or in use again. Out of use it takes no new load; all else is logged."""

    kind = serializers.ChoiceField(KilnEvent.Kind.choices)
    reason = words()

    def validate(self, given: dict[str, Any]) -> dict[str, Any]:
        if given["kind"] == KilnEvent.Kind.OUT_OF_USE and not given["reason"].strip():
            raise serializers.ValidationError({"reason": ["Say why."]}, code="required")
        return given


class SegmentIn(Shape):
    """One leg; without a rate the kiln goes as fast as it can."""

    to_c = QuantityField(unit="c", least=0.0, most=1500.0)
    rate_c_per_h = FiniteField(
        min_value=1.0, max_value=1000.0, required=False, allow_null=True, default=None
    )
    hold_min = serializers.IntegerField(min_value=0, max_value=6000, default=0)


class ProgrammeIn(ActIn):
    name = serializers.CharField(max_length=60)
    kind = serializers.ChoiceField(FiringKind.choices)
    cone = serializers.CharField(max_length=12)
    top_c = QuantityField(unit="c", least=100.0, most=1500.0)
    segments = serializers.ListField(
        child=SegmentIn(), required=False, default=list, max_length=MANY
    )


class ProgrammeChangeIn(ChangeIn):
    """What is to change of a programme; segments, where given, stand for all it had."""

    name = serializers.CharField(max_length=60, required=False)
    kind = serializers.ChoiceField(FiringKind.choices, required=False)
    cone = serializers.CharField(max_length=12, required=False)
    top_c = QuantityField(unit="c", least=100.0, most=1500.0, required=False)
    segments = serializers.ListField(child=SegmentIn(), required=False, max_length=MANY)
