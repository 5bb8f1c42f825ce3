"""What if, over the wire: the piece's own forecast, and what would come of a change."""

from datetime import datetime, timedelta
from typing import Any, ClassVar

import pytest

from pieces.actions import checks, forecasts, moves, parts
from pieces.models import Piece
from studio.actions import climate
from studio.domain.climate import Reading
from studio.domain.ids import uuid7
from studio.models import Place
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits

pytestmark = pytest.mark.usefixtures("short_forecasts")


def read(maker, place: Place, air_c: float, humidity_fraction: float) -> None:
    readings = [
        Reading(NOW - timedelta(hours=hours), air_c, humidity_fraction) for hours in range(1, 60, 8)
    ]
    climate.record(act=act(maker[0], NOW), place=place, readings=readings)


@pytest.fixture
def room(studio, maker) -> Place:
    room = factories.place(studio, "Drying room")
    read(maker, room, 15.0, 0.62)
    return room


@pytest.fixture
def tiles(studio, kit, maker, room) -> list[Piece]:
    """Two tiles, six hours out of their moulds; the first was felt to be drying briskly."""
    found = []
    for minute in range(2):
        pressed = act(maker[0], NOW - timedelta(hours=40, minutes=minute))
        given = kits.given(kit.tile, f"T0{minute}")
        tile = kits.press(pressed, kit.tile_mould, "tile", given, place=room).pieces[0]
        told = act(maker[0], NOW - timedelta(hours=24))
        parts.record_event(act=told, part=kits.part_of(tile, "tile"), kind="demoulded")
        found.append(kits.again(tile))
    felt = act(maker[0], NOW - timedelta(hours=18))
    checks.check(act=felt, pieces=found[:1], feel="too_stiff")
    forecasts.refresh(studio=studio, at=NOW)
    return found


def ask(client, piece: Piece, **change: Any) -> dict[str, Any]:
    path = f"/api/v1/studios/yard/pieces/{piece.pk}/what-if/"
    answer = client.post(path, change, format="json")
    assert answer.status_code == 200, answer.content
    return answer.json()


def own(client, piece: Piece) -> dict[str, Any]:
    return client.get(f"/api/v1/studios/yard/pieces/{piece.pk}/drying/").json()


def dry_in_h(windows: dict[str, Any]) -> float:
    return (datetime.fromisoformat(windows["bisque"]["p50"]) - NOW).total_seconds() / 3600


