"""How a piece dries, as its screen reads it."""

from datetime import datetime, timedelta
from typing import Any

import pytest

from pieces.actions import checks, covers, forecasts, moves, parts, retractions, weighings
from pieces.domain.drying import SOURCES
from pieces.models import Piece
from studio.actions import climate
from studio.domain.climate import Reading
from studio.domain.ids import uuid7
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits

pytestmark = pytest.mark.usefixtures("short_forecasts")


def got(client, piece: Piece) -> dict[str, Any]:
    answer = client.get(f"/api/v1/studios/yard/pieces/{piece.pk}/drying/")
    assert answer.status_code == 200, answer.content
    return answer.json()


@pytest.fixture
def tile(studio, kit, maker) -> Piece:
    """A tile that came out of its mould two hours ago, in a room with a meter."""
    room = factories.place(studio, "Drying room")
    for hours in (1, 9, 17, 25, 33):
        told = act(maker[0], NOW - timedelta(hours=hours))
        reading = Reading(told.happened_at, 14.0, 0.66)
        climate.record(act=told, place=room, readings=[reading])
    pressed = act(maker[0], NOW - timedelta(hours=6))
    given = kits.given(kit.tile, "T07")
    tile = kits.press(pressed, kit.tile_mould, "tile", given, place=room).pieces[0]
    told = act(maker[0], NOW - timedelta(hours=2))
    parts.record_event(act=told, part=kits.part_of(tile, "tile"), kind="demoulded")
    return kits.again(tile)


class TestPieceDrying:
    def test_works(self, studio, tile, maker) -> None:
        forecasts.refresh(studio=studio, at=NOW)

        shown = got(maker[1], tile)

        assert shown["at"] == shown["computed_at"] == "2026-10-31T09:00:00Z"
        assert shown["verdict"] == "Leather-hard"
        assert "touch and two equal weighings" in shown["sentence"]
        assert set(shown["windows"]) == {"demould", "join", "shrinkage_ended", "bisque"}
        assert shown["unreachable"] == []
        assert shown["sources"] == list(SOURCES)
        assert shown["assumed"] == ["mould_water"]
        assert shown["inputs"]["air"] == ["Readings of Drying room."]
        assert shown["inputs"]["thickest_mm"] == 10.0
        assert shown["confidence"] == {"basis": "guess", "checks": 0}

    def test_draws_water_from_all_to_none(self, studio, tile, maker) -> None:
        forecasts.refresh(studio=studio, at=NOW)

        curve = got(maker[1], tile)["curve"]

        known = curve["known_points"]
        times = [datetime.fromisoformat(text) for text in curve["t_at"]]
        assert times[0] == NOW - timedelta(hours=6)
        assert times[known - 1] == NOW - timedelta(hours=1)  # the last look at the meter
        assert curve["p50"][0] == pytest.approx(1.0, abs=0.01)
        assert sorted(curve["p50"], reverse=True) == curve["p50"]
        lines = zip(curve["p10"], curve["p50"], curve["p90"], strict=True)
        assert all(0.0 <= low <= middle <= high <= 1.01 for low, middle, high in lines)

    def test_tells_of_air_between_readings_far_apart(self, studio, kit, maker) -> None:
        room = factories.place(studio, "Drying room")
        for hours in (1, 14, 27):
            told = act(maker[0], NOW - timedelta(hours=hours))
            climate.record(act=told, place=room, readings=[Reading(told.happened_at, 14.0, 0.66)])
        pressed = act(maker[0], NOW - timedelta(hours=6))
        tile = kits.press(
            pressed, kit.tile_mould, "tile", kits.given(kit.tile, "T08"), place=room
        ).pieces[0]

        forecasts.refresh(studio=studio, at=NOW)

        assert got(maker[1], tile)["assumed"] == ["air_gap", "mould_water"]

    def test_says_that_nothing_is_reckoned_yet(self, tile, maker) -> None:
        shown = got(maker[1], tile)

        assert shown["verdict"] == "Not reckoned yet"
        assert shown["sentence"].endswith("go by touch and weight.")
        assert (shown["curve"], shown["windows"], shown["computed_at"]) == (None, None, None)
        assert (shown["inputs"], shown["assumed"]) == ({}, [])

    def test_shows_what_people_found_in_order_of_time(self, studio, tile, maker, helper) -> None:
        rack = factories.place(studio, "Rack A1")
        who = maker[0]
        covers.cover(act=act(who, NOW - timedelta(minutes=50)), pieces=[tile], state="loose")
        weighings.weigh(act=act(who, NOW - timedelta(minutes=40)), piece=tile, mass_g=540.0)
        wrong = act(who, NOW - timedelta(minutes=35))
        weighings.weigh(act=wrong, piece=tile, mass_g=510.0)
        retractions.retract(act=act(who, corrects=wrong.id), may_any=False)
        felt = act(helper[0], NOW - timedelta(minutes=30))
        checks.check(act=felt, pieces=[tile], feel="leather_hard")
        moves.move(act=act(who, NOW - timedelta(minutes=20)), pieces=[tile], place=rack)

        seen = got(maker[1], tile)["evidence"]

        said = [(row["kind"], row["member"], row.get("words", row.get("mass_g"))) for row in seen]
        assert said == [
            ("move", "Maud", "Drying room"),
            ("cover", "Maud", "loose"),
            ("weighing", "Maud", 540.0),
            ("check", "Hal", "leather hard"),
            ("move", "Maud", "Rack A1"),
        ]

    def test_marks_every_figure_of_the_clay_with_where_it_is_from(
        self, studio, tile, maker
    ) -> None:
        forecasts.refresh(studio=studio, at=NOW)

        figures = got(maker[1], tile)["inputs"]["body_figures"]

        assert {"name", "value", "unit", "mark"} == set(figures[0])
        assert all(figure["mark"] for figure in figures)

    def test_leaves_dry_to_a_person(self, studio, tile, maker) -> None:
        forecasts.refresh(studio=studio, at=NOW)
        Piece.objects.filter(pk=tile.pk).update(stage="drying", state="bone_dry")

        assert got(maker[1], tile)["verdict"] == "Called dry"

    def test_gives_no_date_in_a_room_that_is_too_damp(self, studio, kit, maker) -> None:
        studio.settings.assumed_humidity_fraction = 0.95
        studio.settings.save()
        tile = kits.pressed_tile(kit, maker[0], at=NOW - timedelta(days=6))
        told = act(maker[0], NOW - timedelta(days=5))
        parts.record_event(act=told, part=kits.part_of(tile, "tile"), kind="demoulded")
        forecasts.refresh(studio=studio, at=NOW)

        shown = got(maker[1], tile)

        assert "No date is given." in shown["sentence"]
        assert shown["unreachable"] == ["bisque"]
        dry = shown["windows"]["bisque"]
        assert (dry["p10"], dry["p50"], dry["p90"], dry["p_never"]) == (None, None, None, 1.0)
        assert shown["assumed"] == ["air", "mould_water"]

    def test_asks_the_database_a_fixed_number_of_times(
        self, studio, tile, maker, django_assert_max_num_queries
    ) -> None:
        forecasts.refresh(studio=studio, at=NOW)

        with django_assert_max_num_queries(12):
            got(maker[1], tile)

    def test_knows_no_piece_of_another_studio(self, tile, maker, stranger) -> None:
        path = f"/api/v1/studios/yard/pieces/{tile.pk}/drying/"

        assert stranger[1].get(path).status_code == 404
        assert maker[1].get(path.replace(str(tile.pk), str(uuid7()))).status_code == 404


