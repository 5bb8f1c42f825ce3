"""Pressing: clay into a mould, and the parts and pieces that come of it."""

from collections.abc import Sequence
from dataclasses import dataclass
from uuid import UUID, uuid5

from django.db import transaction

from moulds.actions import pressings
from moulds.actions.folds import refold_after
from moulds.models import Casting, DesignPart, MouldPart, Pressing
from pieces.models import Move, Part, PartEvent, Piece
from pieces.models.facts import PieceFact
from studio.actions import journal
from studio.actions.journal import Subject
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, JournalEntry, Place, SlabBlock

from . import planning, stories
from .rows import about_parts
from .shapes import PartGiven, PieceGiven, Warned


class PartExists(Conflict):
    code = "part-exists"
    title = "That part is there already."


class RoleUnknown(Unworkable):
    code = "role-unknown"
    title = "The design has no such part."


class TooManyParts(Unworkable):
    code = "more-parts-than-pressings"
    title = "More parts than times pressed."


@dataclass(frozen=True, slots=True)
class Pressed:
    """What a pressing gave: the parts, their pieces, and what to mind."""

    pressing: Pressing
    press_since_dry: int
    parts: list[Part]
    pieces: list[Piece]
    warnings: list[Warned]


@transaction.atomic
def press(
    *,
    act: Act,
    casting: Casting,
    mould_parts: Sequence[MouldPart],
    parts: Sequence[PartGiven] = (),
    count: int | None = None,
    slab_block: SlabBlock | None = None,
    place: Place | None = None,
) -> Pressed:
    """Record a pressing and make the parts and the pieces that are not there yet.

    A new piece stands where it was pressed: at `place`, or where the mould is kept. Raises
    `PartExists`, `RoleUnknown`, `TooManyParts`, and what `moulds` refuses.
    """
    count = count or len(parts) or 1
    _check(parts, count)
    entry = journal.write(
        act=act,
        verb="pressed",
        subjects=_subjects(casting, mould_parts, parts),
        facts=_facts(casting, mould_parts, parts, count, slab_block),
    )
    pieces, fresh, warnings = _pieces(act, parts)
    recorded = pressings.record(
        act=act,
        entry=entry,
        casting=casting,
        mould_parts=mould_parts,
        count=count,
        slab_block=slab_block,
        busy=_busy(casting),
    )
    made = _make(act, parts, pieces, casting.mould_set.makes, recorded.pressing)
    rows: list[PieceFact] = [*_pressed(act, made), *_replaced(act, parts)]
    stands_at = place or casting.mould_set.place
    if stands_at is not None:
        rows += [_move(act, piece, stands_at) for piece in fresh]
    if rows:
        stories.append(act=act, rows=rows, verb="pressed", facts={}, entry=entry)
    if act.corrects is not None:
        refold_after(act=act, entry=JournalEntry.objects.get(pk=act.corrects))
    for part in made:
        part.refresh_from_db(fields=("state", "pressed_at", "out_at"))
    warnings += [Warned(caution.code, caution.detail) for caution in recorded.cautions]
    of_parts = Piece.objects.filter(pk__in=pieces).select_related("design", "maker")
    return Pressed(
        recorded.pressing,
        recorded.press_since_dry,
        made,
        list(of_parts.order_by("mark_key")),
        warnings,
    )


def _check(parts: Sequence[PartGiven], count: int) -> None:
    ids = [part.id for part in parts]
    if len(set(ids)) < len(ids) or Part.objects.filter(pk__in=ids).exists():
        raise PartExists("Make each part with an id of its own.")
    if len(parts) > count:
        raise TooManyParts(
            f"{len(parts)} parts from {count} pressings.",
            errors=[
                {"pointer": "#/count", "code": "min-value", "detail": f"At least {len(parts)}."}
            ],
        )


def _pieces(
    act: Act, parts: Sequence[PartGiven]
) -> tuple[dict[UUID, Piece], list[Piece], list[Warned]]:
    """Return the pieces of the parts by id, those of them that are new, and what to mind."""
    given = {part.piece.id: part.piece for part in parts}
    known = {piece.pk: piece for piece in Piece.objects.of(act.studio).filter(pk__in=given)}
    new: list[PieceGiven] = [piece for pk, piece in given.items() if pk not in known]
    fresh, warnings = planning.begin(act=act, given=new)
    return known | {piece.pk: piece for piece in fresh}, fresh, warnings


