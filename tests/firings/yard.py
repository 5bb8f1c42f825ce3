"""Two kilns, a rack, and ware at every stage: what the tests of firings stand on."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from firings.actions import cones, events, kilns, loads, placing
from firings.actions.events import Given, Result
from firings.actions.loads import LoadGiven
from firings.actions.placing import PieceAsked, ThingAsked
from firings.models import Kiln, Load, LoadEvent, Placement
from firings.queries import kilns as kiln_queries
from moulds.models import Design
from pieces.actions import stages
from pieces.actions.shapes import Visit
from pieces.domain.stages import BISQUED, BONE_DRY, DRYING, GLAZE_FIRED, GLAZED, Spot
from pieces.models import Piece
from studio.models import ClayBody, Member, Place, Studio
from tests import factories
from tests.factories import NOW
from tests.pieces import kit as pieces_kit

HOUR = timedelta(hours=1)
DAY = timedelta(days=1)
# The way of a tile to each spot, by what is said of it.
WAY = {
    DRYING: [DRYING],
    BONE_DRY: [DRYING, BONE_DRY],
    BISQUED: [DRYING, BONE_DRY, Spot("bisque", "in_bisque"), BISQUED],
    GLAZED: [DRYING, BONE_DRY, Spot("bisque", "in_bisque"), BISQUED, GLAZED],
    GLAZE_FIRED: [
        DRYING,
        BONE_DRY,
        Spot("bisque", "in_bisque"),
        BISQUED,
        GLAZED,
        Spot("glaze", "in_glaze"),
        GLAZE_FIRED,
    ],
}


@dataclass(frozen=True)
class Yard:
    """A shared studio: K1 is a front-loader with square shelves, K2 a round top-loader."""

    studio: Studio
    kit: pieces_kit.Kit
    rack: Place
    shed: Place
    ox: Kiln
    finch: Kiln
    body: ClayBody
    keeper: Member


def yard(studio: Studio, keeper: Member) -> Yard:
    its = pieces_kit.kit(studio)
    body = its.tile.body
    assert body is not None
    body.dry_shrinkage_fraction, body.total_shrinkage_fraction = 0.06, 0.116
    body.top_cone = "8"
    body.save()
    size(its.tile, 169.7, 169.7, 12.0)
    shed = factories.place(studio, "Kiln shed")
    return Yard(
        studio=studio,
        kit=its,
        rack=factories.place(studio, "Rack C", "rack"),
        shed=shed,
        ox=kiln(keeper, "K1", "Ox", shed),
        finch=kiln(keeper, "K2", "Finch", shed, chamber="round"),
        body=body,
        keeper=keeper,
    )


def kiln(keeper: Member, number: str, name: str, parent: Place, chamber: str = "rect") -> Kiln:
    is_round = chamber == "round"
    across = {"diameter_mm": 460.0} if is_round else {"width_mm": 600.0, "depth_mm": 600.0}
    shelf = {"diameter_mm": 430.0} if is_round else {"width_mm": 560.0, "depth_mm": 560.0}
    fields: dict[str, Any] = {
        "number": number,
        "name": name,
        "kind": "top" if is_round else "front",
        "chamber": chamber,
        "height_mm": 570.0 if is_round else 800.0,
        "top_c": 1300.0 if is_round else 1280.0,
        **across,
    }
    shelves = [{"shape": chamber, "thickness_mm": 15.0, "count": 6, **shelf}]
    return kilns.make(
        act=factories.act(keeper, NOW - 300 * DAY), fields=fields, shelves=shelves, parent=parent
    )


def size(design: Design, x_mm: float, y_mm: float, height_mm: float, **more: Any) -> None:
    design.footprint_x_mm, design.footprint_y_mm, design.height_mm = x_mm, y_mm, height_mm
    for name, value in more.items():
        setattr(design, name, value)
    design.save()


def tile(
    its: Yard, maker: Member, spot: Spot = BONE_DRY, *, mark: str | None = None, days: int = 9
) -> Piece:
    """Return a tile that came to `spot` so many days ago, standing on the rack."""
    at = NOW - (days + 2) * DAY
    piece = pieces_kit.pressed_tile(its.kit, maker, at=at, mark=mark)
    way = WAY[spot]
    for number, step in enumerate(way):
        is_last = number == len(way) - 1
        then = NOW - days * DAY if is_last else at + (number + 1) * HOUR
        stages.advance(
            act=factories.act(maker, then),
            piece=piece,
            visit=Visit(*step, place=its.rack),
        )
    return pieces_kit.again(piece)


def load(its: Yard, kind: str = "bisque", **fields: Any) -> Load:
    """Return an open load of Monday evening."""
    at = fields.pop("made_at", NOW - DAY)
    given = {
        "kiln": its.ox if kind == "bisque" else its.finch,
        "kind": kind,
        "cone": "04" if kind == "bisque" else "6",
        "starts_at": NOW + 57 * HOUR,
        **fields,
    }
    return loads.open_load(act=factories.act(its.keeper, at), given=LoadGiven(**given))


def put(
    on: Load, by: Member, *pieces: Piece, things: Sequence[ThingAsked] = (), **more: Any
) -> list[Placement]:
    at = more.pop("at", NOW - 20 * HOUR)
    return placing.place(
        act=factories.act(by, at),
        load=on,
        pieces=[PieceAsked(piece) for piece in pieces],
        things=things,
        **more,
    ).placements


def tell(on: Load, by: Member, kind: str, at: Any = NOW, **more: Any) -> LoadEvent:
    results = [Result(*row) for row in more.pop("results", ())]
    act = factories.act(by, at, **more.pop("act", {}))
    return events.tell(act=act, load=on, given=Given(kind, results=results, **more))


def again(row: Load) -> Load:
    return Load.objects.select_related("kiln__place", "watcher").get(pk=row.pk)


def spot(piece: Piece) -> tuple[str, str]:
    return pieces_kit.spot(piece)


def place_of(piece: Piece) -> str | None:
    place = pieces_kit.again(piece).place
    return place.name if place else None


def fired(load, by, *, at=NOW, outcome="fired", **more):
    """Tell the whole of a firing that went well."""
    tell(load, by, "settled", at)
    tell(load, by, "loading", at + HOUR)
    tell(load, by, "started", at + 2 * HOUR)
    tell(load, by, "ended", at + 13 * HOUR)
    tell(load, by, "opened", at + 37 * HOUR, celsius=90.0)
    return tell(load, by, "unloaded", at + 38 * HOUR, outcome=outcome, **more)


def age_of(kiln):
    rows = Kiln.objects.filter(pk=kiln.pk)
    return kiln_queries.now_of(rows, studio=kiln.studio, at=NOW + 9 * DAY)[0].health.elements


def ask_for(
    piece: Piece, by: Member, cone: str, *, at: datetime = NOW - HOUR, words: str = ""
) -> None:
    """Write a ticket for a piece that waits for a glaze firing."""
    asked = cones.TicketGiven("glaze", cone, words)
    cones.ask_for(act=factories.act(by, at), piece=piece, given=asked)
