"""How readings of a kiln come in: shapes only, no rules."""

import re
from datetime import datetime
from typing import Any

from django.utils import timezone
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail

from studio.api.envelopes import FUTURE_MOST, ChangeIn
from studio.api.fields import QuantityField

from .given import HOTTEST_C
from .given_kilns import Shape, SlotField, words

READINGS_MOST = 5000
LEAST_C = -273.15
PLAIN = re.compile(r"\s*\d{1,4}\s*")


class KilnCelsiusField(QuantityField):
    """What a kiln shows. A plain number is kept however hot: it may have been read in °F."""

    def __init__(self, **kw: Any) -> None:
        super().__init__(unit="c", least=LEAST_C, most=HOTTEST_C, **kw)

    def to_internal_value(self, data: object) -> float:
        if isinstance(data, int | float) and not isinstance(data, bool):
            plain = float(data) if LEAST_C <= data <= HOTTEST_C else None
        else:
            plain = float(data) if isinstance(data, str) and PLAIN.fullmatch(data) else None
        return super().to_internal_value(data) if plain is None else plain


class KilnReadingFields(Shape):
    set_c = KilnCelsiusField(required=False, allow_null=True)
    words = words()


class KilnReadingRowIn(KilnReadingFields):
    taken_at = SlotField()
    reading_c = KilnCelsiusField()

    def validate_taken_at(self, value: datetime) -> datetime:
        if value > timezone.now() + FUTURE_MOST:
            raise serializers.ValidationError("That is in the future.", "in-the-future")
        return value


class KilnReadingsIn(ChangeIn, KilnReadingFields):
    """One reading, taken at `happened_at`; or several under `readings`, or a table as text/csv."""

    happened_at = SlotField(required=False)
    reading_c = KilnCelsiusField(required=False)
    readings = KilnReadingRowIn(many=True, required=False, allow_empty=False)
    table = serializers.CharField(required=False, write_only=True, trim_whitespace=False)

    def validate(self, given: dict[str, Any]) -> dict[str, Any]:
        if len(given.get("readings", ())) > READINGS_MOST:
            detail = ErrorDetail(f"At most {READINGS_MOST} at a time.", "too-many")
            raise serializers.ValidationError({"readings": [detail]})
        if not {"readings", "table", "reading_c"} & given.keys():
            detail = ErrorDetail("Say what the kiln shows.", "required")
            raise serializers.ValidationError({"reading_c": [detail]})
        return given
