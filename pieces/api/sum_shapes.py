"""How sums about clay are asked, and what they answer."""

from __future__ import annotations

from datetime import datetime, timedelta
from itertools import pairwise
from typing import Any, Final, NoReturn

from django.utils import timezone
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail

from pieces.domain.drying import BODIES, Cover, Shape
from pieces.domain.what_if import HORIZON_H
from studio.api.fields import FiniteField, MomentField, QuantityField

from .bench_shapes import ConfidenceOut, CurveOut, WindowsOut

CHANGES_MOST: Final = HORIZON_H
FARTHEST: Final = timedelta(days=366)
INSIDES: Final = ("hollow", "board", "free", "shut")


class AirSumIn(serializers.Serializer[Any]):
    """The air of a room; what a meter cannot show is refused."""

    air_c = QuantityField(unit="c", least=0.0, most=50.0)
    humidity_fraction = QuantityField(unit="fraction", least=0.05, most=1.0)


class AirFromIn(AirSumIn):
    """The same from some hours after the beginning on."""

    from_h = FiniteField(min_value=0.0, max_value=HORIZON_H)


class CoverFromIn(serializers.Serializer[Any]):
    from_h = FiniteField(min_value=0.0, max_value=HORIZON_H)
    state = serializers.ChoiceField([cover.value for cover in Cover])


class MouldSumIn(serializers.Serializer[Any]):
    """The plaster it is pressed into; without `until_h`, until the middle guess lets go."""

    free_water_fraction = QuantityField(unit="fraction", least=0.0, most=1.0)
    until_h = FiniteField(min_value=0.01, max_value=HORIZON_H, required=False, allow_null=True)


class MoisturesIn(serializers.Serializer[Any]):
    """Water by mass of dry clay, in place of the body's own figures; they fall in this order."""

    pressed = QuantityField(unit="fraction", least=0.10, most=0.60, required=False)
    demould = QuantityField(unit="fraction", least=0.001, most=0.60, required=False)
    leather_opens = QuantityField(unit="fraction", least=0.001, most=0.60, required=False)
    leather_closes = QuantityField(unit="fraction", least=0.001, most=0.60, required=False)
    shrinkage_ends = QuantityField(unit="fraction", least=0.001, most=0.60, required=False)
    bisque = QuantityField(unit="fraction", least=0.001, most=0.60, required=False)


class DryingSumIn(serializers.Serializer[Any]):
    """A section, its clay, its air, its covers, its mould."""

    begins_at = MomentField(required=False, help_text="The pressing; now when left out.")
    thickest_mm = QuantityField(unit="mm", least=1.0, most=80.0)
    shape = serializers.ChoiceField([shape.value for shape in Shape], default=Shape.FLAT.value)
    inside = serializers.ChoiceField(
        INSIDES,
        default="hollow",
        help_text="What the inner face of a wall meets: the hollow of a form, a board, free air, "
        "or nothing.",
    )
    clay = serializers.ChoiceField(list(BODIES), default="red_earthenware")
    moistures = MoisturesIn(required=False)
    air = AirSumIn(required=False)
    air_series = AirFromIn(many=True, required=False, allow_empty=False)
    cover = serializers.ChoiceField([cover.value for cover in Cover], required=False)
    covers = CoverFromIn(many=True, required=False)
    mould = MouldSumIn(required=False, allow_null=True)
    air_m_s = FiniteField(
        min_value=0.0, max_value=5.0, default=0.0, help_text="How fast the air moves."
    )

    def validate_begins_at(self, value: datetime) -> datetime:
        if abs(value - timezone.now()) > FARTHEST:
            raise serializers.ValidationError("Begin within a year of now.", code="too-far")
        return value

    def validate(self, attrs: dict[str, Any]) -> dict[str, Any]:
        if ("air" in attrs) == ("air_series" in attrs):
            _refuse("air", "Give the air once: air, or air_series.", "required")
        if "cover" in attrs and "covers" in attrs:
            _refuse("cover", "Give cover or covers, not both.", "invalid")
        for name in ("air_series", "covers"):
            hours = [row["from_h"] for row in attrs.get(name, ())]
            if len(hours) > CHANGES_MOST:
                _refuse(name, f"At most {CHANGES_MOST} changes.", "too-many")
            if any(later - sooner < 0.01 for sooner, later in pairwise(hours)):
                _refuse(name, "The hours must rise from one to the next.", "out-of-order")
        if "air_series" in attrs and attrs["air_series"][0]["from_h"] != 0.0:
            _refuse("air_series", "The first air must be from hour 0.", "out-of-order")
        return attrs


class SumWarningOut(serializers.Serializer[Any]):
    code = serializers.CharField()
    detail = serializers.CharField()


class DryingSumOut(serializers.Serializer[Any]):
    """Windows and curve as of a piece; both null where no estimate would be sound."""

    begins_at = serializers.DateTimeField()
    windows = WindowsOut(allow_null=True)
    curve = CurveOut(allow_null=True)
    unreachable = serializers.ListField(child=serializers.CharField())
    confidence = ConfidenceOut()
    working = serializers.ListField(child=serializers.CharField())
    warnings = SumWarningOut(many=True)
    source = serializers.CharField()  # type: ignore[assignment]  # a field of that name


class DryingSumHereIn(DryingSumIn):
    """The same in a room of the studio: what was learned of its air and of such clay counts."""

    place_id = serializers.UUIDField(required=False, allow_null=True)


class DryingSumHereOut(DryingSumOut):
    rests_on = serializers.ListField(child=serializers.CharField())


def _refuse(name: str, detail: str, code: str) -> NoReturn:
    raise serializers.ValidationError({name: [ErrorDetail(detail, code)]})
