"""Loads over the wire: opening, changing, the whole road, and whose word it is."""

from datetime import timedelta

import pytest

from firings.models import Load, LoadEvent
from pieces.domain.stages import GLAZED
from studio.actions import numbers
from studio.domain.ids import uuid7
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, put, spot, tell, tile

S = "/api/v1/studios/yard/"
MONDAY = NOW + 57 * HOUR


def slot(yard, **more):
    return {
        "kiln_id": str(yard.ox.pk),
        "kind": "bisque",
        "cone": "O4",
        "starts_at": MONDAY.isoformat(),
        **more,
    }


def at(moment, **more):
    return {"happened_at": moment.isoformat(), **more}


class TestOpening:
    def test_gives_the_next_number_and_closes_the_list_two_hours_before(
        self, yard, technician, sent
    ):
        numbers.pass_over(studio=yard.studio, letters="F", number=210)

        answer = sent(technician[1], f"{S}loads/", slot(yard, watcher_id=str(technician[0].pk)))

        load = answer.json()["load"]
        assert answer.status_code == 201
        assert (load["number"], load["cone"], load["state"]) == ("F-211", "04", "open")
        assert load["cutoff_at"] == "2026-11-02T16:00:00Z"
        assert load["watcher"]["first_name"] == "Tess"
        assert load["nexts"] == ["settled", "called_off"]
        assert {said["code"] for said in load["checklist"]} >= {"cones-on-each-shelf", "vent-runs"}

    def test_keeps_a_number_that_is_given_and_passes_it_over(self, yard, technician, sent):
        first = sent(technician[1], f"{S}loads/", slot(yard, number="F-205"))
        again = sent(technician[1], f"{S}loads/", slot(yard, number="F-205"))
        following = sent(technician[1], f"{S}loads/", slot(yard))

        assert first.json()["load"]["number"] == "F-205"
        assert (again.status_code, again.json()["type"]) == (409, "/problems/load-number-taken")
        assert following.json()["load"]["number"] == "F-206"

    def test_asks_about_a_bisque_to_cone_6(self, yard, technician, sent):
        answer = sent(technician[1], f"{S}loads/", slot(yard, cone="6"))

        assert "224 °C apart" in answer.json()["cautions"][0]["detail"]

    @pytest.mark.parametrize(
        ("more", "status", "code"),
        [
            ({"cone": "cone 99"}, 422, "unknown-cone"),
            ({"cutoff_at": (MONDAY + HOUR).isoformat()}, 422, "cut-off-too-late"),
            ({"starts_at": "0001-01-01T00:00:00+00:00"}, 400, "invalid-request"),
            ({"reading_every_min": 0}, 400, "invalid-request"),
            ({"kiln_id": str(uuid7())}, 400, "invalid-request"),
        ],
    )
    def test_refuses_what_cannot_be(self, yard, technician, sent, more, status, code):
        answer = sent(technician[1], f"{S}loads/", slot(yard, **more))

        assert (answer.status_code, answer.json()["type"]) == (status, f"/problems/{code}")
        assert Load.objects.count() == 0

    def test_refuses_a_programme_hotter_than_the_kiln(self, yard, technician, sent):
        programme = factories.programme(yard.studio, kind="glaze", cone="10", top_c=1300.0)

        answer = sent(technician[1], f"{S}loads/", slot(yard, programme_id=str(programme.pk)))

        assert answer.json()["type"] == "/problems/too-hot-for-kiln"

    def test_is_for_who_builds_loads(self, yard, maker, helper, sent):
        for client in (maker[1], helper[1]):
            answer = sent(client, f"{S}loads/", slot(yard))

            assert (answer.status_code, answer.json()["needed"]) == (403, "build_loads")


