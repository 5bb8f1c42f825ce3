"""Which pieces to look over for crumbs of plaster, by the presses that made them."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from moulds.models import Casting, MouldSet, Pressing
from moulds.queries.castings import last_pressed, pressings_to_look_over
from pieces.models import Part, Piece


@dataclass(frozen=True, slots=True)
class CrumbCheck:
    """A casting and its doubtful pressings, newest first, each with the pieces it went into."""

    casting: Casting
    rows: tuple[tuple[Pressing, tuple[Piece, ...]], ...]


def crumb_check(mould_set: MouldSet, *, until: datetime) -> CrumbCheck | None:
    """Return what to look over of the casting pressed last, None where nothing was pressed."""
    casting = last_pressed(mould_set)
    if casting is None:
        return None
    pressings = pressings_to_look_over(casting, until=until)
    made = _made_by(pressings)
    return CrumbCheck(casting, tuple((row, made.get(row.pk, ())) for row in pressings))


def _made_by(pressings: Sequence[Pressing]) -> dict[UUID, tuple[Piece, ...]]:
    rows = Part.objects.filter(pressing__in=pressings, piece__is_undone=False)
    found: defaultdict[UUID, dict[UUID, Piece]] = defaultdict(dict)
    for part in rows.select_related("piece__design").order_by("piece__mark_key", "piece__suffix"):
        if part.pressing_id is not None:
            found[part.pressing_id][part.piece_id] = part.piece
    return {pk: tuple(pieces.values()) for pk, pieces in found.items()}
