"""Sharing ware out over shelves that hold four tiles of 50 mm each."""

import random
from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.filling import Filling
from firings.domain.fit_problem import Chamber, PostStock, Problem, Rules, ShelfStock, Ware
from firings.domain.heights import stacked, stands

# Two layers of 10 mm tiles take 25 + 2 × 15 + 16 + 22 = 93 mm.
BISQUE = Problem(
    chamber=Chamber(False, 120, 120, 300),
    shelf=ShelfStock(False, 100, 100, 15, count=2),
    rules=Rules.of("bisque"),
    ware=(),
)


def tiles(count: int, name: str = "t", **more) -> list[Ware]:
    tile = Ware("", "T", 50, 50, 10)
    return [replace(tile, id=f"{name}{number}", **more) for number in range(count)]


def filled(problem: Problem, ware: list[Ware], *, has_posts: bool = False) -> Filling:
    filling = Filling(problem, has_posts=has_posts)
    filling.fill(ware)
    return filling


def levels(filling: Filling) -> dict[int, set[str]]:
    return {layer.level: {piece.id for piece in layer.ware} for layer in filling.layers}


class TestFilling:
    def test_sets_four_on_a_layer_and_leaves_the_ninth_out(self):
        filling = filled(BISQUE, tiles(9))

        assert [len(layer.ware) for layer in filling.layers] == [4, 4]
        assert [piece.id for piece in filling.left_out] == ["t8"]

    def test_brings_like_heights_together(self):
        low, high = tiles(4, "a"), tiles(4, "b", height_mm=80)
        mixed = [piece for pair in zip(low, high, strict=True) for piece in pair]

        assert levels(filled(BISQUE, mixed)) == {
            1: {"b0", "b1", "b2", "b3"},
            2: {"a0", "a1", "a2", "a3"},
        }

    def test_leaves_ware_on_its_level(self):
        filling = filled(BISQUE, [*tiles(3, "a", level=2), *tiles(5, "b", level=1)])

        assert levels(filling) == {1: {"b0", "b1", "b2", "b3"}, 2: {"a0", "a1", "a2"}}
        assert [piece.id for piece in filling.left_out] == ["b4"]

    def test_opens_no_layer_above_the_lid(self):
        low = replace(BISQUE, chamber=replace(BISQUE.chamber, height_mm=92))

        assert [len(layer.ware) for layer in filled(BISQUE, tiles(5)).layers] == [4, 1]
        assert len(filled(low, tiles(5)).left_out) == 1

    def test_keeps_the_posts_of_the_first_layer_on_the_others(self):
        wide = replace(
            BISQUE,
            shelf=ShelfStock(True, 400, 400, 15, count=2),
            posts=(PostStock(100, 12, 25, stands_inside=True),),
        )
        ware = [*tiles(4, "a", level=1), *tiles(4, "b", level=2)]

        filling = filled(wide, ware, has_posts=True)

        assert len(filling.posts) == 3
        assert filling.left_out == []
        for layer in filling.layers:
            for spot in layer.spots:
                for post in filling.posts:
                    apart = max(abs(spot.x_mm - post.x_mm), abs(spot.y_mm - post.y_mm))
                    assert apart >= (50.0 + 25.0) / 2.0

    def test_of_nothing_has_no_layers(self):
        filling = filled(BISQUE, [])

        assert (filling.layers, filling.left_out) == ([], [])

    @settings(max_examples=20, deadline=None)
    @given(
        st.lists(
            st.tuples(st.integers(20, 60), st.integers(20, 60), st.integers(5, 120)),
            min_size=1,
            max_size=8,
        ),
        st.randoms(use_true_random=False),
    )
    def test_loses_nothing_and_does_not_mind_the_order(self, sizes, chance: random.Random):
        ware = [Ware(f"t{i}", "T", *map(float, size)) for i, size in enumerate(sizes)]
        shuffled = chance.sample(ware, len(ware))

        filling, other = filled(BISQUE, ware), filled(BISQUE, shuffled)

        ids = [piece.id for layer in filling.layers for piece in layer.ware]
        ids += [piece.id for piece in filling.left_out]
        assert sorted(ids) == sorted(piece.id for piece in ware)
        assert stands(BISQUE, stacked(BISQUE, [layer.ware for layer in filling.layers]))
        assert levels(filling) == levels(other)
