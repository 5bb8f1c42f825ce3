"""Moulds as the API shows them."""

from typing import Any
from uuid import UUID

from rest_framework import serializers

from moulds.models import Booking, Casting, Inspection, MouldPart, Pressing
from studio.api.envelopes import ActOut
from studio.queries import photos

Shape = serializers.Serializer[Any]


class CautionOut(Shape):
    """A warning beside an act that was accepted."""

    code = serializers.CharField()
    detail = serializers.CharField()


class MouldUserOut(Shape):
    """Somebody who owns, booked or vouched."""

    id = serializers.UUIDField()
    first_name = serializers.CharField()
    initials = serializers.CharField()


class MouldPlaceOut(Shape):
    id = serializers.UUIDField()
    name = serializers.CharField()


class MadePartOut(Shape):
    """The clay part that a set gives."""

    id = serializers.UUIDField()
    role = serializers.CharField()
    design_id = serializers.UUIDField()
    design_name = serializers.CharField(source="design.name")


class BookingOut(serializers.ModelSerializer[Booking]):
    member = MouldUserOut()

    class Meta:
        model = Booking
        fields = ("id", "mould_set_id", "member", "from_at", "until_at", "given_up_at")


class MouldPartOut(serializers.ModelSerializer[MouldPart]):
    presses_before_by = MouldUserOut(allow_null=True)

    class Meta:
        model = MouldPart
        fields = (
            "id",
            "name",
            "state",
            "state_reason",
            "presses",
            "presses_before",
            "presses_before_by",
        )


class CastingMasterOut(Shape):
    id = serializers.UUIDField()
    label = serializers.CharField()  # type: ignore[assignment]
    is_ready = serializers.BooleanField()


class CastingOut(serializers.ModelSerializer[Casting]):
    master = CastingMasterOut()

    class Meta:
        model = Casting
        fields = (
            "id",
            "mould_set_id",
            "master",
            "generation",
            "poured_at",
            "is_in_use",
            "capacity_fraction",
            "dry_g",
            "now_g",
            "weighed_at",
        )


class DrynessOut(Shape):
    """How damp a casting is; the fraction is of the water it can hold."""

    word = serializers.ChoiceField(["unknown", "dry", "usable", "rest"])
    basis = serializers.ChoiceField(
        ["weighed", "reckoned", "presses", "nothing"],
        help_text="Weighed; weighed, with the presses since reckoned in; only counted; nothing.",
    )
    free_water_fraction = serializers.FloatField(allow_null=True)
    presses_since_dry = serializers.IntegerField()
    presses_left = serializers.IntegerField(
        allow_null=True, help_text="Presses until it should rest, if it does not dry between."
    )


class WearOut(Shape):
    """How worn the most used part is, in the studio's own limits."""

    word = serializers.CharField()
    pressings = serializers.IntegerField()
    pressings_left = serializers.IntegerField(allow_null=True)
    looks_again_at = serializers.IntegerField(allow_null=True)


class MouldSetOut(Shape):
    """A set with its casting in use, as it is now."""

    id = serializers.UUIDField(source="mould_set.id")
    label = serializers.CharField(source="mould_set.label")  # type: ignore[assignment]
    makes = MadePartOut(source="mould_set.makes")
    owner = MouldUserOut(source="mould_set.owner", allow_null=True)
    place = MouldPlaceOut(source="mould_set.place", allow_null=True)
    plaster_mm = serializers.FloatField(source="mould_set.plaster_mm")
    inspect_at_presses = serializers.IntegerField(
        source="mould_set.inspect_at_presses", allow_null=True
    )
    retire_at_presses = serializers.IntegerField(
        source="mould_set.retire_at_presses", allow_null=True
    )
    is_hump = serializers.BooleanField(source="mould_set.is_hump")
    rest_after_presses = serializers.IntegerField(source="mould_set.rest_after_presses")
    release_h = serializers.FloatField(source="mould_set.release_h", allow_null=True)
    revision = serializers.IntegerField(source="mould_set.revision")
    casting = CastingOut(allow_null=True)
    parts = MouldPartOut(many=True)
    presses = serializers.IntegerField()
    dryness = DrynessOut()
    wear = WearOut()
    next_booking = BookingOut(allow_null=True)


