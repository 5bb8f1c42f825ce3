"""Heights by addition: base, shelf, ware, what is kept free, the next shelf."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firings.domain.fit_problem import Chamber, PostStock, Problem, Rules, ShelfStock, Ware
from firings.domain.heights import layers_left, spare_ware_mm, stacked, stands

KILN = Problem(
    chamber=Chamber(is_round=True, width_mm=460, depth_mm=460, height_mm=570),
    shelf=ShelfStock(is_round=True, width_mm=430, depth_mm=430, thickness_mm=15, count=6),
    rules=Rules.of("glaze"),
    ware=(),
)


def jar(height_mm: float = 120.0) -> Ware:
    return Ware("j", "J", 110, 110, height_mm, is_round=True)


def with_posts(*stock: tuple[float, int]) -> Problem:
    return replace(KILN, posts=tuple(PostStock(height, count, 25) for height, count in stock))


class TestStacked:
    def test_adds_base_shelves_ware_and_headroom(self):
        # 25 + 15 = 40; 40 + 120 + 12 + 15 = 187; 187 + 132 = 319; 570 - 187 = 383.
        stack = stacked(KILN, [[jar()], [jar(), jar(60.0)]])

        assert stack.floors_mm == (40.0, 187.0)
        assert stack.rooms_mm == (132.0, 132.0)
        assert (stack.used_mm, stack.top_gap_mm) == (319.0, 383.0)
        assert stack.short_of_posts == ()

    def test_of_nothing_takes_no_height(self):
        stack = stacked(KILN, [])

        assert (stack.used_mm, stack.top_gap_mm) == (0.0, 570.0)
        assert stands(KILN, stack)

    def test_sets_one_post_on_another_where_that_is_lowest(self):
        stack = stacked(with_posts((100, 3), (40, 3), (150, 3)), [[jar()], [jar()]])

        assert stack.rooms_mm[0] == 140.0

    def test_names_the_layers_no_three_posts_are_left_for(self):
        # The tallest layer chooses first, and takes the only three that reach 132 mm.
        stack = stacked(with_posts((140, 3)), [[jar(100.0)], [jar(120.0)], [jar()]])

        assert stack.rooms_mm[1] == 140.0
        assert stack.short_of_posts == (1,)

    @given(st.lists(st.floats(10, 150), min_size=1, max_size=4), st.floats(0.5, 50))
    def test_never_gets_lower_with_higher_ware(self, heights, more):
        low, high = (
            stacked(KILN, [[jar(height + add)] for height in heights]) for add in (0.0, more)
        )

        assert high.used_mm - low.used_mm == pytest.approx(more * len(heights))


class TestSpareWareMm:
    def test_is_what_one_more_shelf_leaves_under_the_lid(self):
        # Three layers carry 25 + 3 × 147 = 466; a shelf of 15 and 12 under the lid leave 77.
        assert spare_ware_mm(KILN, [[jar()]] * 3) == 77.0

    def test_is_none_without_a_shelf_left_or_room_for_it(self):
        two = replace(KILN, shelf=replace(KILN.shelf, count=2))

        assert spare_ware_mm(two, [[jar()]] * 2) is None
        assert spare_ware_mm(KILN, [[jar(500.0)]]) is None

    def test_is_none_where_the_studio_keeps_more_under_the_lid(self):
        def keeping(gap_mm: float) -> Problem:
            return replace(KILN, rules=replace(KILN.rules, top_shelf_to_lid_mm=gap_mm))

        assert spare_ware_mm(keeping(89.0), [[jar()]] * 3) == 77.0
        assert spare_ware_mm(keeping(90.0), [[jar()]] * 3) is None


class TestLayersLeft:
    def test_counts_layers_as_high_as_the_highest(self):
        # Three layers end at 466 mm, a fourth would at 613 of 570.
        assert layers_left(KILN, [[jar(), jar(20.0)]]) == 2
        assert layers_left(KILN, [[jar()]] * 3) == 0

    def test_stops_at_the_last_shelf(self):
        two = replace(KILN, shelf=replace(KILN.shelf, count=2))

        assert layers_left(two, [[jar()]]) == 1
        assert layers_left(two, []) == 0


class TestStands:
    def test_goes_up_to_the_lid_and_no_further(self):
        # 25 + 15 + 518 + 12 = 570.
        assert stands(KILN, stacked(KILN, [[jar(518.0)]]))
        assert not stands(KILN, stacked(KILN, [[jar(519.0)]]))
