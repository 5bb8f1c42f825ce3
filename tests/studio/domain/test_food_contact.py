"""Limits: Materials and Articles in Contact with Food (Wales) Regulations 2012, part 4 and
schedule 3 (WSI 2012/2705), which are those of Directive 84/500/EEC, article 2."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain.food_contact import (
    COOKING,
    FILLABLE,
    FLAT,
    VERDICTS,
    Figure,
    Released,
    Ware,
    figure_words,
    judged,
    limits_of,
    limits_words,
    with_lid,
)

# Pb < 0.1, Cd < 0.01: what a laboratory might write of a glaze without either.
LITTLE = Released(Figure(0.1, is_below=True), Figure(0.01, is_below=True))


def of(lead, cadmium):
    return Released(Figure(lead), Figure(cadmium))


class TestLimits:
    @pytest.mark.parametrize("depth_mm", [0, 22, 24, 25])
    def test_of_what_is_at_most_25_mm_deep_are_by_area(self, depth_mm):
        limits = limits_of(Ware(depth_mm=depth_mm, volume_ml=200))

        assert limits == FLAT
        assert (limits.lead, limits.cadmium, limits.unit) == (0.8, 0.07, "mg_per_dm2")

    @pytest.mark.parametrize(("depth_mm", "volume_ml"), [(26, 200), (58, 310), (110, 600)])
    def test_of_other_fillable_ware_are_by_volume(self, depth_mm, volume_ml):
        limits = limits_of(Ware(depth_mm=depth_mm, volume_ml=volume_ml))

        assert limits == FILLABLE
        assert (limits.lead, limits.cadmium, limits.unit) == (4.0, 0.3, "mg_per_l")

    @pytest.mark.parametrize(
        "ware",
        [
            Ware(depth_mm=200, volume_ml=3001, contact="storage"),
            Ware(depth_mm=60, volume_ml=900, contact="cooking"),
            Ware(depth_mm=20, contact="cooking"),
        ],
    )
    def test_of_cooking_ware_and_large_storage_are_the_strictest_by_volume(self, ware):
        limits = limits_of(ware)

        assert limits == COOKING
        assert (limits.lead, limits.cadmium, limits.unit) == (1.5, 0.1, "mg_per_l")

    def test_of_storage_of_just_three_litres_are_those_of_other_fillable_ware(self):
        assert limits_of(Ware(depth_mm=200, volume_ml=3000, contact="storage")) == FILLABLE

    def test_are_not_guessed_without_a_depth(self):
        assert limits_of(Ware(volume_ml=310)) is None

    def test_refuse_what_no_ware_measures(self):
        with pytest.raises(ValueError, match="depth_mm=-1"):
            limits_of(Ware(depth_mm=-1))


class TestVerdict:
    def test_is_within_where_both_results_are_at_most_the_limit(self):
        assert judged(FILLABLE, LITTLE, unit="mg_per_l").code == "within"
        assert judged(FILLABLE, of(4.0, 0.3), unit="mg_per_l").code == "within"

    @pytest.mark.parametrize(("lead", "cadmium"), [(4.1, 0.0), (0.0, 0.31)])
    def test_is_over_where_one_result_is(self, lead, cadmium):
        assert judged(FILLABLE, of(lead, cadmium), unit="mg_per_l").code == "over"

    def test_is_not_told_where_less_than_says_nothing_about_the_limit(self):
        coarse = Released(Figure(5.0, is_below=True), Figure(0.01))

        assert judged(FILLABLE, coarse, unit="mg_per_l").code == "not_told"
        assert judged(FILLABLE, Released(coarse.lead, Figure(0.4)), unit="mg_per_l").code == "over"

    def test_is_not_tested_without_results_of_its_own_kind(self):
        assert judged(FILLABLE, None, unit=None).code == "not_tested"
        assert judged(FLAT, LITTLE, unit="mg_per_l").code == "not_tested"
        assert judged(None, LITTLE, unit="mg_per_l").code == "not_tested"

    def test_never_calls_anything_by_the_word_that_nobody_can_promise(self):
        said = [*VERDICTS.values(), judged(FLAT, None, unit=None).words, limits_words(COOKING)]

        assert not any("safe" in words.lower() for words in said)

    @given(st.floats(0, 20), st.floats(0, 20), st.floats(0, 5))
    def test_never_gets_better_with_more_given_off(self, lead, cadmium, more):
        less, much = of(lead, cadmium), of(lead + more, cadmium + more)

        if judged(COOKING, less, unit="mg_per_l").code == "over":
            assert judged(COOKING, much, unit="mg_per_l").code == "over"


class TestLid:
    def test_is_tested_apart_and_added_on_the_volume_of_its_jar(self):
        # 0.06 mg from the inside of the lid, on a jar of 0.6 litre: 0.1 mg/l more.
        both = with_lid(of(0.5, 0.02), of(0.06, 0.006), limits=FILLABLE, size=0.6)

        assert both.lead.value == pytest.approx(0.6)
        assert both.cadmium.value == pytest.approx(0.03)

    def test_can_take_a_jar_over(self):
        jar, lid = of(3.9, 0.0), of(0.12, 0.0)

        assert judged(FILLABLE, jar, unit="mg_per_l").code == "within"
        both = with_lid(jar, lid, limits=FILLABLE, size=0.6)
        assert judged(FILLABLE, both, unit="mg_per_l").code == "over"

    def test_keeps_that_the_laboratory_wrote_less_than(self):
        both = with_lid(of(0.5, 0.02), LITTLE, limits=FILLABLE, size=0.6)

        assert both.lead.is_below
        assert figure_words(both.lead, "mg/l") == "< 0.667 mg/l"

    def test_needs_a_vessel_of_some_size(self):
        with pytest.raises(ValueError, match="0"):
            with_lid(LITTLE, LITTLE, limits=FILLABLE, size=0)
