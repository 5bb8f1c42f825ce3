"""Where pieces stood and on what, as the drying model is told of it."""

from datetime import timedelta

import pytest

from pieces.actions import forecasts, moves, parts
from pieces.domain.drying import Face
from pieces.models import Forecast, Move, Piece
from pieces.queries import drying
from studio.domain.ids import uuid7
from studio.models import Place
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits


@pytest.fixture
def rack(studio) -> Place:
    return factories.place(studio, "Rack A", kind=Place.Kind.RACK)


@pytest.fixture
def tile(kit, maker) -> Piece:
    """A tile that lies flat, out of its mould for a day."""
    kit.tile.parts.update(height_mm=12.0)
    tile = kits.pressed_tile(kit, maker[0], at=NOW - timedelta(hours=40))
    told = act(maker[0], NOW - timedelta(hours=24))
    parts.record_event(act=told, part=kits.part_of(tile, "tile"), kind="demoulded")
    return kits.again(tile)


def put(maker, tile: Piece, place: Place, stands_on: str = "", hours: float = -20.0) -> None:
    told = act(maker[0], NOW + timedelta(hours=hours))
    moves.move(act=told, pieces=[tile], place=place, stands_on=stands_on)


def saying(place: Place, stands_on: str) -> dict[str, object]:
    envelope = {"id": str(uuid7()), "happened_at": NOW.isoformat(), "based_on": 0}
    return {**envelope, "place_id": str(place.pk), "stands_on": stands_on}


def below(tile: Piece) -> Face:
    """Return what the face that lies down meets now."""
    (part,) = drying.wet_parts(tile.studio, piece_id=tile.pk)
    return part.events[-1].inner


def dry_s(tile: Piece) -> float:
    forecasts.refresh(studio=tile.studio, at=NOW)
    return float(Forecast.objects.get(piece=tile).windows["bisque"]["p50_s"])


class TestStood:
    def test_lies_on_a_board_where_nobody_said_otherwise(self, tile, maker, rack) -> None:
        put(maker, tile, rack)

        assert below(tile) == Face(0.1)

    def test_lies_on_plaster_on_a_bat_and_in_the_air_on_slats(self, tile, maker, rack) -> None:
        put(maker, tile, rack, Move.On.BAT)
        on_bat = below(tile)
        put(maker, tile, rack, Move.On.SLATS, hours=-10.0)

        assert on_bat.plaster is not None
        assert below(tile) == Face(1.0)

    def test_takes_what_was_said_of_the_piece_before_what_its_place_is(
        self, studio, tile, maker
    ) -> None:
        bat = factories.place(studio, "Bat 1", kind=Place.Kind.BAT)

        put(maker, tile, bat)
        by_place = below(tile)
        put(maker, tile, bat, Move.On.BOARD, hours=-10.0)

        assert by_place.plaster is not None
        assert below(tile) == Face(0.1)

    def test_holds_until_it_is_put_elsewhere(self, studio, tile, maker, rack) -> None:
        put(maker, tile, rack, Move.On.SLATS)
        put(maker, tile, factories.place(studio, "Rack B"), hours=-10.0)

        assert below(tile) == Face(0.1)

    @pytest.mark.usefixtures("short_forecasts")
    def test_dries_sooner_on_slats(self, tile, maker, rack) -> None:
        put(maker, tile, rack)
        on_board = dry_s(tile)
        put(maker, tile, rack, Move.On.SLATS, hours=-19.0)

        assert dry_s(tile) < on_board - 3600


class TestStandsOnOverTheWire:
    def test_is_said_with_the_place_shown_on_the_piece_and_told_in_its_story(
        self, tile, maker, rack
    ) -> None:
        path = f"/api/v1/studios/yard/pieces/{tile.pk}/"
        said = saying(rack, "bat")

        answer = maker[1].post(f"{path}moves/", said, format="json")

        assert answer.status_code == 201, answer.content
        shown = maker[1].get(path).json()
        assert shown["piece"]["stands_on"] == "bat"
        assert "put on Rack A, on a plaster bat" in [told["words"] for told in shown["story"]]
        assert maker[1].get(f"{path}moves/").json()["results"][0]["stands_on"] == "bat"

    def test_is_refused_where_there_is_no_such_thing_to_stand_on(self, tile, maker, rack) -> None:
        said = saying(rack, "table")

        answer = maker[1].post(f"/api/v1/studios/yard/pieces/{tile.pk}/moves/", said, format="json")

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/stands_on"
