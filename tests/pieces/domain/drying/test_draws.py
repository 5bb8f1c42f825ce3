import numpy as np
import pytest

from pieces.domain.drying import FIRST_BELIEF, Belief, ensemble
from pieces.domain.drying.draws import draw
from tests.pieces.domain.drying.problems import wall


class TestDraw:
    def test_has_the_widths_that_are_believed(self) -> None:
        theta = draw(FIRST_BELIEF, 0.25, 4096, 1)

        assert theta.mean(axis=1) == pytest.approx([0.0, 0.0, 0.25, 0.0, 0.0], abs=2e-3)
        assert theta.std(axis=1) == pytest.approx(FIRST_BELIEF.sd, rel=0.01)

    def test_is_even_already_with_64(self) -> None:
        theta = draw(FIRST_BELIEF, 0.25, 64, 1)

        assert np.median(theta[1]) == pytest.approx(0.0, abs=0.05)
        assert theta.std(axis=1) == pytest.approx(FIRST_BELIEF.sd, rel=0.08)

    def test_keeps_moisture_within_reason(self) -> None:
        theta = draw(Belief.independent((0.0, 0.0, 1.0, 0.0, 0.0)), 0.25, 256, 1)

        assert theta[2].min() > 0.16
        assert theta[2].max() < 0.38

    @pytest.mark.parametrize("draws", [0, 1, 63, 8192])
    def test_refuses_unbalanced_numbers(self, draws: int) -> None:
        with pytest.raises(ValueError, match="draws"):
            draw(FIRST_BELIEF, 0.25, draws, 1)


class TestEnsemble:
    def test_is_the_same_every_time(self) -> None:
        assert np.array_equal(ensemble(wall()).theta, ensemble(wall()).theta)

    def test_differs_by_seed_and_stands_at_the_pressing(self) -> None:
        made, other = ensemble(wall(), 64, 1), ensemble(wall(), 64, 2)

        assert not np.array_equal(made.theta, other.theta)
        assert made.advanced_to_s == 0
        assert np.all(np.isinf(made.state.crossed_s))
        assert made.weights.sum() == pytest.approx(1.0)
