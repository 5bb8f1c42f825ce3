"""Test reports, and what they say of a piece. A record; nothing here declares anything."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.domain.food import Batch
from firings.queries.food import Eaten, eaten, verdict_of
from pieces.actions import reports
from pieces.api.commission_base import PROMISE
from pieces.api.commission_shown import shown_report
from pieces.models import TestReport
from pieces.queries import commissions as queries
from pieces.queries import pieces as piece_queries
from studio.api.pages import keyset, paged
from studio.api.views import Given, StudioView, UnknownThing
from studio.domain.food_contact import HOW_TESTED, JURISDICTION, SOURCES, Limits
from studio.models import Act
from studio.permissions import P

from .food_shapes import (
    FoodContactOut,
    JudgedReportOut,
    TestReportActOut,
    TestReportIn,
    given_report,
)

Shown = dict[str, Any]

NOT_DECLARED = (
    "It is kept as the laboratory wrote it. Whoever sells the ware answers for it; nothing is "
    "declared by keeping a report."
)


class TestReportList(StudioView):
    __test__ = False

    needs = {"GET": P.SEE_STUDIO, "POST": PROMISE}

    @extend_schema(operation_id="test_reports_list", responses=paged(JudgedReportOut))
    def get(self, request: Request) -> Response:
        """List what laboratories wrote, newest first; what was put right since is left out."""
        rows = queries.reports_in(self.studio)
        page = keyset(rows, request, fields=("-reported_on", "-id"))
        return Response({"results": [judged_report(row) for row in page.rows], "next": page.next})

    @extend_schema(request=TestReportIn, responses={201: TestReportActOut})
    def post(self, request: Request) -> Response:
        """Keep what a laboratory wrote about lead and cadmium; `corrects` puts one right."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            for named in (given["commission"], given["piece"]):
                if named is not None:
                    self.check_reach(named)
            row = reports.record(act=act, given=given_report(given))
            kept = queries.reports_in(self.studio).get(pk=row.pk)
            return {"report": judged_report(kept), "cautions": [NOT_DECLARED]}

        return self.once(TestReportIn, work)


class PieceFoodContact(StudioView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="pieces_food_contact", responses=FoodContactOut)
    def get(self, request: Request, piece_id: UUID) -> Response:
        """Say which limits a piece falls under, and whether a report speaks for it."""
        piece = piece_queries.listed(self.studio).filter(pk=piece_id).first()
        if piece is None:
            raise UnknownThing("No such piece here.")
        return Response(
            {
                **shown_eaten(eaten(self.studio, [piece])[0]),
                "jurisdiction": JURISDICTION,
                "how_tested": HOW_TESTED,
                "sources": list(SOURCES),
            }
        )


def judged_report(row: TestReport) -> Shown:
    """Return a report, and how its results stand to the limits of the ware that was tested."""
    verdict = verdict_of(row)
    return {
        **shown_report(row),
        "limits": shown_limits(verdict.limits),
        "verdict": {"code": verdict.code, "words": verdict.words},
    }


def shown_eaten(row: Eaten) -> Shown:
    """Return what reports say of one piece."""
    fired, piece = row.fired, row.piece
    return {
        "piece_id": piece.pk,
        "mark": piece.shown_mark,
        "design_id": piece.design_id,
        "design": piece.design.name,
        "use": piece.use,
        "limits": shown_limits(row.limits),
        "glaze_batches": [
            {"id": batch.id, "label": batch.label} for batch in _named(row.dips) if batch
        ],
        "fired": {"load": fired.load, "kiln": fired.kiln, "cone": fired.cone} if fired else None,
        "coverage": {
            "code": row.told.code,
            "words": row.told.words,
            "report_ids": list(row.told.reports),
        },
    }


def shown_limits(limits: Limits | None) -> Shown | None:
    """Return limits as figures and in words."""
    if limits is None:
        return None
    return {
        "name": limits.name,
        "words": limits.words,
        "lead": limits.lead,
        "cadmium": limits.cadmium,
        "unit": limits.unit,
    }


def _named(dips: Any) -> list[Batch]:
    return list(dict.fromkeys(batch for batch in dips if batch is not None))
