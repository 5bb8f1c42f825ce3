"""Latest days to press; sums by the three-point estimate."""

from datetime import date

import pytest

from firings.domain.press_days import Duration, NoOpenDay, latest_press_day

DUE = date(2026, 12, 18)


class TestLatestPressDay:
    def test_adds_means_and_variances(self):
        # 2, 4, 12 days: mean 5, deviation 10/6; four of them at 90 %: 24.272 days; arithmetic.
        found = latest_press_day(DUE, [Duration(f"stage {i}", 2, 4, 12) for i in range(4)])

        assert found.mean_days == pytest.approx(20.0)
        assert found.deviation_days == pytest.approx(10.0 / 3.0)
        assert found.at_50 == date(2026, 11, 28)
        assert found.at_90 == date(2026, 11, 23)
        assert found.at_90 <= found.at_80 <= found.at_50

    def test_goes_back_to_an_open_day(self):
        # 28 November 2026 is a Saturday.
        found = latest_press_day(
            DUE,
            [Duration("all", 20, 20, 20)],
            closed_weekdays=(5, 6),
            closed_dates=(date(2026, 11, 27),),
        )

        assert found.at_50 == found.at_90 == date(2026, 11, 26)

    def test_says_when_nobody_is_ever_in(self):
        with pytest.raises(NoOpenDay):
            latest_press_day(DUE, [], closed_weekdays=range(7))

    def test_refuses_a_stage_that_goes_down(self):
        with pytest.raises(ValueError, match="drying"):
            latest_press_day(DUE, [Duration("drying", 4, 3, 5)])
