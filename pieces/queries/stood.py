"""Where pieces stood, one place after another, and on what."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from typing import Final
from uuid import UUID

from django.db.models import Value

from pieces.domain.drying import Cover
from pieces.domain.schedule import Standing
from pieces.models import Move, Piece, StageEvent
from studio.models import Place

WET_STAGES: Final = ("pressing", "assembly", "drying")

#: Since when, in which place, and on what where somebody said so.
Stood = tuple[datetime, UUID | None, str]


def stood_of(pieces: Iterable[UUID]) -> Mapping[UUID, list[Stood]]:
    """Return where each piece stood, in order of time (three queries)."""
    found: defaultdict[UUID, list[Stood]] = defaultdict(list)
    moves = Move.objects.filter(piece_id__in=pieces).standing()
    visits = StageEvent.objects.filter(piece_id__in=pieces, place__isnull=False).standing()
    columns = ("piece_id", "happened_at", "place_id")
    for piece, *row in (
        *moves.values_list(*columns, "stands_on"),
        *visits.values_list(*columns, Value("")),
    ):
        found[piece].append((row[0], row[1], row[2]))
    for piece, at, place in Piece.objects.filter(pk__in=pieces).values_list(
        "pk", "begun_at", "place_id"
    ):
        if not found[piece]:
            found[piece].append((at, place, ""))
    return defaultdict(list, {piece: sorted(rows, key=_when) for piece, rows in found.items()})


def stands_on(piece: Piece) -> str:
    """Return what a wet piece was said to stand on in its last place; empty where nobody said."""
    if piece.stage not in WET_STAGES:
        return ""
    stood = stood_of([piece.pk])[piece.pk]
    return stood[-1][2] if stood else ""


def _when(row: Stood) -> datetime:
    return row[0]


def air_m_s(stood: Sequence[Stood], places: Mapping[UUID, Place]) -> float:
    """Return how fast the air moves where a piece stands now: there, or in what that stands in."""
    at = stood[-1][1] if stood else None
    seen: set[UUID] = set()
    while at is not None and at in places and at not in seen:
        seen.add(at)
        moves = places[at].air_m_s
        if moves is not None:
            return moves
        at = places[at].parent_id
    return 0.0


def with_places(
    standings: Sequence[Standing], stood: Sequence[Stood], places: Mapping[UUID, Place]
) -> list[Standing]:
    """Merge covers and places: a damp cupboard shuts a piece in, a plaster bat draws from it.

    What was said of the piece itself goes before what its place is.
    """
    moments = sorted(
        {standing.at_s for standing in standings} | {row[0].timestamp() for row in stood}
    )
    ordered = sorted(standings, key=lambda standing: standing.at_s)
    return [
        _standing(
            moment,
            [standing.cover for standing in ordered if standing.at_s <= moment],
            [row for row in stood if row[0].timestamp() <= moment],
            places,
        )
        for moment in moments
    ]


def _standing(
    moment: float, covers: Sequence[Cover], stood: Sequence[Stood], places: Mapping[UUID, Place]
) -> Standing:
    _, place_id, on = stood[-1] if stood else (None, None, "")
    place = places.get(place_id) if place_id is not None else None
    kind = place.kind if place is not None else ""
    return Standing(
        moment,
        covers[-1] if covers else Cover.OPEN,
        is_in_cupboard=kind == Place.Kind.CUPBOARD,
        is_on_bat=on == Move.On.BAT or (not on and kind == Place.Kind.BAT),
        is_open_below=on == Move.On.SLATS,
    )
