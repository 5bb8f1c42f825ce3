import numpy as np
import pytest

from pieces.domain.drying import Batch, curve, ensemble, simulate
from pieces.domain.drying.curve import at_rest_kg_per_kg
from tests.pieces.domain.drying.problems import HOUR_S, RED, carried, wall


@pytest.fixture(scope="module")
def run():
    return simulate(Batch((ensemble(wall(hours=240)),), 240 * HOUR_S, keeps_track=True))


class TestCurve:
    def test_falls_from_1_to_0(self, run) -> None:
        line = curve(run.after[0], run.tracks[0], np.arange(0, 241) * HOUR_S)

        for level in (line.p10, line.p50, line.p90):
            assert level[0] == pytest.approx(1.0)
            assert np.all(np.diff(level) <= 1e-9)
        assert line.p50[-1] == pytest.approx(0.0, abs=0.01)
        assert line.at_rest_kg_per_kg == pytest.approx(RED.at_rest_kg_per_kg(0.5))

    def test_keeps_its_levels_in_order(self, run) -> None:
        line = curve(run.after[0], run.tracks[0], np.linspace(0, 240, 97) * HOUR_S)

        assert np.all(line.p10 <= line.p50)
        assert np.all(line.p50 <= line.p90)

    def test_has_no_width_with_one_draw(self) -> None:
        one = carried(wall(), 100)

        line = curve(one.after[0], one.tracks[0], [10 * HOUR_S])

        assert line.p10 == pytest.approx(line.p90)

    def test_refuses_a_track_of_another(self, run) -> None:
        one = carried(wall(), 100)

        with pytest.raises(ValueError, match="another"):
            curve(run.after[0], one.tracks[0], [0.0])


class TestAtRestKgPerKg:
    def test_keeps_a_scale_in_saturated_air(self) -> None:
        assert at_rest_kg_per_kg(ensemble(wall(humidity=1.0))) == pytest.approx(0.125)
