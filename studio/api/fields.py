"""Fields that read what people type, and keep it."""

import math
from datetime import datetime
from typing import Any

from drf_spectacular.utils import extend_schema_field
from rest_framework import serializers

from studio.domain import units
from studio.domain.refusals import Refusal


@extend_schema_field({"oneOf": [{"type": "number"}, {"type": "string"}]})
class QuantityField(serializers.Field[float, object, float, object]):
    """A number in `unit`, or a text with a unit of the same kind ("3/8 in", "61 °F")."""

    def __init__(
        self, *, unit: str, least: float | None = None, most: float | None = None, **kw: Any
    ) -> None:
        super().__init__(**kw)
        self.unit, self.least, self.most = unit, least, most

    def to_internal_value(self, data: object) -> float:
        if isinstance(data, bool) or not isinstance(data, int | float | str):
            raise serializers.ValidationError(f"Give a number in {self.unit}.", code="not-a-number")
        try:
            typed = units.read(data, into=self.unit)
        except Refusal as refusal:
            raise serializers.ValidationError(refusal.detail, code=refusal.code) from refusal
        if self.least is not None and typed.value < self.least:
            raise serializers.ValidationError(
                f"At least {self.least:g} {self.unit}, not {typed.value:g}.", code="min-value"
            )
        if self.most is not None and typed.value > self.most:
            raise serializers.ValidationError(
                f"At most {self.most:g} {self.unit}, not {typed.value:g}.", code="max-value"
            )
        if typed.as_typed is not None:
            self.context["as_typed"][self._pointer()] = typed.as_typed
        return typed.value

    def to_representation(self, value: float) -> float:
        return value

    def _pointer(self) -> str:
        names: list[str] = []
        field: Any = self
        while field is not None and field.field_name:
            names.append(field.field_name)
            field = field.parent
        return "/" + "/".join(reversed(names))


class FiniteField(serializers.FloatField):
    """A number; "nan" and "inf" are none, though Python reads them."""

    def to_internal_value(self, data: Any) -> float:
        value = float(super().to_internal_value(data))
        if not math.isfinite(value):
            self.fail("invalid")
        return value


class MomentField(serializers.DateTimeField):
    """An instant: ISO 8601 with an offset; a time without one is refused, not guessed."""

    def enforce_timezone(self, value: datetime) -> datetime:
        if value.tzinfo is None:
            raise serializers.ValidationError(
                "Say the offset too, as in 2026-10-31T09:00:00Z.", code="no-offset"
            )
        return super().enforce_timezone(value)
