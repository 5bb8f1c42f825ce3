"""The draws of a piece that goes on in another room."""

import numpy as np
import pytest

from pieces.domain.drying import Belief
from pieces.domain.learning.elsewhere import EXCHANGE, carried


def believed(mean: float, sd: float) -> Belief:
    means, widths = np.zeros(5), np.full(5, 0.1)
    means[EXCHANGE], widths[EXCHANGE] = mean, sd
    return Belief.of(means, np.diag(widths**2))


THETA = np.random.default_rng(11).normal(size=(5, 64))


class TestCarried:
    def test_is_the_same_in_a_room_of_which_the_same_is_believed(self) -> None:
        assert carried(THETA, believed(0.1, 0.3), believed(0.1, 0.3)) is THETA

    def test_has_the_middle_and_the_width_of_what_was_learned_there(self) -> None:
        moved = carried(THETA, believed(0.0, 1.0), believed(0.4, 0.2))

        assert moved[EXCHANGE] == pytest.approx(0.4 + 0.2 * THETA[EXCHANGE])

    def test_leaves_clay_pressing_and_covers_as_they_are(self) -> None:
        moved = carried(THETA, believed(0.0, 1.0), believed(0.4, 0.2))

        others = [row for row in range(5) if row != EXCHANGE]
        assert np.array_equal(moved[others], THETA[others])
