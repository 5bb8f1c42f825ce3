"""What the fit says, and how many more it counts."""

from dataclasses import replace

import pytest

from firings.domain.filling import Layer
from firings.domain.fit_problem import (
    Chamber,
    Problem,
    Reason,
    Rules,
    Sample,
    ShelfStock,
    Ware,
)
from firings.domain.fit_words import capacity_words, room_left, sentence
from firings.domain.shapes import Spot

BISQUE = Problem(
    chamber=Chamber(False, 120, 120, 300),
    shelf=ShelfStock(False, 100, 100, 15, count=2),
    rules=Rules.of("bisque"),
    ware=(),
)
HALF = Ware("t", "T", 50, 50, 10)


def asked_about(*ware: Ware) -> Problem:
    return replace(BISQUE, samples=tuple(Sample("tile", "tiles", each) for each in ware))


class TestSentence:
    def test_says_what_fits_and_what_is_left(self):
        assert sentence("fits", [], 1, 2, 77.4) == (
            "Fits: 2 pieces on 1 layer; one more shelf takes ware up to 77 mm high."
        )
        assert sentence("fits", [], 2, 1, None) == (
            "Fits: 1 piece on 2 layers; no room for another shelf."
        )

    @pytest.mark.parametrize(
        ("verdict", "begin"), [("doubtful", "Doubtful"), ("does_not_fit", "Does not fit")]
    )
    def test_gives_the_first_reason_and_counts_the_others(self, verdict, begin):
        reasons = [Reason("a", "T05 is too high."), Reason("b", "T06 too."), Reason("c", "T07.")]

        assert sentence(verdict, reasons[:1], 1, 3, None) == f"{begin}: T05 is too high."
        assert sentence(verdict, reasons, 1, 3, None).endswith("too high. And 2 more.")

    def test_says_so_of_an_empty_load(self):
        assert sentence("fits", [], 0, 0, 500.0) == "Nothing is on this load yet."


class TestCapacityWords:
    def test_tells_the_sure_number_from_the_possible_one(self):
        assert capacity_words(9, 9, 3, asks_posts=True) == "9 on a layer; 3 layers."
        assert capacity_words(8, 9, 1, asks_posts=True) == (
            "Doubtful at 9 on a layer, sure at 8; 1 layer. Where do the posts stand on the shelf?"
        )
        assert "posts" not in capacity_words(8, 9, 1, asks_posts=False)


class TestRoomLeft:
    @pytest.mark.parametrize(
        ("side", "expected"),
        [
            (50, "room for 4 tiles"),
            (90, "room for 1 tile"),
            (101, ""),
            (10, "room for at least 20 tiles"),
        ],
    )
    def test_counts_on_an_empty_shelf(self, side, expected):
        tile = replace(HALF, width_mm=side, depth_mm=side)

        said = room_left(asked_about(tile), Layer(1), [], 100.0, is_top=False)

        assert said.words == expected

    def test_counts_beside_what_stands(self):
        layer = Layer(1, [HALF], [Spot(-25.0, -25.0, HALF.footprint)])

        said = room_left(asked_about(HALF), layer, [], 100.0, is_top=False)

        assert said.words == "room for 3 tiles"

    def test_shows_where_it_counted_the_first_sample(self):
        # A shelf of 100 mm takes four tiles of 50 mm: one lies in a corner, three corners are free.
        layer = Layer(1, [HALF], [Spot(-25.0, -25.0, HALF.footprint)])

        said = room_left(asked_about(HALF), layer, [], 100.0, is_top=False)

        free = {(-25.0, 25.0), (25.0, -25.0), (25.0, 25.0)}
        assert {(spot.x_mm, spot.y_mm) for spot in said.spots} == free

    def test_shows_nothing_where_the_ware_would_have_to_be_moved(self):
        # In the middle of the shelf it leaves no corner; moved aside it leaves three.
        layer = Layer(1, [HALF], [Spot(0.0, 0.0, HALF.footprint)])

        said = room_left(asked_about(HALF), layer, [], 100.0, is_top=False)

        assert said == ("room for 3 tiles", ())

    def test_names_each_sample_by_itself(self):
        both = asked_about(HALF, replace(HALF, width_mm=90, depth_mm=90))

        said = room_left(both, Layer(1), [], 100.0, is_top=False)

        assert said.words == "room for 4 tiles or 1 tile"

    @pytest.mark.parametrize(
        ("height", "is_top", "has_room"),
        # 10 mm and 6 to the next shelf, or 12 to the lid.
        [(16.0, False, True), (15.0, False, False), (22.0, True, True), (21.0, True, False)],
    )
    def test_keeps_the_headroom(self, height, is_top, has_room):
        said = room_left(asked_about(HALF), Layer(1), [], height, is_top=is_top)

        assert bool(said.words) is has_room

    def test_counts_nothing_nobody_measured(self):
        unknown = asked_about(replace(HALF, height_mm=None))

        assert room_left(unknown, Layer(1), [], 100.0, is_top=False).words == ""
