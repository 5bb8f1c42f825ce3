"""How near the skin of a drying piece is to what it can stand."""

import numpy as np
import pytest

from pieces.domain.covering import HIGH, WATCH, Level, crack_index, level
from pieces.domain.covering.cracking import PLASTIC_STRAIN, STIFF_STRAIN, shrunk, strain_limit
from pieces.domain.drying import BODIES, Plaster, Section, Shape, in_mould
from tests.pieces.domain.covering.standing import piece, worst_index

CLAY = BODIES["red_earthenware"]


class TestCrackIndex:
    # The same model in a prototype, at 20 °C and 50 % in still air, inside 0.4: .92, 1.42, 2.13,
    # 1.03, 1.66. Both are calibrated to a rule of thumb; agreement says that it is the same sum.
    @pytest.mark.parametrize(
        ("section", "expected"),
        [
            (Section(Shape.FLAT, 0.008), 0.92),
            (Section(Shape.FLAT, 0.012), 1.42),
            (Section(Shape.FLAT, 0.020), 2.13),
            (Section(Shape.ROD, 0.018), 1.03),
            (Section(Shape.LUMP, 0.040), 1.66),
        ],
    )
    def test_grows_with_the_section_left_open(self, section: Section, expected: float) -> None:
        assert worst_index(piece(section), 140) == pytest.approx(expected, rel=0.04)

    def test_is_near_one_for_the_wall_it_was_set_by(self) -> None:
        open_both = Section(Shape.FLAT, 0.012, inside_factor=1.0)

        assert worst_index(piece(open_both), 60) == pytest.approx(1.04, rel=0.12)

    def test_is_nothing_in_a_mould(self) -> None:
        section = Section(Shape.FLAT, 0.012)

        in_plaster = piece(section, events=(in_mould(0, section, Plaster(0.05)),))

        assert worst_index(in_plaster, 12) == 0.0

    def test_is_nothing_as_pressed_and_once_shrinkage_has_ended(self) -> None:
        wall = piece(Section(Shape.FLAT, 0.008))

        assert crack_index(wall) == pytest.approx(np.zeros(1))
        assert worst_index(wall, 60, since_h=48) == pytest.approx(0.0, abs=1e-12)


class TestLevel:
    @pytest.mark.parametrize(
        ("index", "word"),
        [(0.0, Level.LOW), (WATCH, Level.WATCH), (HIGH - 0.01, Level.WATCH), (HIGH, Level.HIGH)],
    )
    def test_says_it_in_a_word(self, index: float, word: Level) -> None:
        assert level(index) is word


class TestShrunk:
    def test_comes_to_the_bodys_own_shrinkage_and_stays_there(self) -> None:
        moisture = np.array([0.25, 0.18, CLAY.shrinkage_ends_kg_per_kg, 0.02])

        found = shrunk(CLAY, moisture, 0.25)

        assert found[0] == 0.0
        assert found[2] == found[3] == pytest.approx(CLAY.drying_shrinkage_fraction)
        assert found[1] == pytest.approx(CLAY.drying_shrinkage_fraction / 2)


class TestStrainLimit:
    def test_falls_from_plastic_to_stiff(self) -> None:
        ends = CLAY.shrinkage_ends_kg_per_kg

        found = strain_limit(CLAY, np.array([0.25, 0.18, ends, 0.0]), 0.25)

        halfway = (PLASTIC_STRAIN * STIFF_STRAIN) ** 0.5
        assert found == pytest.approx([PLASTIC_STRAIN, halfway, STIFF_STRAIN, STIFF_STRAIN])
