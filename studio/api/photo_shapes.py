"""Photos as they come and as they are shown."""

from typing import Any

from django.core.files.uploadedfile import UploadedFile
from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import extend_schema_field
from rest_framework import serializers

from studio.domain import photos
from studio.domain.photos import Developed
from studio.models import Photo

from .envelopes import ActIn, ActOut
from .related import RowField


@extend_schema_field(OpenApiTypes.BINARY)
class PhotoField(serializers.Field[Developed, object, object, object]):
    """A file that holds a photo, read into the form in which photos are kept."""

    default_error_messages = {"not_a_file": "Send the photo as a file."}

    def to_internal_value(self, data: object) -> Developed:
        if not isinstance(data, UploadedFile):
            self.fail("not_a_file")
        if data.size is not None and data.size > photos.BYTES_MOST:
            raise photos.too_many_bytes(data.size)
        return photos.develop(data.read())


class PhotoIn(ActIn):
    """A photo as it was taken. What it shows is said by the acts that name it."""

    photo = PhotoField(help_text="JPEG, PNG or WebP; at most 12 MB and 50 million pixels.")
    corrects = None  # type: ignore[assignment]  # DRF's way to leave a field out
    photo_ids = None  # type: ignore[assignment]


class PhotographedIn(ActIn):
    """Photos of a thing, with nothing else to say of it."""

    photo_ids = RowField(Photo, many=True, allow_empty=False)


class PhotographedOut(ActOut):
    photo_ids = serializers.ListField(
        child=serializers.UUIDField(), help_text="All photos of the thing, newest first."
    )


class PhotoOut(serializers.Serializer[Photo]):
    """A photo; its pictures are at `image/` and `thumbnail/` below its address."""

    id = serializers.UUIDField()
    happened_at = serializers.DateTimeField(help_text="When it was taken, as its act says.")
    sha256 = serializers.CharField()
    width = serializers.IntegerField(help_text="Of the picture as kept. [px]")
    height = serializers.IntegerField(help_text="Of the picture as kept. [px]")
    bytes = serializers.IntegerField()
    taken_by = serializers.CharField(source="entry.member.first_name")


class PhotoActOut(ActOut):
    photo = PhotoOut()


def shown_photo(photo: Photo) -> dict[str, Any]:
    """Return a photo as answers show it."""
    return dict(PhotoOut(photo).data)
