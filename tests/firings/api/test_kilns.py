"""Kilns and programmes over the wire."""

from datetime import timedelta

import pytest

from firings.models import Kiln, Shelf
from studio.models import Place
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import HOUR, put, tell, tile

S = "/api/v1/studios/yard/"
OX = {
    "number": "K1",
    "name": "Ox",
    "kind": "front",
    "chamber": "rect",
    "width_mm": "600 mm",
    "depth_mm": 600,
    "height_mm": "31 1/2 in",
    "top_c": "2336 °F",
    "firings_before": 96,
    "hot_hours_before": 640,
    "shelves": [
        {"shape": "rect", "width_mm": 560, "depth_mm": 560, "thickness_mm": 15, "count": 6}
    ],
    "posts": [{"height_mm": 130, "count": 12, "footprint_mm": 40}],
}


class TestMaking:
    def test_makes_a_kiln_with_its_furniture_and_its_place(self, studio, technician, sent):
        answer = sent(technician[1], f"{S}kilns/", OX)

        assert answer.status_code == 201
        shown = answer.json()["kiln"]
        assert shown["place"]["name"] == "K1 Ox"
        assert shown["height_mm"] == pytest.approx(800.1)
        assert shown["top_c"] == pytest.approx(1280.0)
        assert shown["litres"] == pytest.approx(288.0, abs=0.1)
        assert (shown["firings"], shown["hot_h"]) == (96, 640.0)
        assert shown["doing"]["word"] == "empty"
        assert Place.objects.get(pk=shown["place"]["id"]).kind == "kiln"

    def test_takes_a_place_that_is_there(self, studio, technician, sent):
        place = factories.place(studio, "K9", "kiln")

        answer = sent(technician[1], f"{S}kilns/", {**OX, "place_id": str(place.pk)})

        assert answer.json()["kiln"]["place"]["id"] == str(place.pk)

    def test_refuses_a_place_that_is_no_kilns(self, studio, technician, sent):
        place = factories.place(studio, "Rack", "rack")

        answer = sent(technician[1], f"{S}kilns/", {**OX, "place_id": str(place.pk)})

        assert answer.status_code == 422
        assert answer.json()["type"] == "/problems/not-a-kiln-place"

    def test_refuses_a_number_twice_and_a_chamber_without_a_size(self, studio, technician, sent):
        sent(technician[1], f"{S}kilns/", OX)

        twice = sent(technician[1], f"{S}kilns/", {**OX, "number": "k1"})
        unsized = sent(technician[1], f"{S}kilns/", {**OX, "number": "K2", "chamber": "round"})

        assert (twice.status_code, twice.json()["type"]) == (409, "/problems/kiln-taken")
        assert unsized.status_code == 422
        assert unsized.json()["errors"][0]["pointer"] == "#/diameter_mm"
        assert Kiln.objects.count() == 1

    @pytest.mark.parametrize("value", ["nan", "inf", -1, "12 mm", 1e9])
    def test_refuses_what_is_no_temperature(self, studio, technician, sent, value):
        answer = sent(technician[1], f"{S}kilns/", {**OX, "top_c": value})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/top_c"

    @pytest.mark.parametrize("value", ["nan", "inf", 0, 1e9])
    def test_refuses_what_is_no_rate(self, studio, technician, sent, value):
        answer = sent(technician[1], f"{S}kilns/", {**OX, "cooling_k_per_h": value})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/cooling_k_per_h"


class TestChanging:
    def test_changes_what_is_named_and_counts_it(self, yard, technician):
        path = f"{S}kilns/{yard.ox.pk}/"
        shelves = [{"shape": "rect", "width_mm": 500, "depth_mm": 500, "thickness_mm": 15}]

        answer = technician[1].patch(
            path,
            {"remarks": "ohms +4 %", "shelves": [{**shelves[0], "count": 3}]},
            format="json",
            headers={"If-Match": '"1"'},
        )
        late = technician[1].patch(
            path, {"name": "Bull"}, format="json", headers={"If-Match": '"1"'}
        )

        assert answer.status_code == 200
        assert answer["ETag"] == '"2"'
        assert answer.json()["kiln"]["remarks"] == "ohms +4 %"
        assert list(Shelf.objects.filter(kiln=yard.ox).values_list("count", flat=True)) == [3]
        assert late.status_code == 412
        assert late.json()["current"]["name"] == "Ox"

    def test_is_for_who_services_kilns(self, yard, maker):
        answer = maker[1].patch(f"{S}kilns/{yard.ox.pk}/", {"name": "Bull"}, format="json")

        assert answer.status_code == 403
        assert answer.json()["needed"] == "service_kilns"