class TestUnplanned:
    def test_is_written_afterwards_with_its_own_times(self, yard, technician, maker, sent):
        piece = tile(yard, maker[0])
        begun = NOW - 40 * HOUR
        made = sent(
            technician[1],
            f"{S}loads/",
            slot(yard, starts_at=begun.isoformat(), is_unplanned=True),
        )
        load_id = made.json()["load"]["id"]
        sent(
            technician[1],
            f"{S}loads/{load_id}/placements/",
            {"pieces": [{"piece_id": str(piece.pk)}]},
        )
        for kind, hours, more in (
            ("loading", 0, {}),
            ("started", 1, {}),
            ("ended", 12, {"outcome": "fired"}),
            ("opened", 35, {"celsius": 70}),
            ("unloaded", 36, {"place_id": str(yard.rack.pk)}),
        ):
            told = at(begun + hours * HOUR, kind=kind, **more)
            answer = sent(technician[1], f"{S}loads/{load_id}/events/", told)
            assert answer.status_code == 201, answer.json()

        load = answer.json()["load"]
        assert (load["state"], load["is_unplanned"], load["firing_h"]) == ("unloaded", True, 11.0)
        assert spot(piece) == ("bisque", "bisqued")


class TestRoad:
    def test_is_walked_by_two_makers_from_open_to_unloaded(
        self, yard, maker, owner, technician, sent, clock
    ):
        mine, theirs = tile(yard, maker[0], mark="T1"), tile(yard, owner[0], mark="T2")
        load_id = sent(technician[1], f"{S}loads/", slot(yard)).json()["load"]["id"]
        path = f"{S}loads/{load_id}/"
        for client, piece in ((maker[1], mine), (owner[1], theirs)):
            placed = sent(client, f"{path}placements/", {"pieces": [{"piece_id": str(piece.pk)}]})
            assert placed.status_code == 201
        settled = sent(technician[1], f"{path}events/", {"kind": "settled"})
        assert settled.json()["load"]["may"]["add"] is False
        clock.move(hours=60)
        for kind, hours, more in (
            ("loading", 55, {}),
            ("started", 57, {}),
            ("ended", 59, {"outcome": "fired"}),
        ):
            told = at(NOW + hours * HOUR, kind=kind, **more)
            assert sent(technician[1], f"{path}events/", told).status_code == 201
        clock.move(hours=40)
        hot = sent(technician[1], f"{path}events/", at(NOW + 98 * HOUR, kind="opened", celsius=140))
        assert (hot.status_code, hot.json()["limit_c"]) == (422, 100.0)
        opened = at(NOW + 99 * HOUR, kind="opened", celsius="205 °F")
        assert sent(technician[1], f"{path}events/", opened).status_code == 201
        out = at(NOW + 99.5 * HOUR, kind="unloaded", place_id=str(yard.rack.pk), note="all well")
        done = sent(technician[1], f"{path}events/", out).json()

        load = maker[1].get(path).json()["load"]
        assert (load["state"], load["outcome"], load["nexts"]) == ("unloaded", "fired", [])
        assert [row["piece"]["state"] for row in load["placements"]] == ["bisqued", "bisqued"]
        assert {row["result"] for row in load["placements"]} == {"fired"}
        assert [row["kind"] for row in load["events"]][-1] == "unloaded"
        assert load["events"][-1]["note"] == "all well"
        assert {row["person"]["first_name"] for row in load["makers"]} == {"Maud", "Orla"}
        assert "sharp-when-unloaded" in {said["code"] for said in done["cautions"]}
        story = maker[1].get(f"{S}pieces/{mine.pk}/").json()["story"]
        assert story[0]["words"] == f"bisqued, {load['number']}"

    def test_is_told_once_however_often_it_is_sent(self, yard, technician, sent):
        load = yards.load(yard)
        body = {"id": str(uuid7()), "kind": "settled"}

        first = sent(technician[1], f"{S}loads/{load.pk}/events/", body)
        again = sent(technician[1], f"{S}loads/{load.pk}/events/", body)

        assert again.json() == first.json()
        assert again["Idempotent-Replay"] == "true"
        assert LoadEvent.objects.count() == 1


