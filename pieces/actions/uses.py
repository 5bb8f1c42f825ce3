"""What a piece is meant for: food, or display only; only an owner lifts that."""

from django.db import transaction

from pieces.models import Piece
from studio.actions import journal
from studio.domain.refusals import NotAllowed
from studio.models import Act, JournalHead


class DisplayOnly(NotAllowed):
    code = "display-only"
    title = "Only an owner lifts “display only”."


@transaction.atomic
def set_use(*, act: Act, piece: Piece, use: str) -> Piece:
    """Say what a piece is meant for. Who may lift `display` is checked where the act is heard."""
    JournalHead.objects.select_for_update().get(studio=act.studio)
    was = Piece.objects.values_list("use", flat=True).get(pk=piece.pk)
    Piece.objects.filter(pk=piece.pk).update(use=use)
    facts = {"use": use, "was": was}
    journal.write(act=act, verb="set_use", subjects=[("piece", piece.pk)], facts=facts)
    piece.use = use
    return piece


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
