"""Figures that are nonsense, or nearly: what each is taken for, and that none is lost."""

from typing import Any

import pytest

from studio.models import ClimateReading, Place


def clay(yard, **changes: Any) -> Any:
    body = {"code": "NC", "name": "new clay", "drying_body": "red_earthenware", **changes}
    return yard.send("odile", "clay-bodies/", **body)


def weighed(yard, mass: object) -> Any:
    return yard.send("odile", f"pieces/{yard.piece('T26').pk}/weighings/", mass_g=mass)


def dish(yard, wall: object, **more: Any) -> Any:
    part = {"role": "dish", "thickest_mm": wall, "thinnest_mm": 1}
    named = {"name": "New dish", "noun": "dish", "series": "D"}
    return yard.send("odile", "designs/", **named, parts=[part], **more)


def drying_room(yard) -> str:
    return f"places/{Place.objects.of(yard.demo.studio).get(name='Drying room').pk}/readings/"


class TestWalls:
    @pytest.mark.parametrize(
        "wall", [-3, "NaN", "Infinity", 1e9, "", None, "12 °C", "0,116", "twelve"]
    )
    def test_that_are_none_are_refused_with_their_field(self, yard, wall: object) -> None:
        problem = dish(yard, wall)

        assert problem.status_code in {400, 422}
        assert problem.json()["errors"][0]["pointer"] == "#/parts/0/thickest_mm"

    @pytest.mark.parametrize(
        ("wall", "mm"), [("1,5", 1.5), ("5 3/8 in", 136.525), ("12 mm", 12.0), (" 7.25 ", 7.25)]
    )
    def test_are_read_as_people_write_them_and_shown_back(self, yard, wall: str, mm: float) -> None:
        answer = dish(yard, wall, confirmed=["#/parts/0/thickest_mm"])

        # 5 3/8 in is 5.375 x 25.4 = 136.525 mm, by hand
        assert answer.status_code == 201, answer.content
        assert answer.json()["parts"][0]["thickest_mm"] == pytest.approx(mm)

    def test_of_ninety_millimetres_are_asked_about_and_taken_once_meant(self, yard) -> None:
        asked = dish(yard, 90)
        meant = dish(yard, 90, confirmed=["#/parts/0/thickest_mm"])

        assert (asked.status_code, meant.status_code) == (422, 201)
        assert "Did you mean 9?" in asked.json()["detail"]


class TestWeights:
    @pytest.mark.parametrize("mass", [-3, "NaN", 1e9, "", "12 mm"])
    def test_that_are_none_are_refused_with_their_field(self, yard, mass: object) -> None:
        problem = weighed(yard, mass)

        assert problem.status_code in {400, 422}
        assert problem.json()["errors"][0]["pointer"] == "#/mass_g"


class TestShrinkage:
    def test_of_112_asks_for_12(self, yard) -> None:
        problem = clay(yard, total_shrinkage_fraction=112)

        assert problem.status_code == 422
        assert problem.json()["did_you_mean"] == pytest.approx(0.12)
        assert problem.json()["pointer"] == "#/total_shrinkage_fraction"


class TestAirOfTheDryingRoom:
    def test_of_104_per_cent_is_kept_and_left_out(self, yard) -> None:
        told = yard.tell("odile", drying_room(yard), air_c=12.4, humidity_fraction="104 %")

        kept = ClimateReading.objects.get(pk=told["reading"]["id"])
        assert kept.humidity_fraction == pytest.approx(1.04)
        assert (kept.use, told["warnings"][0]["code"]) == ("left_out", "humidity-above-all")

    def test_of_61_2_degrees_is_kept_and_mended_by_one_answer(self, yard) -> None:
        told = yard.tell("odile", drying_room(yard), air_c=61.2, humidity_fraction="65 %")
        reading = told["reading"]

        yard.tell("odile", f"readings/{reading['id']}/answers/", answer="fahrenheit")

        # (61.2 - 32) / 1.8 = 16.2, by hand
        assert (reading["use"], reading["did_you_mean_c"]) == ("left_out", 16.2)
        rows = yard.get(drying_room(yard))["results"]
        used = [row for row in rows if row["use"] == "used"]
        assert used[0]["air_c"] == pytest.approx(16.2, abs=0.05)
        kept = next(row for row in rows if row["id"] == reading["id"])
        assert (kept["air_c"], kept["did_you_mean_c"]) == (61.2, None)

    @pytest.mark.parametrize("air", ["12 mm", "NaN", -400])
    def test_that_is_no_temperature_names_the_field(self, yard, air: object) -> None:
        answer = yard.send("odile", drying_room(yard), air_c=air)

        assert answer.status_code in {400, 422}
        assert answer.json()["errors"][0]["pointer"] == "#/air_c"


class TestCones:
    @pytest.mark.parametrize(("typed", "kept"), [("06", "06"), ("6", "6"), ("O6", "06")])
    def test_are_text_and_a_nought_before_the_figure_is_kept(self, yard, typed, kept) -> None:
        legs = [{"rate_c_per_h": 100, "to_c": 900, "hold_min": 0}]

        made = yard.tell(
            "piet",
            "programmes/",
            name="New programme",
            kind="bisque",
            cone=typed,
            top_c=900,
            segments=legs,
        )

        assert made["programme"]["cone"] == kept

    @pytest.mark.parametrize("typed", ["77", "six", "1222"])
    def test_that_are_none_are_refused_with_their_field(self, yard, typed: str) -> None:
        slot = {"kind": "glaze", "cone": typed, "starts_at": "2026-11-09T17:00:00Z"}

        problem = yard.refused("piet", "loads/", kiln_id=yard.load("F-212")["kiln"]["id"], **slot)

        assert problem["type"] == "/problems/unknown-cone"
        assert problem["errors"][0]["pointer"] == "#/cone"
