"""Which pieces stand together, and which order a piece is promised to."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.db.models import Q
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions import assigning, matches
from pieces.actions.shapes import Warned
from pieces.models import Commission, Match
from studio.api.pages import keyset, paged
from studio.api.views import Given
from studio.models import Act
from studio.permissions import P

from .commission_base import PAIR, PLAN_SETS, CommissionView
from .commission_given import AssignmentIn, MatchFilterIn, MatchIn
from .commission_shapes import AssignedOut, MatchActOut, MatchOut
from .commission_shown import shown_match
from .shown import shown_words


class MatchList(CommissionView):
    needs = {"GET": P.SEE_STUDIO, "POST": PAIR}

    @extend_schema(
        operation_id="matches_list", parameters=[MatchFilterIn], responses=paged(MatchOut)
    )
    def get(self, request: Request) -> Response:
        """List what was said of pieces that stand together, newest first."""
        wanted = self.given(MatchFilterIn, request.query_params).get("piece")
        rows = _matches().filter(studio=self.studio)
        if wanted is not None:
            rows = rows.filter(Q(first=wanted) | Q(second=wanted))
        page = keyset(rows, request, fields=("-happened_at", "-id"))
        return Response({"results": [shown_match(row) for row in page.rows], "next": page.next})

    @extend_schema(request=MatchIn, responses={201: MatchActOut})
    def post(self, request: Request) -> Response:
        """Say that two pieces stand together, or not any more; the newest word counts."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            by_id = {piece.pk: piece for piece in self.named_pieces(given["piece_ids"])}
            first, second = (by_id[pk] for pk in given["piece_ids"])
            self.may(PAIR, first, second)
            warnings: list[Warned] = []
            if given["kind"] == Match.Kind.MATCHED:
                row, warnings = matches.match(
                    act=act, first=first, second=second, seat_gap_mm=given["seat_gap_mm"]
                )
            else:
                row = matches.part(act=act, first=first, second=second)
            return {
                "match": shown_match(_matches().get(pk=row.pk)),
                "pieces": self.briefs([first, second]),
                "warnings": shown_words(warnings),
            }

        return self.once(MatchIn, work)


class AssignmentList(CommissionView):
    needs = {"POST": PLAN_SETS}

    @extend_schema(request=AssignmentIn, responses={201: AssignedOut})
    def post(self, request: Request) -> Response:
        """Promise pieces to a line of an order, or to none; their past comes along."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            pieces = self.named_pieces(given["piece_ids"])
            line = given["line"]
            orders: dict[UUID, Commission] = {
                piece.line.commission_id: piece.line.commission for piece in pieces if piece.line
            }
            if line is not None:
                orders[line.commission_id] = line.commission
            # A piece of an order is its maker's word; a piece of none is the word of who made it.
            free = [piece for piece in pieces if piece.line is None]
            self.may(PLAN_SETS, *free, *orders.values())
            said = assigning.assign(act=act, pieces=pieces, line=line, reason=given["reason"])
            return {"pieces": self.briefs(pieces), "warnings": shown_words(said)}

        return self.once(AssignmentIn, work)


def _matches() -> Any:
    return Match.objects.standing().select_related("first", "second", "entry__member")
