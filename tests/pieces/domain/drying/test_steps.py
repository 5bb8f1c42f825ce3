import numpy as np
import pytest

from pieces.domain.drying import Plaster, in_mould, out_of_mould
from pieces.domain.drying.steps import steps_of
from tests.pieces.domain.drying.problems import HOUR_S, OPEN, WALL, wall


class TestStepsOf:
    def test_takes_quarter_hours_for_six_hours_then_hours(self) -> None:
        steps = steps_of(wall(), 0, 20 * HOUR_S)

        assert steps.span_s[:24] == pytest.approx(900.0)
        assert steps.span_s[24:] == pytest.approx(HOUR_S)

    def test_lets_every_event_fall_on_a_bound(self) -> None:
        events = (
            in_mould(1234.0, WALL, Plaster(0.2)),
            out_of_mould(5 * HOUR_S + 77, WALL),
        )

        steps = steps_of(wall(events), 1234, 20 * HOUR_S)

        assert steps.at_s[0] == 1234
        assert 5 * HOUR_S + 77 in steps.at_s
        assert np.nansum(steps.fresh) == pytest.approx(0.2)
        inside = steps.at_s[:-1] < 5 * HOUR_S + 77
        assert np.all(steps.conductance[inside, 1] > 0.0)
        assert np.all(steps.conductance[~inside, 1] == 0.0)

    def test_has_none_when_the_end_is_past(self) -> None:
        assert steps_of(wall(), 5 * 3600, 3 * HOUR_S).count == 0

    def test_slows_diffusion_in_the_cold_by_the_law_of_arrhenius(self) -> None:
        # exp(-20000/8.314462 (1/T - 1/293.15)) by hand
        factors = [
            steps_of(wall((OPEN,), air_c=air_c), 0, HOUR_S).arrhenius[0] for air_c in (10.0, 30.0)
        ]

        assert factors == pytest.approx([0.748406, 1.310869], rel=1e-4)

    def test_refuses_time_before_the_pressing(self) -> None:
        with pytest.raises(ValueError, match="before its pressing"):
            steps_of(wall((out_of_mould(HOUR_S, WALL),)), 0, 5 * HOUR_S)
