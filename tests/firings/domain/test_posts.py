"""Three posts that carry a shelf: clear of the ware, the middle inside their triangle."""

import math
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.posts import foot, stand_posts
from firings.domain.shapes import Footprint, Outline, Spot

SHELF = Outline(True, 400.0, 400.0)
POST_MM = 25.0


def sides_of_middle(posts: list[Spot]) -> set[bool]:
    """Return on which sides of the three edges the middle lies: one side only, if it is inside."""
    pairs = zip(posts, [*posts[1:], posts[0]], strict=True)
    return {a.x_mm * b.y_mm - a.y_mm * b.x_mm > 0.0 for a, b in pairs}


class TestFoot:
    def test_takes_the_diagonal_and_room_to_spare(self):
        # √2 × 25 mm and 6 mm on either side.
        assert foot(POST_MM).width_mm == pytest.approx(47.36, abs=0.01)
        assert foot(POST_MM).is_round


class TestStandPosts:
    def test_stand_evenly_at_the_rim_of_an_empty_shelf(self):
        posts = stand_posts(SHELF, [], POST_MM, 6.0)

        assert posts is not None
        angles = sorted(math.degrees(math.atan2(post.y_mm, post.x_mm)) % 360.0 for post in posts)
        assert [b - a for a, b in pairwise(angles)] == pytest.approx([120, 120])
        # The post itself ends at the rim: 200 mm less half its diagonal.
        reach = [math.hypot(post.x_mm, post.y_mm) for post in posts]
        assert reach == pytest.approx([200.0 - POST_MM / math.sqrt(2.0)] * 3)

    def test_find_no_place_on_a_full_shelf(self):
        full = [Spot(0.0, 0.0, Footprint(400.0, 400.0, is_round=True))]

        assert stand_posts(SHELF, [full], POST_MM, 0.0) is None

    def test_would_tip_on_one_half_of_the_shelf(self):
        square = Outline(False, 400.0, 400.0)
        half = [Spot(-100.0, 0.0, Footprint(200.0, 400.0))]

        assert stand_posts(square, [half], POST_MM, 0.0) is None
        assert stand_posts(square, [], POST_MM, 0.0) is not None

    @settings(max_examples=25, deadline=None)
    @given(
        st.lists(
            st.tuples(st.floats(-120, 120), st.floats(-120, 120), st.floats(20, 90)), max_size=6
        )
    )
    def test_keep_clear_of_the_ware_of_every_layer(self, discs):
        layers = [[Spot(x, y, Footprint(d, d, is_round=True))] for x, y, d in discs]

        posts = stand_posts(SHELF, layers, POST_MM, 6.0)

        # Feet at the rim begin 159 mm from the middle: ware that ends 120 mm from it bars none.
        if posts is None:
            assert any(math.hypot(x, y) + d / 2.0 > 120.0 for x, y, d in discs)
            return
        assert len(sides_of_middle(posts)) == 1
        for post in posts:
            for x, y, d in discs:
                apart = math.hypot(post.x_mm - x, post.y_mm - y)
                assert apart >= d / 2.0 + post.footprint.width_mm / 2.0 + 6.0 - 1e-5
