"""The drying sum over the wire."""

from datetime import timedelta

import pytest

from tests.factories import NOW

PATH = "/api/v1/sums/drying/"
AIR = {"air_c": 20, "humidity_fraction": 0.5}
ASKED = {"thickest_mm": 8, "air": AIR, "begins_at": NOW.isoformat()}


def ask(client, **change):
    return client.post(PATH, {**ASKED, **change}, format="json")


class TestDryingSum:
    def test_works_for_anybody_signed_in(self, stranger):
        answer = ask(stranger[1])

        told = answer.json()
        assert answer.status_code == 200
        assert set(told["windows"]) == {"demould", "join", "shrinkage_ended", "bisque"}
        assert told["begins_at"] == told["curve"]["t_at"][0] == NOW.isoformat()
        assert NOW.isoformat() < told["windows"]["join"]["opens"]["p50"]
        assert told["confidence"] == {"basis": "guess", "checks": 0}
        assert told["warnings"] == []
        assert len(told["working"]) == 5
        assert "0.664" in told["source"]

    def test_begins_now_when_nothing_else_is_said(self, maker):
        told = maker[1].post(PATH, {"thickest_mm": 8, "air": AIR}, format="json").json()

        assert told["curve"]["t_at"][0] == told["begins_at"]

    def test_reads_what_people_type(self, maker):
        same = ask(
            maker[1], thickest_mm="0.8 cm", air={"air_c": "68 °F", "humidity_fraction": "50 %"}
        )

        assert same.json()["windows"] == ask(maker[1]).json()["windows"]

    def test_takes_a_mould_covers_and_air_that_change(self, maker):
        later = {"from_h": 20, "air_c": 15, "humidity_fraction": 0.6}
        asked = {
            "thickest_mm": 8,
            "air_series": [{"from_h": 0, **AIR}, later],
            "covers": [{"from_h": 2, "state": "loose"}, {"from_h": 30, "state": "open"}],
            "mould": {"free_water_fraction": 0.1, "until_h": 3},
            "moistures": {"pressed": 0.26},
        }

        told = maker[1].post(PATH, asked, format="json").json()

        assert told["working"][-1] == "Out of its mould after 3 h."
        assert "pressed with 26 %" in told["working"][1]
        assert told["windows"]["bisque"]["p50"] > ask(maker[1]).json()["windows"]["bisque"]["p50"]

    def test_says_where_no_estimate_is_sound(self, maker):
        told = ask(maker[1], thickest_mm=40).json()

        assert (told["windows"], told["curve"]) == (None, None)
        assert told["warnings"][0]["code"] == "no-sound-estimate"
        assert told["warnings"][0]["detail"].startswith("No sound estimate.")

    def test_gives_no_date_for_what_the_air_cannot_bring_about(self, maker):
        told = ask(maker[1], air={"air_c": 12, "humidity_fraction": 0.9}).json()

        assert told["unreachable"] == ["bisque"]
        assert told["windows"]["bisque"]["p50"] is None

    @pytest.mark.parametrize(
        ("change", "pointer"),
        [
            ({"thickest_mm": 0.9}, "#/thickest_mm"),
            ({"thickest_mm": 81}, "#/thickest_mm"),
            ({"thickest_mm": "NaN"}, "#/thickest_mm"),
            ({"air": {**AIR, "air_c": -0.1}}, "#/air/air_c"),
            ({"air": {**AIR, "air_c": 50.1}}, "#/air/air_c"),
            ({"air": {**AIR, "humidity_fraction": 0.049}}, "#/air/humidity_fraction"),
            ({"air": {**AIR, "humidity_fraction": 55}}, "#/air/humidity_fraction"),
            ({"air_series": [{"from_h": 0, **AIR}]}, "#/air"),
            ({"cover": "loose", "covers": []}, "#/cover"),
            (
                {"covers": [{"from_h": 5, "state": "open"}, {"from_h": 5, "state": "loose"}]},
                "#/covers",
            ),
            ({"covers": [{"from_h": -1, "state": "open"}]}, "#/covers/0/from_h"),
            ({"shape": "round"}, "#/shape"),
            ({"inside": "outside"}, "#/inside"),
            ({"clay": "mud"}, "#/clay"),
            ({"moistures": {"pressed": 0.2}}, "#/moistures"),
            ({"moistures": {"bisque": 0.2}}, "#/moistures"),
            ({"mould": {"free_water_fraction": 1.1}}, "#/mould/free_water_fraction"),
            ({"air_m_s": 6}, "#/air_m_s"),
            ({"begins_at": (NOW - timedelta(days=400)).isoformat()}, "#/begins_at"),
            ({"begins_at": "2026-10-31T09:00:00"}, "#/begins_at"),
        ],
    )
    def test_refuses_what_the_model_does_not_reach_and_names_it(self, maker, change, pointer):
        answer = ask(maker[1], **change)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == pointer
