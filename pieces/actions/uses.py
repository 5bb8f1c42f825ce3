"""What a piece is meant for: food, or display only; only an owner lifts that."""

from django.db import transaction

from pieces.models import Piece
from studio.actions import journal
from studio.domain.refusals import NotAllowed
from studio.models import Act


class DisplayOnly(NotAllowed):
    code = "display-only"
    title = "Only an owner lifts “display only”."


@transaction.atomic
def change(*, act: Act, piece: Piece, use: str, may_lift: bool) -> Piece:
    """Change what a piece is meant for. Raises `DisplayOnly`."""
    facts = {"use": use, "was": piece.use}
    journal.write(act=act, verb="changed_piece", subjects=[("piece", piece.pk)], facts=facts)
    row = Piece.objects.select_for_update().get(pk=piece.pk)
    if row.use == Piece.Use.DISPLAY and use != Piece.Use.DISPLAY and not may_lift:
        raise DisplayOnly(f"{row.shown_mark} is for display only.", needed="lift_display_only")
    row.use = use
    row.save(update_fields=["use"])
    return row