class TestOutOfUse:
    def test_blocks_new_loads_and_no_logging(self, yard, technician, maker, sent):
        load, piece = yards.load(yard), tile(yard, maker[0])
        put(load, maker[0], piece)
        tell(load, technician[0], "settled", NOW - 2 * HOUR)

        answer = sent(
            technician[1],
            f"{S}kilns/{yard.ox.pk}/events/",
            {"kind": "out_of_use", "reason": "vent"},
        )

        shown = answer.json()
        assert shown["kiln"]["is_out_of_use"]
        assert shown["kiln"]["doing"]["words"] == "out of use: vent"
        assert [row["number"] for row in shown["affected"]] == [load.number]
        slot = {
            "kiln_id": str(yard.ox.pk),
            "kind": "bisque",
            "cone": "04",
            "starts_at": (NOW + timedelta(days=3)).isoformat(),
        }
        refused = sent(technician[1], f"{S}loads/", slot)
        assert (refused.status_code, refused.json()["type"]) == (409, "/problems/kiln-out-of-use")
        logged = sent(technician[1], f"{S}loads/{load.pk}/events/", {"kind": "loading"})
        assert logged.status_code == 201
        assert logged.json()["load"]["state"] == "loading"

    def test_wants_a_reason_and_ends_by_saying_so(self, yard, technician, sent):
        path = f"{S}kilns/{yard.ox.pk}/events/"

        bare = sent(technician[1], path, {"kind": "out_of_use"})
        sent(technician[1], path, {"kind": "out_of_use", "reason": "vent"})
        later = (NOW + timedelta(minutes=1)).isoformat()
        back = sent(technician[1], path, {"kind": "in_use", "happened_at": later})

        assert bare.status_code == 400
        assert bare.json()["errors"][0]["pointer"] == "#/reason"
        assert not back.json()["kiln"]["is_out_of_use"]
        kinds = [row["kind"] for row in technician[1].get(path).json()["results"]]
        assert kinds == ["in_use", "out_of_use"]


class TestBoard:
    def test_says_what_each_kiln_is_doing_till_when_and_who_watches(self, yard, maker, technician):
        programme = factories.programme(yard.studio)
        load = yards.load(
            yard, watcher=technician[0], programme=programme, more={"expected_h": 9.0}
        )
        for kind, hours in (("settled", -3), ("loading", -2), ("started", -1)):
            tell(load, technician[0], kind, NOW + hours * HOUR)
        coming = yards.load(yard, "glaze")
        put(coming, maker[0], tile(yard, maker[0], yards.GLAZED))

        answer = maker[1].get(f"{S}kilns/").json()

        ox, finch = answer["results"]
        assert ox["doing"]["word"] == "firing"
        assert ox["doing"]["till"] == "2026-10-31T17:00:00Z"
        assert ox["doing"]["watcher"]["first_name"] == "Tess"
        assert ox["doing"]["load"]["number"] == load.number
        assert finch["doing"]["words"] == f"{coming.number} is open"
        assert finch["next_loads"][0]["pieces"] == 1
        assert {said["code"] for said in answer["cautions"]} >= {"not-a-safety-device"}
        assert answer["journal_seq"] > 0

    def test_says_when_a_cooling_kiln_may_likely_be_opened(self, yard, technician, sent):
        """642 °C at 08:40 with k = 0.155/h in air of 15 °C comes to 100 °C about 21:35."""
        Kiln.objects.update(cooling_k_per_h=0.155)
        load = yards.load(yard, "glaze", starts_at=NOW - 15.5 * HOUR, made_at=NOW - 40 * HOUR)
        tell(load, technician[0], "started", NOW - 15.5 * HOUR, is_catching_up=True)
        tell(load, technician[0], "ended", NOW - 4.5 * HOUR)
        at = (NOW - timedelta(minutes=20)).isoformat()
        sent(
            technician[1],
            f"{S}loads/{load.pk}/readings/",
            {"reading_c": 642, "happened_at": at},
        )

        opening = technician[1].get(f"{S}loads/{load.pk}/cooling/").json()["opening"]

        assert opening["likely"].startswith("2026-10-31T21:3")
        assert opening["basis"] == "known"
        assert opening["early"] < opening["likely"] < opening["late"]
        assert "read the temperature first" in opening["words"]

    def test_asks_as_many_questions_for_one_kiln_as_for_many(
        self, yard, maker, technician, django_assert_max_num_queries
    ):
        for number in range(3, 9):
            kiln = yards.kiln(technician[0], f"K{number}", "More", yard.shed)
            load = yards.load(yard, kiln=kiln)
            tell(load, technician[0], "started", NOW - HOUR, is_catching_up=True)
            tell(load, technician[0], "ended", NOW, celsius=700.0)

        with django_assert_max_num_queries(22):
            answer = maker[1].get(f"{S}kilns/")

        assert len(answer.json()["results"]) == 8


