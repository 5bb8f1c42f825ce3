"""Reminders about covers: what to cover or open and when, and rooms whose air has changed since.

A sweep finds the next change each plan asks for, and pieces that were covered for air that is no
longer there. What somebody has done since is taken back.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from datetime import UTC, datetime, timedelta
from typing import Final
from uuid import UUID, uuid5
from zoneinfo import ZoneInfo

from moulds.domain import words
from pieces.models import Forecast, Part, Piece
from pieces.queries import looks
from pieces.queries.covering import Step, covering_of
from studio.actions import reminders
from studio.actions.reminders import About
from studio.models import Member, Place, Studio
from studio.queries import air

CHANGE: Final = "cover_changes"
ROOM: Final = "room_changed"
CAUSES: Final = (CHANGE, ROOM)
SOON: Final = timedelta(hours=24)
DRIER_BY: Final = 0.15  # of humidity, since the cover was set; common practice, no source
WARMER_BY_C: Final = 6.0
COVERED: Final = ("loose", "tucked")
MARKS_SHOWN: Final = 12

Wish = tuple[Member, About, datetime, datetime]


def tell_of_covers(*, studio: Studio, at: datetime) -> int:
    """Set what has come due, take back what is no longer so; return how many are wanted."""
    wishes = [*_changes(studio, at), *_rooms(studio, at)]
    due = [wish for wish in wishes if wish[2] <= at]
    for person, about, due_at, heard_at in due:
        reminders.set_for(
            studio=studio, person=person, about=about, due_at=due_at, at=at, heard_at=heard_at
        )
    wanted = {(about.cause, about.object_id) for _, about, _, _ in wishes}
    reminders.withdraw_all_but(studio=studio, causes=CAUSES, still=wanted)
    return len(due)


def _changes(studio: Studio, at: datetime) -> Iterator[Wish]:
    by_piece: defaultdict[Piece, list[Forecast]] = defaultdict(list)
    rows = (
        Forecast.objects.filter(studio=studio, known_since__isnull=False)
        .filter(piece__maker__isnull=False, piece__is_undone=False)
        .exclude(part__state__in=(Part.State.SCRAPPED, Part.State.REPLACED))
    )
    for row in rows.select_related("piece__design", "piece__maker", "piece__place", "part"):
        by_piece[row.piece].append(row)
    for piece, forecasts in by_piece.items():
        steps = covering_of(forecasts).steps
        if not steps:
            continue
        due_at = datetime.fromtimestamp(steps[0].at_s, tz=UTC)
        if due_at > at + SOON:
            continue
        since = max(row.known_since for row in forecasts if row.known_since is not None)
        when = words.clock(due_at, zone=ZoneInfo(studio.zone), beside=at)
        yield _maker(piece), _cover_about(piece, steps[0], when), due_at, since


def _cover_about(piece: Piece, step: Step, when: str) -> About:
    where = f", {piece.place.name}" if piece.place is not None else ""
    verb = step.words.capitalize()
    return About(
        cause=CHANGE,
        grade="C",
        kind="piece",
        object_id=piece.pk,
        mark=piece.shown_mark,
        title=f"{verb}, from {when}: {piece.shown_mark}, {piece.design.noun}{where}.",
        body="By its drying as reckoned, with limits that are a rule of thumb. Feel it first.",
        link=f"/pieces/{piece.pk}",
    )


def _rooms(studio: Studio, at: datetime) -> Iterator[Wish]:
    covered = list(
        Piece.objects.of(studio)
        .filter(state="drying", cover__in=COVERED, maker__isnull=False, place__isnull=False)
        .exclude(cover_since_at=None)
        .select_related("maker", "place")
        .order_by("mark_key")
    )
    if not covered:
        return
    since = min(piece.cover_since_at for piece in covered if piece.cover_since_at is not None)
    sky, room_of = air.Sky(studio, since, at), looks.rooms(studio)
    places = {place.pk: place for place in Place.objects.of(studio)}
    groups: defaultdict[tuple[Member, UUID], list[tuple[Piece, datetime]]] = defaultdict(list)
    for piece in covered:
        changed_at = _changed_at(piece, sky)
        if changed_at is not None and piece.place_id is not None:
            room = UUID(room_of[piece.place_id])
            groups[_maker(piece), room].append((piece, changed_at))
    for (maker, room), found in groups.items():
        changed_at = min(changed for _, changed in found)
        about = _room_about([piece for piece, _ in found], places, room, maker)
        yield maker, about, changed_at, changed_at


def _changed_at(piece: Piece, sky: air.Sky) -> datetime | None:
    """Return when the last reading was taken, if its air is not what the piece was covered for."""
    samples = sky.over(piece.place_id).samples
    assert piece.cover_since_at is not None  # filtered above
    before = [sample for sample in samples if sample[0] <= piece.cover_since_at]
    if not before or samples[-1][0] <= piece.cover_since_at:
        return None
    (_, was_c, was_humid), (last_at, air_c, humid) = before[-1], samples[-1]
    is_other = was_humid - humid >= DRIER_BY or air_c - was_c >= WARMER_BY_C
    return last_at if is_other else None


def _room_about(
    pieces: Iterable[Piece], places: Mapping[UUID, Place], room: UUID, maker: Member
) -> About:
    marks = [piece.shown_mark for piece in pieces]
    more = f" and {len(marks) - MARKS_SHOWN} more" if len(marks) > MARKS_SHOWN else ""
    return About(
        cause=ROOM,
        grade="C",
        kind="place",
        object_id=uuid5(room, str(maker.pk)),  # each maker's own ware there
        mark=places[room].name,
        title=f"{places[room].name} is drier or warmer than when you covered.",
        body=f"Look at {', '.join(marks[:MARKS_SHOWN])}{more}: their covers were for damper air.",
        link=f"/racks/{room}",
    )


def _maker(piece: Piece) -> Member:
    assert piece.maker is not None  # filtered above
    return piece.maker
