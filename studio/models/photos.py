"""Photos, and which acts they were said with."""

from enum import StrEnum, auto

from django.db import models

from .journal import Fact, JournalEntry


class PhotoSize(StrEnum):
    """Which of its two pictures."""

    IMAGE = auto()
    THUMBNAIL = auto()


class Photo(Fact):
    """A photo somebody took: the row tells what the file is, the file stands under its digest.

    Who took it, on which device and when stands with the act. What the camera wrote about itself
    and about the place is not kept.
    """

    sha256 = models.CharField(max_length=64)
    width = models.PositiveIntegerField()
    height = models.PositiveIntegerField()
    bytes = models.PositiveIntegerField()

    class Meta:
        indexes = [models.Index(fields=["studio", "-happened_at"], name="photo_by_time")]

    def file_name(self, size: PhotoSize) -> str:
        """Return where its file stands in the storage. Both sizes bear the digest of the whole."""
        folder = f"photos/{self.studio_id}/{self.sha256[:2]}"
        return f"{folder}/{self.sha256}-{size}.jpg"


class PhotoOf(Fact):
    """A photo shows what an act told of; it goes when the act is taken back."""

    entry = models.ForeignKey(JournalEntry, on_delete=models.PROTECT, related_name="photos")
    photo = models.ForeignKey(Photo, on_delete=models.PROTECT, related_name="shown_with")

    class Meta:
        # Ids are made in the order of time.
        ordering = ["photo_id"]
