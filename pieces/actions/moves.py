"""Putting pieces somewhere."""

from collections.abc import Sequence
from uuid import uuid5

from django.db import transaction

from pieces.models import Move, Piece
from studio.models import Act, JournalEntry, Place

from . import stories
from .rows import one_each


@transaction.atomic
def move(
    *,
    act: Act,
    pieces: Sequence[Piece],
    place: Place,
    stands_on: str = "",
    entry: JournalEntry | None = None,
) -> list[Move]:
    """Record where pieces were put, and on what, which holds until they are put elsewhere.

    Raises `StageOutOfOrder` and `BeforeItBegan`.
    """
    rows = one_each(Move, act=act, pieces=pieces, place=place, stands_on=stands_on)
    if entry is not None:
        for row in rows:
            row.id = uuid5(act.row_id(row.piece_id), "place")
    facts = {"place": place.pk, **({"stands_on": stands_on} if stands_on else {})}
    stories.append(act=act, rows=rows, verb="moved", facts=facts, entry=entry)
    return rows
