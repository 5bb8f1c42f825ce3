"""Setting down, on shelves small enough to look at."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.placing import can_lie_on, is_free, set_down, set_down_all
from firings.domain.shapes import Footprint, Outline, Spot

SQUARE = Outline(False, 100.0, 100.0)
ROUND = Outline(True, 100.0, 100.0)
TILE = Footprint(20.0, 20.0)
sides = st.integers(5, 60).map(float)


def between_mm(one: Spot, other: Spot) -> float:
    """Return how far two boxes are apart as the crow flies, below 0 where they overlap."""
    across = abs(one.x_mm - other.x_mm) - (one.footprint.width_mm + other.footprint.width_mm) / 2
    along = abs(one.y_mm - other.y_mm) - (one.footprint.depth_mm + other.footprint.depth_mm) / 2
    if max(across, along) < 0.0:
        return max(across, along)
    return float((max(across, 0.0) ** 2 + max(along, 0.0) ** 2) ** 0.5)


class TestSetDown:
    def test_begins_in_a_corner(self):
        assert set_down(SQUARE, [], TILE, 6.0) == Spot(-40.0, -40.0, TILE)

    def test_turns_what_goes_only_the_other_way_round(self):
        found = set_down(Outline(False, 100.0, 30.0), [], Footprint(20.0, 90.0), 0.0)

        assert found is not None
        assert found.is_turned
        assert found.footprint == Footprint(90.0, 20.0)

    def test_finds_nothing_where_the_shelf_is_full(self):
        full = [Spot(0.0, 0.0, Footprint(100.0, 100.0))]

        assert set_down(SQUARE, full, TILE, 0.0) is None


class TestSetDownAll:
    def test_sets_four_halves_and_no_fifth(self):
        four = [Footprint(50.0, 50.0)] * 4

        places = set_down_all(SQUARE, four, 0.0)

        assert places is not None
        assert {(spot.x_mm, spot.y_mm) for spot in places} == {
            (x, y) for x in (-25.0, 25.0) for y in (-25.0, 25.0)
        }
        assert set_down_all(SQUARE, [*four, Footprint(5.0, 5.0)], 0.0) is None

    def test_counts_the_gap_between_pieces_not_to_the_rim(self):
        two = [Footprint(47.0, 100.0)] * 2

        assert set_down_all(SQUARE, two, 6.0) is not None
        assert set_down_all(SQUARE, two, 6.5) is None

    @settings(max_examples=25, deadline=None)
    @given(st.lists(st.tuples(sides, sides), min_size=1, max_size=5), st.sampled_from([0.0, 6.0]))
    def test_keeps_the_order_the_rim_and_the_gap(self, sizes, gap):
        pieces = [Footprint(*size) for size in sizes]

        places = set_down_all(SQUARE, pieces, gap) or []

        for i, spot in enumerate(places):
            width, depth = spot.footprint.width_mm, spot.footprint.depth_mm
            assert pieces[i] in (spot.footprint, spot.footprint.turned())
            assert abs(spot.x_mm) + width / 2.0 <= 50.0 + 1e-5
            assert abs(spot.y_mm) + depth / 2.0 <= 50.0 + 1e-5
            assert all(between_mm(spot, other) >= gap - 1e-5 for other in places[:i])
        assert len(places) in (0, len(pieces))
        assert places or len(pieces) > 1


class TestIsFree:
    @pytest.mark.parametrize(
        ("x", "y", "expected"),
        [
            (26.0, 0.0, True),
            (25.0, 0.0, False),
            # The corners are 6.4 and 5.7 mm apart as the crow flies.
            (24.0, 25.0, True),
            (24.0, 24.0, False),
        ],
    )
    def test_measures_the_gap_as_the_crow_flies(self, x, y, expected):
        assert is_free(SQUARE, [Spot(0.0, 0.0, TILE)], Spot(x, y, TILE), 6.0) is expected

    def test_lets_boxes_touch_without_a_gap_but_not_overlap(self):
        standing = [Spot(0.0, 0.0, TILE)]

        assert is_free(SQUARE, standing, Spot(20.0, 0.0, TILE), 0.0)
        assert not is_free(SQUARE, standing, Spot(19.0, 0.0, TILE), 0.0)

    def test_keeps_pieces_on_the_shelf(self):
        assert is_free(ROUND, [], Spot(0.0, 40.0, Footprint(20.0, 20.0, is_round=True)), 0.0)
        assert not is_free(ROUND, [], Spot(0.0, 40.0, TILE), 0.0)


class TestCanLieOn:
    @pytest.mark.parametrize(
        ("outline", "piece", "expected"),
        [
            (SQUARE, Footprint(100.0, 100.0), True),
            (Outline(False, 100.0, 30.0), Footprint(30.0, 100.0), True),
            # At 45 degrees a lath takes (length + width) / √2: 95 mm of 100, then 110 mm.
            (SQUARE, Footprint(130.0, 5.0), None),
            (SQUARE, Footprint(150.0, 5.0), False),
            # The square inside a disc of 100 mm has sides of 70.7 mm.
            (ROUND, Footprint(70.0, 70.0), True),
            (ROUND, Footprint(71.0, 71.0), False),
        ],
    )
    def test_says_none_where_only_a_slant_helps(self, outline, piece, expected):
        assert can_lie_on(outline, piece) is expected