class TestWeighed:
    def test_says_what_two_weighings_say_and_stands_them_beside_the_curve(
        self, studio, tile, maker
    ) -> None:
        for hours, mass_g in ((-1.9, 560.0), (-0.1, 552.0)):
            told = act(maker[0], NOW + timedelta(hours=hours))
            weighings.weigh(act=told, piece=tile, mass_g=mass_g)
        forecasts.refresh(studio=studio, at=NOW)

        shown = got(maker[1], tile)

        first, second = (seen for seen in shown["evidence"] if seen["kind"] == "weighing")
        assert 0.0 < second["water_left"] < first["water_left"] <= 1.0
        assert shown["weighed"]["words"].startswith("About ")
        assert shown["weighed"]["is_steady"] is None  # not yet half a day apart

    def test_says_nothing_of_one_alone(self, studio, tile, maker) -> None:
        told = act(maker[0], NOW - timedelta(hours=1))
        weighings.weigh(act=told, piece=tile, mass_g=560.0)
        forecasts.refresh(studio=studio, at=NOW)

        assert got(maker[1], tile)["weighed"] is None


class TestCovering:
    def test_tells_levels_in_words_and_never_a_number(self, studio, tile, maker) -> None:
        forecasts.refresh(studio=studio, at=NOW)

        shown = got(maker[1], tile)["covering"]

        assert shown["cracking"]["now"] in {"low", "watch", "high"}
        assert "rule of thumb" in shown["cracking"]["note"]
        assert not any(isinstance(value, float) for value in shown["cracking"].values())
        assert {step["cover"] for step in shown["steps"]} <= {"open", "loose", "tucked"}
        assert shown["meeting"] is None
