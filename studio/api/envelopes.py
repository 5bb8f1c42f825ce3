"""The envelope of an act, as it comes over the wire."""

import hashlib
import json
from collections.abc import Mapping
from datetime import timedelta
from uuid import UUID

from django.core.files.uploadedfile import UploadedFile
from rest_framework import serializers

from studio.models import Photo

from .fields import MomentField
from .related import RowField

NOTE_MOST = 4000
PHOTOS_MOST = 12
FUTURE_MOST = timedelta(minutes=5)


class ActIn(serializers.Serializer[Mapping[str, object]]):
    """What every act says of itself; each act adds its own fields."""

    id = serializers.UUIDField(
        help_text="Made by the writer; the same id sent again is the same act."
    )
    happened_at = MomentField(help_text="When it happened, as the person says.")
    based_on = serializers.IntegerField(
        min_value=0,
        max_value=2**53,
        default=0,
        help_text="Highest journal number this device had seen.",
    )
    sent_at = MomentField(required=False, help_text="The sender's clock at sending.")
    corrects = serializers.UUIDField(required=False, allow_null=True, default=None)
    note = serializers.CharField(
        required=False,
        allow_blank=True,
        default="",
        max_length=NOTE_MOST,
        trim_whitespace=False,  # kept as it was typed, the tab before it too
    )
    photo_ids = RowField(
        Photo,
        many=True,
        required=False,
        default=(),
        help_text=f"Photos of what the act tells, up to {PHOTOS_MOST}; each was sent before it.",
    )

    def validate_note(self, given: str) -> str:
        return given if given.strip() else ""

    def validate_photo_ids(self, given: list[Photo]) -> list[Photo]:
        if len(given) > PHOTOS_MOST:
            raise serializers.ValidationError(f"At most {PHOTOS_MOST} photos.", "too-many")
        return list(dict.fromkeys(given))


class ChangeIn(ActIn):
    """The envelope of a PATCH: the id and the time may be left to the server."""

    id = serializers.UUIDField(required=False)
    happened_at = MomentField(required=False)


class ActOut(serializers.Serializer[Mapping[str, object]]):
    """What every answer to an act says."""

    id = serializers.UUIDField()
    journal_seq = serializers.IntegerField()


def digest_of(member_id: UUID, path: str, body: object) -> str:
    """Return what makes two sendings the same: by whom, where to, what; not when it was sent."""
    said = (
        {key: _told(value) for key, value in body.items() if key != "sent_at"}
        if isinstance(body, dict)
        else body
    )
    canonical = json.dumps([str(member_id), path, said], sort_keys=True)
    return hashlib.sha256(canonical.encode()).hexdigest()


def _told(value: object) -> object:
    """Return a file by what is in it: its name may be made up anew at each sending."""
    if not isinstance(value, UploadedFile):
        return value
    digest = hashlib.sha256()
    for chunk in value.chunks():
        digest.update(chunk)
    return digest.hexdigest()
