"""An order is handed over."""

from collections.abc import Sequence

from django.db import transaction

from pieces.domain import stages as job
from pieces.models import Commission, Piece
from pieces.queries import commissions as queries
from studio.actions import journal
from studio.domain.refusals import Conflict
from studio.models import Act

from . import freezing, order_rows, stages
from .shapes import Visit


class NothingToHandOver(Conflict):
    code = "nothing-to-hand-over"
    title = "Nothing of that order is finished."


class NotOfThisOrder(Conflict):
    code = "not-of-this-order"
    title = "That piece is not promised to this order."


@transaction.atomic
def hand_over(
    *,
    act: Act,
    commission: Commission,
    pieces: Sequence[Piece] | None = None,
    closes: bool | None = None,
) -> tuple[Commission, list[Piece]]:
    """Record that pieces went to the client: those named, else all that are finished.

    The order is closed when `closes` says so; where it is None, when no line wants more: then its
    history is kept as it stands, and what is told later is shown as told afterwards. Raises
    `CommissionClosed`, `NothingToHandOver`, `NotOfThisOrder` and `StageOutOfOrder`.
    """
    commission = order_rows.open_one(commission)
    own = queries.pieces_of([commission])
    going = list(own.filter(stage=job.CHECKED.stage)) if pieces is None else list(pieces)
    strange = sorted({piece.shown_mark for piece in going} - {piece.shown_mark for piece in own})
    if strange:
        raise NotOfThisOrder(f"{', '.join(strange)}: not of {commission.number}.", marks=strange)
    if not going:
        raise NothingToHandOver("Say that pieces are checked first.")
    entry = journal.write(
        act=act,
        verb="handed_over",
        subjects=[("commission", commission.pk), *(("piece", piece.pk) for piece in going)],
        facts={"pieces": [piece.pk for piece in going], "closes": closes},
    )
    visits = [(piece, Visit(*job.DELIVERED)) for piece in going]
    stages.advance_all(act=act, visits=visits, entry=entry)
    lines = queries.lines_of([commission])[commission.pk]
    is_done = all(line.counts.delivered >= line.line.wanted_sets for line in lines)
    if closes if closes is not None else is_done:
        order_rows.closed(commission, at=act.happened_at)
        freezing.freeze_after(act, commission)
    return commission, list(own.filter(pk__in=[piece.pk for piece in going]))
