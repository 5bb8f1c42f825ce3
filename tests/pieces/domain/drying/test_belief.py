"""What is believed of a piece before it is looked at, and what a cover lets through."""

import numpy as np
import pytest

from pieces.domain.drying import FIRST_BELIEF, Belief, Cover, advance
from pieces.domain.drying.belief import PIECE_SD, SHARED_SD
from pieces.domain.drying.draws import ensemble_of
from pieces.domain.drying.sections import Face, FaceEvent, out_of_mould
from tests.pieces.domain.drying.problems import HOUR_S, RED, WALL, wall


def mean_after_a_day(event: FaceEvent, ln_through: float) -> float:
    """Return the mean moisture of a wall after a day under what `event` says."""
    theta = np.array([[0.0], [0.0], [0.25], [ln_through], [0.0]])
    (after,) = advance([ensemble_of(wall((event,)), theta)], 24 * HOUR_S)
    return float(after.state.moisture_kg_per_kg.mean())


class TestBelief:
    def test_joins_what_is_shared_and_what_is_a_pieces_own(self) -> None:
        assert FIRST_BELIEF.sd**2 == pytest.approx(
            np.square(SHARED_SD) + 1.25 * np.square(PIECE_SD)
        )

    def test_has_a_root_that_gives_the_covariance_back(self) -> None:
        leaning = np.array(
            [
                [1.0, 0.6, 0.0, 0.1, 0.0],
                [0.6, 2.0, 0.0, 0.2, 0.0],
                [0] * 5,
                [0.1, 0.2, 0, 1, 0.3],
                [0, 0, 0, 0.3, 1],
            ]
        )

        root = Belief.of(np.zeros(5), leaning).root

        assert root @ root.T == pytest.approx(leaning)

    def test_has_a_name_that_changes_with_it(self) -> None:
        other = Belief.independent(FIRST_BELIEF.sd, mean=(0.0, 0.1, 0.0, 0.0, 0.0))

        assert other.version != FIRST_BELIEF.version
        again = Belief.of(np.array(FIRST_BELIEF.mean), np.array(FIRST_BELIEF.covariance))
        assert again.version == FIRST_BELIEF.version

    @pytest.mark.parametrize(
        "covariance", [-np.eye(5), np.eye(3), np.triu(np.ones((5, 5)))], ids=str
    )
    def test_refuses_what_is_no_covariance(self, covariance: np.ndarray) -> None:
        with pytest.raises(ValueError, match=r"covariance|five"):
            Belief.of(np.zeros(5), covariance)


class TestThroughACover:
    def test_dries_as_under_a_cover_that_lets_that_much_through(self) -> None:
        loose = out_of_mould(0, WALL, cover=Cover.LOOSE)
        twice = FaceEvent(
            0.0, Face(2 * loose.inner.factor), Face(2 * loose.outer.factor), is_covered=True
        )

        assert mean_after_a_day(loose, np.log(2.0)) == pytest.approx(
            mean_after_a_day(twice, 0.0), abs=1e-12
        )

    def test_is_nothing_to_a_piece_that_stands_open(self) -> None:
        standing = out_of_mould(0, WALL)

        assert mean_after_a_day(standing, 0.7) == mean_after_a_day(standing, 0.0)

    def test_never_lets_through_more_than_no_cover(self) -> None:
        loose = out_of_mould(0, WALL, cover=Cover.LOOSE)
        open_faces = FaceEvent(0.0, Face(1.0), Face(1.0))

        assert mean_after_a_day(loose, 5.0) == pytest.approx(mean_after_a_day(open_faces, 0.0))


class TestWaterHeldAtRest:
    def test_is_where_a_piece_ends_in_air_that_does_not_change(self) -> None:
        theta = np.array([[0.0], [0.0], [0.25], [0.0], [np.log(1.5)]])

        (after,) = advance([ensemble_of(wall(humidity=0.7, hours=960), theta)], 40 * 24 * HOUR_S)

        at_rest = 1.5 * RED.at_rest_kg_per_kg(0.7)
        assert after.state.moisture_kg_per_kg == pytest.approx(at_rest, rel=1e-3)