class RowSetOut(Shape):
    id = serializers.UUIDField()
    label = serializers.CharField()  # type: ignore[assignment]
    makes = serializers.CharField(source="makes.role")
    design_name = serializers.CharField(source="makes.design.name")


class RowCastingOut(Shape):
    id = serializers.UUIDField()
    generation = serializers.IntegerField()


class RowPartOut(Shape):
    id = serializers.UUIDField()
    name = serializers.CharField()
    state = serializers.CharField()


class MouldRowOut(Shape):
    """One line of *Press next*."""

    set = RowSetOut(source="now.mould_set")
    casting = RowCastingOut(source="now.casting")
    parts = RowPartOut(source="now.parts", many=True)
    place = MouldPlaceOut(source="now.mould_set.place", allow_null=True)
    owner = MouldUserOut(source="now.mould_set.owner", allow_null=True)
    dryness = DrynessOut(source="now.dryness")
    may_press = serializers.BooleanField()
    reason = serializers.CharField()
    next_booking = BookingOut(source="now.next_booking", allow_null=True)


class PressingOut(serializers.ModelSerializer[Pressing]):
    """One pressing, by the moment it happened."""

    class Meta:
        model = Pressing
        fields = ("id", "casting_id", "happened_at", "count", "slab_block_id")


class PouredOut(ActOut):
    """A new casting, and the pressings of the one before that may hold crumbs."""

    casting = CastingOut()
    parts = MouldPartOut(many=True)
    laid_aside = CastingOut(allow_null=True)
    pressings_to_check = PressingOut(many=True)
    warnings = CautionOut(many=True)


class MouldPartEventOut(ActOut):
    """How a mould part is now, and the pressings since somebody last found it good."""

    part = MouldPartOut()
    pressings_to_check = PressingOut(many=True)


class StateSaidOut(Shape):
    """One thing that was said of a mould part."""

    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    state = serializers.ChoiceField(MouldPart.State.choices)
    reason = serializers.CharField()


class MouldWeighingRowOut(Shape):
    id = serializers.UUIDField()
    casting_id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    mass_g = serializers.FloatField()
    is_dry = serializers.BooleanField()


class MouldWeighingOut(ActOut):
    """A weighing, and what it says of the casting."""

    weighing = MouldWeighingRowOut()
    dryness = DrynessOut()


class InspectionRowOut(serializers.ModelSerializer[Inspection]):
    photo_ids = serializers.SerializerMethodField()

    class Meta:
        model = Inspection
        fields = ("id", "mould_part_id", "happened_at", "finding", "photo_ids")

    def get_photo_ids(self, inspection: Inspection) -> list[UUID]:
        return photos.ids_of(inspection.entry)


class QuantileTimesOut(Shape):
    """Instants that a time lies before with 10, 50 and 90 % chance; null where not within reach."""

    p10 = serializers.DateTimeField(allow_null=True)
    p50 = serializers.DateTimeField(allow_null=True)
    p90 = serializers.DateTimeField(allow_null=True)
    p_never = serializers.FloatField()


class PressingsLeftOut(Shape):
    """Pressings that a mould still gives, by the studio's own limit as its likely life."""

    p10 = serializers.IntegerField()
    p50 = serializers.IntegerField()
    p90 = serializers.IntegerField()
    expected = serializers.FloatField()


class AdviceOut(Shape):
    code = serializers.CharField()
    reason = serializers.CharField()


class MouldAirOut(Shape):
    """Whose air the forecast used."""

    place = MouldPlaceOut(allow_null=True)
    words = serializers.CharField()
    is_assumed = serializers.BooleanField()


class ReadinessOut(Shape):
    """Whether a set may be pressed, since what, and when it will be dry enough."""

    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    set_id = serializers.UUIDField()
    casting_id = serializers.UUIDField(allow_null=True)
    word = serializers.CharField()
    dryness = DrynessOut()
    usable_at = QuantileTimesOut(allow_null=True)
    dry_at = QuantileTimesOut(allow_null=True)
    air = MouldAirOut(allow_null=True)
    wear = WearOut()
    expected_pressings_left = PressingsLeftOut(allow_null=True)
    advice = AdviceOut()
    cautions = serializers.ListField(child=serializers.CharField())
