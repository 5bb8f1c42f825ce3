"""Pieces as lists and one by one."""

from collections import Counter
from collections.abc import Iterable
from uuid import UUID

from django.db.models import Q, QuerySet

from moulds.models import DesignPart
from pieces.models import Clash, Part, Piece
from studio.models import Member, Studio

ALIVE = (Part.State.IN_MOULD, Part.State.OUT, Part.State.JOINED)


def listed(studio: Studio) -> "QuerySet[Piece]":
    """Return the pieces of a studio with what a row of them shows. One query when read."""
    return all_of(studio).filter(is_undone=False)


def all_of(studio: Studio) -> "QuerySet[Piece]":
    """Return the same, with those whose making was taken back: to answer an act about them."""
    return Piece.objects.filter(studio=studio).select_related("design", "place", "maker")


def found(
    studio: Studio,
    *,
    stage: str | None = None,
    state: str | None = None,
    place: UUID | None = None,
    maker: UUID | None = None,
) -> "QuerySet[Piece]":
    """Return the pieces that fit; a place holds what stands on it and on the shelves in it."""
    rows = listed(studio)
    if stage is not None:
        rows = rows.filter(stage=stage)
    if state is not None:
        rows = rows.filter(state=state)
    if place is not None:
        rows = rows.filter(Q(place=place) | Q(place__parent=place) | Q(place__parent__parent=place))
    if maker is not None:
        rows = rows.filter(maker=maker)
    return rows


def open_clashes(pieces: Iterable[UUID]) -> dict[UUID, UUID]:
    """Return the open clash of each piece that has one. One query."""
    rows = Clash.objects.filter(piece__in=list(pieces), state=Clash.State.OPEN)
    return dict(rows.order_by("-opened_at").values_list("piece_id", "pk"))


def missing_roles(pieces: Iterable[Piece]) -> dict[UUID, list[str]]:
    """Return for each piece the roles its design requires and nobody has made. Two queries."""
    pieces = list(pieces)
    made: Counter[tuple[UUID, str]] = Counter()
    parts = Part.objects.filter(piece__in=[piece.pk for piece in pieces], state__in=ALIVE)
    for piece_id, role in parts.values_list("piece_id", "role"):
        made[piece_id, role] += 1
    wanted: dict[UUID, list[tuple[str, int]]] = {}
    roles = DesignPart.objects.filter(
        design__in={piece.design_id for piece in pieces}, is_required=True
    ).order_by("order", "role")
    for design_id, role, count in roles.values_list("design_id", "role", "count"):
        wanted.setdefault(design_id, []).append((role, count))
    return {
        piece.pk: [
            role for role, count in wanted.get(piece.design_id, ()) if made[piece.pk, role] < count
        ]
        for piece in pieces
    }


def makers_of(member: Member) -> set[UUID]:
    """Return whose pieces count as the member's own: mine, and of the makers I help. One query."""
    return {member.pk, *member.helps.values_list("pk", flat=True)}


def parts_of(piece: Piece) -> list[Part]:
    """Return the parts of a piece that were ever begun, oldest first, with their moulds."""
    rows = Part.objects.filter(piece=piece).exclude(state=Part.State.TO_PRESS)
    rows = rows.select_related(
        "design_part", "pressing__casting__mould_set", "pressing__slab_block"
    )
    return list(rows.order_by("design_part__order", "role", "number"))
