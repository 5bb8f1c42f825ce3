"""Wear of moulds. Weibull values are by formula: R = exp(-(n/life)^3), mean = life Γ(4/3)."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from moulds.domain.wear import (
    NoSuchLife,
    expected_left,
    left_with_chance,
    survival_fraction,
    wear_of,
)


class TestWearOf:
    @pytest.mark.parametrize(
        ("pressings", "word"),
        [
            (0, "fresh"),
            (29, "fresh"),
            (30, "wearing"),
            (59, "wearing"),
            (60, "look at its detail"),
            (99, "look at its detail"),
            (100, "at its limit"),
            (131, "at its limit"),
        ],
    )
    def test_has_a_word_for_each_count(self, pressings, word):
        assert wear_of(pressings, inspect_at=60, retire_at=100).word == word

    def test_counts_what_is_left(self):
        assert wear_of(58, inspect_at=60, retire_at=100).pressings_left == 42
        assert wear_of(131, inspect_at=60, retire_at=100).pressings_left == 0

    def test_looks_again_half_a_term_after_a_sound_inspection(self):
        wear = wear_of(62, inspect_at=60, retire_at=200, found_sound_at=61)

        assert wear.word == "wearing"
        assert wear.looks_again_at == 91

    def test_plans_no_look_beyond_the_limit(self):
        assert wear_of(95, inspect_at=60, retire_at=100, found_sound_at=90).looks_again_at is None

    def test_says_so_when_the_studio_has_set_nothing(self):
        wear = wear_of(131, inspect_at=None, retire_at=None)

        assert (wear.word, wear.pressings_left, wear.looks_again_at) == ("unknown", None, None)

    def test_knows_the_limit_alone(self):
        assert wear_of(10, inspect_at=None, retire_at=10).word == "at its limit"

    @pytest.mark.parametrize(("inspect_at", "retire_at"), [(100, 60), (0, 10), (10, -1)])
    def test_refuses_counts_that_do_not_go_together(self, inspect_at, retire_at):
        with pytest.raises(NoSuchLife):
            wear_of(5, inspect_at=inspect_at, retire_at=retire_at)

    def test_takes_a_count_below_nought_for_a_bug(self):
        with pytest.raises(ValueError, match="pressings"):
            wear_of(-1, inspect_at=60, retire_at=100)

    @given(st.integers(0, 300), st.integers(1, 100), st.integers(0, 100))
    def test_never_gets_fresher(self, pressings, inspect_at, more):
        order = ["fresh", "wearing", "look at its detail", "at its limit"]
        limits = {"inspect_at": inspect_at, "retire_at": inspect_at + more}

        now, then = (wear_of(count, **limits) for count in (pressings, pressings + 1))

        assert order.index(now.word) <= order.index(then.word)


class TestExpectedLeft:
    @pytest.mark.parametrize(
        ("pressings", "fraction"), [(50, 0.882497), (80, 0.599296), (100, 0.367879)]
    )
    def test_survival_is_weibull(self, pressings, fraction):
        assert survival_fraction(pressings, life=100) == pytest.approx(fraction, abs=1e-6)

    def test_of_a_new_mould_is_the_mean_life(self):
        assert expected_left(0, life=100) == pytest.approx(89.298, abs=1e-3)

    @given(st.floats(0, 250))
    def test_is_the_area_under_the_rest_of_the_survival_curve(self, pressings):
        area, _ = quad(lambda n: survival_fraction(n, life=100), pressings, 400)

        expected = area / survival_fraction(pressings, life=100)

        assert expected_left(pressings, life=100) == pytest.approx(expected, rel=1e-5)

    def test_stays_finite_far_beyond_its_life(self):
        assert math.isfinite(expected_left(5_000, life=100))
        assert expected_left(805, life=100) < expected_left(790, life=100)

    def test_takes_a_life_of_nought_for_a_bug(self):
        with pytest.raises(ValueError, match="life"):
            expected_left(5, life=0)


class TestLeftWithChance:
    @pytest.mark.parametrize("pressings", [0, 40, 100, 300])
    def test_is_where_the_survival_has_fallen_to_the_chance(self, pressings):
        left = left_with_chance(0.25, pressings, life=100)
        survivors = survival_fraction(pressings, life=100)

        assert survival_fraction(pressings + left, life=100) / survivors == pytest.approx(0.25)

    def test_falls_as_the_chance_asked_for_rises(self):
        left = [left_with_chance(chance, 40, life=100) for chance in (0.1, 0.5, 0.9, 1.0)]

        assert left == sorted(left, reverse=True)
        assert left[-1] == pytest.approx(0.0, abs=1e-9)

    @pytest.mark.parametrize("chance", [0.0, 1.5])
    def test_refuses_what_is_no_chance(self, chance):
        with pytest.raises(ValueError, match="chance"):
            left_with_chance(chance, 40, life=100)
