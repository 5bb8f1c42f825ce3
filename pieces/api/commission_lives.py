"""The life line of an order: where each of its pieces stood, from when to when."""

from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.domain.lives import Stay, stays
from pieces.models import Piece
from pieces.queries import commissions as queries
from pieces.queries.story import Telling, tellings
from studio.permissions import P
from studio.queries import journal

from .commission_base import CommissionView

Shape = serializers.Serializer[Any]


class StayOut(Shape):
    stage = serializers.CharField()
    state = serializers.CharField()
    cover = serializers.CharField(help_text="How it was covered while it dried; else empty.")
    from_at = serializers.DateTimeField()
    until_at = serializers.DateTimeField(allow_null=True, help_text="Null while it lasts.")


class PieceLifeOut(Shape):
    id = serializers.UUIDField()
    mark = serializers.CharField()
    line_id = serializers.UUIDField()
    spans = StayOut(many=True)


class CommissionLivesOut(Shape):
    at = serializers.DateTimeField()
    journal_seq = serializers.IntegerField()
    pieces = PieceLifeOut(many=True)


class CommissionLives(CommissionView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="commissions_lives", responses=CommissionLivesOut)
    def get(self, request: Request, commission_id: UUID) -> Response:
        """Tell where each piece of an order stood, those that were lost too."""
        pieces = list(queries.pieces_of([self.commission(commission_id)]))
        told = tellings(pieces)
        return Response(
            {
                "at": timezone.now(),
                "journal_seq": journal.highest_seq(self.studio),
                "pieces": [_life(piece, told[piece.pk]) for piece in pieces],
            }
        )


def _life(piece: Piece, told: Telling) -> dict[str, Any]:
    return {
        "id": piece.pk,
        "mark": piece.shown_mark,
        "line_id": piece.line_id,
        "spans": [_span(stay) for stay in stays(told.story(), told.facts)],
    }


def _span(stay: Stay) -> dict[str, Any]:
    return {
        "stage": stay.spot.stage,
        "state": stay.spot.state,
        "cover": stay.cover,
        "from_at": stay.from_at,
        "until_at": stay.until_at,
    }
