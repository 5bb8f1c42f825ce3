"""Shrinkage of test bars."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain import bars

LENGTHS = {"wet_mm": 100.0, "dry_mm": 94.0, "bisque_mm": 93.2, "fired_mm": 88.4}


class TestShrinkages:
    def test_gives_each_stage_and_the_total(self):
        told = bars.shrinkages(**LENGTHS)

        # Worked by hand: 6/100, 0.8/94, 4.8/93.2, 11.6/100.
        assert told.drying_fraction == pytest.approx(0.06)
        assert told.bisque_fraction == pytest.approx(0.00851, abs=5e-6)
        assert told.glaze_fraction == pytest.approx(0.05150, abs=5e-6)
        assert told.total_fraction == pytest.approx(0.116)

    @given(*[st.floats(0.0, 0.12) for _ in range(3)])
    def test_multiplies_over_the_stages(self, drying, bisque, glaze):
        dry = 100.0 * (1 - drying)
        biscuit = dry * (1 - bisque)

        told = bars.shrinkages(
            wet_mm=100.0, dry_mm=dry, bisque_mm=biscuit, fired_mm=biscuit * (1 - glaze)
        )

        kept = (1 - told.drying_fraction) * (1 - told.bisque_fraction) * (1 - told.glaze_fraction)
        assert told.total_fraction == pytest.approx(1 - kept, abs=1e-12)

    def test_says_nothing_of_lengths_that_were_not_taken(self):
        told = bars.shrinkages(wet_mm=100.0, dry_mm=94.0, bisque_mm=None, fired_mm=88.4)

        assert (told.bisque_fraction, told.glaze_fraction) == (None, None)
        assert told.total_fraction == pytest.approx(0.116)

    @pytest.mark.parametrize(
        ("changed", "pointer"),
        [
            ({"dry_mm": 101.0}, "#/dry_mm"),
            ({"bisque_mm": 95.0}, "#/bisque_mm"),
            ({"fired_mm": 59.0}, "#/fired_mm"),
            ({"wet_mm": 0.0}, "#/wet_mm"),
            ({"dry_mm": float("nan")}, "#/dry_mm"),
        ],
    )
    def test_names_the_length_that_cannot_be(self, changed, pointer):
        with pytest.raises(bars.ImpossibleLength) as refused:
            bars.shrinkages(**{**LENGTHS, **changed})

        assert refused.value.facts["pointer"] == pointer


class TestCheckFraction:
    @pytest.mark.parametrize(("given", "meant"), [(112.0, 0.12), (12.0, 0.12), (1.12, 0.12)])
    def test_guesses_what_was_meant_but_does_not_take_it(self, given, meant):
        with pytest.raises(bars.ImpossibleShrinkage) as refused:
            bars.check_fraction(given, field="total_shrinkage_fraction")

        assert refused.value.facts["did_you_mean"] == pytest.approx(meant)

    @pytest.mark.parametrize("given", [-0.01, 0.4, float("nan"), float("inf")])
    def test_refuses_what_no_clay_does(self, given):
        with pytest.raises(bars.ImpossibleShrinkage):
            bars.check_fraction(given, field="total_shrinkage_fraction")
