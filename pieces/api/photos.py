"""Photos of a piece with nothing else to say of it."""

from collections.abc import Mapping
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import photos
from studio.api.photo_shapes import PhotographedIn, PhotographedOut
from studio.api.views import Given
from studio.models import Act
from studio.permissions import P
from studio.queries.photos import ids_by_subject

from .base import PieceView


class PiecePhotoList(PieceView):
    needs = {"POST": P.ADD_PHOTO}

    @extend_schema(request=PhotographedIn, responses={201: PhotographedOut})
    def post(self, request: Request, piece_id: UUID) -> Response:
        """Say that photos show a piece; anybody may."""
        piece = self.piece(piece_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            photos.show(act=act, kind="piece", subject_id=piece.pk)
            return {"photo_ids": ids_by_subject(self.studio, [piece.pk])[piece.pk]}

        return self.once(PhotographedIn, work)
