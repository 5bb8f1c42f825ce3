"""What the API is told of moulds: shapes only, no rules."""

from typing import Any
from uuid import UUID

from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail

from moulds.actions.designs import PartGiven
from moulds.actions.parts import STATE_OF
from moulds.domain.plaster import LEAST_PARTS_WATER, MOST_PARTS_WATER
from moulds.models import Design, DesignPart, Inspection, Master
from studio.api.envelopes import ActIn, ChangeIn
from studio.api.fields import MomentField, QuantityField
from studio.api.related import RowField
from studio.models import ClayBody, Member, Place

Shape = serializers.Serializer[Any]

LONGEST_MM = 5000.0
LARGEST_ML = 500_000.0
HEAVIEST_G = 500_000.0


def uuid_of(name: str, text: str) -> UUID:
    """Return the id that a query parameter names, or answer 400."""
    try:
        return UUID(text)
    except ValueError as error:
        detail = ErrorDetail("Give an id.", "not-an-id")
        raise serializers.ValidationError({name: [detail]}) from error


def _length(**kw: Any) -> QuantityField:
    return QuantityField(
        unit="mm", least=0.1, most=LONGEST_MM, required=False, allow_null=True, **kw
    )


class InsideFields(Shape):
    """How deep it is inside and what it holds, as finished; what it is for."""

    inside_depth_mm = _length()
    capacity_ml = QuantityField(
        unit="ml", least=0.1, most=LARGEST_ML, required=False, allow_null=True
    )
    contact = serializers.ChoiceField(
        Design.Contact.choices,
        required=False,
        help_text="table, cooking, storage; a lid is tested with the vessel it closes.",
    )


class DesignPartIn(Shape):
    """One clay part with its sections as pressed; with an `id`, the part that is changed."""

    id = serializers.UUIDField(required=False)
    role = serializers.CharField(max_length=24)
    count = serializers.IntegerField(min_value=1, max_value=99, default=1)
    is_required = serializers.BooleanField(default=True)
    shape = serializers.ChoiceField(DesignPart.Shape.choices, default=DesignPart.Shape.FLAT)
    method = serializers.ChoiceField(DesignPart.Method.choices, default=DesignPart.Method.PRESSED)
    thickest_mm = QuantityField(unit="mm", least=0.0)
    thinnest_mm = QuantityField(unit="mm", least=0.0)
    footprint_x_mm = _length()
    footprint_y_mm = _length()
    height_mm = _length()
    clay_g = QuantityField(unit="g", least=0.1, most=HEAVIEST_G, required=False, allow_null=True)

    def to_internal_value(self, data: Any) -> Any:
        return PartGiven(**super().to_internal_value(data))


class ConfirmedField(serializers.ListField):
    """JSON pointers of figures that are meant, though they look like a slip."""

    child = serializers.CharField(max_length=60)

    def __init__(self, **options: Any) -> None:
        super().__init__(required=False, default=list, max_length=99, **options)


class DesignIn(ActIn, InsideFields):
    """A form with one or more clay parts; sections are 1 to 80 mm."""

    name = serializers.CharField(max_length=80)
    noun = serializers.CharField(max_length=24)
    series = serializers.RegexField("^[A-Z]{1,4}$")
    body_id = RowField(ClayBody, source="body", required=False, allow_null=True)
    uses_moulds = serializers.BooleanField(default=True)
    footprint_x_mm = _length()
    footprint_y_mm = _length()
    height_mm = _length()
    is_round = serializers.BooleanField(
        default=False, help_text="The footprint is a circle, its diameter the greater width."
    )
    parts = DesignPartIn(many=True, allow_empty=False)
    confirmed = ConfirmedField(help_text="Walls over 80 mm that are meant: #/parts/0/thickest_mm.")


class DesignChangeIn(ChangeIn, InsideFields):
    """What is to change of a design; parts not named stay as they are."""

    name = serializers.CharField(max_length=80, required=False)
    noun = serializers.CharField(max_length=24, required=False)
    body_id = RowField(ClayBody, source="body", required=False, allow_null=True)
    uses_moulds = serializers.BooleanField(required=False)
    footprint_x_mm = _length()
    footprint_y_mm = _length()
    height_mm = _length()
    is_round = serializers.BooleanField(required=False)
    parts = DesignPartIn(many=True, required=False)
    confirmed = ConfirmedField(help_text="Walls over 80 mm that are meant: #/parts/0/thickest_mm.")


