"""Photos: sent once, shown to whoever may see the studio's things, to nobody else."""

from collections.abc import Mapping
from uuid import UUID

from django.http import HttpResponse
from django.utils.cache import patch_vary_headers
from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import OpenApiParameter, extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from studio.actions import photos
from studio.models import Act, Photo, PhotoSize
from studio.permissions import P
from studio.queries import photos as queries

from .pages import keyset, paged
from .parsers import PhotoParser
from .photo_shapes import PhotoActOut, PhotoIn, PhotoOut, shown_photo
from .related import uuid_of
from .views import Given, StudioView

# A photo never changes; a phone that was lent asks again after an hour.
KEPT_FOR_S = 3600


class PhotoList(StudioView):
    needs = {"GET": P.SEE_STUDIO, "POST": P.ADD_PHOTO}
    parser_classes = (PhotoParser,)

    @extend_schema(
        operation_id="photos_list",
        parameters=[OpenApiParameter("subject", UUID, description="Only what shows this thing.")],
        responses=paged(PhotoOut),
    )
    def get(self, request: Request) -> Response:
        """List photos, newest first."""
        subject = request.query_params.get("subject")
        rows = queries.all_of(self.studio)
        if subject is not None:
            rows = queries.about(self.studio, uuid_of("subject", subject))
        return keyset(rows, request, fields=("-happened_at", "-id")).answer(PhotoOut)

    @extend_schema(request={"multipart/form-data": PhotoIn}, responses={201: PhotoActOut})
    def post(self, request: Request) -> Response:
        """Keep a photo without what the camera wrote into it; 413 when it is too large."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            return {"photo": shown_photo(photos.add(act=act, developed=given["photo"]))}

        return self.once(PhotoIn, work)


class PhotoOne(StudioView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(operation_id="photos_one", responses=PhotoOut)
    def get(self, request: Request, photo_id: UUID) -> Response:
        """Tell of one photo."""
        return Response(shown_photo(self.find(Photo, id=photo_id)))


class PhotoImage(StudioView):
    needs = {"GET": P.SEE_STUDIO}
    size = PhotoSize.IMAGE

    @extend_schema(
        operation_id="photos_image", responses={(200, "image/jpeg"): OpenApiTypes.BINARY}
    )
    def get(self, request: Request, photo_id: UUID) -> HttpResponse:
        """Give the picture, at most 2048 pixels at its longest side."""
        return picture(self.find(Photo, id=photo_id), self.size)


class PhotoThumbnail(PhotoImage):
    size = PhotoSize.THUMBNAIL

    @extend_schema(
        operation_id="photos_thumbnail", responses={(200, "image/jpeg"): OpenApiTypes.BINARY}
    )
    def get(self, request: Request, photo_id: UUID) -> HttpResponse:
        """Give the picture, at most 256 pixels at its longest side."""
        return super().get(request, photo_id)


def picture(photo: Photo, size: PhotoSize) -> HttpResponse:
    """Answer with a JPEG that only the browser it went to may keep.

    The caller has made sure that whoever asks may see what the photo shows.
    """
    answer = HttpResponse(queries.read(photo, size), content_type="image/jpeg")
    answer["Cache-Control"] = f"private, max-age={KEPT_FOR_S}"
    answer["X-Content-Type-Options"] = "nosniff"
    answer["Content-Disposition"] = f'inline; filename="{photo.pk}.jpg"'
    patch_vary_headers(answer, ("Cookie", "Authorization", "X-Natch-Member"))
    return answer
