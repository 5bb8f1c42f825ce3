"""What was given out of hand, byte for byte as it was given."""

from django.db import models

from .journal import Fact


class FrozenCopy(Fact):
    """A copy of a paper or a page as somebody let it go, which nothing said later changes.

    `sha256` is over `body`; it stands in the journal too, so that a copy that was tampered with
    does not agree with the chain. `kind` is the sort of paper, `subject_id` what it is about,
    `known_seq` the last act heard when it was made: whatever came later is not in it.
    """

    kind = models.CharField(max_length=20)
    subject_kind = models.CharField(max_length=20)
    subject_id = models.UUIDField()
    title = models.CharField(max_length=200)
    media_type = models.CharField(max_length=60)
    body = models.BinaryField()
    sha256 = models.CharField(max_length=64)
    known_seq = models.PositiveBigIntegerField()

    class Meta:
        indexes = [
            models.Index(fields=["subject_id", "-happened_at"], name="frozen_by_time"),
        ]

    def __str__(self) -> str:
        return self.title
