"""Which readings are believed. The mornings are those of the invented studio, in October."""

import math
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain.climate import USED, Reading, judge, judge_all, may_mean_c

DAWN = datetime(2026, 10, 16, 7, 0, tzinfo=UTC)


def reading(air_c=13.0, humidity=0.55, *, hours=0.0, named=True):
    return Reading(DAWN + timedelta(hours=hours), air_c, humidity, humidity_is_named=named)


class TestJudge:
    @pytest.mark.parametrize(
        ("air_c", "humidity"),
        [(12.5, 0.73), (0, 1.0), (-5, 0.05), (40, 0.3), (None, 0.5), (18, None)],
    )
    def test_uses_what_a_room_can_be(self, air_c, humidity):
        assert judge(reading(air_c, humidity)) == USED

    def test_leaves_out_104_percent_and_keeps_it(self):
        found = judge(reading(12.9, 1.04))

        assert (found.use, found.reason) == ("left_out", "humidity-above-all")
        assert "104 %" in found.detail

    def test_asks_whether_55_was_a_percentage(self):
        found = judge(reading(humidity=55))

        assert (found.use, found.did_you_mean_fraction) == ("asked", 0.55)

    def test_asks_about_any_unnamed_humidity_above_one(self):
        assert judge(reading(humidity=1.04, named=False)).use == "asked"
        assert judge(reading(humidity=0.55, named=False)) == USED

    @pytest.mark.parametrize("humidity", [0.0, 0.049, -0.5, -3])
    def test_leaves_out_humidity_no_meter_shows(self, humidity):
        found = judge(reading(humidity=humidity))

        assert (found.use, found.reason) == ("left_out", "humidity-too-low")

    def test_leaves_out_61_degrees_and_asks_whether_they_were_fahrenheit(self):
        # (61.2 - 32) / 1.8 = 16.2
        found = judge(reading(61.2, 0.65))

        assert (found.use, found.reason) == ("left_out", "air-in-fahrenheit")
        assert found.did_you_mean_c == 16.2
        assert "61.2 °F" in found.detail

    def test_asks_about_fahrenheit_that_could_be_celsius(self):
        # 38 °F is 3.3 °C, as cold as the shed was at dawn
        found = judge(reading(38, 0.8, hours=6), nearby=[reading(4, 0.8)])

        assert (found.use, found.did_you_mean_c) == ("asked", 3.3)

    def test_uses_a_hot_day_after_a_hot_morning(self):
        assert judge(reading(38, 0.3, hours=6), nearby=[reading(27, 0.4)]) == USED

    def test_forgets_what_was_long_ago(self):
        assert judge(reading(38, 0.3, hours=60), nearby=[reading(4, 0.8)]) == USED

    @pytest.mark.parametrize("air_c", [-26, 104.1, 642])
    def test_leaves_out_what_is_no_air_of_a_room(self, air_c):
        found = judge(reading(air_c))

        assert (found.use, found.reason) == ("left_out", "air-out-of-range")

    def test_leaves_out_the_second_at_one_time(self):
        found = judge(reading(13.1), nearby=[reading(13.0)])

        assert (found.use, found.reason) == ("left_out", "second-at-that-time")

    @pytest.mark.parametrize(("air_c", "humidity"), [(None, None), (math.nan, 0.5), (13, math.inf)])
    def test_takes_what_is_no_number_for_a_bug(self, air_c, humidity):
        with pytest.raises(ValueError, match="finite"):
            judge(reading(air_c, humidity))

    @given(st.floats(-1e6, 1e6), st.floats(-1e6, 1e6), st.booleans())
    def test_uses_nothing_out_of_range_and_gives_its_reason(self, air_c, humidity, named):
        found = judge(reading(air_c, humidity, named=named))

        if found.use == "used":
            assert -25 <= air_c <= 40
            assert 0.05 <= humidity <= 1
        else:
            assert found.reason
            assert len(found.detail) <= 200


class TestJudgeAll:
    def test_of_a_month_leaves_out_the_splashed_meter_and_the_wrong_unit(self):
        mornings = [12.4, 12.9, 13.0, 13.4, 13.4, 13.0, 13.1, 14.5, 61.2, 13.8]
        percents = [55, 104, 55, 58, 59, 58, 61, 64, 65, 67]
        readings = [
            reading(air_c, percent / 100, hours=24 * day)
            for day, (air_c, percent) in enumerate(zip(mornings, percents, strict=True))
        ]

        uses = [found.use for found in judge_all(readings)]

        assert [day for day, use in enumerate(uses) if use != "used"] == [1, 8]

    def test_leaves_out_a_single_spike(self):
        # 13 °C 55 % holds 6.2 g/m³ of vapour, 22 °C 60 % holds 11.6 (psychrolib 2.5.0)
        readings = [reading(hours=0), reading(22, 0.6, hours=8), reading(hours=16)]

        assert [found.reason for found in judge_all(readings)] == ["", "spike", ""]

    def test_believes_a_change_that_stays(self):
        readings = [reading(hours=0), reading(22, 0.6, hours=8), reading(22, 0.6, hours=16)]

        assert judge_all(readings) == [USED] * 3

    def test_judges_by_time_not_by_order(self):
        first, spike, last = reading(hours=0), reading(22, 0.6, hours=8), reading(hours=16)

        found = judge_all([last, first, spike])

        assert [judgement.reason for judgement in found] == ["", "", "spike"]

    def test_uses_the_first_of_two_at_one_time(self):
        found = judge_all([reading(13.0), reading(14.0)])

        assert [judgement.use for judgement in found] == ["used", "left_out"]


class TestMayMean:
    def test_holds_until_somebody_answers(self):
        doubted = judge(reading(61.2, 0.65))

        # (61.2 - 32) / 1.8 = 16.2, by hand
        assert may_mean_c(61.2, doubted.detail) == 16.2
        assert may_mean_c(61.2, "Left out, as somebody answered.") is None
        assert may_mean_c(None, doubted.detail) is None

    def test_is_nothing_for_what_is_no_room_in_either_unit(self):
        too_hot = judge(reading(450.0, 0.65))

        assert may_mean_c(450.0, too_hot.detail) is None
