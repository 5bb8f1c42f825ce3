"""What fits a load and what could go in, over the wire."""

import math
from datetime import timedelta

import pytest

from firings.models import Kiln
from pieces.domain.stages import DRYING, GLAZE_FIRED, GLAZED
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import HOUR, ask_for, put, tell, tile

S = "/api/v1/studios/yard/"


class TestFit:
    def test_shows_where_everything_stands(self, yard, maker):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0], mark="T1"), tile(yard, maker[0], mark="T2"))
        tile(yard, maker[0], mark="T3")

        answer = maker[1].get(f"{S}loads/{load.pk}/fit/").json()

        assert (answer["verdict"], answer["reasons"]) == ("fits", [])
        items = [item for level in answer["levels"] for item in level["items"]]
        assert {item["mark"] for item in items} == {"T1", "T2"}
        # 169.7 mm wet is 159.5 mm when 6 % of it has gone.
        assert {round(item["width_mm"], 1) for item in items} == {159.5}
        assert all(item["placement_id"] and item["piece_id"] for item in items)
        assert all(abs(item["x_mm"]) <= 280 and abs(item["y_mm"]) <= 280 for item in items)
        assert "tile" in answer["levels"][0]["room_left"]["words"]
        assert answer["tallest"]["height_mm"] == pytest.approx(11.3, abs=0.05)
        assert "%" not in answer["sentence"]

    def test_is_doubtful_of_what_nobody_measured(self, yard, maker):
        yards.size(yard.kit.tile, None, None, None)
        load = yards.load(yard)
        row = put(load, maker[0], tile(yard, maker[0]))[0]

        answer = maker[1].get(f"{S}loads/{load.pk}/fit/").json()

        assert answer["verdict"] == "doubtful"
        assert str(row.pk) in {reason["placement_id"] for reason in answer["reasons"]}

    def test_is_doubtful_of_a_kiln_without_shelves(self, yard, maker):
        yard.ox.shelves.all().delete()
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0]))

        answer = maker[1].get(f"{S}loads/{load.pk}/fit/").json()

        assert (answer["verdict"], answer["reasons"][0]["code"]) == ("doubtful", "no-shelves")

    def test_tries_other_ware_beside_what_is_placed(self, yard, maker):
        """K2 takes nine jars of 110 mm to a shelf, so not ten that need its whole height."""
        yards.size(yard.kit.tile, 110.0, 110.0, 480.0, is_round=True)
        yard.body.dry_shrinkage_fraction = 0.0
        yard.body.save()
        load = yards.load(yard, "glaze")
        put(load, maker[0], *[tile(yard, maker[0], GLAZED) for _ in range(9)])
        tenth = tile(yard, maker[0], GLAZED)

        now = maker[1].get(f"{S}loads/{load.pk}/fit/").json()
        tried = maker[1].get(f"{S}loads/{load.pk}/fit/", {"pieces": str(tenth.pk)}).json()

        assert now["verdict"] == "fits"
        middle = [math.hypot(i["x_mm"], i["y_mm"]) for i in now["levels"][0]["items"]]
        assert max(middle) <= 215 - 55 + 1e-6
        assert tried["verdict"] == "does_not_fit"

    def test_counts_a_second_glaze_firing_as_needing_more_room(self, yard, maker):
        yards.size(yard.kit.tile, 110.0, 110.0, 440.0, is_round=True)
        yard.studio.settings.refire_headroom_mm = 60.0
        yard.studio.settings.save()
        load = yards.load(yard, "glaze")
        put(load, maker[0], tile(yard, maker[0], GLAZED))
        again = tile(yard, maker[0], GLAZE_FIRED)

        plain = maker[1].get(f"{S}loads/{load.pk}/fit/").json()
        tried = maker[1].get(f"{S}loads/{load.pk}/fit/", {"pieces": str(again.pk)}).json()

        assert tried["used_height_mm"] >= plain["used_height_mm"]


class TestCouldGo:
    def test_says_of_each_whether_it_fits_and_what_speaks_against_it(self, yard, maker, owner):
        load = yards.load(yard)
        tile(yard, maker[0], mark="T1", days=9)
        tile(yard, owner[0], DRYING, mark="T2", days=8)

        answer = maker[1].get(f"{S}loads/{load.pk}/could-go/").json()

        first, second = answer["rows"]
        assert (first["piece"]["mark"], first["fits"], first["refused"]) == ("T1", "fits", None)
        assert second["refused"]["code"] == "damp-evidence-missing"

    def test_names_the_cone_that_differs(self, yard, maker):
        load = yards.load(yard, "glaze")
        piece = tile(yard, maker[0], GLAZED)
        ask_for(piece, maker[0], "04")

        (row,) = maker[1].get(f"{S}loads/{load.pk}/could-go/").json()["rows"]

        assert row["refused"]["code"] == "cone-differs"

    def test_asks_as_many_questions_for_one_piece_as_for_many(
        self, yard, maker, django_assert_max_num_queries
    ):
        load = yards.load(yard)
        for _ in range(9):
            tile(yard, maker[0])

        with django_assert_max_num_queries(48):
            answer = maker[1].get(f"{S}loads/{load.pk}/could-go/")

        assert len(answer.json()["rows"]) == 9


class TestCooling:
    def test_says_nothing_of_a_kiln_that_does_not_cool(self, yard, maker):
        load = yards.load(yard)

        answer = maker[1].get(f"{S}loads/{load.pk}/cooling/").json()

        assert answer["opening"] is None
        assert answer["cautions"][0]["code"] == "hot-when-opened"

    def test_guesses_widely_until_its_own_readings_say_more(self, yard, technician, sent):
        load = yards.load(yard, "glaze", starts_at=NOW - 20 * HOUR, made_at=NOW - 40 * HOUR)
        tell(load, technician[0], "started", NOW - 20 * HOUR, is_catching_up=True)
        tell(load, technician[0], "ended", NOW - 6 * HOUR, celsius=1219.0)

        def opening():
            return technician[1].get(f"{S}loads/{load.pk}/cooling/").json()["opening"]

        assert opening()["basis"] == "guess"
        Kiln.objects.update(cooling_k_per_h=0.155)
        assert opening()["basis"] == "known"
        readings = [
            {"taken_at": (NOW - timedelta(hours=hours)).isoformat(), "reading_c": c}
            for hours, c in ((2, 600), (1, 516))
        ]
        sent(technician[1], f"{S}loads/{load.pk}/readings/", {"readings": readings})
        assert opening()["basis"] == "readings"
        assert opening()["last_c"] == 516.0
