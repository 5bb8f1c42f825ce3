"""Covering pieces while they dry."""

from collections.abc import Sequence
from uuid import uuid5

from django.db import transaction

from pieces.models import Cover, Piece
from studio.models import Act, JournalEntry

from . import stories
from .rows import one_each


@transaction.atomic
def cover(
    *, act: Act, pieces: Sequence[Piece], state: str, entry: JournalEntry | None = None
) -> list[Cover]:
    """Record how pieces are covered; the first cover after joining sets a piece to dry.

    Raises `StageOutOfOrder` and `BeforeItBegan`.
    """
    rows = one_each(Cover, act=act, pieces=pieces, state=state)
    if entry is not None:
        for row in rows:
            row.id = uuid5(act.row_id(row.piece_id), "cover")
    stories.append(act=act, rows=rows, verb="covered", facts={"state": state}, entry=entry)
    return rows
