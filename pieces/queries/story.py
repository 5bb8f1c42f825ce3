"""What was told of pieces, as the fold takes it: a fixed number of queries, however many pieces."""

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any
from uuid import UUID

from django.db.models import F

from moulds.models import DesignPart
from moulds.queries.designs import IN_MOULDS
from pieces.domain.story import (
    AnswerFact,
    CheckFact,
    CoverFact,
    Fact,
    MoveFact,
    PartFact,
    PartMade,
    Recipe,
    StageFact,
    Story,
    Wanted,
    WeighingFact,
    fold,
)
from pieces.models import (
    ClashAnswer,
    Cover,
    Move,
    Part,
    PartEvent,
    Piece,
    PieceWeighing,
    StageEvent,
    TouchCheck,
)

TOLD_IN = (StageEvent, PartEvent, Cover, Move, TouchCheck, PieceWeighing)


@dataclass(frozen=True, slots=True)
class Telling:
    """All that stands of what was told of one piece, and what its design asks for."""

    facts: tuple[Fact, ...]
    recipe: Recipe

    def story(self, *more: Fact) -> Story:
        """Fold it, with some more facts where given."""
        return fold((*self.facts, *more), self.recipe)


def tellings(pieces: Iterable[Piece]) -> dict[UUID, Telling]:
    """Return what was told of each piece. Nine queries."""
    pieces = list(pieces)
    ids = [piece.pk for piece in pieces]
    facts: dict[UUID, list[Fact]] = defaultdict(list)
    for piece_id, fact in _facts(ids):
        facts[piece_id].append(fact)
    recipes = _recipes(pieces)
    return {
        piece.pk: Telling(tuple(facts.get(piece.pk, ())), recipes[piece.pk]) for piece in pieces
    }


def stories(pieces: Iterable[Piece]) -> dict[UUID, Story]:
    """Return the folded story of each piece. Nine queries."""
    return {piece_id: telling.story() for piece_id, telling in tellings(pieces).items()}


def fact_of(row: Any, device_id: UUID) -> Fact:
    """Return a row as the fold takes it. Raises `TypeError` for what is no fact of a piece."""
    base: dict[str, Any] = {
        "id": row.pk,
        "act": row.entry_id,
        "happened_at": row.happened_at,
        "device": device_id,
    }
    match row:
        case StageEvent():
            return StageFact(
                **base,
                stage=row.stage,
                state=row.state,
                reason=row.reason,
                place=row.place_id,
                occasion_id=row.occasion_id,
                occasion_name=row.occasion_name,
                grade=row.grade,
                is_interrupted=row.is_interrupted,
            )
        case PartEvent():
            return PartFact(**base, part=row.part_id, kind=row.kind)
        case Cover():
            return CoverFact(**base, state=row.state, part=row.part_id)
        case Move():
            return MoveFact(**base, place=row.place_id)
        case TouchCheck():
            return CheckFact(**base, feel=row.feel, part=row.part_id)
        case PieceWeighing():
            return WeighingFact(**base, mass_g=row.mass_g)
        case _:
            raise TypeError(row)


def _facts(ids: list[UUID]) -> Iterator[tuple[UUID, Fact]]:
    device = F("entry__device_id")
    for model in TOLD_IN:
        rows = model.objects.filter(piece__in=ids).standing().annotate(device_id=device)
        for row in rows:
            yield row.piece_id, fact_of(row, row.device_id)
    answers = ClashAnswer.objects.filter(clash__piece__in=ids).standing()
    for answer in answers.annotate(device_id=device).select_related("clash"):
        first, second = (UUID(act) for act in answer.clash.act_ids)
        yield (
            answer.clash.piece_id,
            AnswerFact(
                id=answer.pk,
                act=answer.entry_id,
                happened_at=answer.happened_at,
                device=answer.device_id,
                kind=answer.clash.kind,
                first=first,
                second=second,
                choice=answer.choice,
            ),
        )


def _recipes(pieces: list[Piece]) -> dict[UUID, Recipe]:
    wanted: dict[UUID, list[Wanted]] = defaultdict(list)
    roles = DesignPart.objects.filter(design__in={piece.design_id for piece in pieces})
    for role in roles.select_related("design").order_by("order", "role"):
        wanted[role.design_id].append(
            Wanted(
                role.role,
                role.count if role.is_required else 0,
                is_moulded=role.design.uses_moulds and role.method in IN_MOULDS,
            )
        )
    made: dict[UUID, list[PartMade]] = defaultdict(list)
    parts = Part.objects.filter(piece__in=[piece.pk for piece in pieces])
    for part_id, role_name, piece_id in parts.order_by("pk").values_list("pk", "role", "piece_id"):
        made[piece_id].append(PartMade(part_id, role_name))
    return {
        piece.pk: Recipe(tuple(wanted.get(piece.design_id, ())), tuple(made.get(piece.pk, ())))
        for piece in pieces
    }
