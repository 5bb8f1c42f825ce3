"""The forms of the bench's answer, for the schema."""

from __future__ import annotations

from typing import Any

from rest_framework import serializers

from .covering_shown import CoverStepOut


class QuantilesOut(serializers.Serializer[Any]):
    """When something comes to pass; null where not within the horizon."""

    p10 = serializers.DateTimeField(allow_null=True)
    p50 = serializers.DateTimeField(allow_null=True)
    p90 = serializers.DateTimeField(allow_null=True)
    p_never = serializers.FloatField()


class WindowOut(serializers.Serializer[Any]):
    opens = QuantilesOut(allow_null=True)
    closes = QuantilesOut(allow_null=True)


class CurveOut(serializers.Serializer[Any]):
    """Water left, 1 as pressed to 0 at rest with the room's air; `known_points` of it are past."""

    t_at = serializers.ListField(child=serializers.DateTimeField())
    p10 = serializers.ListField(child=serializers.FloatField())
    p50 = serializers.ListField(child=serializers.FloatField())
    p90 = serializers.ListField(child=serializers.FloatField())
    known_points = serializers.IntegerField()


class WindowsOut(serializers.Serializer[Any]):
    demould = WindowOut()
    join = WindowOut()
    shrinkage_ended = QuantilesOut()
    bisque = QuantilesOut()


class ConfidenceOut(serializers.Serializer[Any]):
    basis = serializers.ChoiceField(choices=["guess", "checks"])
    checks = serializers.IntegerField()


class PieceNamedOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    mark = serializers.CharField()
    noun = serializers.CharField()
    design_name = serializers.CharField()
    stage = serializers.CharField()
    state = serializers.CharField()
    state_words = serializers.CharField()


class PartNamedOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    role = serializers.CharField()
    state = serializers.CharField()


class PlaceNamedOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    name = serializers.CharField()


class PersonNamedOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    first_name = serializers.CharField()
    initials = serializers.CharField()


class MouldNamedOut(serializers.Serializer[Any]):
    set_id = serializers.UUIDField()
    label = serializers.CharField()  # type: ignore[assignment]  # a field of that name
    generation = serializers.IntegerField()
    press_since_dry = serializers.IntegerField(allow_null=True)


class BenchRowOut(serializers.Serializer[Any]):
    piece = PieceNamedOut()
    part = PartNamedOut(allow_null=True)
    mould = MouldNamedOut(allow_null=True)
    place = PlaceNamedOut(allow_null=True)
    maker = PersonNamedOut(allow_null=True)
    mine = serializers.BooleanField()
    since_at = serializers.DateTimeField()
    verdict = serializers.ChoiceField(
        choices=[
            "past",
            "in_window",
            "later",
            "not_today",
            "asked",
            "drying",
            "worth_a_touch",
            "not_in_this_room",
            "ready",
        ]
    )
    reason = serializers.CharField()
    window = WindowOut(allow_null=True)
    ready_at = QuantilesOut(allow_null=True)
    look_again_at = serializers.DateTimeField(allow_null=True)
    cover_next = CoverStepOut(allow_null=True)
    confidence = ConfidenceOut()
    forecast_at = serializers.DateTimeField(allow_null=True)
    clash_id = serializers.UUIDField(allow_null=True)


class JoinRowOut(serializers.Serializer[Any]):
    piece = PieceNamedOut()
    parts = PartNamedOut(many=True)
    place = PlaceNamedOut(allow_null=True)
    maker = PersonNamedOut(allow_null=True)
    mine = serializers.BooleanField()
    verdict = serializers.ChoiceField(choices=["now", "wait", "too_stiff"])
    reason = serializers.CharField()
    window = WindowOut(allow_null=True)
    until = serializers.DateTimeField(allow_null=True)
    cover_next = CoverStepOut(allow_null=True, help_text="what brings its parts to meet")
    confidence = ConfidenceOut()
    clash_id = serializers.UUIDField(allow_null=True)


class PressDrynessOut(serializers.Serializer[Any]):
    word = serializers.ChoiceField(choices=["dry", "usable", "rest", "unknown"])
    free_water_fraction = serializers.FloatField(allow_null=True)
    presses_since_dry = serializers.IntegerField(allow_null=True)


class PressSetOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    label = serializers.CharField()  # type: ignore[assignment]  # a field of that name
    makes = serializers.CharField()


class PressCastingOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    generation = serializers.IntegerField()


class PressPartOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    name = serializers.CharField()
    state = serializers.CharField()


class PressBookingOut(serializers.Serializer[Any]):
    member = PersonNamedOut()
    from_at = serializers.DateTimeField()
    until_at = serializers.DateTimeField()


class PressRowOut(serializers.Serializer[Any]):
    set = PressSetOut()
    casting = PressCastingOut()
    parts = PressPartOut(many=True)
    place = PlaceNamedOut(allow_null=True)
    owner = PersonNamedOut(allow_null=True)
    dryness = PressDrynessOut()
    may_press = serializers.BooleanField()
    reason = serializers.CharField()
    next_booking = PressBookingOut(allow_null=True)


class BenchOut(serializers.Serializer[Any]):
    """The first screen in one answer."""

    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    forecast_at = serializers.DateTimeField(allow_null=True)
    confidence = ConfidenceOut()
    look_now = BenchRowOut(many=True)
    later_today = BenchRowOut(many=True)
    later = BenchRowOut(many=True)
    join_today = JoinRowOut(many=True)
    press_next = PressRowOut(many=True)
    drying = BenchRowOut(many=True)
    ready_for_bisque = BenchRowOut(many=True)


class PromisedToOut(serializers.Serializer[Any]):
    """The order a piece is promised to."""

    commission_id = serializers.UUIDField()
    number = serializers.CharField()
    line_id = serializers.UUIDField()
    what = serializers.CharField()
    promised_date = serializers.DateField(allow_null=True)


class PartnerOut(serializers.Serializer[Any]):
    """A piece that another one stands with."""

    id = serializers.UUIDField()
    mark = serializers.CharField()
    seat_gap_mm = serializers.FloatField(allow_null=True)
