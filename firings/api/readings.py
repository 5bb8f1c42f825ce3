"""Readings of a kiln, one by one, as a list or as a table; and its witness cones."""

from collections.abc import Mapping, Sequence
from typing import Any
from uuid import UUID
from zoneinfo import ZoneInfo

from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.exceptions import ErrorDetail
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import cones, readings
from firings.actions.cones import ConeGiven
from firings.actions.readings import ReadingGiven, Recorded
from firings.domain import cautions
from firings.domain.cautions import Caution
from firings.domain.cones import zero_warning
from firings.domain.readings import read_table
from firings.models import KilnReading, Load, WitnessCone
from studio.api.envelopes import FUTURE_MOST
from studio.api.pages import keyset, paged
from studio.api.parsers import JSONParser
from studio.api.reading_shapes import TableParser
from studio.api.views import Given
from studio.domain.refusals import Unworkable
from studio.models import Act
from studio.permissions import P

from .base import LoadView
from .given import ConesIn
from .given_readings import KilnReadingsIn
from .shapes import ConeSeenOut, ConesOut, KilnReadingOut, KilnReadOut
from .shown_kilns import shown_words
from .shown_log import shown_cone, shown_reading

FAULTS_MOST = 50


class KilnReadingList(LoadView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.RECORD_FIRINGS}
    parser_classes = (JSONParser, TableParser)

    @extend_schema(operation_id="kiln_readings_list", responses=paged(KilnReadingOut))
    def get(self, request: Request, load_id: UUID) -> Response:
        """List the readings of a load as given, newest first."""
        load = self.load(load_id)
        rows = KilnReading.objects.filter(load=load).standing().select_related("entry__member")
        page = keyset(rows, request, fields=("-happened_at", "-id"), size=500)
        shown = [shown_reading(row, load) for row in page.rows]
        return Response({"results": shown, "next": page.next})

    @extend_schema(
        request={"application/json": KilnReadingsIn, "text/csv": OpenApiTypes.STR},
        responses={201: KilnReadOut},
    )
    def post(self, request: Request, load_id: UUID) -> Response:
        """Keep readings; odd ones are kept too, asked about and left out of every sum.

        `corrects` names the act of a reading that was wrong: this one stands in its stead.
        """
        load = self.load(load_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            found, passed_over = self._readings(load, given, act)
            done = readings.record(act=act, load=load, readings=found)
            return _answer(Load.objects.get(pk=load.pk), done, passed_over)

        return self.once(KilnReadingsIn, work)

    def _readings(
        self, load: Load, given: Given, act: Act
    ) -> tuple[Sequence[ReadingGiven], list[str]]:
        if "table" in given:
            return self._of_table(load, given["table"], act)
        if "readings" in given:
            return [ReadingGiven(**row) for row in given["readings"]], []
        one = ReadingGiven(act.happened_at, given["reading_c"], given.get("set_c"), given["words"])
        return [one], []

    def _of_table(
        self, load: Load, text: str, act: Act
    ) -> tuple[Sequence[ReadingGiven], list[str]]:
        try:
            table = read_table(text, ZoneInfo(self.studio.zone), load.kiln.top_c)
        except Unworkable as refusal:
            raise serializers.ValidationError(
                {"table": [ErrorDetail(refusal.detail, refusal.code)]}
            ) from refusal
        faults = [
            (fault.line, fault.column, ErrorDetail(fault.detail, fault.code))
            for fault in table.faults
        ]
        late = ErrorDetail("That is in the future.", "in-the-future")
        faults += [
            (row.line, "taken_at", late)
            for row in table.rows
            if row.happened_at > act.written_at + FUTURE_MOST
        ]
        if faults:
            lines: dict[str, dict[str, list[ErrorDetail]]] = {}
            for line, column, detail in sorted(faults, key=lambda fault: fault[:2])[:FAULTS_MOST]:
                lines.setdefault(f"line {line}", {}).setdefault(column, []).append(detail)
            raise serializers.ValidationError(lines)
        if not table.rows:
            detail = ErrorDetail("The table holds no reading.", "empty")
            raise serializers.ValidationError({"table": [detail]})
        rows = [
            ReadingGiven(row.happened_at, row.reading_c, row.set_c, row.words[:200])
            for row in table.rows
        ]
        return rows, table.passed_over


class ConeList(LoadView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.RECORD_FIRINGS}

    @extend_schema(operation_id="cones_list", responses=paged(ConeSeenOut))
    def get(self, request: Request, load_id: UUID) -> Response:
        """List how the cones of a load stood."""
        rows = WitnessCone.objects.filter(load=self.load(load_id)).standing()
        page = keyset(rows, request, fields=("-happened_at", "-id"))
        return Response({"results": [shown_cone(row) for row in page.rows], "next": page.next})

    @extend_schema(request=ConesIn, responses={201: ConesOut})
    def post(self, request: Request, load_id: UUID) -> Response:
        """Keep how the cones stood, shelf by shelf, by the hand of a clock."""
        load = self.load(load_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            rows = cones.record(
                act=act, load=load, cones=[ConeGiven(**row) for row in given["cones"]]
            )
            said = [zero_warning(row.cone, load.kind) for row in rows]
            doubts = [Caution("cone-and-zero", words) for words in said if words]
            return {
                "cones": [shown_cone(row) for row in rows],
                "warnings": shown_words(doubts),
            }

        return self.once(ConesIn, work)


def _answer(load: Load, done: Recorded, passed_over: list[str]) -> dict[str, Any]:
    is_over = any(row.use == KilnReading.Use.OVER_TOP for row in done.rows)
    said = [cautions.OVER_TOP] if is_over else []
    return {
        "stored": len(done.rows),
        "repeated": done.repeated,
        "readings": [shown_reading(row, load) for row in done.rows],
        "warnings": [
            {
                "reading_id": row.pk,
                "code": judged.code,
                "detail": judged.detail,
                "instead_c": judged.instead_c,
            }
            for row, judged in zip(done.rows, done.judged, strict=True)
            if judged.verdict != "taken"
        ],
        "passed_over": passed_over,
        "cautions": shown_words([*said, cautions.NOT_A_SAFETY_DEVICE]),
    }
