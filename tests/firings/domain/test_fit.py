"""Ware in a kiln. The trial jars: worked out from the packing of equal circles (nine need a radius
ratio of 3.613, ten 3.813, eleven 3.924) and the heights by addition; the spaces kept are those of
https://hotkilns.com/node/4550.
"""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.capacity import TooBigForKiln, how_many
from firings.domain.fit import solve
from firings.domain.fit_faults import faults
from firings.domain.fit_problem import (
    Chamber,
    PostStock,
    Problem,
    Rules,
    Sample,
    ShelfStock,
    Ware,
    with_ware,
)

TOP_LOADER = Problem(
    chamber=Chamber(is_round=True, width_mm=460, depth_mm=460, height_mm=570),
    shelf=ShelfStock(is_round=True, width_mm=430, depth_mm=430, thickness_mm=15, count=6),
    rules=Rules.of("glaze"),
    ware=(),
)
FRONT_LOADER = Problem(
    chamber=Chamber(is_round=False, width_mm=600, depth_mm=600, height_mm=800),
    shelf=ShelfStock(is_round=False, width_mm=560, depth_mm=560, thickness_mm=18, count=5),
    rules=Rules.of("bisque"),
    ware=(),
)
TOUCHING = replace(TOP_LOADER, rules=replace(Rules.of("bisque"), above_mm=12.0))
# Square posts of 25 and 38 mm (1 and 1 1/2 in): usual sizes, no source.
POSTS = [(PostStock(132, 12, side, stands_inside=True),) for side in (25, 38)]


def jar(number: int = 0, **more) -> Ware:
    return replace(Ware(f"j{number:02}", f"J{number:02}", 110, 110, 120, is_round=True), **more)


def jars(count: int, **more) -> list[Ware]:
    return [jar(number, **more) for number in range(count)]


def codes(result) -> list[str]:
    return [reason.code for reason in result.reasons]


class TestTrialJars:
    def test_stand_nine_on_each_of_three_layers(self):
        found = how_many(TOP_LOADER, jar())

        assert (found.per_layer_sure, found.per_layer_possible) == (9, 9)
        assert (found.layers, found.total_sure) == (3, 27)
        assert found.used_height_mm == 466.0
        assert found.spare_ware_mm == 77.0
        assert found.top_gap_mm == 236.0

    def test_twenty_seven_fit_and_twenty_eight_do_not(self):
        whole, over = (solve(with_ware(TOP_LOADER, jars(count))) for count in (27, 28))

        assert whole.verdict == "fits"
        assert [len(level.items) for level in whole.levels] == [9, 9, 9]
        assert "up to 77 mm high" in whole.sentence
        assert over.verdict == "does_not_fit"
        assert codes(over) == ["too_many"]

    def test_stand_ten_touching_in_a_bisque(self):
        assert how_many(TOUCHING, jar()).per_layer_sure == 10
        assert solve(with_ware(TOUCHING, jars(30))).verdict == "fits"
        assert solve(with_ware(TOUCHING, jars(31))).verdict == "does_not_fit"

    @pytest.mark.parametrize("posts", POSTS)
    def test_are_doubtful_at_nine_and_sure_at_eight_with_posts_inside(self, posts):
        problem = replace(TOP_LOADER, posts=posts)

        found = how_many(problem, jar())

        assert (found.per_layer_sure, found.per_layer_possible) == (8, 9)
        assert found.words.startswith("Doubtful at 9 on a layer, sure at 8")
        assert "Where do the posts stand" in found.words
        sure, doubtful = (solve(with_ware(problem, jars(count))) for count in (24, 27))
        assert (sure.verdict, doubtful.verdict) == ("fits", "doubtful")
        assert codes(doubtful) == ["posts_inside"]
        assert faults(with_ware(problem, jars(24)), sure) == []

    @pytest.mark.parametrize("keeps_mm", [152.4, 203.2])
    def test_a_rule_for_the_top_shelf_rules_the_fourth_out(self, keeps_mm):
        # Six and eight inches from the top shelf to the lid.
        rules = replace(TOP_LOADER.rules, top_shelf_to_lid_mm=keeps_mm)
        problem = replace(TOP_LOADER, rules=rules)

        found = how_many(problem, jar())

        assert (found.layers, found.top_gap_mm, found.spare_ware_mm) == (3, 236.0, None)

    def test_low_ware_goes_on_the_fourth_shelf(self):
        low = jar(27, height_mm=77.0)
        high = jar(27, height_mm=78.0)

        assert solve(with_ware(TOP_LOADER, [*jars(27), low])).verdict == "fits"
        assert solve(with_ware(TOP_LOADER, [*jars(27), high])).verdict == "does_not_fit"


