"""Pieces to look over for crumbs of plaster, before they are fired."""

from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from moulds.models import MouldSet
from pieces.queries.crumbs import crumb_check
from studio.permissions import P

from .base import PieceView
from .bench_rows import shown_piece
from .bench_shapes import PieceNamedOut
from .shapes import Shape


class CrumbRowOut(Shape):
    """One pressing, and the pieces that its clay went into."""

    pressing_id = serializers.UUIDField()
    pressed_at = serializers.DateTimeField()
    count = serializers.IntegerField()
    pieces = PieceNamedOut(many=True)


class CrumbCheckOut(Shape):
    generation = serializers.IntegerField(
        allow_null=True, help_text="Of the casting that was pressed last; null: never pressed."
    )
    rows = CrumbRowOut(many=True)


class CrumbCheckOne(PieceView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="crumb_check_read", responses=CrumbCheckOut)
    def get(self, request: Request, set_id: UUID) -> Response:
        """Show the last presses, newest first; of a hurt part, all since it was found good."""
        found = crumb_check(self.find(MouldSet, id=set_id), until=timezone.now())
        rows = [
            {
                "pressing_id": pressing.pk,
                "pressed_at": pressing.happened_at,
                "count": pressing.count,
                "pieces": [shown_piece(piece) for piece in pieces],
            }
            for pressing, pieces in (found.rows if found else ())
        ]
        return Response({"generation": found.casting.generation if found else None, "rows": rows})
