"""Keeping what is given out of hand, byte for byte."""

from uuid import UUID

from django.db import transaction

from studio.models import Act, FrozenCopy, JournalEntry
from studio.queries.frozen import digest_of


@transaction.atomic
def freeze(
    *,
    act: Act,
    entry: JournalEntry,
    kind: str,
    subject: tuple[str, UUID],
    title: str,
    body: bytes,
    media_type: str,
) -> FrozenCopy:
    """Keep `body` as it is; the caller's `entry` tells `digest_of(body)` in its facts.

    What was heard up to the entry is in the copy, what comes later is not.
    """
    return FrozenCopy.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        kind=kind,
        subject_kind=subject[0],
        subject_id=subject[1],
        title=title,
        media_type=media_type,
        body=body,
        sha256=digest_of(body),
        known_seq=entry.seq,
    )
