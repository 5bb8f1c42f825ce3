"""Keeping the history of an order as it stands, to the letter."""

from django.db import transaction

from pieces.models import Commission
from pieces.queries import frozen as queries
from studio.actions import frozen
from studio.models import Act, FrozenCopy
from studio.queries.frozen import digest_of

from . import order_rows

FROZE = "froze_history"


@transaction.atomic
def freeze(*, act: Act, commission: Commission) -> FrozenCopy:
    """Keep a copy of the history: what is told later is shown beside it, never put into it."""
    order_rows.locked(commission)
    body = queries.document(commission, at=act.happened_at).encode()
    entry = order_rows.write(act, FROZE, commission, {"sha256": digest_of(body)})
    return frozen.freeze(
        act=act,
        entry=entry,
        kind=queries.KIND,
        subject=("commission", commission.pk),
        title=f"History of {commission.number}",
        body=body,
        media_type="application/json",
    )


def freeze_after(act: Act, commission: Commission) -> FrozenCopy:
    """Keep a copy behind an act that ends the order, as an act of its own."""
    own = Act(
        id=act.row_id(commission.pk),
        studio=act.studio,
        member=act.member,
        device=act.device,
        happened_at=act.happened_at,
        written_at=act.written_at,
        based_on=act.based_on,
    )
    return freeze(act=own, commission=commission)
