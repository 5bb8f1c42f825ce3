"""Cones against the chart named in `cones.CHART` and trial sums worked out from it.

1185/1222/1243 °C for cone 6 and 998 °C for 06: http://potters.org/subject81597.htm
"""

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.cones import (
    CHART,
    CONES,
    CONES_C,
    MixedCones,
    UnknownCone,
    WareCone,
    bend_fraction,
    check_cones,
    hand_words,
    judge_peak,
    needed,
    rank,
    read_cone,
    zero_warning,
)

# °F columns of retailers' copies of the same chart, at 108 and 270 °F/h.
IN_FAHRENHEIT = {
    "022": (1087, 1094),
    "019": (1252, 1283),
    "015": (1456, 1504),
    "010": (1657, 1679),
    "06": (1828, 1855),
    "04": (1945, 1971),
    "1": (2079, 2109),
    "5": (2167, 2205),
    "6": (2232, 2269),
    "8": (2280, 2320),
    "10": (2345, 2381),
}


class TestChart:
    @pytest.mark.parametrize("column", range(3))
    def test_rises_from_cone_to_cone(self, column):
        values = [row[column] for row in CONES_C.values() if row[column] is not None]

        assert values == sorted(set(values))

    @pytest.mark.parametrize("cone", IN_FAHRENHEIT)
    def test_agrees_with_the_fahrenheit_columns(self, cone):
        for celsius, fahrenheit in zip(CONES_C[cone][1:], IN_FAHRENHEIT[cone], strict=True):
            assert 1.8 * celsius + 32.0 == pytest.approx(fahrenheit, abs=1.0)


class TestReadCone:
    @pytest.mark.parametrize(
        ("text", "cone"),
        [("06", "06"), ("6", "6"), ("O6", "06"), ("o4", "04"), ("cone 10", "10"), (" 022 ", "022")],
    )
    def test_keeps_zero_cones_apart(self, text, cone):
        assert read_cone(text) == cone

    @pytest.mark.parametrize("text", ["", "0", "00", "15", "023", "6.5", "06/6", "warm", "٦"])
    def test_refuses_what_is_none(self, text):
        with pytest.raises(UnknownCone):
            read_cone(text)

    def test_orders_them_by_heat(self):
        assert rank("022") < rank("06") < rank("01") < rank("1") < rank("6") < rank("14")


class TestNeeded:
    @pytest.mark.parametrize(("rate", "celsius"), [(15.0, 1185), (60.0, 1222), (150.0, 1243)])
    def test_is_the_charts_value_at_its_rates(self, rate, celsius):
        found = needed("6", rate)

        assert (found.celsius, found.low_c, found.high_c) == (celsius, celsius, celsius)
        assert found.chart == CHART

    def test_gives_a_range_between_them(self):
        # 1229 to 1236 °C for cone 6 at 100 °C/h: worked out from the chart, no print of it.
        found = needed("6", 100.0)

        assert (round(found.low_c), round(found.high_c)) == (1229, 1236)

    def test_goes_with_the_logarithm_of_the_rate(self):
        # Kinetic fit to the chart: cone 6 at 100 °C/h 1233.5 °C, cone 04 1070.8 °C.
        assert needed("6", 100.0).celsius == pytest.approx(1233.5, abs=0.5)
        assert needed("04", 100.0).celsius == pytest.approx(1070.8, abs=0.5)

    @pytest.mark.parametrize(("rate", "celsius"), [(5.0, 1185), (400.0, 1243)])
    def test_says_when_the_rate_is_beyond_the_chart(self, rate, celsius):
        found = needed("6", rate)

        assert found.is_beyond_chart
        assert found.celsius == celsius

    def test_starts_at_60_where_the_chart_does(self):
        assert needed("022", 15.0).celsius == 586
        assert needed("022", 15.0).is_beyond_chart

    def test_has_no_temperature_above_cone_10(self):
        with pytest.raises(UnknownCone):
            needed("11", 60.0)

    @settings(deadline=None)
    @given(
        cone=st.sampled_from(list(CONES_C)),
        rates=st.tuples(st.floats(1, 400), st.floats(1, 400)),
    )
    def test_rises_with_the_rate(self, cone, rates):
        slow, fast = (needed(cone, rate) for rate in sorted(rates))

        assert slow.celsius <= fast.celsius
        assert slow.low_c <= slow.celsius <= slow.high_c


class TestJudgePeak:
    def test_is_enough_at_60(self):
        assert judge_peak("6", 1222.0, 60.0).short_by_c == 0.0

    def test_is_short_at_150(self):
        found = judge_peak("6", 1222.0, 150.0)

        assert found.short_by_c == 21.0
        assert "1243 °C" in found.words


class TestZeroWarning:
    def test_tells_the_two_sixes_apart(self):
        said = zero_warning("6", "bisque") or ""

        assert all(word in said for word in ("06", "998 °C", "1222 °C", "224 °C apart"))

    @pytest.mark.parametrize(("cone", "kind"), [("06", "bisque"), ("6", "glaze"), ("06", "glaze")])
    def test_is_silent_otherwise(self, cone, kind):
        assert zero_warning(cone, kind) is None

    @pytest.mark.parametrize("cone", CONES)
    def test_can_speak_of_every_cone(self, cone):
        said = zero_warning(cone, "bisque")

        assert (said is None) == (rank(cone) <= rank("01"))


class TestHands:
    def test_six_is_down_and_twelve_upright(self):
        assert hand_words(6).startswith("down")
        assert hand_words(12) == hand_words(0) == "upright"
        assert hand_words(None) == "not read"
        assert hand_words(7).startswith("flat")

    def test_reads_a_cone_that_leans_left_as_in_a_mirror(self):
        assert hand_words(9) == hand_words(3)

    def test_goes_down_from_hour_to_hour(self):
        bends = [bend_fraction(hand) for hand in range(8)]

        assert bends == sorted(bends)
        assert (bends[0], bends[6], bends[7]) == (0.0, 1.0, 1.0)

    def test_refuses_an_hour_that_no_clock_has(self):
        with pytest.raises(ValueError, match="clock"):
            hand_words(13)


class TestCheckCones:
    def test_refuses_two_cones_in_one_load(self):
        wares = [WareCone("a", "T11", "6", "8"), WareCone("b", "T12", "06", "8")]

        with pytest.raises(MixedCones) as refused:
            check_cones("6", wares)

        assert refused.value.facts["others"] == {"b": "06"}

    def test_refuses_a_body_hotter_than_it_bears(self):
        with pytest.raises(MixedCones, match="bears cone 04"):
            check_cones("6", [WareCone("a", "T11", "6", "04")])

    def test_names_what_is_not_known(self):
        doubts = check_cones(
            "6", [WareCone("a", "T11", None, None), WareCone("b", "T12", "6", "6")]
        )

        assert [(doubt.id, doubt.code) for doubt in doubts] == [
            ("a", "cone-unknown"),
            ("a", "body-unknown"),
        ]


def test_the_phone_shows_what_the_chart_has():
    """The picker works without signal, so that it holds the chart's middle column itself."""
    source = Path("frontend/src/features/firings/cone-series.ts").read_text()
    shown = source.split("NEEDS_C", 2)[1].split("};")[0]

    found = {cone: int(needs_c) for cone, needs_c in re.findall(r'"(\d+)": (\d+)', shown)}

    assert found == {cone: row[1] for cone, row in CONES_C.items()}
