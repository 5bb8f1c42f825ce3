"""Shapes from above. Areas by hand: a box swollen by b has four strips and one whole disc more."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firings.domain.shapes import Footprint, Outline, Spot, box, boxes, swollen_area_mm2

lengths = st.floats(1.0, 1000.0)


class TestSwollenAreaMm2:
    def test_of_a_disc_is_that_of_a_wider_disc(self):
        assert swollen_area_mm2(True, 20.0, 20.0, 2.0) == pytest.approx(144.0 * math.pi)

    def test_of_a_box_adds_strips_and_rounded_corners(self):
        assert swollen_area_mm2(False, 10.0, 20.0, 1.0) == pytest.approx(260.0 + math.pi)

    @given(lengths, lengths, st.booleans())
    def test_by_nothing_is_the_area(self, width, depth, is_round):
        depth = width if is_round else depth

        swollen = swollen_area_mm2(is_round, width, depth, 0.0)

        assert swollen == pytest.approx(Footprint(width, depth, is_round).area_mm2)
        assert swollen == pytest.approx(Outline(is_round, width, depth).area_mm2)


class TestFootprint:
    @given(lengths, lengths)
    def test_turned_keeps_area_and_inner_circle(self, width, depth):
        piece = Footprint(width, depth)
        turned = piece.turned()

        assert (turned.width_mm, turned.depth_mm) == (depth, width)
        assert turned.area_mm2 == pytest.approx(piece.area_mm2)
        assert turned.inner_radius_mm == piece.inner_radius_mm == min(width, depth) / 2.0
        assert turned.turned() == piece


class TestBox:
    def test_leaves_a_round_piece_no_box(self):
        assert box(Footprint(100.0, 100.0, is_round=True), 6.0) == (0.0, 0.0, 53.0)

    def test_gives_a_square_piece_corners_of_half_the_gap(self):
        assert box(Footprint(100.0, 60.0), 6.0) == (50.0, 30.0, 3.0)


class TestBoxes:
    def test_are_columns_in_the_order_given(self):
        disc = Spot(1.0, 2.0, Footprint(10.0, 10.0, is_round=True))
        tile = Spot(-3.0, 4.0, Footprint(20.0, 30.0))

        columns = [column.tolist() for column in boxes([disc, tile], 2.0)]

        assert columns == [[1.0, -3.0], [2.0, 4.0], [0.0, 10.0], [0.0, 15.0], [6.0, 1.0]]

    def test_of_nothing_are_empty(self):
        assert [len(column) for column in boxes([], 6.0)] == [0] * 5
