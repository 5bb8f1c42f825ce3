"""What is told and answered about a kiln's book and its health."""

from typing import Any

from rest_framework import serializers

from firings.models import KilnService
from pieces.api.bench_shapes import PersonNamedOut
from pieces.api.shapes import Shape, WordOut
from studio.api.envelopes import ActIn, ActOut
from studio.api.fields import QuantityField

from .given_kilns import words

Kind = KilnService.Kind
WANTED = {
    Kind.OHMS: ("over_new_fraction", "Say how far over new they are."),
    Kind.SHELVES: ("shelf_count", "Say how many whole ones there are."),
    Kind.NOTE: ("words", "Say what is to be noted."),
}


class ServiceIn(ActIn):
    """One thing done to a kiln or found on it: `ohms` want how far over new, `shelves` a count."""

    kind = serializers.ChoiceField(Kind.choices)
    over_new_fraction = QuantityField(
        unit="fraction",
        least=-0.5,
        most=2.0,
        required=False,
        allow_null=True,
        default=None,
        help_text="Resistance over that of new elements: 0.07, or 7 %.",
    )
    shelf_count = serializers.IntegerField(
        min_value=0, max_value=999, required=False, allow_null=True, default=None
    )
    words = words()

    def validate(self, given: dict[str, Any]) -> dict[str, Any]:
        name, detail = WANTED.get(given["kind"], ("", ""))
        if name and given[name] in (None, ""):
            raise serializers.ValidationError({name: [detail]}, code="required")
        return given


class ServiceOut(Shape):
    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField()
    member = PersonNamedOut()
    kind = serializers.ChoiceField(Kind.choices)
    title = serializers.CharField()
    over_new_fraction = serializers.FloatField(allow_null=True)
    shelf_count = serializers.IntegerField(allow_null=True)
    words = serializers.CharField()


class OhmsOut(Shape):
    measured_at = serializers.DateTimeField()
    over_new_fraction = serializers.FloatField()


class KilnHealthOut(Shape):
    """What the book of a kiln says, in words; whether it may be used is a person's to say."""

    elements_words = serializers.CharField(help_text="Firings and hot hours since their change.")
    elements_since = serializers.DateField(allow_null=True)
    sensor_words = serializers.CharField()
    ohms = OhmsOut(many=True, help_text="Since the elements were changed, oldest first.")
    ohms_words = serializers.CharField()
    trend = serializers.ChoiceField(
        ["hot", "cool", "on", ""], help_text="What the cones of two loads agree on, else empty."
    )
    shelf_count = serializers.IntegerField(allow_null=True)
    notes = WordOut(many=True, help_text="What a technician should know; empty where nothing is.")


class ServiceActOut(ActOut):
    service = ServiceOut()
    health = KilnHealthOut()
