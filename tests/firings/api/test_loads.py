"""Loads over the wire: opening, changing, the whole road, and whose word it is."""

import pytest

from firings.models import Load, LoadEvent
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
