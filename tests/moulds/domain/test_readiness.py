"""Figures of the moulds are those of the invented yard; a mould holds 43 % of its dry mass."""

from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from moulds.domain.folds import SinceDry, Weights
from moulds.domain.readiness import (
    Advice,
    Dryness,
    Limits,
    advise,
    dryness_of,
    say_dryness,
    wants_rest,
)
from moulds.domain.wear import wear_of

NOON = datetime(2026, 10, 31, 12, 0, tzinfo=UTC)
LIMITS = Limits(dry_below=0.05, usable_below=0.15, rest_after=5)
FRESH = wear_of(3, inspect_at=100, retire_at=200)


def damp(dry_g, now_g, *, count=0, unweighed=0, clay_g=None):
    return dryness_of(
        Weights(dry_g, now_g, NOON),
        SinceDry(count, unweighed, NOON if count else None),
        limits=LIMITS,
        capacity_fraction=0.43,
        clay_g=clay_g,
    )


class TestDrynessOf:
    @pytest.mark.parametrize(
        ("dry_g", "now_g", "word", "fraction"),
        [
            (2280, 2405, "usable", 0.1275),  # M02: 125 / 980
            (940, 1070, "rest", 0.3216),  # M04: 130 / 404
            (6840, 7310, "rest", 0.1598),  # M03: 470 / 2941
            (880, 902, "usable", 0.0581),  # M10
            (610, 655, "rest", 0.1716),  # M14
            (4400, 4415, "dry", 0.0079),  # M09
        ],
    )
    def test_reads_the_scale(self, dry_g, now_g, word, fraction):
        found = damp(dry_g, now_g)

        assert found.word == word
        assert found.free_water_fraction == pytest.approx(fraction, abs=5e-5)
        assert found.basis == "weighed"

    def test_adds_the_water_of_presses_after_the_weighing(self):
        # 900 g of clay from 23 to 17 % of wet mass gives 65 g [common practice, no source].
        found = damp(5900, 5900, count=2, unweighed=2, clay_g=900)

        assert found.free_water_fraction == pytest.approx(2 * 65.06 / (0.43 * 5900), rel=1e-3)
        assert found.basis == "reckoned"

    def test_counts_presses_where_nobody_weighed(self):
        words = [damp(None, None, count=count).word for count in (1, 4, 5)]

        assert words == ["usable", "usable", "rest"]

    def test_knows_nothing_of_a_mould_never_weighed_nor_pressed(self):
        found = damp(None, None)

        assert (found.word, found.basis) == ("unknown", "nothing")

    @given(st.floats(1.0, 1.5), st.integers(0, 20), st.floats(10, 2000))
    def test_never_dries_by_pressing(self, ratio, presses, clay_g):
        before = damp(2000, 2000 * ratio)
        after = damp(2000, 2000 * ratio, count=presses, unweighed=presses, clay_g=clay_g)

        assert after.free_water_fraction >= before.free_water_fraction
        assert 0 <= after.presses_left <= before.presses_left if before.presses_left else True


class TestSayDryness:
    def test_names_fraction_and_presses(self):
        assert say_dryness(damp(880, 902, count=2)) == "5.8 % free water, 2 presses since dry"

    def test_says_about_where_presses_were_reckoned_in(self):
        words = say_dryness(damp(5900, 5900, count=1, unweighed=1, clay_g=900))

        assert words == "about 2.6 % free water, 1 press since dry"


class TestWantsRest:
    def test_at_the_last_press_the_set_takes(self):
        usable = Dryness("usable", 0.1, 4, "weighed")

        assert wants_rest(5, usable, rest_after=5)
        assert not wants_rest(4, usable, rest_after=5)


class TestAdvise:
    @pytest.mark.parametrize(
        ("states", "wear", "now_g", "code"),
        [
            ([("face", "missing")], FRESH, 2300, "find"),
            ([("face", "out_of_use")], FRESH, 2300, "mend"),
            ([("face", "whole")], wear_of(200, inspect_at=100, retire_at=200), 2300, "recast"),
            ([("face", "whole")], FRESH, 2600, "rest"),
            ([("face", "chipped")], FRESH, 2300, "look"),
            ([("face", "whole")], wear_of(131, inspect_at=120, retire_at=200), 2300, "look"),
            ([("face", "whole")], FRESH, 2300, "press"),
        ],
    )
    def test_says_the_most_pressing_thing(self, states, wear, now_g, code):
        assert advise(damp(2280, now_g), wear, part_states=states).code == code

    def test_gives_the_reason_and_when(self):
        advice = advise(
            damp(940, 1070, count=1), FRESH, part_states=[], usable_from="from about 14:00"
        )

        assert advice == Advice(
            "rest",
            "Let it dry: 32.2 % free water, 1 press since dry. Usable from about 14:00.",
        )
