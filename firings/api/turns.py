"""A piece is put first in the queue by somebody who says why."""

from collections.abc import Mapping
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import cones
from pieces.models import Piece
from studio.api.views import Given, StudioView
from studio.models import Act
from studio.permissions import P

from .given import TurnIn
from .shapes_queue import QueueTurnOut, TurnActOut


class TurnList(StudioView):
    """Who settles loads may set the rule aside for a piece; everybody reads why."""

    needs = {"POST": P.SETTLE_LOADS}

    @extend_schema(request=TurnIn, responses={201: TurnActOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Put a piece first for its next firing of a kind."""
        piece = self.find(Piece, id=piece_id, is_undone=False)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            names = ("kind", "reason")
            row = cones.put_first(act=act, piece=piece, **{name: given[name] for name in names})
            return {"turn": QueueTurnOut(row).data}

        return self.once(TurnIn, work)
