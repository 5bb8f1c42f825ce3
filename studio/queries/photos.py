"""Photos: of some things, and the bytes of one. Those of an act are its entry's `photos`."""

from collections.abc import Iterable
from typing import Any
from uuid import UUID

from django.core.files.storage import default_storage
from django.db.models import QuerySet

from studio.domain.refusals import Missing
from studio.models import (
    JournalEntry,
    JournalSubject,
    Photo,
    PhotoOf,
    PhotoSize,
    Studio,
)


class PhotoFileGone(Missing):
    code = "photo-file-gone"
    title = "The file of that photo is not there."


def all_of(studio: Studio) -> "QuerySet[Photo]":
    """Return the photos of a studio, with who took each."""
    rows: Any = Photo.objects.filter(studio=studio).select_related("entry__member")
    found: QuerySet[Photo] = rows
    return found


def about(studio: Studio, *subject_ids: UUID) -> "QuerySet[Photo]":
    """Return the photos of some things, newest first; not those whose act was taken back."""
    told = JournalSubject.objects.filter(subject_id__in=subject_ids).values("entry")
    shown = PhotoOf.objects.of(studio).filter(entry__in=told).standing()
    rows = all_of(studio).filter(pk__in=shown.values("photo"))
    return rows.order_by("-happened_at", "-id")


def read(photo: Photo, size: PhotoSize) -> bytes:
    """Return the JPEG of a photo, for whoever may see what it shows. Raises `PhotoFileGone`."""
    try:
        with default_storage.open(photo.file_name(size)) as file:
            data: bytes = file.read()
    except FileNotFoundError as error:
        raise PhotoFileGone("Bring the folder of photos back from a backup.") from error
    return data


def ids_of(entry: JournalEntry) -> list[UUID]:
    """Return the photos said with an act whose `photos` were read along."""
    rows: Any = entry.photos.all()
    return [row.photo_id for row in rows]


def ids_by_subject(studio: Studio, subject_ids: Iterable[UUID]) -> dict[UUID, list[UUID]]:
    """Return the photos of each of some things, newest first. One query."""
    found: dict[UUID, dict[UUID, None]] = {pk: {} for pk in subject_ids}
    rows = PhotoOf.objects.of(studio).filter(entry__subjects__subject_id__in=list(found))
    rows = rows.standing().order_by("-photo__happened_at", "-photo_id")
    for subject, photo in rows.values_list("entry__subjects__subject_id", "photo_id"):
        found[subject][photo] = None
    return {pk: list(photos) for pk, photos in found.items()}
