"""The papers of an order: what they would say now, a draft, and those that were signed."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.http import HttpResponse
from django.utils import timezone
from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import papers
from firings.domain.papers import state_of, wanting, written
from firings.queries import papers as queries
from firings.queries.papers import Gathered
from pieces.api.commission_base import PROMISE, CommissionView
from pieces.models import Commission
from studio.api.views import Given, UnknownThing
from studio.domain.sheets import drawn
from studio.models import Act, FrozenCopy
from studio.permissions import P
from studio.queries import journal
from studio.queries.frozen import body_of, copies_of

from .food import shown_eaten
from .papers_shapes import PapersFactsOut, PapersIn, PapersQueryIn, SignedOut

PDF = "application/pdf"


class CommissionPapers(CommissionView):
    """Whoever may promise for the order may read its papers; the owner signs them in person."""

    for_shared_phone = False
    needs = {"GET": PROMISE, "POST": P.SIGN_PAPERS}
    in_person = True

    @extend_schema(
        operation_id="commissions_papers",
        parameters=[PapersQueryIn],
        responses={(200, PDF): OpenApiTypes.BINARY},
    )
    def get(self, request: Request, commission_id: UUID) -> HttpResponse:
        """Give the papers as they stand now, as a draft to print."""
        row = self.own_commission(commission_id)
        people = self.given(PapersQueryIn, request.query_params)["people"]
        today = queries.on_day(timezone.now(), row)
        paper = written(queries.gathered(row, people=people).facts, on=today)
        return _pdf(drawn(paper), f"{row.number}-draft")

    @extend_schema(request=PapersIn, responses={201: SignedOut})
    def post(self, request: Request, commission_id: UUID) -> Response:
        """Sign the papers: they are kept as they stand, and what is told later stands beside."""
        row = self.commission(commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            copy = papers.sign(
                act=act, commission=row, declares=given["declares"], people=given["people"]
            )
            return {"paper": shown_copy(copy)}

        return self.once(PapersIn, work)


class CommissionPapersFacts(CommissionView):
    for_shared_phone = False
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="commissions_papers_facts", responses=PapersFactsOut)
    def get(self, request: Request, commission_id: UUID) -> Response:
        """Say what is in the papers, what is missing, and which were signed."""
        row = self.commission(commission_id)
        return Response(self._facts(row, queries.gathered(row)))

    def _facts(self, row: Commission, found: Gathered) -> dict[str, Any]:
        return {
            "at": timezone.now(),
            "journal_seq": journal.highest_seq(self.studio),
            "number": row.number,
            "state": state_of(found.facts, found.signature),
            "pieces": [shown_eaten(one) for one in found.eaten],
            "missing": wanting(found.facts),
            "materials": [{"what": name, "caution": text} for name, text in found.facts.materials],
            "kept": [shown_copy(copy) for copy in found.kept],
            "told_since": len(found.facts.later),
            "may": {
                "sign": P.SIGN_PAPERS in self.grants,
                "print": P.PROMISE_OWN in self.grants and self._reaches(row),
            },
        }


class SignedPapers(CommissionView):
    for_shared_phone = False
    needs = {"GET": PROMISE}

    @extend_schema(
        operation_id="commissions_papers_signed", responses={(200, PDF): OpenApiTypes.BINARY}
    )
    def get(self, request: Request, commission_id: UUID, copy_id: UUID) -> HttpResponse:
        """Give papers as they were signed, byte for byte."""
        row = self.own_commission(commission_id)
        copy = copies_of(self.studio, row.pk, kind=queries.KIND).filter(pk=copy_id).first()
        if copy is None:
            raise UnknownThing("No such papers here.")
        return _pdf(body_of(copy), f"{row.number}-{copy.sha256[:8]}")


def shown_copy(copy: FrozenCopy) -> dict[str, Any]:
    """Return papers that were signed, without their bytes."""
    return {
        "id": copy.pk,
        "title": copy.title,
        "signed_at": copy.happened_at,
        "signed_by": copy.entry.member.full_name,
        "sha256": copy.sha256,
        "is_declared": bool(copy.entry.facts.get("declares")),
    }


def _pdf(body: bytes, name: str) -> HttpResponse:
    answer = HttpResponse(body, content_type=PDF)
    answer["Content-Disposition"] = f'inline; filename="{name}.pdf"'
    answer["Cache-Control"] = "private, no-store"
    return answer
