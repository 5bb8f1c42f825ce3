"""Keeping photos."""

import hashlib
from uuid import UUID

from django.core.files.base import ContentFile
from django.core.files.storage import default_storage
from django.db import transaction

from studio.actions import journal
from studio.domain.photos import Developed
from studio.models import Act, JournalEntry, Photo, PhotoSize


@transaction.atomic
def add(*, act: Act, developed: Developed) -> Photo:
    """Keep a photo; acts that come after it say what it shows.

    The files are written first: one that no row names is no harm, a row without its file is.
    """
    image = developed.image
    photo = Photo(
        id=act.id,
        studio=act.studio,
        entry_id=act.id,
        happened_at=act.happened_at,
        sha256=hashlib.sha256(image.data).hexdigest(),
        width=image.width,
        height=image.height,
        bytes=len(image.data),
    )
    _keep(photo.file_name(PhotoSize.IMAGE), image.data)
    _keep(photo.file_name(PhotoSize.THUMBNAIL), developed.thumbnail.data)
    facts = {"sha256": photo.sha256, "width": photo.width, "height": photo.height}
    journal.write(act=act, verb="took_photo", subjects=[("photo", photo.pk)], facts=facts)
    photo.save(force_insert=True)
    return photo


def _keep(name: str, data: bytes) -> None:
    if not default_storage.exists(name):
        default_storage.save(name, ContentFile(data))


def show(*, act: Act, kind: str, subject_id: UUID) -> JournalEntry:
    """Say that the photos which come with the act show one thing, and nothing else of it."""
    return journal.write(act=act, verb="photographed", subjects=[(kind, subject_id)])
