"""Readings and cones over the wire: kept as given, asked about where odd."""

import pytest

from firings.models import KilnReading, WitnessCone
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, tell

S = "/api/v1/studios/yard/"

# F-209 of the demo: over the change from BST to GMT, wall clock with offset.
OVER_THE_CHANGE = """\
taken_at,set_c,reading_c,note
2026-10-24T19:00:00+01:00,20,15,
2026-10-25T01:30:00+01:00,905,890,first 01:30
2026-10-25T01:30:00+00:00,1055,1031,second 01:30
2026-10-25T05:00:00+00:00,1222,1219,off
"""


@pytest.fixture
def lit(yard, technician):
    load = yards.load(yard, "glaze", starts_at=NOW - 9 * DAY, made_at=NOW - 12 * DAY)
    lit_at = NOW.replace(day=24, hour=18)
    tell(load, technician[0], "started", lit_at, is_catching_up=True)
    return load


def path(load):
    return f"{S}loads/{load.pk}/readings/"


class TestOne:
    def test_is_two_numbers_and_a_time(self, lit, technician, sent):
        answer = sent(technician[1], path(lit), {"reading_c": 1219, "set_c": 1222})

        shown = answer.json()
        assert (answer.status_code, shown["stored"], shown["warnings"]) == (201, 1, [])
        (row,) = shown["readings"]
        assert (row["reading_c"], row["set_c"], row["use"]) == (1219.0, 1222.0, "taken")
        assert shown["cautions"][-1]["code"] == "not-a-safety-device"

    def test_is_read_in_fahrenheit_where_it_says_so(self, lit, technician, sent):
        answer = sent(technician[1], path(lit), {"reading_c": "2226 °F"})

        assert answer.json()["readings"][0]["reading_c"] == pytest.approx(1218.9, abs=0.05)

    def test_over_the_top_by_far_is_asked_about_and_mended(self, lit, technician, sent):
        first = sent(technician[1], path(lit), {"reading_c": 2232})

        (said,) = first.json()["warnings"]
        assert "°F" in said["detail"]
        assert said["instead_c"] == pytest.approx(1222.2, abs=0.05)
        assert first.json()["readings"][0]["use"] == "asked"
        act_id = first.json()["id"]
        mended = sent(technician[1], path(lit), {"reading_c": "2232 °F", "corrects": act_id})
        assert mended.json()["readings"][0]["use"] == "taken"
        rows = technician[1].get(path(lit)).json()["results"]
        assert [round(row["reading_c"], 1) for row in rows] == [1222.2]
        assert KilnReading.objects.count() == 2

    def test_over_the_top_a_little_is_taken_and_sounded(self, lit, technician, sent):
        answer = sent(technician[1], path(lit), {"reading_c": 1312})

        assert answer.json()["warnings"][0]["code"] == "over-top"
        assert answer.json()["cautions"][0]["code"] == "over-top"

    @pytest.mark.parametrize("value", ["NaN", "", None, "12 mm", 1e9, -400, True, [1]])
    def test_is_refused_when_it_is_no_temperature(self, lit, technician, sent, value):
        answer = sent(technician[1], path(lit), {"reading_c": value})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/reading_c"
        assert KilnReading.objects.count() == 0

    def test_is_for_who_logs_firings(self, lit, maker, sent):
        answer = sent(maker[1], path(lit), {"reading_c": 300})

        assert answer.json()["needed"] == "record_firings"


class TestMany:
    def test_are_one_act_and_the_same_again_is_no_news(self, lit, technician, sent):
        rows = [
            {"taken_at": (NOW - hours * HOUR).isoformat(), "reading_c": 900 - hours}
            for hours in range(5)
        ]

        first = sent(technician[1], path(lit), {"readings": rows})
        again = sent(technician[1], path(lit), {"readings": rows})

        assert (first.json()["stored"], again.json()["stored"]) == (5, 0)
        assert again.json()["repeated"] == 5

    def test_of_the_future_are_refused_by_line(self, lit, technician, sent):
        rows = [{"taken_at": (NOW + HOUR).isoformat(), "reading_c": 900}]

        answer = sent(technician[1], path(lit), {"readings": rows})

        assert answer.json()["errors"][0]["pointer"] == "#/readings/0/taken_at"


class TestTable:
    def test_counts_hours_that_passed_over_the_change_of_clocks(self, lit, technician):
        answer = technician[1].post(path(lit), OVER_THE_CHANGE, content_type="text/csv")
        tell(lit, technician[0], "ended", NOW.replace(day=25, hour=5), outcome="fired")

        assert answer.status_code == 201
        load = technician[1].get(f"{S}loads/{lit.pk}/").json()["load"]
        hours = [row["elapsed_h"] for row in load["readings"]]
        assert hours == [0.0, 6.5, 7.5, 11.0]
        assert load["firing_h"] == 11.0
        assert load["worst_gap"]["gap_c"] == -24.0

    def test_without_offsets_asks_which_half_past_one(self, lit, technician):
        table = "taken_at,reading_c\n2026-10-25 01:30,890\n2026-10-25 12:30,80\n"

        answer = technician[1].post(path(lit), table, content_type="text/csv")

        assert answer.status_code == 400
        (error,) = answer.json()["errors"]
        assert error["pointer"] == "#/line 2/taken_at"
        assert KilnReading.objects.count() == 0

    def test_in_fahrenheit_says_so_in_its_header(self, lit, technician):
        table = "taken_at,reading_f\n2026-10-25T04:00:00Z,2172\n"

        answer = technician[1].post(path(lit), table, content_type="text/csv")

        assert answer.json()["readings"][0]["reading_c"] == pytest.approx(1188.9, abs=0.05)


class TestCones:
    def test_are_kept_by_shelf_and_clock_hand(self, lit, technician, sent):
        cones = [
            {"level": 3, "role": "firing", "cone": "6", "clock_hand": 7},
            {"level": 1, "role": "guard", "cone": "O7", "clock_hand": None, "words": "fell"},
        ]

        answer = sent(technician[1], f"{S}loads/{lit.pk}/cones/", {"cones": cones})

        first, second = answer.json()["cones"]
        assert (first["level"], first["hand_words"]) == (3, "flat, past its base")
        assert (second["cone"], second["hand_words"]) == ("07", "not read")
        assert WitnessCone.objects.count() == 2
        rows = technician[1].get(f"{S}loads/{lit.pk}/cones/").json()["results"]
        assert len(rows) == 2

    def test_refuse_a_hand_no_clock_has(self, lit, technician, sent):
        cones = [{"role": "firing", "cone": "6", "clock_hand": 13}]

        answer = sent(technician[1], f"{S}loads/{lit.pk}/cones/", {"cones": cones})

        assert answer.json()["errors"][0]["pointer"] == "#/cones/0/clock_hand"