def _make(
    act: Act,
    parts: Sequence[PartGiven],
    pieces: dict[UUID, Piece],
    makes: DesignPart,
    pressing: Pressing,
) -> list[Part]:
    roles = {
        (role.design_id, role.role): role
        for role in DesignPart.objects.filter(design__in={p.design_id for p in pieces.values()})
    }
    begun: dict[tuple[UUID, str], int] = {}
    for piece_id, role_name in Part.objects.filter(piece__in=pieces).values_list(
        "piece_id", "role"
    ):
        begun[piece_id, role_name] = begun.get((piece_id, role_name), 0) + 1
    made = []
    for part in parts:
        piece = pieces[part.piece.id]
        role = roles.get((piece.design_id, part.role))
        if role is None or (role.design_id == makes.design_id and role.pk != makes.pk):
            raise RoleUnknown(
                f"This mould makes {makes.role}; “{part.role}” is not of that design.",
                role=part.role,
                makes=makes.role,
            )
        number = begun.get((piece.pk, part.role), 0) + 1
        begun[piece.pk, part.role] = number
        made.append(
            Part(
                id=part.id,
                studio=act.studio,
                piece=piece,
                design_part=role,
                role=part.role,
                number=number,
                pressing=pressing,
                replaces_id=part.replaces,
            )
        )
    return Part.objects.bulk_create(made)


def _pressed(act: Act, parts: Sequence[Part]) -> list[PartEvent]:
    rows = about_parts(act=act, parts=parts, kind=PartEvent.Kind.PRESSED)
    for row in rows:
        row.id = act.row_id(row.part_id)
    return rows


def _replaced(act: Act, parts: Sequence[PartGiven]) -> list[PartEvent]:
    """Return that the old parts were replaced, where the new ones say which they stand for."""
    old = {part.replaces: part.piece.id for part in parts if part.replaces is not None}
    found = Part.objects.of(act.studio).filter(pk__in=old).select_related("piece")
    of_the_piece = [part for part in found if old[part.pk] == part.piece_id]
    if len(of_the_piece) < len(old):
        raise RoleUnknown("A part can only stand for another part of the same piece.")
    rows = about_parts(act=act, parts=of_the_piece, kind=PartEvent.Kind.REPLACED)
    for row in rows:
        row.id = act.row_id(row.part_id)
    return rows


def _move(act: Act, piece: Piece, place: Place) -> Move:
    return Move(
        id=uuid5(act.row_id(piece.pk), "place"),
        studio=act.studio,
        piece=piece,
        place=place,
        happened_at=act.happened_at,
    )


def _busy(casting: Casting) -> set[UUID]:
    """Return the castings of the studio that have clay in them."""
    in_moulds = Part.objects.filter(studio=casting.studio_id, state=Part.State.IN_MOULD)
    held = in_moulds.filter(pressing__isnull=False)
    return set(held.values_list("pressing__casting_id", flat=True))


def _subjects(
    casting: Casting, mould_parts: Sequence[MouldPart], parts: Sequence[PartGiven]
) -> list[Subject]:
    told_of: list[Subject] = [("casting", casting.pk), ("mould_set", casting.mould_set_id)]
    told_of += [("mould_part", part.pk) for part in mould_parts]
    for part in parts:
        told_of += [("part", part.id), ("piece", part.piece.id)]
    return list(dict.fromkeys(told_of))


def _facts(
    casting: Casting,
    mould_parts: Sequence[MouldPart],
    parts: Sequence[PartGiven],
    count: int,
    slab_block: SlabBlock | None,
) -> dict[str, object]:
    return {
        "casting": casting.pk,
        "generation": casting.generation,
        "mould_set": casting.mould_set_id,
        "mould_parts": [part.pk for part in mould_parts],
        "count": count,
        "slab_block": slab_block.pk if slab_block else None,
        "parts": [{"id": p.id, "role": p.role, "piece": p.piece.id} for p in parts],
    }
