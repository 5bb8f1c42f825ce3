"""Keeping the history of an order as it stands, to the letter."""

from django.db import transaction

from pieces.models import Commission, FrozenHistory
from pieces.queries import frozen
from studio.models import Act, JournalEntry
from studio.queries.chain import sha256

from . import order_rows

FROZE = "froze_history"


@transaction.atomic
def freeze(*, act: Act, commission: Commission) -> FrozenHistory:
    """Keep a copy of the history, by an act of its own."""
    order_rows.locked(commission)
    text, upto = frozen.document(commission, at=act.happened_at)
    entry = order_rows.write(act, FROZE, commission, {"sha256": sha256(text), "upto_seq": upto})
    return _kept(act, commission, entry, text, upto)


def freeze_with(act: Act, commission: Commission, entry: JournalEntry) -> FrozenHistory:
    """Keep a copy inside the act that hands the order over; that act is in it."""
    text, upto = frozen.document(commission, at=act.happened_at)
    return _kept(act, commission, entry, text, upto)


def _kept(
    act: Act, commission: Commission, entry: JournalEntry, text: str, upto: int
) -> FrozenHistory:
    return FrozenHistory.objects.create(
        id=act.row_id(commission.pk),
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        commission=commission,
        text=text,
        sha256=sha256(text),
        upto_seq=upto,
    )