class TestWhatIf:
    @pytest.mark.parametrize("which", [0, 1])
    def test_gives_the_pieces_own_dates_when_nothing_is_changed(self, maker, tiles, which) -> None:
        told = ask(maker[1], tiles[which])

        assert told["windows"] == told["as_it_is"] == own(maker[1], tiles[which])["windows"]
        assert told["confidence"] == own(maker[1], tiles[which])["confidence"]
        assert told["warnings"] == []

    def test_gives_them_when_it_is_put_where_it_stands(self, maker, tiles, room) -> None:
        told = ask(maker[1], tiles[0], place_id=str(room.pk))

        assert told["windows"] == told["as_it_is"]

    def test_says_on_what_it_rests(self, maker, tiles, room) -> None:
        kiln_room = factories.place(room.studio, "Kiln room")
        read(maker, kiln_room, 24.0, 0.40)

        looked_at, not_looked_at = ask(maker[1], tiles[0]), ask(maker[1], tiles[1])
        elsewhere = ask(maker[1], tiles[0], place_id=str(kiln_room.pk), thickest_mm="12 mm")

        studio = (
            "It goes by what this studio learned, from 1 check of this clay, as its own dates do."
        )
        assert looked_at["rests_on"] == [
            studio,
            "This piece itself was looked at once, which counts too.",
        ]
        assert not_looked_at["rests_on"] == [studio]
        assert elsewhere["rests_on"] == [
            studio,
            "Pressed otherwise it is another piece: what was seen of this one is left out.",
            "Nothing was learned in Kiln room yet: a guess of how its air takes water.",
        ]

    def test_changes_what_is_to_come_and_not_what_was(self, maker, tiles) -> None:
        told = ask(maker[1], tiles[0], cover="loose")

        assert told["windows"]["join"]["opens"] == told["as_it_is"]["join"]["opens"]
        assert dry_in_h(told["windows"]) > dry_in_h(told["as_it_is"]) + 6
        assert told["curve"]["t_at"][0] == NOW.isoformat()

    def test_goes_by_the_air_and_by_what_was_learned_of_the_other_room(
        self, studio, maker, tiles
    ) -> None:
        twin = factories.place(studio, "Long room")
        read(maker, twin, 15.0, 0.62)
        moves.move(act=act(maker[0], NOW - timedelta(hours=23)), pieces=tiles[:1], place=twin)
        forecasts.refresh(studio=studio, at=NOW)

        told = ask(maker[1], tiles[1], place_id=str(twin.pk))

        assert told["rests_on"][-1] == "In Long room it goes by what was learned there."
        # The same air, but clay was too stiff early there, and nobody felt any in this room.
        assert dry_in_h(told["windows"]) < dry_in_h(told["as_it_is"]) - 0.5

    def test_dries_a_thicker_one_later(self, maker, tiles) -> None:
        told = ask(maker[1], tiles[1], thickest_mm="1.4 cm")

        assert dry_in_h(told["windows"]) > dry_in_h(told["as_it_is"])

    def test_makes_a_piece_of_the_thickness_that_it_has_from_what_the_studio_learned(
        self, maker, tiles
    ) -> None:
        told = ask(maker[1], tiles[1], thickest_mm=10)  # as it was pressed, and nobody felt it

        assert told["windows"] == told["as_it_is"]

    def test_says_where_no_estimate_is_sound(self, studio, maker, tiles) -> None:
        cold = factories.place(studio, "Cold store")
        read(maker, cold, 2.0, 0.8)

        told = ask(maker[1], tiles[0], place_id=str(cold.pk), thickest_mm=40)

        assert (told["windows"], told["curve"]) == (None, None)
        assert told["warnings"] == [
            {
                "code": "no-sound-estimate",
                "detail": "No sound estimate. The air is outside 5 to 30 °C. "
                "It is thicker than 24 mm, three times what the model was made for.",
            }
        ]

    def test_has_nothing_to_say_of_what_is_called_dry(self, maker, tiles) -> None:
        Piece.objects.filter(pk=tiles[0].pk).update(stage="drying", state="bone_dry")

        told = ask(maker[1], tiles[0], cover="open")

        assert told["windows"] is None
        assert told["warnings"][0]["code"] == "nothing-wet"

    def test_keeps_nothing(self, studio, maker, tiles) -> None:
        before = own(maker[1], tiles[0])

        ask(maker[1], tiles[0], cover="sealed", thickest_mm=12)

        assert own(maker[1], tiles[0]) == before

    @pytest.mark.parametrize(
        ("change", "pointer"),
        [
            ({"thickest_mm": 0.5}, "#/thickest_mm"),
            ({"cover": "wrapped"}, "#/cover"),
            ({"place_id": "there"}, "#/place_id"),
        ],
    )
    def test_refuses_what_cannot_be_reckoned_and_names_it(
        self, maker, tiles, change, pointer
    ) -> None:
        path = f"/api/v1/studios/yard/pieces/{tiles[0].pk}/what-if/"

        answer = maker[1].post(path, change, format="json")

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == pointer

    def test_knows_no_place_and_no_piece_of_another_studio(self, maker, stranger, tiles) -> None:
        path = f"/api/v1/studios/yard/pieces/{tiles[0].pk}/what-if/"

        assert stranger[1].post(path, {}, format="json").status_code == 404
        elsewhere = {"place_id": str(uuid7())}
        assert maker[1].post(path, elsewhere, format="json").status_code == 404


class TestDryingSumHere:
    AIR: ClassVar = {"air_c": 15, "humidity_fraction": 0.62}

    def reckon(self, client, **given: Any) -> dict[str, Any]:
        asked = {"thickest_mm": 10, "air": self.AIR, "begins_at": NOW.isoformat(), **given}
        answer = client.post("/api/v1/studios/yard/sums/drying/", asked, format="json")
        assert answer.status_code == 200, answer.content
        return answer.json()

    def test_goes_by_first_figures_where_nobody_looked(self, maker, kit, room) -> None:
        asked = {"thickest_mm": 10, "air": self.AIR, "begins_at": NOW.isoformat()}

        told = self.reckon(maker[1], place_id=str(room.pk))

        first = maker[1].post("/api/v1/sums/drying/", asked, format="json").json()
        assert told["windows"] == first["windows"]
        assert told["confidence"] == {"basis": "guess", "checks": 0}
        assert told["rests_on"] == [
            "Nobody has checked such clay here yet: the clay’s starting figures.",
            "Nothing was learned in Drying room yet: a guess of how its air takes water.",
        ]

    def test_goes_by_what_was_learned_of_such_clay_and_in_that_room(
        self, maker, kit, tiles, room
    ) -> None:
        clay = kit.tile.body.drying_body

        anywhere = self.reckon(maker[1], clay=clay)
        there = self.reckon(maker[1], clay=clay, place_id=str(room.pk))

        assert there["rests_on"] == [
            "It goes by what this studio learned, from 1 check of such clay.",
            "In Drying room it goes by what was learned there.",
        ]
        assert there["confidence"]["checks"] == 1
        # Too stiff early: the room is brisk.
        assert dry_in_h(there["windows"]) < dry_in_h(anywhere["windows"]) - 1

    def test_names_what_it_does_not_reckon_with(self, maker) -> None:
        asked = {"thickest_mm": 200, "air": self.AIR}

        answer = maker[1].post("/api/v1/studios/yard/sums/drying/", asked, format="json")

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/thickest_mm"
