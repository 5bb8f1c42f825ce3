"""The figures the help page prints about meters are those the command finds."""

import math

import pytest

from pieces.domain.drying import Stage
from studio.api.help import DOCS
from tests.evaluation.bias import biases, intervals


class TestBiases:
    def test_are_those_of_the_help_page(self):
        found = biases(Stage.BISQUE)
        page = (DOCS / "climate-readings.md").read_text(encoding="utf-8")

        for true in (0.50, 0.65):
            for off in ((1.0, 0.0), (0.0, 0.03), (0.0, 0.05)):
                said = round(100.0 * found[true, *off])
                assert f"{abs(said)} % {'longer' if said > 0 else 'shorter'}" in page

    def test_grow_with_the_damp_until_no_date_is_left(self):
        shrinks, fires = biases(Stage.SHRINKAGE_ENDED), biases(Stage.BISQUE)

        assert shrinks[0.80, 0.0, 0.03] > 2.0 * shrinks[0.50, 0.0, 0.03]
        assert math.isinf(fires[0.80, 0.0, 0.03])

    def test_of_a_kelvin_hardly_depend_on_humidity(self):
        found = biases(Stage.SHRINKAGE_ENDED)

        assert found[0.50, 1.0, 0.0] == pytest.approx(found[0.80, 1.0, 0.0], abs=0.005)


class TestIntervals:
    def test_of_a_whole_day_lose_the_day(self):
        found = intervals(rooms=8)

        assert found[3][0] < 0.02
        assert found[24][0] > 2.0 * found[3][0]
