"""Bounds that exclude. Ratios of circles: nine need 3.613, ten 3.813 (sources: test_circles)."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.fit_bounds import alone, excluded, most_on_shelf
from firings.domain.fit_problem import Chamber, Problem, Rules, ShelfStock, Ware

KILN = Problem(
    chamber=Chamber(is_round=True, width_mm=460, depth_mm=460, height_mm=570),
    shelf=ShelfStock(is_round=True, width_mm=430, depth_mm=430, thickness_mm=15, count=6),
    rules=Rules.of("glaze"),
    ware=(),
)


def jars(count: int, **more) -> list[Ware]:
    jar = Ware("", "J", 110, 110, 120, is_round=True)
    return [replace(jar, id=f"j{number:02}", **more) for number in range(count)]


def tiles_on(across: int, along: int, count: int) -> Problem:
    """Return a bisque of tiles of 100 mm on one shelf that holds so many across and along."""
    return Problem(
        chamber=Chamber(False, 2000, 2000, 200),
        shelf=ShelfStock(False, 100.0 * across, 100.0 * along, 15, count=1),
        rules=Rules.of("bisque"),
        ware=tuple(Ware(f"t{number}", "T", 100, 100, 10) for number in range(count)),
    )


class TestAlone:
    @pytest.mark.parametrize(("height", "expected"), [(518.0, []), (519.0, ["too_tall"])])
    def test_leaves_base_shelf_and_lid_free(self, height, expected):
        # 570 - 25 - 15 - 12 = 518.
        assert [reason.code for reason in alone(KILN, jars(1, height_mm=height)[0])] == expected

    def test_names_ware_wider_than_the_shelf(self):
        (reason,) = alone(KILN, jars(1, width_mm=431, depth_mm=431, level=2)[0])

        assert (reason.code, reason.ware_id, reason.level) == ("too_wide", "j00", 2)
        assert "431 mm across" in reason.detail

    def test_leaves_open_what_goes_at_a_slant(self):
        lath = Ware("l", "L", 130, 5, 20)
        square = replace(KILN, shelf=ShelfStock(False, 100, 100, 15, count=6))

        assert alone(square, lath) == []


class TestMostOnShelf:
    def test_swells_ware_and_rim_by_half_the_gap(self):
        outline = KILN.shelf.outline

        # (215 + 3) / (55 + 3) = 3.76 with the gap, 215 / 55 = 3.91 touching.
        assert most_on_shelf(outline, 55.0, 6.0) == 9
        assert most_on_shelf(outline, 55.0, 0.0) == 10

    def test_is_nothing_for_what_is_wider_than_the_shelf(self):
        assert most_on_shelf(KILN.shelf.outline, 216.0, 0.0) == 0


class TestExcluded:
    def test_allows_nine_on_a_level_and_no_tenth(self):
        assert excluded(KILN, jars(9, level=1)) == []
        (reason,) = excluded(KILN, jars(10, level=1))
        assert (reason.code, reason.level) == ("too_many", 1)

    def test_allows_three_layers_under_the_lid_and_no_fourth(self):
        assert excluded(KILN, jars(27)) == []
        assert [reason.code for reason in excluded(KILN, jars(28))] == ["too_many"]

    def test_allows_no_ware_at_all(self):
        assert excluded(KILN, []) == []

    @settings(max_examples=25, deadline=None)
    @given(st.integers(1, 6), st.integers(1, 6))
    def test_allows_what_stands_and_excludes_one_more(self, across, along):
        full, over = (tiles_on(across, along, across * along + more) for more in (0, 1))

        assert excluded(full, full.ware) == []
        assert [reason.code for reason in excluded(over, over.ware)] == ["too_many"]
