"""Circles on a shelf, against closed forms, published ratios and an independent look at distances.

Best known ratios R/r: Kravitz 1967 and Graham, Lubachevsky, Nurmela and Östergård 1998, recalled
from memory; the first eleven without a closed form are those printed most often.
"""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.circles import (
    MOST_ARRANGED,
    arranged,
    in_rows,
    most_in_circle,
    most_in_rectangle,
    places,
    ratio,
)

CLOSED_FORMS = {
    1: 1.0,
    2: 2.0,
    3: 1.0 + 2.0 / math.sqrt(3.0),
    4: 1.0 + math.sqrt(2.0),
    5: 1.0 + math.sqrt(2.0 * (1.0 + 1.0 / math.sqrt(5.0))),
    6: 3.0,
    7: 3.0,
    8: 1.0 + 1.0 / math.sin(math.pi / 7.0),
    9: 1.0 + math.sqrt(2.0 * (2.0 + math.sqrt(2.0))),
    13: 2.0 + math.sqrt(5.0),
    18: 1.0 + math.sqrt(2.0) + math.sqrt(6.0),
    19: 1.0 + math.sqrt(2.0) + math.sqrt(6.0),
}
PUBLISHED = {
    10: 3.813026,
    11: 3.923804,
    12: 4.029602,
    14: 4.328429,
    15: 4.521357,
    16: 4.615426,
    17: 4.792034,
    20: 5.122321,
    21: 5.252317,
    22: 5.439719,
    23: 5.545204,
    24: 5.651661,
    25: 5.752824,
    26: 5.828177,
    27: 5.906398,
    28: 6.014938,
    29: 6.138598,
    30: 6.197741,
}


def nearest(centres: np.ndarray) -> float:
    """Return the smallest distance between two centres, pair by pair."""
    return min(
        (math.dist(a, b) for i, a in enumerate(centres) for b in centres[:i]), default=math.inf
    )


class TestRatio:
    @pytest.mark.parametrize("count", CLOSED_FORMS)
    def test_is_the_closed_form_where_there_is_one(self, count):
        assert ratio(count) == pytest.approx(CLOSED_FORMS[count], abs=5e-6)

    @pytest.mark.parametrize("count", PUBLISHED)
    def test_is_the_published_one_elsewhere(self, count):
        assert ratio(count) == pytest.approx(PUBLISHED[count], abs=5e-6)

    def test_covers_one_to_thirty(self):
        assert set(CLOSED_FORMS) | set(PUBLISHED) == set(range(1, MOST_ARRANGED + 1))

    @pytest.mark.parametrize("count", [0, 31])
    def test_refuses_other_numbers(self, count):
        with pytest.raises(ValueError, match="1 to 30"):
            places(count)


class TestArranged:
    @pytest.mark.parametrize("count", range(1, MOST_ARRANGED + 1))
    def test_no_two_circles_meet_and_none_hangs_over(self, count):
        outer = 200.0
        radius = outer / ratio(count)

        centres = arranged(count, radius, outer)

        assert centres is not None
        assert len(centres) == count
        assert nearest(centres) >= 2.0 * radius - 1e-6
        assert max(math.hypot(*centre) for centre in centres) <= outer - radius + 1e-9

    def test_is_nothing_where_it_does_not_go_in(self):
        assert arranged(10, 58.0, 218.0) is None


class TestMostInCircle:
    @pytest.mark.parametrize(
        ("radius", "outer", "count"),
        # Jars of 110 mm on a shelf of 430 mm: glazed with 6 mm between, and touching.
        [(58.0, 218.0, 9), (55.0, 215.0, 10)],
    )
    def test_stands_nine_glazed_jars_and_ten_touching(self, radius, outer, count):
        assert most_in_circle(radius, outer) == (count, count)

    @pytest.mark.parametrize(
        ("radius", "outer", "count"),
        # 540 mm shelf, 6 mm between, best known: 20, 24, 8, 4 and, touching, 21; computed.
        [(53, 273, 20), (48, 273, 24), (78, 273, 8), (103, 273, 4), (50, 270, 21)],
    )
    def test_finds_the_best_known_number(self, radius, outer, count):
        sure, possible = most_in_circle(radius, outer)

        assert sure == count
        assert possible >= count

    def test_stands_none_that_is_wider_than_the_shelf(self):
        assert most_in_circle(101.0, 100.0) == (0, 0)

    @settings(deadline=None)
    @given(given_ratio=st.floats(1.0, 6.5))
    def test_never_says_surely_more_than_can_be(self, given_ratio):
        sure, possible = most_in_circle(1.0, given_ratio)

        assert sure <= possible
        # No arrangement of equal circles fills more than π/√12 of a plane; with a rim, area itself.
        assert sure <= given_ratio**2


class TestMostInRectangle:
    def test_counts_straight_rows(self):
        # 380 × 480 mm inside the margin, 100 mm with 6 mm between: 3 × 4; arithmetic.
        sure, possible = most_in_rectangle(53.0, 386.0, 486.0)

        assert sure >= 12
        assert possible >= sure

    def test_stands_more_when_rows_are_staggered(self):
        # 10 × 9.7 diameters: eleven staggered rows (1 + 10 × 0.866 = 9.66) against nine straight.
        assert most_in_rectangle(0.5, 10.0, 9.7)[0] == 6 * 10 + 5 * 9

    @settings(deadline=None)
    @given(radius=st.floats(5, 60), width=st.floats(100, 600), depth=st.floats(100, 600))
    def test_rows_keep_apart_and_inside(self, radius, width, depth):
        centres = in_rows(radius, width, depth)
        sure, possible = most_in_rectangle(radius, width, depth)

        assert len(centres) == sure <= possible
        if len(centres):
            assert np.abs(centres[:, 0]).max() <= width / 2 - radius + 1e-6
            assert np.abs(centres[:, 1]).max() <= depth / 2 - radius + 1e-6
        if len(centres) <= 60:
            assert nearest(centres) >= 2.0 * radius - 1e-6
