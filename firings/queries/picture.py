"""Where the ware of a load would stand, and which other ware would go in with it."""

from collections.abc import Container, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from uuid import UUID

from firings.domain.fit_problem import Problem, Result
from firings.domain.gate import Objection, objections
from firings.models import Load
from pieces.models import Piece
from studio.models import Studio

from .fitting import answer_to, problem_of, ware_of
from .gate import Gate
from .loads import placements_of
from .queue import Group, Waiting, groups
from .sizes import Sizes, measured_for


@dataclass(frozen=True, slots=True)
class Picture:
    """The question and the answer; None where the kiln has no shelves written down.

    `pieces` goes from placement to piece, None for what is no piece here.
    """

    pieces: Mapping[UUID, UUID | None]
    problem: Problem | None
    result: Result | None


@dataclass(frozen=True, slots=True)
class CouldGo:
    """A piece that waits, whether it fits beside what is placed, and what speaks against it."""

    waiting: Waiting
    fits: str
    refused: Objection | None


def picture_of(load: Load, *, more: Sequence[Piece], samples: Sequence[Piece]) -> Picture:
    """Return how the ware would stand, `more` of it beside what is placed. Eight queries."""
    placed = placements_of([load]).get(load.pk, [])
    inside = [row.piece for row in placed if row.piece is not None]
    sizes = Sizes([*inside, *more, *samples])
    problem = problem_of(load, placed, sizes=sizes, more=more, samples=samples)
    pieces = {row.pk: row.piece_id for row in placed}
    return Picture(pieces, problem, answer_to(problem) if problem is not None else None)


def could_go(load: Load, waiting: Sequence[Waiting]) -> list[CouldGo]:
    """Return for each piece that waits whether it could join; like pieces are tried once.

    Twenty-two queries, however many pieces.
    """
    placed = placements_of([load]).get(load.pk, [])
    inside = [row.piece for row in placed if row.piece is not None]
    pieces = [row.piece for row in waiting]
    sizes, gate = Sizes([*inside, *pieces]), Gate(load, pieces)
    empty = problem_of(load, placed, sizes=sizes)
    tried: dict[object, str] = {}
    found = []
    for row in waiting:
        like = (sizes.of(row.piece, measured_for(load.kind)), row.piece.pk in gate.again)
        if empty is None:
            tried.setdefault(like, "unknown")
        elif like not in tried:
            tried[like] = _with_one(load, empty, row.piece, sizes, gate.again)
        said = objections(load.kind, gate.asked(row.piece))
        found.append(CouldGo(row, tried[like], said[0] if said else _other_cone(load, row)))
    return found


def waiting_for(load: Load, studio: Studio, *, at: datetime) -> list[Waiting]:
    """Return what waits for this kind of firing, ware for its cone first."""
    found: list[Group] = groups(studio, at=at, kind=load.kind, with_drying=True)
    ordered = sorted(found, key=lambda group: group.cone != load.cone)
    return [row for group in ordered for row in group.rows]


def _with_one(
    load: Load, empty: Problem, piece: Piece, sizes: Sizes, again: Container[UUID]
) -> str:
    one = ware_of(piece, load, sizes, again, id=str(piece.pk))
    problem = replace(empty, ware=(*empty.ware, one))
    return answer_to(problem).verdict


def _other_cone(load: Load, row: Waiting) -> Objection | None:
    if row.ticket is None or row.ticket.cone == load.cone:
        return None
    detail = f"{row.piece.shown_mark} waits for cone {row.ticket.cone}."
    return Objection("cone-differs", detail)
