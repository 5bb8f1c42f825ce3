"""Covering pieces, and parts of them, while they dry."""

from collections.abc import Sequence
from uuid import uuid5

from django.db import transaction

from pieces.models import Cover, Part, Piece
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


@transaction.atomic
def cover_parts(*, act: Act, parts: Sequence[Part], state: str) -> list[Cover]:
    """Record how parts are covered otherwise than the rest of their piece.

    A part stands so until the piece is covered or opened as a whole. Raises what `cover` raises.
    """
    rows = [
        Cover(
            id=act.id if len(parts) == 1 else act.row_id(part.pk),
            studio=act.studio,
            piece=part.piece,
            part=part,
            state=state,
            happened_at=act.happened_at,
        )
        for part in parts
    ]
    stories.append(
        act=act,
        rows=rows,
        verb="covered",
        facts={"state": state, "parts": [str(part.pk) for part in parts]},
        subjects=[("part", part.pk) for part in parts],
    )
    return rows
