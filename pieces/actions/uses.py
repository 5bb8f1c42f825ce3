"""What a piece is meant for: anybody may restrict it to display, only the owner lifts that."""

from django.db import transaction

from pieces.models import Piece
from studio.actions import journal
from studio.models import Act, JournalHead


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