class TestSolve:
    def test_says_that_an_empty_load_is_empty(self):
        found = solve(TOP_LOADER)

        assert found.verdict == "fits"
        assert found.sentence == "Nothing is on this load yet."
        assert found.levels == ()

    @pytest.mark.parametrize(
        ("piece", "code"),
        [
            (jar(height_mm=560.0), "too_tall"),
            (jar(width_mm=431.0, depth_mm=431.0), "too_wide"),
            (Ware("b", "B", 400, 200, 50), "too_wide"),
        ],
    )
    def test_excludes_what_does_not_go_in_alone(self, piece, code):
        found = solve(with_ware(TOP_LOADER, [piece]))

        assert found.verdict == "does_not_fit"
        assert codes(found) == [code]
        with pytest.raises(TooBigForKiln):
            how_many(TOP_LOADER, piece)

    def test_doubts_what_goes_in_only_at_a_slant(self):
        rod = Ware("r", "R", 620, 60, 50)

        found = solve(with_ware(FRONT_LOADER, [rod]))

        assert (found.verdict, codes(found)) == ("doubtful", ["only_slanted"])

    def test_doubts_what_nobody_measured(self):
        found = solve(with_ware(TOP_LOADER, [jar(), jar(1, height_mm=None)]))

        assert (found.verdict, codes(found)) == ("doubtful", ["size_unknown"])
        assert found.left_out == ("j01",)

    def test_doubts_what_it_cannot_place_and_cannot_exclude(self):
        # Five squares of 230 mm take 84 % of a shelf of 560 mm, but stand two by two.
        squares = [Ware(f"s{i}", f"S{i}", 230, 230, 700) for i in range(5)]

        found = solve(with_ware(FRONT_LOADER, squares))

        assert (found.verdict, codes(found)) == ("doubtful", ["no_place_found"])

    def test_excludes_chosen_layers_that_are_too_high(self):
        ware = [jar(i, level=i + 1) for i in range(5)]

        found = solve(with_ware(TOP_LOADER, ware))

        assert found.verdict == "does_not_fit"
        assert codes(found) == ["too_high"]

    def test_excludes_more_layers_than_shelves(self):
        problem = replace(TOP_LOADER, shelf=replace(TOP_LOADER.shelf, count=2))

        found = solve(with_ware(problem, [jar(i, level=i + 1, height_mm=40.0) for i in range(3)]))

        assert found.verdict == "does_not_fit"
        assert codes(found) == ["shelves_short"]

    def test_excludes_a_layer_with_too_many(self):
        found = solve(with_ware(TOP_LOADER, jars(10, level=2)))

        assert found.verdict == "does_not_fit"
        assert [(reason.code, reason.level) for reason in found.reasons] == [("too_many", 2)]

    def test_keeps_pieces_on_their_level(self):
        found = solve(with_ware(TOP_LOADER, [jar(level=2), jar(1, level=1), jar(2)]))

        assert found.verdict == "fits"
        assert next(item.ware_id for item in found.levels[1].items) == "j00"

    def test_says_when_no_posts_are_high_enough(self):
        problem = replace(TOP_LOADER, posts=(PostStock(100, 12, 25),))

        found = solve(with_ware(problem, jars(10)))

        assert found.verdict == "fits"  # two stand on one another
        assert found.levels[0].height_mm == 200.0
        short = replace(problem, posts=(PostStock(100, 3, 25),))
        assert codes(solve(with_ware(short, jars(10)))) == ["no_posts"]

    def test_takes_the_lowest_posts_that_do(self):
        # 95 mm and 6 mm above it stand under posts of 125, of a usual set; arithmetic.
        posts = tuple(PostStock(h, 6, 25) for h in (25, 50, 75, 100, 125, 150))
        rules = replace(TOP_LOADER.rules, above_mm=6.0)
        problem = replace(TOP_LOADER, posts=posts, rules=rules)

        found = solve(with_ware(problem, jars(10, height_mm=95.0)))

        assert found.levels[0].height_mm == 125.0

    def test_gives_a_refire_its_headroom(self):
        rules = replace(TOP_LOADER.rules, above_mm=1.0, refire_above_mm=4.0)
        problem = replace(TOP_LOADER, rules=rules)
        ware = [jar(level=1, is_refire=True), jar(1, level=2)]

        assert solve(with_ware(problem, ware)).levels[0].height_mm == 124.0

    def test_says_what_room_is_left(self):
        # 560 mm hold three rows of three 150 mm tiles and no fourth row: 5 lie, 4 more do.
        tiles = [Ware(f"t{i}", f"T{i}", 150, 150, 15) for i in range(5)]
        tile = Sample("tile", "tiles", tiles[0])
        plate = Sample("plate", "plates", Ware("p", "P", 400, 400, 20, is_round=True))

        found = solve(replace(with_ware(FRONT_LOADER, tiles), samples=(tile, plate)))

        assert found.levels[0].room_left == "room for 4 tiles"

    def test_counts_the_layers_that_are_left(self):
        # 800 mm: 25 + n × (18 + 118 + 6), the last with 12 to the lid: five; arithmetic.
        problem = replace(FRONT_LOADER, shelf=replace(FRONT_LOADER.shelf, count=9))

        found = solve(with_ware(problem, [Ware("i", "I02", 200, 150, 118)]))

        assert found.layers_left == 4

    def test_refuses_lengths_that_are_none(self):
        with pytest.raises(ValueError, match="above 0"):
            solve(with_ware(TOP_LOADER, [jar(height_mm=0.0)]))


