"""The air of a place: readings in, readings or even steps out."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any, NoReturn
from uuid import UUID
from zoneinfo import ZoneInfo

from django.utils import timezone
from django.utils.dateparse import parse_datetime
from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import OpenApiParameter, PolymorphicProxySerializer, extend_schema
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import climate as actions
from studio.domain import climate, climate_table, resample
from studio.domain.refusals import Unworkable
from studio.models import Act, ClimateReading, Place
from studio.permissions import P
from studio.queries import air

from .envelopes import FUTURE_MOST
from .pages import keyset, paged
from .parsers import JSONParser
from .reading_shapes import (
    AirStepsOut,
    ReadingAnswerIn,
    ReadingAnswerOut,
    ReadingOut,
    ReadingsIn,
    ReadingsOut,
    TableParser,
    as_reading,
)
from .views import Given, StudioView

STEPS_MOST = 5000
WARNINGS_MOST = 100
FAULTS_MOST = 50

SERIES = PolymorphicProxySerializer(
    component_name="ReadingsOrSteps",
    serializers=[paged(ReadingOut), AirStepsOut],
    resource_type_field_name=None,
)
PARAMETERS = [
    OpenApiParameter("from", OpenApiTypes.DATETIME),
    OpenApiParameter("to", OpenApiTypes.DATETIME),
    OpenApiParameter("use", str, enum=ClimateReading.Use.values),
    OpenApiParameter("every", int, description="Seconds; gives means of even steps instead."),
]


class ReadingList(StudioView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.RECORD_CLIMATE}
    parser_classes = (JSONParser, TableParser)

    @extend_schema(operation_id="readings_list", parameters=PARAMETERS, responses=SERIES)
    def get(self, request: Request, place_id: UUID) -> Response:
        """List readings as given, newest first; with `every`, hourly or other even means."""
        place = self.find(Place, id=place_id)
        rows = air.standing(ClimateReading.objects.filter(place=place))
        from_at, to_at = (self._moment(name) for name in ("from", "to"))
        if from_at is not None:
            rows = rows.filter(taken_at__gte=from_at)
        if to_at is not None:
            rows = rows.filter(taken_at__lt=to_at)
        if "every" in request.query_params:
            return self._steps(place, from_at, to_at)
        if use := request.query_params.get("use"):
            rows = rows.filter(use=use)
        return keyset(rows, request, fields=("-taken_at", "id"), size=500).answer(ReadingOut)

    @extend_schema(
        request={"application/json": ReadingsIn, "text/csv": OpenApiTypes.STR},
        responses={201: ReadingsOut},
    )
    def post(self, request: Request, place_id: UUID) -> Response:
        """Keep readings; odd ones are kept too, with a warning, and left out or asked about."""
        place = self.find(Place, id=place_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            readings, passed_over = self._readings(place, given, act)
            done = actions.record(act=act, place=place, readings=readings)
            is_alone = len(done.rows) == 1
            return {
                "stored": len(done.rows),
                "repeated": done.repeated,
                "reading": ReadingOut(done.rows[0]).data if is_alone else None,
                "warnings": list(_warnings(done))[:WARNINGS_MOST],
                "passed_over": passed_over,
            }

        return self.once(ReadingsIn, work)

    def _readings(
        self, place: Place, given: Given, act: Act
    ) -> tuple[Sequence[climate.Reading], list[str]]:
        if "table" in given:
            return self._of_table(place, given["table"], act.written_at)
        if "readings" in given:
            return [as_reading(row, row["taken_at"]) for row in given["readings"]], []
        return [as_reading(given, act.happened_at)], []

    def _of_table(
        self, place: Place, text: str, now: datetime
    ) -> tuple[Sequence[climate.Reading], list[str]]:
        try:
            table = climate_table.read_table(text, ZoneInfo(self.studio.zone))
        except Unworkable as refusal:
            raise serializers.ValidationError(
                {"table": [ErrorDetail(refusal.detail, refusal.code)]}
            ) from refusal
        faults = [
            (fault.line, fault.column, ErrorDetail(fault.detail, fault.code))
            for fault in table.faults
        ]
        for row in table.rows:
            if row.reading.taken_at > now + FUTURE_MOST:
                detail = ErrorDetail("That is in the future.", "in-the-future")
                faults.append((row.line, climate_table.TIME_COLUMN, detail))
            if row.place is not None and row.place.casefold() != place.name.casefold():
                detail = ErrorDetail(f"This is {place.name}, not {row.place}.", "another-place")
                faults.append((row.line, climate_table.PLACE_COLUMN, detail))
        if faults:
            lines: dict[str, dict[str, list[ErrorDetail]]] = {}
            for line, column, detail in sorted(faults, key=lambda fault: fault[:2])[:FAULTS_MOST]:
                lines.setdefault(f"line {line}", {}).setdefault(column, []).append(detail)
            raise serializers.ValidationError(lines)
        if not table.rows:
            detail = ErrorDetail("The table holds no reading.", "empty")
            raise serializers.ValidationError({"table": [detail]})
        return [row.reading for row in table.rows], table.passed_over

    def _steps(self, place: Place, from_at: datetime | None, to_at: datetime | None) -> Response:
        every = self.request.query_params["every"]
        if not every.isascii() or not every.isdigit() or not 60 <= int(every[:9]) <= 86_400:
            _refuse("every", "Give whole seconds, from 60 to 86400.")
        every_s = int(every)
        until = to_at or timezone.now()
        if from_at is None:
            _refuse("from", "Say from when.")
        if not 0 < (until - from_at).total_seconds() <= STEPS_MOST * every_s:
            _refuse("to", f"Ask for at most {STEPS_MOST} steps, and end after you begin.")
        samples = air.samples_of(place, from_at - actions.AROUND, until + actions.AROUND)
        steps = resample.even_steps(
            [(at.timestamp(), air_c, share) for at, air_c, share in samples],
            from_s=from_at.timestamp(),
            until_s=until.timestamp(),
            step_s=every_s,
        )
        results = [
            {
                "at": datetime.fromtimestamp(step.starts_s, tz=from_at.tzinfo),
                "air_c": step.air_c,
                "humidity_fraction": step.humidity_fraction,
                "vapour_kg_m3": step.vapour_kg_m3,
            }
            for step in steps
        ]
        return Response(AirStepsOut({"every_s": every_s, "results": results}).data)

    def _moment(self, name: str) -> datetime | None:
        text = self.request.query_params.get(name)
        if text is None:
            return None
        try:
            # A plus sign that was not escaped arrives as a blank.
            moment = parse_datetime(text.replace(" ", "+"))
        except ValueError:
            moment = None
        if moment is None or moment.tzinfo is None:
            _refuse(name, "Give an instant with its offset, as in 2026-10-31T09:00:00Z.")
        return moment


class ReadingAnswerList(StudioView):
    needs = {"POST": P.RECORD_CLIMATE}

    @extend_schema(request=ReadingAnswerIn, responses={201: ReadingAnswerOut})
    def post(self, request: Request, reading_id: UUID) -> Response:
        """Say what an odd reading meant; the last answer stands."""
        reading = self.find(ClimateReading, id=reading_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            used = actions.answer(act=act, reading=reading, answer=given["answer"])
            return {"reading": ReadingOut(used).data}

        return self.once(ReadingAnswerIn, work)


def _refuse(name: str, detail: str) -> NoReturn:
    raise serializers.ValidationError({name: [ErrorDetail(detail, "invalid")]})


def _warnings(done: actions.Recorded) -> Any:
    for row, judged in zip(done.rows, done.judgements, strict=True):
        if judged.use != "used":
            yield {
                "reading_id": row.pk,
                "taken_at": row.taken_at,
                "use": judged.use,
                "code": judged.reason,
                "detail": judged.detail,
                "did_you_mean_c": judged.did_you_mean_c,
                "did_you_mean_fraction": judged.did_you_mean_fraction,
            }