class MasterIn(ActIn):
    """An enlarged model of a design, or of one part of it."""

    label = serializers.CharField(max_length=20)  # type: ignore[assignment]
    design_id = RowField(Design, source="design")
    part_id = RowField(DesignPart, source="part", required=False, allow_null=True, default=None)
    is_ready = serializers.BooleanField(default=False)


class MasterEventIn(ActIn):
    kind = serializers.ChoiceField(["ready", "lost"])
    reason = serializers.CharField(max_length=200, required=False, allow_blank=True, default="")


class SetHabits(Shape):
    """What a studio says of a set's use."""

    owner_id = RowField(
        Member,
        source="owner",
        required=False,
        allow_null=True,
        help_text="Null: the studio's own. Left out when making one: the writer's.",
    )
    place_id = RowField(Place, source="place", required=False, allow_null=True)
    plaster_mm = QuantityField(unit="mm", least=3.0, most=300.0, required=False)
    inspect_at_presses = serializers.IntegerField(
        min_value=1, max_value=100_000, required=False, allow_null=True
    )
    retire_at_presses = serializers.IntegerField(
        min_value=1, max_value=100_000, required=False, allow_null=True
    )
    is_hump = serializers.BooleanField(required=False)
    rest_after_presses = serializers.IntegerField(min_value=1, max_value=100, required=False)
    release_h = serializers.FloatField(
        min_value=0.01,
        max_value=200,
        required=False,
        allow_null=True,
        help_text="Hours in which the dry mould lets go of its first press, by your own record.",
    )


class MouldSetIn(ActIn, SetHabits):
    """A label on a shelf that gives one clay part."""

    label = serializers.CharField(max_length=20)  # type: ignore[assignment]
    makes_id = RowField(DesignPart, source="makes")


class MouldSetChangeIn(ChangeIn, SetHabits):
    """What is to change of a set; what is left out stays."""

    label = serializers.CharField(max_length=20, required=False)  # type: ignore[assignment]


class BlockIn(Shape):
    """One mould part; `presses_before` is taken over from earlier notes."""

    id = serializers.UUIDField(required=False)
    name = serializers.CharField(max_length=24)
    presses_before = serializers.IntegerField(min_value=0, max_value=100_000, default=0)
    said_by_id = RowField(Member, source="said_by", required=False, allow_null=True)


class CastingIn(ActIn):
    """One pouring from a master. From a fired piece it is refused, with the size to enlarge to."""

    made_from = serializers.ChoiceField(["master", "fired_piece"], default="master")
    master_id = RowField(Master, source="master", required=False, allow_null=True)
    fired_mm = QuantityField(
        unit="mm",
        least=0.1,
        most=LONGEST_MM,
        required=False,
        allow_null=True,
        help_text="A length of the fired piece, for the enlargement.",
    )
    generation = serializers.IntegerField(
        min_value=1, max_value=999, required=False, allow_null=True
    )
    poured_at = MomentField(required=False)
    parts_water = serializers.FloatField(
        min_value=LEAST_PARTS_WATER,
        max_value=MOST_PARTS_WATER,
        required=False,
        help_text="Water to 100 of plaster by mass.",
    )
    capacity_fraction = serializers.FloatField(min_value=0.05, max_value=1.5, required=False)
    is_in_use = serializers.BooleanField(default=True)
    parts = BlockIn(many=True, required=False)

    def validate(self, given: dict[str, Any]) -> dict[str, Any]:
        if given["made_from"] == "master" and not given.get("master"):
            raise serializers.ValidationError(
                {"master_id": [ErrorDetail("Say which master.", "required")]}
            )
        return given


class MouldWeighingIn(ActIn):
    """The whole casting without clay; `is_dry` when it is known to be dry."""

    mass_g = QuantityField(unit="g", least=1.0, most=HEAVIEST_G)
    is_dry = serializers.BooleanField(default=False)


class MouldPartEventIn(ActIn):
    """Anybody may say that a part is chipped or missing; the rest is its owner's to say."""

    kind = serializers.ChoiceField(list(STATE_OF))
    reason = serializers.CharField(max_length=200, required=False, allow_blank=True, default="")


class InspectionIn(ActIn):
    part_id = serializers.UUIDField()
    finding = serializers.ChoiceField(Inspection.Finding.choices)


class BookingIn(ActIn):
    from_at = MomentField()
    until_at = MomentField()


class BookingEndIn(ActIn):
    """A booking is given up."""
