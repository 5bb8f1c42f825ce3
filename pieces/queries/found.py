"""Ware without a name: what is found, who claims it, whom to ask."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from uuid import UUID

from django.db.models import Q, QuerySet

from pieces.domain import likely_owners
from pieces.domain.likely_owners import Found, Recorded
from pieces.models import Claim, FoundPiece, Move, Piece, StageEvent
from studio.models import JournalEntry, Member, Place, Studio

GONE = ("delivered",)
LOST_FOR_GOOD = ("scrapped", "let_go")
LOOKED_AT = 400
ASKED = "asked_whose"


@dataclass(frozen=True, slots=True)
class Likely:
    """Somebody to ask whether a found thing is theirs."""

    member: Member
    piece: Piece
    why: tuple[str, ...]


def all_of(studio: Studio, state: str | None = None) -> "QuerySet[FoundPiece]":
    """Return what was found, newest first."""
    rows = FoundPiece.objects.of(studio).select_related(
        "place", "piece__design", "body", "found_by", "returned_to"
    )
    rows = rows if state is None else rows.filter(state=state)
    return rows.order_by("-found_at", "-id")


def claims_of(found: Iterable[FoundPiece]) -> "QuerySet[Claim]":
    """Return who says that found things are theirs, the first to say so first."""
    rows: Any = Claim.objects.filter(found__in=[row.pk for row in found]).standing()
    told: QuerySet[Claim] = rows.select_related("member", "piece__design", "entry")
    return told.order_by("entry__seq")


def asked_of(found: FoundPiece) -> set[UUID]:
    """Return the ids of those who were asked already whether a thing is theirs. One query."""
    entries = JournalEntry.objects.filter(
        studio=found.studio_id, verb=ASKED, subjects__subject_id=found.pk
    )
    return {UUID(pk) for facts in entries.values_list("facts", flat=True) for pk in facts["people"]}


def likely_owners_of(found: FoundPiece) -> list[Likely]:
    """Return up to three people to ask, the likeliest first. Six queries."""
    here = {found.place_id} if found.place_id else set()
    near = _near(found.place)
    stood = _stood(found, here | near)
    pieces = _candidates(found, stood)
    records = [_recorded(piece, here=here, near=near, stood=stood) for piece in pieces]
    sizes = [size for size in (found.x_mm, found.y_mm, found.height_mm) if size is not None]
    thing = Found(
        at=found.found_at,
        sizes_mm=sizes if len(sizes) == 3 else (),
        body=found.body_id,
        state=found.looks,
    )
    by_id = {piece.pk: piece for piece in pieces}
    return [
        Likely(member, by_id[row.piece], row.why)
        for row in likely_owners.candidates(thing, records)
        if (member := by_id[row.piece].maker) is not None
    ]


def _near(place: Place | None) -> set[UUID]:
    """Return the places next to one: in the same rack or room, and in it."""
    if place is None:
        return set()
    around = Q(parent=place)
    if place.parent_id is not None:
        around |= Q(parent=place.parent_id) | Q(pk=place.parent_id)
    return set(Place.objects.filter(around).exclude(pk=place.pk).values_list("pk", flat=True))


def _stood(found: FoundPiece, places: Iterable[UUID]) -> dict[UUID, tuple[UUID, datetime]]:
    """Return where pieces were last said to stand, of these places, before it was found."""
    told: list[tuple[datetime, UUID, UUID]] = []
    for model in (Move, StageEvent):
        rows = model.objects.of(found.studio).filter(
            place__in=list(places), happened_at__lte=found.found_at
        )
        newest = rows.order_by("-happened_at").values_list("happened_at", "piece", "place")
        told += newest[:LOOKED_AT]
    return {piece: (place, at) for at, piece, place in sorted(told)}


def _candidates(found: FoundPiece, stood: Iterable[UUID]) -> list[Piece]:
    """Return the pieces it may be: those that stood there and those that are missing.

    What was handed over, is gone for good, or was seen elsewhere since is none of them.
    """
    rows = Piece.objects.filter(studio=found.studio_id, is_undone=False, maker__isnull=False)
    rows = rows.filter(Q(pk__in=list(stood)) | Q(state="missing"), begun_at__lte=found.found_at)
    rows = rows.exclude(stage__in=GONE).exclude(state__in=LOST_FOR_GOOD)
    if found.piece_id is not None:
        rows = rows.exclude(pk=found.piece_id)
    seen_since = Q(touched_at__gt=found.found_at) & ~Q(state="missing")
    return list(rows.exclude(seen_since).select_related("design", "maker"))


def _recorded(
    piece: Piece,
    *,
    here: set[UUID],
    near: set[UUID],
    stood: dict[UUID, tuple[UUID, datetime]],
) -> Recorded:
    place, left_at = stood.get(piece.pk, (None, None))
    if place is None:
        place = piece.place_id
    design = piece.design
    sizes = [design.footprint_x_mm, design.footprint_y_mm, design.height_mm]
    assert piece.maker_id is not None  # filtered above
    return Recorded(
        piece=piece.pk,
        maker=piece.maker_id,
        here=2 if place in here else 1 if place in near else 0,
        left_at=left_at,
        is_missing=piece.state == "missing",
        state=piece.state,
        sizes_mm=[size for size in sizes if size is not None] if all(sizes) else (),
        body=piece.body_id,
    )
