"""Which part of a joined piece dries first."""

import numpy as np
import pytest

from pieces.domain.covering import PartLine, drying_first, held_back, level_out
from pieces.domain.drying import Cover, Section, Shape
from tests.pieces.domain.covering.standing import after, piece

ENDS = 0.11


class TestDryingFirst:
    def test_names_the_one_ahead_and_the_last(self) -> None:
        assert drying_first([0.19, 0.14, 0.17], ENDS) == (1, 0)

    @pytest.mark.parametrize("means", [[0.2], [0.19, 0.185], [0.10, 0.02]])
    def test_says_nothing_of_one_part_of_like_ones_or_after_shrinkage(
        self, means: list[float]
    ) -> None:
        assert drying_first(means, ENDS) is None

    @pytest.mark.parametrize(("rod_mm", "leads"), [(8.0, True), (50.0, False)])
    def test_finds_that_a_thin_handle_leads_and_a_thick_one_follows(
        self, rod_mm: float, leads: bool
    ) -> None:
        wall = after(piece(Section(Shape.FLAT, 0.008)), 10)
        handle = after(piece(Section(Shape.ROD, rod_mm / 1000.0)), 10)
        means = [float(each.state.moisture_kg_per_kg.mean()) for each in (wall, handle)]

        found = drying_first(means, ENDS)

        assert found == ((1, 0) if leads else (0, 1))


HOURS = np.arange(25) * 3600.0


def line(first: float, per_hour: float, cover: Cover = Cover.OPEN) -> PartLine:
    """A part that loses so much water an hour. [kg/kg]"""
    return PartLine(HOURS, first - per_hour * np.arange(25), cover)


def levelled(*parts: PartLine):
    return level_out(parts, ENDS, from_s=0.0, until_s=HOURS[-1])


class TestLevelOut:
    def test_covers_a_part_from_when_a_hand_would_feel_it_ahead(self) -> None:
        found = levelled(line(0.2, 0.001), line(0.2, 0.0051))

        assert found is not None
        assert (found.which, found.cover, found.last) == (1, Cover.LOOSE, 0)
        # the gap grows by 0.0041 an hour and is felt at 0.02
        assert found.at_s == 5 * 3600.0

    def test_leaves_a_part_covered_that_is_ahead_still(self) -> None:
        assert levelled(line(0.2, 0.001), line(0.17, 0.0005, Cover.LOOSE)) is None

    def test_lets_it_stand_like_the_others_once_they_caught_up(self) -> None:
        found = levelled(line(0.2, 0.0042), line(0.18, 0.0, Cover.LOOSE))

        assert found is not None
        assert (found.which, found.cover, found.last) == (1, Cover.OPEN, None)
        assert found.at_s == 5 * 3600.0

    def test_lets_it_go_where_nothing_shrinks_any_more(self) -> None:
        found = levelled(line(0.10, 0.0), line(0.05, 0.0, Cover.TUCKED))

        assert found is not None
        assert (found.which, found.at_s) == (1, 0.0)

    def test_has_nothing_to_say_of_parts_that_keep_together(self) -> None:
        assert levelled(line(0.2, 0.001), line(0.199, 0.001)) is None


class TestHeldBack:
    def test_are_those_under_a_tighter_cover_than_another(self) -> None:
        covers = (Cover.OPEN, Cover.LOOSE, Cover.SEALED)

        assert held_back([line(0.2, 0.0, cover) for cover in covers]) == [1, 2]
        assert held_back([]) == []
