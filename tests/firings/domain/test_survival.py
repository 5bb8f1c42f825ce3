"""Press counts against binomial sums done with fractions, and worked examples.

Stage survivals 0.96, 0.90, 0.96, 0.93 and the pairs at 0.80 and 0.90: worked out with the binomial
distribution, no print of them; the five-stage example likewise.
"""

import math
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.survival import (
    NeverEnough,
    at_least,
    basis,
    chance_of_enough,
    first_time,
    overall,
    press_count,
    survival_after,
)

STAGES = [0.96, 0.90, 0.96, 0.93]


def by_fractions(wanted: int, pressed: int, survival: Fraction) -> Fraction:
    return sum(
        math.comb(pressed, k) * survival**k * (1 - survival) ** (pressed - k)
        for k in range(wanted, pressed + 1)
    )


class TestAtLeast:
    @pytest.mark.parametrize(
        ("pressed", "chance"),
        [(14, 0.47181), (15, 0.67155), (16, 0.81666), (17, 0.90663), (18, 0.95601)],
    )
    def test_agrees_with_the_worked_example(self, pressed, chance):
        survival = overall([0.97, 0.95, 0.96, 0.98, 0.93])

        assert survival == pytest.approx(0.806261, abs=1e-6)
        assert at_least(12, pressed, survival) == pytest.approx(chance, abs=1e-5)

    @settings(deadline=None)
    @given(pressed=st.integers(0, 40), wanted=st.integers(0, 41), percent=st.integers(0, 100))
    def test_is_the_binomial_sum(self, pressed, wanted, percent):
        exact = by_fractions(wanted, pressed, Fraction(percent, 100))

        assert at_least(wanted, pressed, percent / 100) == pytest.approx(float(exact), abs=1e-9)


class TestPressCount:
    def test_presses_18_for_12(self):
        found = press_count(12, overall(STAGES), 0.90)

        assert found.count == 18
        assert found.chance == pytest.approx(0.905, abs=5e-4)
        assert found.chance_one_fewer == pytest.approx(0.827, abs=5e-4)
        assert found.by_division == 16
        assert found.by_division_chance == pytest.approx(0.706, abs=5e-4)

    @pytest.mark.parametrize(
        ("survival", "confidence", "count", "chance"),
        [(overall(STAGES), 0.95, 19, 0.951), (0.85, 0.90, 16, 0.921)],
    )
    def test_goes_with_chance_and_survival(self, survival, confidence, count, chance):
        found = press_count(12, survival, confidence)

        assert found.count == count
        assert found.chance == pytest.approx(chance, abs=6e-4)

    @pytest.mark.parametrize("survival", [0.0, 0.001])
    def test_says_when_no_number_does(self, survival):
        with pytest.raises(NeverEnough):
            press_count(12, survival, 0.90)

    @settings(deadline=None)
    @given(
        wanted=st.integers(1, 30),
        percent=st.integers(20, 100),
        confidence=st.floats(0.05, 0.99),
    )
    def test_is_the_fewest_that_do(self, wanted, percent, confidence):
        found = press_count(wanted, percent / 100, confidence)

        assert found.chance >= confidence
        assert found.count == wanted or found.chance_one_fewer < confidence


class TestChanceOfEnough:
    @settings(deadline=None)
    @given(count=st.integers(0, 20), wanted=st.integers(0, 21), percent=st.integers(0, 100))
    def test_is_binomial_where_all_have_one_chance(self, count, wanted, percent):
        survival = percent / 100

        assert chance_of_enough([survival] * count, wanted) == pytest.approx(
            at_least(wanted, count, survival), abs=1e-9
        )

    def test_counts_each_way_once(self):
        # One of 0.5 and 0.9: both 0.45, at least one 0.95; arithmetic.
        assert chance_of_enough([0.5, 0.9], 2) == pytest.approx(0.45)
        assert chance_of_enough([0.5, 0.9], 1) == pytest.approx(0.95)


class TestRates:
    def test_adds_own_counts_to_the_guess(self):
        # Beta(2, 38), then 3 lost of 20: 5/60 lost; arithmetic.
        assert survival_after(3, 20, prior_lost=2, prior_of=40) == pytest.approx(1 - 5 / 60)

    @pytest.mark.parametrize(("outcomes", "word"), [(0, "guess"), (19, "guess"), (20, "outcomes")])
    def test_calls_few_outcomes_a_guess(self, outcomes, word):
        assert basis(outcomes) == word


class TestFirstTime:
    def test_leaves_out_what_waits_for_its_last_look(self):
        tried = first_time({"good": 1, "waits": 1, "unfired": 0}, good={"good"}, lost=set())

        assert (tried.good, tried.of) == (1, 1)

    def test_counts_what_was_fired_again_as_not_good_even_before_its_last_look(self):
        tried = first_time(
            {"twice": 2, "then lost": 3, "once lost": 1}, good={"twice"}, lost={"once lost"}
        )

        assert (tried.good, tried.of) == (0, 3)
