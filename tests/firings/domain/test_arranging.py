"""Whole layers, against packings known by geometry: seven coins, four tiles, a square in a disc."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.arranging import arrange, arrange_with_posts
from firings.domain.placing import set_down_all
from firings.domain.shapes import Footprint, Outline, Spot

SQUARE = Outline(False, 200.0, 200.0)
ROUND = Outline(True, 300.0, 300.0)


def disc(across_mm: float) -> Footprint:
    return Footprint(across_mm, across_mm, is_round=True)


def count(found: list[Spot] | None) -> int:
    return -1 if found is None else len(found)


def nearest_mm(spots: list[Spot]) -> float:
    """Return how near to one another the middles of the nearest two are."""
    return min(
        math.hypot(one.x_mm - other.x_mm, one.y_mm - other.y_mm)
        for place, one in enumerate(spots)
        for other in spots[:place]
    )


class TestArrange:
    @pytest.mark.parametrize(
        ("outline", "piece", "most"),
        [
            # Six coins stand round a seventh in a disc three times as wide.
            (ROUND, disc(100.0), 7),
            (SQUARE, disc(100.0), 4),
            (SQUARE, Footprint(100.0, 100.0), 4),
            # The square inside a disc of 300 mm has sides of 212 mm.
            (ROUND, Footprint(212.0, 212.0), 1),
            (ROUND, Footprint(213.0, 213.0), 0),
        ],
    )
    def test_sets_as_many_as_geometry_allows(self, outline, piece, most):
        assert count(arrange(outline, [piece] * most, 0.0)) == most
        assert arrange(outline, [piece] * (most + 1), 0.0) is None

    def test_knows_arrangements_that_setting_down_misses(self):
        # Twelve need a ratio of 4.0296 (sources: test_circles): 74.4 mm in 300.
        twelve = [disc(74.4)] * 12

        assert set_down_all(ROUND, twelve, 0.0) is None
        assert count(arrange(ROUND, twelve, 0.0)) == 12
        assert arrange(ROUND, [disc(74.5)] * 12, 0.0) is None

    def test_counts_staggered_rows(self):
        # Five coins of 100 in two rows need 100 (1 + √3/2) = 186.6 mm of depth, three across.
        lower, higher = (Outline(False, 300.0, depth) for depth in (186.0, 187.0))

        assert count(arrange(higher, [disc(100.0)] * 5, 0.0)) == 5
        assert arrange(lower, [disc(100.0)] * 5, 0.0) is None

    def test_sets_boxes_in_rows_across_a_round_shelf(self):
        # A square of side 300 / √5 = 134.2 mm twice: two side by side touch the rim with corners.
        assert count(arrange(ROUND, [Footprint(134.0, 134.0)] * 2, 0.0)) == 2
        assert arrange(ROUND, [Footprint(135.0, 135.0)] * 2, 0.0) is None

    def test_keeps_clear_of_posts(self):
        post = [Spot(0.0, 0.0, disc(20.0))]

        assert arrange(SQUARE, [Footprint(100.0, 100.0)] * 4, 0.0, post) is None
        # Ends 10 mm short of the middle either way: the corners are 14 mm from the post's middle.
        assert count(arrange(SQUARE, [Footprint(90.0, 90.0)] * 4, 0.0, post)) == 4

    def test_leaves_the_middle_of_seven_to_a_post(self):
        post = [Spot(0.0, 0.0, disc(100.0))]

        six = arrange(ROUND, [disc(100.0)] * 6, 0.0, post)

        assert six is not None
        assert [math.hypot(spot.x_mm, spot.y_mm) for spot in six] == pytest.approx([100.0] * 6)
        assert arrange(ROUND, [disc(100.0)] * 7, 0.0, post) is None

    @pytest.mark.parametrize("outline", [ROUND, SQUARE])
    def test_goes_another_way_where_a_post_stands(self, outline):
        first = arrange(outline, [disc(50.0)] * 2, 0.0)
        assert first is not None
        post = Spot(first[0].x_mm, first[0].y_mm, disc(20.0))

        found = arrange(outline, [disc(50.0)] * 2, 0.0, [post])

        assert found is not None
        assert nearest_mm([*found, post]) >= 35.0 - 1e-5

    def test_of_nothing_is_nothing(self):
        assert arrange(SQUARE, [], 6.0) == []

    @settings(max_examples=25, deadline=None)
    @given(st.integers(2, 12), st.floats(40.0, 110.0), st.sampled_from([0.0, 6.0]))
    def test_keeps_rim_and_gap(self, many, across, gap):
        found = arrange(ROUND, [disc(across)] * many, gap)

        # Area excludes what is found; half the area in a few rings is always found.
        if found is None:
            assert many * (across + gap) ** 2 > 0.5 * (300.0 + gap) ** 2
            return
        assert len(found) == many
        assert max(math.hypot(s.x_mm, s.y_mm) for s in found) <= 150.0 - across / 2.0 + 1e-5
        assert nearest_mm(found) >= across + gap - 1e-5


class TestArrangeWithPosts:
    @pytest.mark.parametrize("many", [1, 5])
    def test_finds_three_posts_clear_of_the_ware(self, many):
        found = arrange_with_posts(ROUND, [disc(70.0)] * many, 6.0, 25.0)

        assert found is not None
        ware, posts = found
        assert (len(ware), len(posts)) == (many, 3)
        for post in posts:
            for spot in ware:
                apart = math.hypot(spot.x_mm - post.x_mm, spot.y_mm - post.y_mm)
                assert apart >= (70.0 + post.footprint.width_mm) / 2.0 + 6.0 - 1e-5

    def test_finds_none_on_a_full_shelf(self):
        assert count(arrange(ROUND, [disc(299.0)], 6.0)) == 1
        assert arrange_with_posts(ROUND, [disc(299.0)], 6.0, 25.0) is None
