"""Promising a piece to a line of an order, or to none: its past comes along."""

from collections.abc import Sequence

from django.db import transaction

from pieces.models import Assignment, CommissionLine, Piece, Use
from studio.actions import journal
from studio.domain.refusals import Conflict
from studio.models import Act, JournalHead

from . import order_rows
from .shapes import Warned


class HandedOverAlready(Conflict):
    code = "handed-over-already"
    title = "That piece was handed over."


@transaction.atomic
def assign(
    *, act: Act, pieces: Sequence[Piece], line: CommissionLine | None, reason: str = ""
) -> list[Warned]:
    """Promise pieces to a line, or take them out of their order; return what to mind.

    The journal tells both orders of it by their ids. Raises `HandedOverAlready` and
    `CommissionClosed`.
    """
    JournalHead.objects.select_for_update().get(studio=act.studio)
    if line is not None:
        order_rows.open_one(line.commission)
    rows = Piece.objects.select_for_update(of=("self",)).filter(pk__in=[p.pk for p in pieces])
    held = list(rows.select_related("line", "design").order_by("pk"))
    gone = [piece.shown_mark for piece in held if piece.stage == "delivered"]
    if gone:
        raise HandedOverAlready(f"{', '.join(gone)}: with the client already.", marks=gone)
    moves = [
        {
            "piece": piece.pk,
            "from_line": piece.line_id,
            "from_commission": piece.line.commission_id if piece.line else None,
            "line": line.pk if line else None,
            "commission": line.commission_id if line else None,
        }
        for piece in held
    ]
    orders = {pk for move in moves for pk in (move["from_commission"], move["commission"]) if pk}
    entry = journal.write(
        act=act,
        verb="assigned",
        subjects=[
            *(("piece", piece.pk) for piece in held),
            *(("commission", pk) for pk in orders),
        ],
        facts={"moves": moves, "has_reason": bool(reason)},
    )
    Assignment.objects.bulk_create(
        Assignment(
            id=act.row_id(piece.pk),
            studio=act.studio,
            entry=entry,
            happened_at=act.happened_at,
            piece=piece,
            came_from=piece.line,
            line=line,
            reason=reason,
        )
        for piece in held
    )
    Piece.objects.filter(pk__in=[piece.pk for piece in held]).update(line=line)
    return mind(held, line) if line is not None else []


def mind(pieces: Sequence[Piece], line: CommissionLine) -> list[Warned]:
    """Return what to mind when pieces are promised to a line."""
    said = []
    designs = set(line.recipe.values_list("design_id", flat=True))
    outside = [p.shown_mark for p in pieces if designs and p.design_id not in designs]
    if outside:
        detail = f"{', '.join(outside)}: not of a design this line asks for, so in no set."
        said.append(Warned("not-in-recipe", detail))
    shown = [piece.shown_mark for piece in pieces if piece.use == Use.DISPLAY]
    if shown and line.commission.use == Use.FOOD:
        detail = f"{', '.join(shown)}: for display only, and the order is for food."
        said.append(Warned("display-only", detail))
    return said
