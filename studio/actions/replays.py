"""An act sent twice happens once and gets the same answer."""

from collections.abc import Callable
from datetime import datetime, timedelta
from uuid import UUID

from django.db import IntegrityError, transaction

from studio.domain.refusals import Conflict, Unworkable
from studio.models import JournalEntry, Replay, Studio

Answer = tuple[int, dict[str, object]]

KEPT_FOR = timedelta(days=30)


class ActIdReused(Unworkable):
    code = "act-id-reused"
    title = "That act id was used for something else."


class ActIdTaken(Conflict):
    code = "act-id-taken"
    title = "That act id is taken."


def once(
    *,
    act_id: UUID,
    studio: Studio,
    digest: str,
    written_at: datetime,
    work: Callable[[], Answer],
) -> tuple[Answer, bool]:
    """Do the work and keep its answer, or give the answer kept; the flag says which.

    The work and the kept answer stand or fall together: one transaction holds both. Raises
    `ActIdReused` when the id came with another request, `ActIdTaken` when another studio has it.
    """
    kept = _kept(act_id=act_id, studio=studio, digest=digest)
    if kept is not None:
        return kept, True
    try:
        with transaction.atomic():
            status, answer = work()
            Replay.objects.create(
                act_id=act_id,
                studio=studio,
                digest=digest,
                status=status,
                answer=answer,
                written_at=written_at,
            )
    except IntegrityError:
        # The same act arrived twice at once: the other one has been kept by now.
        kept = _kept(act_id=act_id, studio=studio, digest=digest)
        if kept is None:
            raise
        return kept, True
    return (status, answer), False


def _kept(*, act_id: UUID, studio: Studio, digest: str) -> Answer | None:
    replay = Replay.objects.filter(pk=act_id).first()
    if replay is None:
        return _pruned(act_id=act_id, studio=studio)
    if replay.studio_id != studio.pk:
        raise ActIdTaken("Make the act again with an id of its own.")
    if replay.digest != digest:
        raise ActIdReused("The same id came before with other contents.", id=str(act_id))
    return replay.status, replay.answer or {}


def _pruned(*, act_id: UUID, studio: Studio) -> Answer | None:
    """Answer for an act whose kept answer is gone: the journal still knows that it happened."""
    entry = JournalEntry.objects.filter(pk=act_id).first()
    if entry is None:
        return None
    if entry.studio_id != studio.pk:
        raise ActIdTaken("Make the act again with an id of its own.")
    return 200, {"id": str(entry.pk), "journal_seq": entry.seq}


def prune(*, at: datetime) -> int:
    """Forget answers kept for over 30 days; the journal still tells a repeat from a new act."""
    forgotten, _ = Replay.objects.filter(written_at__lt=at - KEPT_FOR).delete()
    return forgotten
