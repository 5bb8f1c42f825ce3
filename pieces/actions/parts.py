"""What happens to parts: out of the mould, not yet, stuck, joined, cracked, scrapped, replaced."""

from collections.abc import Mapping, Sequence
from typing import Final
from uuid import UUID

from django.db import transaction

from moulds.models import DesignPart
from moulds.queries.designs import IN_MOULDS
from pieces.models import Part, PartEvent, Piece
from studio.domain.refusals import Unworkable
from studio.models import Act, JournalEntry

from . import stories
from .pressing import PartExists, RoleUnknown
from .rows import about_parts

K = PartEvent.Kind
VERBS: Final[dict[str, str]] = {
    K.DEMOULDED: "demoulded",
    K.NOT_YET: "not_yet",
    K.STUCK: "stuck",
    K.JOINED: "joined",
    K.CRACKED: "cracked",
    K.SCRAPPED: "part_scrapped",
    K.REPLACED: "replaced",
}


class OnlyPart(Unworkable):
    code = "only-part"
    title = "That is all there is of the piece."


class NoClayInAMould(Unworkable):
    code = "comes-from-a-mould"
    title = "That part comes from a mould."


@transaction.atomic
def record_event(
    *,
    act: Act,
    part: Part,
    kind: str,
    how: str = "",
    cause: str = "",
    replacement: Part | None = None,
) -> PartEvent:
    """Record what happened to one part; `replacement` is the part that stands for a replaced one.

    Nothing is set silently: a part that stuck leaves its mould as it is, for a person to rest.
    Raises `OnlyPart`, `StageOutOfOrder` and `BeforeItBegan`.
    """
    if replacement is not None and replacement.piece_id != part.piece_id:
        raise RoleUnknown("A part can only stand for another part of the same piece.")
    if replacement is not None:
        Part.objects.filter(pk=replacement.pk).update(replaces=part)
    told = {"replacement": replacement.pk} if replacement else {}
    return _record(act=act, parts=[part], kind=kind, how=how, cause=cause, told=told)[0]


@transaction.atomic
def record_events(
    *, act: Act, parts: Sequence[Part], kind: str, how: str = "", cause: str = ""
) -> list[PartEvent]:
    """Record the same of several parts by one act; all or none. Raises like `record_event`."""
    return _record(act=act, parts=parts, kind=kind, how=how, cause=cause, told={})


@transaction.atomic
def report_damage(
    *, act: Act, pieces: Sequence[Piece], how: str, entry: JournalEntry | None = None
) -> list[PartEvent]:
    """Record that pieces are damaged, where nobody says which part: the first made stands for all.

    A piece without a part that was pressed here cannot be marked so, and is left out.
    """
    first: dict[UUID, Part] = {}
    parts = Part.objects.filter(piece__in=pieces, state__in=("in_mould", "out", "joined"))
    for part in parts.select_related("piece").order_by("-design_part__order", "-number"):
        first[part.piece_id] = part
    rows = about_parts(act=act, parts=list(first.values()), kind=K.CRACKED, how=how)
    for row in rows:
        row.id = act.row_id(row.part_id)
    if rows:
        facts = {"kind": K.CRACKED, "how": how, "parts": list(first)}
        stories.append(act=act, rows=rows, verb="cracked", facts=facts, entry=entry)
    return rows


@transaction.atomic
def make(*, act: Act, piece: Piece, id: UUID, role: str) -> Part:
    """Record a part made without a mould: thrown, coiled or carved.

    Raises `PartExists`, `RoleUnknown` and `NoClayInAMould`.
    """
    drawn = DesignPart.objects.filter(design=piece.design_id, role=role).first()
    if drawn is None:
        raise RoleUnknown(f"{piece.design} has no “{role}”.", role=role)
    if piece.design.uses_moulds and drawn.method in IN_MOULDS:
        raise NoClayInAMould(f"Record a pressing for the {role}.", role=role)
    if Part.objects.filter(pk=id).exists():
        raise PartExists("Make each part with an id of its own.")
    number = Part.objects.filter(piece=piece, role=role).count() + 1
    part = Part.objects.create(
        id=id, studio=act.studio, piece=piece, design_part=drawn, role=role, number=number
    )
    rows = about_parts(act=act, parts=[part], kind=K.PRESSED, how=drawn.method)
    stories.append(
        act=act,
        rows=rows,
        verb="made_part",
        facts={"part": part.pk, "role": role, "method": drawn.method},
        subjects=[("part", part.pk)],
    )
    part.refresh_from_db()
    return part


def _record(
    *,
    act: Act,
    parts: Sequence[Part],
    kind: str,
    how: str,
    cause: str,
    told: Mapping[str, object],
) -> list[PartEvent]:
    if kind == K.REPLACED:
        _check_replaceable(parts)
    rows = about_parts(act=act, parts=parts, kind=kind, how=how, cause=cause)
    facts = {"kind": kind, "how": how, "cause": cause, "parts": [part.pk for part in parts], **told}
    facts = {name: value for name, value in facts.items() if value}
    told_of = [("part", part.pk) for part in parts]
    stories.append(act=act, rows=rows, verb=VERBS[kind], facts=facts, subjects=told_of)
    for part in parts:
        part.refresh_from_db()
    return rows


def _check_replaceable(parts: Sequence[Part]) -> None:
    for part in parts:
        roles = DesignPart.objects.filter(design=part.piece.design_id, is_required=True)
        if sum(roles.values_list("count", flat=True)) <= 1:
            raise OnlyPart(
                f"{part.piece.shown_mark} is one part: scrap the piece and press another."
            )
