"""How readings of the air come in and go out."""

from collections.abc import Mapping
from datetime import datetime
from typing import IO, Any
from uuid import UUID, uuid5

from django.utils import timezone
from drf_spectacular.utils import extend_schema_field
from rest_framework import parsers, serializers
from rest_framework.exceptions import ErrorDetail, ParseError

from studio.domain import climate
from studio.models import ClimateReading

from .envelopes import FUTURE_MOST, ActIn, ActOut, ChangeIn
from .fields import MomentField, QuantityField

READINGS_MOST = 5000
TABLE_MOST_BYTES = 4_000_000
CSV_SPACE = UUID("6f1d2b0e-5f0c-5e6b-9f59-1c1b7a3f0d11")

IN_THE_FUTURE = ErrorDetail("That is in the future.", "in-the-future")
NOTHING_READ = ErrorDetail("Give air_c, humidity_fraction or both.", "required")


class ReadingFields(serializers.Serializer[Any]):
    air_c = QuantityField(unit="c", required=False, allow_null=True)
    humidity_fraction = QuantityField(unit="fraction", required=False, allow_null=True)


class ReadingRowIn(ReadingFields):
    taken_at = MomentField()

    def validate_taken_at(self, value: datetime) -> datetime:
        if value > timezone.now() + FUTURE_MOST:
            raise serializers.ValidationError([IN_THE_FUTURE])
        return value

    def validate(self, attrs: dict[str, Any]) -> dict[str, Any]:
        if attrs.get("air_c") is None and attrs.get("humidity_fraction") is None:
            raise serializers.ValidationError({"air_c": [NOTHING_READ]})
        return attrs


class ReadingsIn(ChangeIn, ReadingFields):
    """One reading, taken at `happened_at`; or several under `readings`, or a table as text/csv."""

    readings = ReadingRowIn(many=True, required=False, allow_empty=False)
    table = serializers.CharField(required=False, write_only=True, trim_whitespace=False)

    def validate(self, attrs: dict[str, Any]) -> dict[str, Any]:
        if len(attrs.get("readings", ())) > READINGS_MOST:
            detail = ErrorDetail(f"At most {READINGS_MOST} at a time.", "too-many")
            raise serializers.ValidationError({"readings": [detail]})
        is_alone = "readings" not in attrs and "table" not in attrs
        if is_alone and attrs.get("air_c") is None and attrs.get("humidity_fraction") is None:
            raise serializers.ValidationError({"air_c": [NOTHING_READ]})
        return attrs


class ReadingOut(serializers.ModelSerializer[ClimateReading]):
    did_you_mean_c = serializers.SerializerMethodField(
        help_text="What its warmth is if °F was meant, as long as nobody has answered."
    )

    class Meta:
        model = ClimateReading
        fields = ("id", "taken_at", "air_c", "humidity_fraction", "use", "why", "did_you_mean_c")

    @extend_schema_field(serializers.FloatField(allow_null=True))
    def get_did_you_mean_c(self, row: ClimateReading) -> float | None:
        return climate.may_mean_c(row.air_c, row.why)


class ReadingWarningOut(serializers.Serializer[Any]):
    reading_id = serializers.UUIDField()
    taken_at = serializers.DateTimeField()
    use = serializers.ChoiceField(ClimateReading.Use.choices)
    code = serializers.CharField()
    detail = serializers.CharField()
    did_you_mean_c = serializers.FloatField(allow_null=True)
    did_you_mean_fraction = serializers.FloatField(allow_null=True)


class ReadingsOut(serializers.Serializer[Any]):
    id = serializers.UUIDField()
    journal_seq = serializers.IntegerField()
    stored = serializers.IntegerField()
    repeated = serializers.IntegerField(help_text="Readings that were here already.")
    reading = ReadingOut(allow_null=True, help_text="The reading, where there is one only.")
    warnings = ReadingWarningOut(many=True)
    passed_over = serializers.ListField(
        child=serializers.CharField(), help_text="Columns of a table that were not read."
    )


class ReadingAnswerIn(ActIn):
    answer = serializers.ChoiceField(["fahrenheit", "percent", "as_given", "leave_out"])


class ReadingAnswerOut(ActOut):
    reading = ReadingOut(help_text="The row that is used for it now.")


class AirStepOut(serializers.Serializer[Any]):
    """The mean air of one step; humidity is reckoned from the mean vapour density."""

    at = serializers.DateTimeField()
    air_c = serializers.FloatField()
    humidity_fraction = serializers.FloatField()
    vapour_kg_m3 = serializers.FloatField()


class AirStepsOut(serializers.Serializer[Any]):
    every_s = serializers.IntegerField()
    results = AirStepOut(many=True)


class TableParser(parsers.BaseParser):
    """A table as it is; the same table sent again is the same act unless a key says otherwise."""

    media_type = "text/csv"

    def parse(
        self,
        stream: IO[bytes],
        media_type: str | None = None,
        parser_context: Mapping[str, Any] | None = None,
    ) -> dict[str, str]:
        raw = stream.read(TABLE_MOST_BYTES + 1)
        if len(raw) > TABLE_MOST_BYTES:
            raise ParseError(f"A table has at most {TABLE_MOST_BYTES // 1_000_000} MB.")
        try:
            table = raw.decode("utf-8-sig")
        except UnicodeDecodeError as error:
            raise ParseError(f"The table is not UTF-8 at byte {error.start}.") from error
        given = parser_context or {}
        request = given.get("request")
        key = request.headers.get("Idempotency-Key") if request is not None else None
        path = request.path if request is not None else ""
        made = str(uuid5(CSV_SPACE, f"{path}\n{table}"))
        return {"id": key.strip('"') if key else made, "table": table}


def as_reading(given: Mapping[str, Any], taken_at: datetime) -> climate.Reading:
    return climate.Reading(taken_at, given.get("air_c"), given.get("humidity_fraction"))