class TestAge:
    def test_counts_firings_that_fired_and_hours_driven_hot(self, yard, technician, sent):
        load = yards.load(yard, starts_at=NOW - 20 * HOUR, made_at=NOW - 60 * HOUR)
        tell(load, technician[0], "started", NOW - 20 * HOUR, is_catching_up=True)
        table = "taken_at,reading_c\n" + "".join(
            f"{(NOW + hours * HOUR).isoformat()},{celsius}\n"
            for hours, celsius in ((-20, 20), (-14, 600), (-12, 1000), (-10, 600))
        )
        technician[1].post(f"{S}loads/{load.pk}/readings/", table, content_type="text/csv")
        tell(load, technician[0], "ended", NOW - 11 * HOUR, outcome="fired")

        kiln = technician[1].get(f"{S}kilns/{yard.ox.pk}/").json()

        assert (kiln["firings"], kiln["sensor_firings"]) == (1, 1)
        assert kiln["hot_h"] == pytest.approx(3.0)


class TestProgrammes:
    def test_are_made_with_segments_and_say_what_their_cone_needs(self, studio, technician, sent):
        answer = sent(
            technician[1],
            f"{S}programmes/",
            {
                "name": "slow glaze",
                "kind": "glaze",
                "cone": "cone 6",
                "top_c": 1222,
                "segments": [
                    {"to_c": 120, "rate_c_per_h": 50, "hold_min": 60},
                    {"to_c": 1122, "rate_c_per_h": 150},
                    {"to_c": 1222, "rate_c_per_h": 60, "hold_min": 10},
                ],
            },
        )

        shown = answer.json()["programme"]
        assert shown["cone"] == "6"
        assert shown["needed"]["celsius"] == pytest.approx(1222, abs=1)
        assert shown["hours"] == pytest.approx(2 + 1 + 1002 / 150 + 100 / 60 + 10 / 60)
        assert [row["order"] for row in shown["segments"]] == [1, 2, 3]

    def test_warn_of_the_wrong_side_of_zero(self, studio, technician, sent):
        # 06 is about 998 °C and 6 about 1222 °C by the chart: 224 °C apart.
        answer = sent(
            technician[1],
            f"{S}programmes/",
            {"name": "bisque", "kind": "bisque", "cone": "6", "top_c": 1222},
        )

        (said,) = answer.json()["programme"]["warnings"]
        assert "224" in said["detail"]

    def test_refuse_a_cone_there_is_not(self, studio, technician, sent):
        answer = sent(
            technician[1],
            f"{S}programmes/",
            {"name": "odd", "kind": "bisque", "cone": "cone 99", "top_c": 1000},
        )

        assert answer.json()["type"] == "/problems/unknown-cone"

    def test_are_listed_and_changed(self, studio, technician, maker, sent):
        programme = factories.programme(studio, "slow")
        path = f"{S}programmes/{programme.pk}/"

        changed = technician[1].patch(
            path, {"segments": [{"to_c": 1060, "rate_c_per_h": 100}]}, format="json"
        )

        assert changed.json()["programme"]["hours"] == pytest.approx(10.4)
        assert maker[1].get(path)["ETag"] == '"2"'
        names = [row["name"] for row in maker[1].get(f"{S}programmes/").json()["results"]]
        assert names == ["slow"]