sizes = st.integers(20, 300)
pieces = st.lists(
    st.tuples(sizes, sizes, st.integers(10, 300), st.booleans(), st.booleans()),
    min_size=1,
    max_size=9,
)


def ware_of(rows) -> list[Ware]:
    return [
        Ware(f"w{i}", f"W{i}", w, w if is_round else d, h, is_round, is_refire)
        for i, (w, d, h, is_round, is_refire) in enumerate(rows)
    ]


class TestAnswers:
    @settings(max_examples=40, deadline=None)
    @given(
        rows=pieces,
        base=st.sampled_from([TOP_LOADER, FRONT_LOADER]),
        has_posts=st.booleans(),
    )
    def test_have_no_faults_and_do_not_depend_on_the_order(self, rows, base, has_posts):
        posts = (PostStock(150, 30, 30, stands_inside=True), PostStock(300, 30, 30))
        problem = replace(with_ware(base, ware_of(rows)), posts=posts if has_posts else ())

        found = solve(problem)

        assert faults(problem, found) == []
        other = solve(with_ware(problem, problem.ware[::-1]))
        assert (other.verdict, other.levels) == (found.verdict, found.levels)

    @settings(max_examples=30, deadline=None)
    @given(
        rows=st.lists(
            st.tuples(st.integers(60, 250), st.integers(60, 250), st.booleans()),
            min_size=1,
            max_size=6,
        )
    )
    def test_never_exclude_what_was_found_to_fit(self, rows):
        # A shelf made just to hold the ware in one row: it fits, so no bound may exclude it.
        width = sum(w for w, _, _ in rows) + 6.0 * (len(rows) - 1)
        depth = max(w if is_round else d for w, d, is_round in rows)
        problem = Problem(
            Chamber(False, width, depth, 200),
            ShelfStock(False, width, depth, 15, 1),
            Rules.of("glaze"),
            tuple(ware_of([(w, d, 80, is_round, False) for w, d, is_round in rows])),
        )

        assert solve(problem).verdict != "does_not_fit"

    @pytest.mark.parametrize("count", [27])
    def test_a_moved_piece_is_found_out(self, count):
        problem = with_ware(TOP_LOADER, jars(count))
        found = solve(problem)
        level = found.levels[0]
        item = level.items[0]
        near = replace(item, spot=replace(item.spot, x_mm=level.items[1].x_mm))
        far = replace(item, spot=replace(item.spot, x_mm=300.0))

        for moved in (near, far):
            broken = replace(level, items=(moved, *level.items[1:]))
            assert faults(problem, replace(found, levels=(broken, *found.levels[1:])))
        assert faults(problem, replace(found, left_out=("j00",)))
        assert faults(with_ware(problem, jars(28)), found)
