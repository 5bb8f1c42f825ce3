"""Rows of facts, before they are written."""

from collections.abc import Sequence
from typing import Any, TypeVar

from pieces.models import Part, PartEvent, Piece
from pieces.models.facts import PieceFact
from studio.models import Act

Row = TypeVar("Row", bound=PieceFact)


def one_each(model: type[Row], *, act: Act, pieces: Sequence[Piece], **fields: Any) -> list[Row]:
    """Return a row for each piece; an act about one piece gives the row its own id."""
    return [
        model(
            id=act.id if len(pieces) == 1 else act.row_id(piece.pk),
            studio=act.studio,
            piece=piece,
            happened_at=act.happened_at,
            **fields,
        )
        for piece in pieces
    ]


def about_parts(
    *, act: Act, parts: Sequence[Part], kind: str, how: str = "", cause: str = ""
) -> list[PartEvent]:
    """Return an event for each part, named like `one_each`."""
    return [
        PartEvent(
            id=act.id if len(parts) == 1 else act.row_id(part.pk),
            studio=act.studio,
            piece=part.piece,
            part=part,
            kind=kind,
            how=how,
            cause=cause,
            happened_at=act.happened_at,
        )
        for part in parts
    ]
