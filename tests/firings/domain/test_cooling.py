"""Newton cooling. Check values by the formula T = T_a + (T_0 - T_a) exp(-t/tau)."""

import math
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.cooling import (
    NeverThatCool,
    NotCooling,
    air_at_kiln,
    fit,
    guess,
    known,
    reaches,
)

START = datetime(2026, 10, 31, 8, 40, tzinfo=UTC)


def falling(tau_h: float, from_c: float, ambient_c: float, hours: list[float]):
    return [
        (
            START + timedelta(hours=h),
            ambient_c + (from_c - ambient_c) * math.exp(-h / tau_h),
        )
        for h in hours
    ]


class TestAirAtKiln:
    @pytest.mark.parametrize(("room_c", "expected_c"), [(9.5, 15.0), (22.0, 22.0)])
    def test_is_never_colder_than_the_studio_assumes(self, room_c, expected_c):
        assert air_at_kiln(room_c, 15.0) == expected_c


class TestReaches:
    def test_brings_the_top_loader_to_100_in_the_evening(self):
        # 642 °C at 08:40 with 0.155/h in a shed at 15 °C: about 21:35, by the formula.
        found = reaches(known(0.155, 15.0), START, 642.0, 100.0)

        assert abs(found.likely - datetime(2026, 10, 31, 21, 35, tzinfo=UTC)) < timedelta(minutes=3)
        assert found.early < found.likely < found.late

    @pytest.mark.parametrize(("limit_c", "hours"), [(100.0, 12.825), (50.0, 17.729)])
    def test_agrees_with_the_formula(self, limit_c, hours):
        # tau 5 h from 1060 °C in 20 °C: 12.825 h to 100 °C and 17.729 h to 50 °C, by the formula.
        found = reaches(known(1.0 / 5.0, 20.0), START, 1060.0, limit_c)

        assert (found.likely - START) / timedelta(hours=1) == pytest.approx(hours, abs=1e-3)

    def test_is_now_for_a_kiln_that_is_there(self):
        assert reaches(known(0.2, 15.0), START, 94.0, 100.0).late == START

    def test_refuses_a_limit_below_the_air(self):
        with pytest.raises(NeverThatCool):
            reaches(known(0.2, 25.0), START, 300.0, 25.0)

    @settings(deadline=None)
    @given(k=st.floats(0.05, 0.6), celsius=st.floats(101, 1300), spread=st.floats(0, 1))
    def test_the_range_holds_what_is_likely(self, k, celsius, spread):
        found = reaches(known(k, 15.0, spread_fraction=spread), START, celsius, 100.0)

        assert START <= found.early <= found.likely <= found.late

    def test_a_kiln_nobody_watched_has_the_widest_range(self):
        # Time constants of 3 to 9 h; from memory.
        found = reaches(guess(15.0), START, 642.0, 100.0)

        times = [(at - START) / timedelta(hours=1) for at in (found.early, found.late)]
        assert times == pytest.approx([3.0 * math.log(627 / 85), 9.0 * math.log(627 / 85)])


class TestFit:
    def test_finds_the_rate_again(self):
        found = fit(falling(6.5, 1000.0, 18.0, [0, 3, 5, 7, 9]), 18.0)

        assert found.k_per_h == pytest.approx(1.0 / 6.5, rel=1e-9)
        assert found.basis == "readings"

    def test_takes_the_readings_below_red_heat_where_there_are_two(self):
        hot = [(START, 1200.0), (START + timedelta(hours=0.2), 900.0)]
        cooler = [(at + timedelta(hours=1), c) for at, c in falling(6.0, 590.0, 18.0, [0, 4])]

        assert fit(hot + cooler, 18.0).k_per_h == pytest.approx(1.0 / 6.0, rel=1e-9)
        assert fit(hot + cooler, 18.0).readings == 2

    def test_is_less_sure_of_readings_that_scatter(self):
        clean = falling(6.0, 590.0, 18.0, [0, 2, 4, 6])
        rough = [(at, c * (1.2 if i % 2 else 0.8)) for i, (at, c) in enumerate(clean)]

        assert fit(rough, 18.0).k_low < fit(clean, 18.0).k_low

    @pytest.mark.parametrize(
        "points",
        [
            [],
            [(START, 500.0)],
            [(START, 500.0), (START, 480.0)],
            [(START, 500.0), (START + timedelta(hours=1), 520.0)],
            [(START, 30.0), (START + timedelta(hours=1), 25.0)],
        ],
    )
    def test_refuses_readings_that_show_no_fall(self, points):
        with pytest.raises(NotCooling):
            fit(points, 18.0)
