"""Taking acts back: what was told of pieces and of loads."""

from collections.abc import Mapping

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import retractions
from firings.queries import loads as queries
from pieces.api.base import PieceView
from pieces.api.given import RetractionIn
from pieces.models import Piece
from studio.api.views import Given
from studio.models import Act
from studio.permissions import P

from .shapes_queue import RetractionOut
from .shown import shown_briefs


class RetractionList(PieceView):
    """One's own acts, or anybody's for who may advance anybody's pieces."""

    needs = {"POST": P.SEE_STUDIO}

    @extend_schema(request=RetractionIn, responses={201: RetractionOut})
    def post(self, request: Request) -> Response:
        """Take an act back: it stays in the story, struck through."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            may_any = P.ADVANCE_ANY in self.grants
            entry = retractions.retract(act=act, may_any=may_any)
            told_of = entry.subjects.values_list("kind", "subject_id")
            pieces = [pk for kind, pk in told_of if kind == "piece"]
            loads = [pk for kind, pk in told_of if kind == "load"]
            rows = list(queries.listed(self.studio).filter(pk__in=loads).order_by("pk"))
            return {
                "corrects": given["corrects"],
                "pieces": self.briefs(list(Piece.objects.of(self.studio).filter(pk__in=pieces))),
                "loads": shown_briefs(rows, queries.placements_of(rows)),
            }

        return self.told(RetractionIn, work)
