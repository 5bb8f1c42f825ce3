import numpy as np
import pytest

from pieces.domain.drying import Plaster, in_mould, out_of_mould
from pieces.domain.drying.lanes import Timetable
from pieces.domain.drying.steps import airs_of, faces_of, steps_of
from tests.pieces.domain.drying.problems import HOUR_S, WALL, wall


class TestStepsOf:
    def test_takes_quarter_hours_for_six_hours_then_hours(self) -> None:
        steps = steps_of(wall(), 0, 20 * HOUR_S)

        spans = np.diff(steps.at_s)
        assert spans[:24] == pytest.approx(900.0)
        assert spans[24:] == pytest.approx(HOUR_S)

    def test_lets_every_event_fall_on_a_bound(self) -> None:
        events = (
            in_mould(1234.0, WALL, Plaster(0.2)),
            out_of_mould(5 * HOUR_S + 77, WALL),
        )

        steps = steps_of(wall(events), 1234, 20 * HOUR_S)

        assert steps.at_s[0] == 1234
        assert 5 * HOUR_S + 77 in steps.at_s
        assert steps.at_s[:-1][steps.begins].tolist() == [1234, 5 * HOUR_S + 77]
        inside = steps.at_s[:-1] < 5 * HOUR_S + 77
        assert np.all(steps.event == np.where(inside, 0, 1))

    def test_has_none_when_the_end_is_past(self) -> None:
        assert steps_of(wall(), 5 * 3600, 3 * HOUR_S).count == 0

    def test_refuses_time_before_the_pressing(self) -> None:
        with pytest.raises(ValueError, match="before its pressing"):
            steps_of(wall((out_of_mould(HOUR_S, WALL),)), 0, 5 * HOUR_S)

    def test_keeps_each_bound_once_and_in_order(self) -> None:
        events = (in_mould(900.0, WALL, Plaster(0.2)), out_of_mould(5 * HOUR_S, WALL))

        steps = steps_of(wall(events), 3600, 20 * HOUR_S)

        assert np.all(np.diff(steps.at_s) > 0)
        assert (steps.at_s[0], steps.at_s[-1]) == (3600, 20 * HOUR_S)


class TestAirsOf:
    def test_slows_diffusion_in_the_cold_by_the_law_of_arrhenius(self) -> None:
        # exp(-20000/8.314462 (1/T - 1/293.15)) by hand
        rooms = [wall(air_c=air_c).climate for air_c in (10.0, 30.0)]

        factors = [airs_of(room, 20_000.0)[0, 3] for room in rooms]

        assert factors == pytest.approx([0.748406, 1.310869], rel=1e-4)


class TestFacesOf:
    def test_tells_air_from_plaster(self) -> None:
        plaster = Plaster(0.2)

        figures = faces_of(in_mould(0.0, WALL, plaster))

        assert figures[:2] == (1.0, 0.0)
        assert figures[2:4] == (0.0, plaster.conductance_kg_m2_s)
        assert figures[9] == 0.2


class TestTimetable:
    def test_fills_short_columns_up_with_steps_of_no_length(self) -> None:
        problems = [wall(), wall()]
        steps = [steps_of(problems[0], 0, 20 * HOUR_S), steps_of(problems[1], 0, 3 * HOUR_S)]

        table = Timetable.of(problems, steps)

        spans = np.diff(table.at_s, axis=0)
        assert table.counts.tolist() == [steps[0].count, 12]
        assert np.all(spans[12:, 1] == 0.0)
        assert np.all(spans[:, 0] > 0.0)
