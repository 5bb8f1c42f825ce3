"""Loads as they are shown: lists, one with its log, a stopped one."""

from datetime import timedelta

import pytest

from firings.models import Kiln
from pieces.domain.stages import GLAZED
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, put, tell, tile

S = "/api/v1/studios/yard/"


class TestStopped:
    """The power goes at 868 °C; facts and choices are shown, nothing goes on alone."""

    def test_shows_facts_and_choices(self, yard, maker, technician, sent):
        load = yards.load(yard, starts_at=NOW - 30 * HOUR, made_at=NOW - 60 * HOUR)
        lit = NOW - 26 * HOUR
        tell(load, technician[0], "started", lit, is_catching_up=True)
        rows = [(0, 16), (4, 279), (5, 574), (6, 861), (6 + 1 / 6, 868), (7.75, 702)]
        readings = [
            {"taken_at": (lit + hours * HOUR).isoformat(), "reading_c": c} for hours, c in rows
        ]
        sent(technician[1], f"{S}loads/{load.pk}/readings/", {"readings": readings})
        tell(load, technician[0], "stopped", lit + timedelta(minutes=370), celsius=868.0)
        sent(
            technician[1],
            f"{S}loads/{load.pk}/cones/",
            {"cones": [{"level": 1, "role": "firing", "cone": "04", "clock_hand": 12}]},
        )

        stopped = maker[1].get(f"{S}loads/{load.pk}/").json()["load"]["stopped"]

        assert stopped["facts"]["highest_c"] == 868.0
        assert stopped["facts"]["last_c"] == 702.0
        assert stopped["facts"]["above_600_h"] > 2.5
        assert [one["code"] for one in stopped["choices"]] == [
            "resume",
            "refire",
            "accept_by_cone",
        ]
        assert not stopped["choices"][2]["is_backed"]
        assert "crawled" in stopped["caution"]


class TestList:
    def test_shows_loads_by_state_kiln_and_time(self, yard, maker, technician):
        soon, later = yards.load(yard), yards.load(yard, "glaze", starts_at=NOW + 9 * DAY)
        piece = tile(yard, maker[0])
        put(soon, maker[0], piece)
        tell(soon, technician[0], "settled", NOW)

        def numbers_of(**query):
            rows = maker[1].get(f"{S}loads/", query).json()["results"]
            return [row["number"] for row in rows]

        assert numbers_of() == [later.number, soon.number]
        assert numbers_of(state="settled,firing") == [soon.number]
        assert numbers_of(piece=str(piece.pk)) == [soon.number]
        assert numbers_of(kiln=str(yard.finch.pk)) == [later.number]
        assert numbers_of(until=(NOW + 3 * DAY).isoformat()) == [soon.number]
        assert numbers_of(**{"from": (NOW + 3 * DAY).isoformat()}) == [later.number]
        assert maker[1].get(f"{S}loads/", {"state": "hot"}).status_code == 400

    def test_counts_makers_pieces_and_litres(self, yard, maker, owner):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0]), tile(yard, owner[0]), tile(yard, owner[0]))

        (row,) = maker[1].get(f"{S}loads/").json()["results"]

        # A tile of 169.7 x 169.7 x 12 mm wet is 0.94 of each when dry.
        litres = 0.94**3 * 169.7 * 169.7 * 12 / 1e6
        assert row["pieces"] == 3
        assert {r["person"]["first_name"]: r["pieces"] for r in row["makers"]} == {
            "Maud": 1,
            "Orla": 2,
        }
        assert row["litres"] == pytest.approx(3 * litres, abs=0.02)

    def test_asks_as_many_questions_for_one_load_as_for_many(
        self, yard, maker, django_assert_max_num_queries
    ):
        for _ in range(6):
            put(yards.load(yard), maker[0], tile(yard, maker[0]), tile(yard, maker[0]))

        with django_assert_max_num_queries(11):
            answer = maker[1].get(f"{S}loads/")

        assert len(answer.json()["results"]) == 6


class TestOne:
    def test_asks_a_fixed_number_of_questions(
        self, yard, maker, technician, django_assert_max_num_queries
    ):
        load = yards.load(yard, watcher=technician[0])
        put(load, maker[0], *[tile(yard, maker[0]) for _ in range(8)])
        tell(load, technician[0], "settled", NOW - 2 * HOUR)
        tell(load, technician[0], "loading", NOW - HOUR)

        with django_assert_max_num_queries(38):
            answer = maker[1].get(f"{S}loads/{load.pk}/")

        assert len(answer.json()["load"]["placements"]) == 8

    def test_says_when_the_clocks_change_while_it_fires(self, yard, maker):
        lit = NOW.replace(day=24, hour=18)
        load = yards.load(yard, starts_at=lit, made_at=lit - DAY, more={"expected_h": 11.0})

        shown = maker[1].get(f"{S}loads/{load.pk}/").json()["load"]

        assert shown["clock_change"]["at"] == "2026-10-25T01:00:00Z"
        assert "go back" in shown["clock_change"]["words"]
        assert "clocks-change" in {said["code"] for said in shown["checklist"]}

    def test_lists_its_events(self, yard, maker, technician):
        load = yards.load(yard, "glaze")
        put(load, maker[0], tile(yard, maker[0], GLAZED))
        tell(load, technician[0], "settled", NOW - HOUR)
        tell(load, technician[0], "called_off", NOW, reason="vent fan dead")

        rows = maker[1].get(f"{S}loads/{load.pk}/events/").json()["results"]

        assert [row["kind"] for row in rows] == ["called_off", "settled"]
        assert rows[0]["reason"] == "vent fan dead"


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
