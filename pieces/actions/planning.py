"""Planning pieces, and moving on those that waited for a model or a mould."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Final

from django.db import transaction

from moulds.queries.designs import readiness_of_many
from pieces.domain import stages
from pieces.domain.stages import Spot
from pieces.models import Move, Piece, StageEvent
from pieces.models.facts import PieceFact
from studio.domain.finding import folded
from studio.domain.ids import uuid7
from studio.domain.refusals import Conflict
from studio.models import Act, Place, Studio
from studio.queries import people

from . import marks, stories
from .shapes import PieceGiven, Warned

BEGINS: Final[dict[str, Spot]] = {
    "model": stages.WANTS_MODEL,
    "mould": stages.WANTS_MOULD,
    "pressing": stages.TO_PRESS,
    "assembly": stages.OUT,
}
WAITING_STATES: Final = (stages.WANTS_MODEL.state, stages.WANTS_MOULD.state)


class PieceExists(Conflict):
    code = "piece-exists"
    title = "That piece is there already."


@dataclass(frozen=True, slots=True)
class Planned:
    """The pieces planned, and what to mind about their marks."""

    pieces: list[Piece]
    warnings: list[Warned]


@transaction.atomic
def plan(*, act: Act, pieces: Sequence[PieceGiven], place: Place | None = None) -> Planned:
    """Plan pieces; each begins where its design is: waiting for a model, a mould, or to press.

    Raises `PieceExists` and `NotAMark`.
    """
    made, warnings = begin(act=act, given=pieces)
    ready = readiness_of_many({piece.design for piece in made})
    rows: list[PieceFact] = []
    for piece in made:
        spot = BEGINS[ready[piece.design_id]]
        rows.append(StageEvent(**_base(act, piece), stage=spot.stage, state=spot.state))
        if place is not None:
            rows.append(Move(**_base(act, piece), place=place))
    facts = {
        "pieces": [{"id": p.pk, "mark": p.shown_mark, "design": p.design_id} for p in made],
        "place": place.pk if place else None,
    }
    stories.append(act=act, rows=rows, verb="planned", facts=facts)
    fresh = {piece.pk: piece for piece in Piece.objects.filter(pk__in=[p.pk for p in made])}
    return Planned([fresh[piece.pk] for piece in made], warnings)


def begin(*, act: Act, given: Sequence[PieceGiven]) -> tuple[list[Piece], list[Warned]]:
    """Make the rows of new pieces, before anything is told of them.

    Raises `PieceExists` and `NotAMark`.
    """
    _check_new(given)
    chosen = marks.choose(studio=act.studio, given=given)
    made = [
        Piece(
            id=piece.id,
            studio=act.studio,
            mark=mark.text,
            mark_key=mark.key,
            find_key=folded(mark.text),
            suffix=mark.suffix,
            design=piece.design,
            body=piece.body or piece.design.body,
            maker=None if piece.is_nobodys else piece.maker or act.member,
            use=piece.use,
            line=piece.line,
            begun_at=act.happened_at,
            since_at=act.happened_at,
            touched_at=act.happened_at,
        )
        for piece, mark in zip(given, chosen, strict=True)
    ]
    Piece.objects.bulk_create(made)
    asked = [
        marks.ask_whose(act=act, piece=piece, mark=mark)
        for piece, mark in zip(made, chosen, strict=True)
    ]
    return made, [warning for warning in asked if warning is not None]


@transaction.atomic
def become_possible(*, studio: Studio, at: datetime) -> int:
    """Move on the pieces whose model or mould has come since, and return how many."""
    waiting = list(
        Piece.objects.filter(
            studio=studio, state__in=WAITING_STATES, is_undone=False, has_clash=False
        ).select_related("design")
    )
    ready = readiness_of_many({piece.design for piece in waiting})
    moved = [(piece, BEGINS[ready[piece.design_id]]) for piece in waiting]
    moved = [
        (piece, spot)
        for piece, spot in moved
        if stages.rank(spot) > stages.rank(Spot(piece.stage, piece.state))
    ]
    if not moved:
        return 0
    member, device = people.clockwork(studio)
    act = Act(uuid7(), studio, member, device, happened_at=at, written_at=at)
    rows = [
        StageEvent(**_base(act, piece), stage=spot.stage, state=spot.state) for piece, spot in moved
    ]
    facts = {"pieces": [{"id": piece.pk, "state": spot.state} for piece, spot in moved]}
    stories.append(act=act, rows=rows, verb="became_possible", facts=facts)
    return len(moved)


def _base(act: Act, piece: Piece) -> dict[str, object]:
    return {
        "id": act.row_id(piece.pk),
        "studio": act.studio,
        "piece": piece,
        "happened_at": act.happened_at,
    }


def _check_new(pieces: Sequence[PieceGiven]) -> None:
    ids = [piece.id for piece in pieces]
    known = Piece.objects.filter(pk__in=ids).exists()
    if known or len(set(ids)) < len(ids):
        raise PieceExists("Make each piece with an id of its own.")
