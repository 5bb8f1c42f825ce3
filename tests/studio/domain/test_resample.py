"""Even steps out of uneven readings."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain import moist_air
from studio.domain.resample import even_steps

HOUR = 3600.0


class TestEvenSteps:
    def test_averages_vapour_and_not_humidity(self):
        # One hour from 10 °C at 90 % to 20 °C at 40 %: the line through both, halfway.
        readings = [(0.0, 10.0, 0.9), (HOUR, 20.0, 0.4)]

        step = even_steps(readings, from_s=0.0, until_s=HOUR, step_s=HOUR)[0]

        vapour = moist_air.vapour_density_kg_m3([10.0, 20.0], [0.9, 0.4]).mean()
        assert step.air_c == pytest.approx(15.0)
        assert step.vapour_kg_m3 == pytest.approx(vapour)
        assert step.humidity_fraction == pytest.approx(
            vapour / moist_air.saturation_density_kg_m3(15.0)
        )
        assert step.humidity_fraction != pytest.approx(0.65, abs=0.02)

    @given(
        st.lists(
            st.tuples(st.floats(60.0, 8000.0), st.floats(0.0, 30.0), st.floats(0.2, 1.0)),
            min_size=3,
            max_size=12,
        )
    )
    def test_conserves_the_integral_whatever_the_step(self, rows):
        at = np.cumsum([row[0] for row in rows])
        readings = [(when, air, share) for when, (_, air, share) in zip(at, rows, strict=True)]
        start, end = at[0], at[-1]

        whole = even_steps(readings, from_s=start, until_s=end, step_s=end - start)
        fine = even_steps(readings, from_s=start, until_s=end, step_s=(end - start) / 8)

        assert np.mean([step.vapour_kg_m3 for step in fine]) == pytest.approx(
            whole[0].vapour_kg_m3, rel=1e-9
        )
        assert np.mean([step.air_c for step in fine]) == pytest.approx(whole[0].air_c, abs=1e-9)

    def test_leaves_out_what_no_reading_covers(self):
        readings = [(HOUR, 15.0, 0.6), (3 * HOUR, 15.0, 0.6), (20 * HOUR, 15.0, 0.6)]

        steps = even_steps(readings, from_s=0.0, until_s=24 * HOUR, step_s=HOUR)

        assert [step.starts_s / HOUR for step in steps] == [1.0, 2.0]

    def test_gives_nothing_for_less_than_two_readings(self):
        assert even_steps([(0.0, 15.0, 0.6)], from_s=0.0, until_s=HOUR, step_s=HOUR) == []

    def test_asks_for_a_step(self):
        with pytest.raises(ValueError, match="step_s"):
            even_steps([], from_s=0.0, until_s=1.0, step_s=0.0)
