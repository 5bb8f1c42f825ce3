"""What two or more weighings say."""

import pytest

from pieces.domain.weighing_curve import HOUR_S, change, left_at, weighed_left, words

POINTS = [(0.0, 0.95, 1.0, 1.0), (10 * HOUR_S, 0.4, 0.5, 0.6), (20 * HOUR_S, 0.1, 0.2, 0.4)]


class TestChange:
    def test_holds_the_last_weighing_against_the_last_half_a_day_before(self) -> None:
        found = change(
            [(20 * HOUR_S, 500.0), (0.0, 560.0), (6 * HOUR_S, 530.0), (15 * HOUR_S, 505.0)]
        )

        assert found is not None
        assert found.lost_fraction == pytest.approx(0.06)
        assert found.apart_h == pytest.approx(14.0)
        assert not found.is_steady

    def test_is_steady_when_the_scale_hardly_moves(self) -> None:
        found = change([(0.0, 500.5), (13 * HOUR_S, 500.0)])

        assert found is not None
        assert found.is_steady

    @pytest.mark.parametrize("weighings", [[], [(0.0, 500.0)], [(0.0, 500.0), (HOUR_S, 500.0)]])
    def test_says_nothing_before_two_are_half_a_day_apart(self, weighings) -> None:
        assert change(weighings) is None


class TestLeftAt:
    def test_lies_on_the_line_between_two_points(self) -> None:
        assert left_at(POINTS, 15 * HOUR_S) == pytest.approx((0.25, 0.35, 0.5))

    def test_stays_with_the_last_point(self) -> None:
        assert left_at(POINTS, 99 * HOUR_S) == pytest.approx((0.1, 0.2, 0.4))

    def test_says_nothing_of_before_the_pressing(self) -> None:
        assert left_at(POINTS, -1.0) is None
        assert left_at([], 5.0) is None


class TestWeighedLeft:
    def test_begins_on_the_line_and_follows_the_scale(self) -> None:
        # By hand: 0.25 as pressed, 0.01 at rest; at half of the water X is 0.13, so that 565 g hold
        # 500 g of dry clay, and 535 g hold X = 0.07: a quarter of the water.
        weighings = [(20 * HOUR_S, 535.0), (10 * HOUR_S, 565.0)]

        found = weighed_left(weighings, POINTS, pressed_kg_per_kg=0.25, at_rest_kg_per_kg=0.01)

        assert found == pytest.approx([0.5, 0.25])

    def test_says_nothing_where_no_curve_was_reckoned(self) -> None:
        found = weighed_left([(5.0, 500.0)], [], pressed_kg_per_kg=0.25, at_rest_kg_per_kg=0.01)

        assert found == [None]
        assert weighed_left([], POINTS, pressed_kg_per_kg=0.25, at_rest_kg_per_kg=0.01) == []


class TestWords:
    def test_tell_what_is_left_and_what_went(self) -> None:
        said = words((0.1, 0.2, 0.4), change([(0.0, 530.0), (14 * HOUR_S, 500.0)]))

        assert said == (
            "About 20 % of the water is left, likely 10 to 40 %. It lost 6.0 % in 14 h."
        )

    def test_do_not_take_steady_for_dry(self) -> None:
        said = words(None, change([(0.0, 500.0), (14 * HOUR_S, 500.0)]))

        assert said.startswith("Steady: two weighings agree to 0.0 %.")
        assert "not yet dry" in said

    def test_are_none_where_nothing_is_known(self) -> None:
        assert words(None, None) == ""
