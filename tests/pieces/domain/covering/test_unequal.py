"""Which part of a joined piece dries first."""

import pytest

from pieces.domain.covering import drying_first
from pieces.domain.drying import Section, Shape
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