class TestStopped:
    """Case B10: the power goes at 868 °C; facts and choices are shown, nothing goes on alone."""

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


class TestPermission:
    """Case C10: the server says no to an apprentice, by app or by a request made by hand."""

    @pytest.mark.parametrize(
        "body",
        [
            {"kind": "started"},
            {"kind": "ended", "happened_at": (NOW - 5 * DAY).isoformat(), "outcome": "fired"},
            {"kind": "unloaded", "is_catching_up": True, "outcome": "fired"},
            {"kind": "settled"},
        ],
    )
    def test_is_refused_to_apprentices_and_makers(self, yard, helper, maker, sent, body):
        load = yards.load(yard)

        for client in (helper[1], maker[1]):
            answer = sent(client, f"{S}loads/{load.pk}/events/", body)

            assert (answer.status_code, answer.json()["needed"]) == (403, "record_firings")
        assert LoadEvent.objects.count() == 0

    def test_refused_is_written_in_the_log(self, yard, helper, sent, caplog):
        load = yards.load(yard)

        with caplog.at_level("INFO", logger="natch.problems"):
            sent(helper[1], f"{S}loads/{load.pk}/events/", {"kind": "started"})

        (line,) = [r for r in caplog.records if r.name == "natch.problems"]
        assert line.levelname == "INFO"
        assert "record_firings" in line.getMessage()
        assert str(helper[0].pk) in line.getMessage()

    def test_settling_is_asked_beyond_logging(self, yard, join, sent):
        load = yards.load(yard)
        _, client = join(yard.studio, ["maker"], "Mo")

        answer = sent(client, f"{S}loads/{load.pk}/events/", {"kind": "settled"})

        assert answer.status_code == 403

    def test_loads_of_another_studio_are_not_there(self, yard, stranger, sent):
        load = yards.load(yard)

        answer = sent(stranger[1], f"/api/v1/studios/quay/loads/{load.pk}/events/", {"kind": "x"})

        assert answer.status_code == 404


class TestChanging:
    def test_moves_start_and_cut_off_together(self, yard, technician):
        load = yards.load(yard)
        path = f"{S}loads/{load.pk}/"

        answer = technician[1].patch(
            path,
            {"starts_at": (MONDAY + DAY).isoformat()},
            format="json",
            headers={"If-Match": '"1"'},
        )
        stale = technician[1].patch(
            path, {"expected_h": 9}, format="json", headers={"If-Match": '"1"'}
        )

        assert answer.json()["load"]["cutoff_at"] == "2026-11-03T16:00:00Z"
        assert answer["ETag"] == '"2"'
        assert stale.status_code == 412

    def test_keeps_the_cone_of_those_inside(self, yard, technician, maker):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0]))

        answer = technician[1].patch(f"{S}loads/{load.pk}/", {"cone": "06"}, format="json")

        assert (answer.status_code, answer.json()["type"]) == (
            409,
            "/problems/cone-of-those-inside",
        )

    def test_ends_when_it_is_lit(self, yard, technician):
        load = yards.load(yard)
        tell(load, technician[0], "started", NOW - HOUR, is_catching_up=True)

        moved = technician[1].patch(
            f"{S}loads/{load.pk}/", {"starts_at": MONDAY.isoformat()}, format="json"
        )
        watched = technician[1].patch(
            f"{S}loads/{load.pk}/", {"watcher_id": str(technician[0].pk)}, format="json"
        )

        assert moved.json()["type"] == "/problems/load-under-way"
        assert watched.json()["load"]["watcher"]["first_name"] == "Tess"

    def test_refuses_a_kiln_that_is_out_of_use(self, yard, technician):
        load = yards.load(yard)
        type(yard.finch).objects.filter(pk=yard.finch.pk).update(is_out_of_use=True)

        answer = technician[1].patch(
            f"{S}loads/{load.pk}/", {"kiln_id": str(yard.finch.pk)}, format="json"
        )

        assert answer.json()["type"] == "/problems/kiln-out-of-use"


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
