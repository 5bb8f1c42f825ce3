"""Ware goes into a kiln and comes out of it: what the events of a load do to its pieces."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any
from uuid import UUID

from firings.domain import ware
from firings.domain.ware import Way
from firings.models import Load, Placement
from firings.queries.stands import Stand, stands
from pieces.actions import covers, parts, stages
from pieces.actions.shapes import Visit
from pieces.domain.stages import Spot
from pieces.models import Piece
from studio.models import Act, JournalEntry, Place


@dataclass(frozen=True, slots=True)
class Going:
    """One placement on its way, and where the piece stood."""

    placement: Placement
    stood: Stand
    way: Way
    place: Place | None = None
    is_broken: bool = False

    @property
    def piece(self) -> Piece:
        assert self.placement.piece is not None  # only pieces go anywhere
        return self.placement.piece

    def as_facts(self, load: Load) -> dict[str, Any]:
        """Return it as the journal keeps it."""
        return {
            "piece": self.piece.pk,
            "stage": self.way.spot.stage,
            "state": self.way.spot.state,
            "reason": self.way.reason,
            "occasion_name": load.number,
            "place": self.place.pk if self.place else None,
        }


class Homes:
    """The shelves that the pieces of a load came from. One query."""

    def __init__(self, load: Load, rows: Iterable[Placement]) -> None:
        self.kiln_place_id = load.kiln.place_id
        kept = {row.came_from.get("place") for row in rows if row.came_from}
        places = Place.objects.filter(studio=load.studio_id, pk__in=kept - {None})
        self.by_id = {str(place.pk): place for place in places}

    def of(self, row: Placement, stand: Stand) -> Place | None:
        """Return the shelf, None when somebody put the piece elsewhere meanwhile."""
        if stand.place_id != self.kiln_place_id:
            return None
        return self.by_id.get((row.came_from or {}).get("place") or "")


def of(load: Load) -> list[Placement]:
    """Return the pieces in a load. One query."""
    rows = Placement.objects.filter(load=load, removed_at=None, piece__isnull=False)
    return list(rows.select_related("piece__design", "piece__maker").order_by("placed_at", "id"))


def going_in(act: Act, load: Load, rows: Sequence[Placement]) -> list[Going]:
    """Return how each piece goes into the kiln; what is lost by then does not."""
    stood = _stood(act, rows)
    found = []
    for row in rows:
        stand = stood.get(_piece_id(row))
        if stand is None or stand.spot.stage == "lost":
            continue
        way = ware.into(
            load.kind, stand.spot, is_one_part=stand.is_one_part, reason=row.override_reason
        )
        found.append(Going(row, stand, way, place=load.kiln.place))
    return found


def going_out(
    act: Act,
    load: Load,
    rows: Sequence[Placement],
    *,
    results: Mapping[str, str],
    outcome: str,
    places: Mapping[UUID, Place],
    place: Place | None,
) -> list[Going]:
    """Return how each piece comes out; `places` go by placement, `place` is for all the others."""
    stood, homes = _stood(act, rows), Homes(load, rows)
    found = []
    for row in rows:
        stand = stood.get(_piece_id(row))
        if stand is None or stand.spot.stage == "lost":
            continue
        result = results.get(str(row.pk)) or outcome
        way = ware.out_of(
            load.kind,
            stand.spot,
            _came_from(row),
            result,
            outcome=outcome,
            is_one_part=stand.is_one_part,
        )
        if way is None:
            continue
        put = places.get(row.pk) or (homes.of(row, stand) if way.is_back else place)
        found.append(Going(row, stand, way, place=put, is_broken=result == "broken"))
    return found


def going_home(act: Act, load: Load, rows: Sequence[Placement]) -> list[Going]:
    """Return how each piece goes back; what a later act has moved on stays where that put it."""
    stood, homes = _stood(act, rows), Homes(load, rows)
    found = []
    for row in rows:
        stand = stood.get(_piece_id(row))
        is_in = (
            stand is not None
            and stand.spot == ware.INTO.get(load.kind)
            and stand.occasion_id == load.pk
        )
        if stand is None or not is_in:
            continue
        way = ware.called_off(stand.spot, _came_from(row), is_one_part=stand.is_one_part)
        if way is not None:
            found.append(Going(row, stand, way, place=homes.of(row, stand)))
    return found


def remember(goings: Iterable[Going]) -> None:
    """Keep where each piece came from."""
    rows = []
    for going in goings:
        going.placement.came_from = going.stood.kept()
        rows.append(going.placement)
    Placement.objects.bulk_update(rows, ["came_from"])


def go(act: Act, entry: JournalEntry, load: Load, goings: Sequence[Going]) -> None:
    """Write the visits of the pieces, the covers they wore, and what broke."""
    if not goings:
        return
    was_interrupted = _interrupted(load, goings)
    visits = [(going.piece, _visit(load, going, was_interrupted)) for going in goings]
    stages.advance_all(act=act, visits=visits, entry=entry)
    _cover_again(act, entry, goings)
    broken = [going.piece for going in goings if going.is_broken]
    if broken:
        parts.report_damage(act=act, pieces=broken, how="in the kiln", entry=entry)


def _visit(load: Load, going: Going, was_interrupted: set[UUID]) -> Visit:
    came_from = going.placement.came_from or {}
    return Visit(
        *going.way.spot,
        reason=going.way.reason,
        place=going.place,
        occasion_id=load.pk,
        occasion_name=load.number,
        grade=came_from.get("grade", "") if going.way.is_back else "",
        is_interrupted=going.way.spot == ware.OUT_OF["bisque"]
        and going.piece.pk in was_interrupted,
    )


def _interrupted(load: Load, goings: Sequence[Going]) -> set[UUID]:
    """Return the pieces whose bisque was broken off, in this load or in one before it."""
    pieces = {going.piece.pk for going in goings}
    if load.kind != "bisque":
        return set()
    if load.is_interrupted:
        return pieces
    stopped = Placement.objects.filter(
        piece__in=pieces, removed_at=None, load__kind="bisque", load__is_interrupted=True
    )
    return set(stopped.values_list("piece_id", flat=True))


def _cover_again(act: Act, entry: JournalEntry, goings: Sequence[Going]) -> None:
    """Put the covers back on what dries on."""
    worn: dict[str, list[Piece]] = {}
    for going in goings:
        cover = (going.placement.came_from or {}).get("cover")
        if going.way.is_back and cover and going.way.spot.stage == "drying":
            worn.setdefault(cover, []).append(going.piece)
    for cover, pieces in worn.items():
        covers.cover(act=act, pieces=pieces, state=cover, entry=entry)


def _stood(act: Act, rows: Sequence[Placement]) -> dict[UUID, Stand]:
    return stands([row.piece for row in rows if row.piece is not None], act.happened_at)


def _came_from(row: Placement) -> Spot | None:
    return Spot(row.came_from["stage"], row.came_from["state"]) if row.came_from else None


def _piece_id(row: Placement) -> UUID:
    assert row.piece_id is not None  # only pieces go anywhere
    found: UUID = row.piece_id
    return found
