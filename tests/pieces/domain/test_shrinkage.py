"""Sizes from wet to finished.

Answers without another source are exact arithmetic on the numbers shown. Red body: linear drying 6
%, total 8 % at 1050 °C, data sheet at https://quarryarts.org/shop/macsmudbrickred-20kg. Red
earthenware: 5.5 % and 0.6 %,
https://ceramixaustralia.com.au/products/pf-red-earthernware-clay-cone-06-04.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pieces.domain.shrinkage import (
    LongerThanBefore,
    NotASize,
    ShrinkageOutOfRange,
    Shrinkages,
    check_shrinkage,
    combine,
    enlarge,
    finished_volume_fraction,
    from_bar,
    later_stage,
    linear_from_volume,
    off_finished,
    sizes_from_finished,
    sizes_from_wet,
    wet_volume_ml,
)

shares = st.floats(0, 0.2)
BAR = (100.0, 94.0, 93.2, 88.4)


class TestCombine:
    @pytest.mark.parametrize(
        ("stages", "total"),
        [((0.05, 0.08), 0.126), ((0.055, 0.006), 0.06067), ((), 0.0), ((0.12,), 0.12)],
    )
    def test_multiplies_what_is_left(self, stages, total):
        assert combine(*stages) == pytest.approx(total, abs=1e-9)

    @given(shares, shares, shares)
    def test_groups_as_it_likes(self, first, second, third):
        together = combine(first, second, third)

        assert combine(combine(first, second), third) == pytest.approx(together, abs=1e-12)
        assert combine(first, combine(second, third)) == pytest.approx(together, abs=1e-12)

    @given(shares, shares)
    def test_is_never_more_than_the_sum(self, first, second):
        assert combine(first, second) <= first + second + 1e-12

    @given(shares, shares)
    def test_comes_apart_again(self, first, second):
        assert later_stage(combine(first, second), first) == pytest.approx(second, abs=1e-9)

    def test_finds_the_firing_part_of_a_data_sheet(self):
        assert later_stage(0.08, 0.06) == pytest.approx(0.0212766, abs=1e-7)

    def test_refuses_a_part_above_the_whole(self):
        with pytest.raises(ShrinkageOutOfRange):
            later_stage(0.05, 0.08)


class TestCheckShrinkage:
    @pytest.mark.parametrize(
        ("given_", "meant"),
        [
            (112, 0.12),
            (12, 0.12),
            (1.12, 0.12),
            (-0.12, 0.12),
            (0.4, None),
            (0.9, None),
            (float("nan"), None),
            (float("inf"), None),
        ],
    )
    def test_refuses_and_asks_what_was_meant(self, given_, meant):
        with pytest.raises(ShrinkageOutOfRange) as refused:
            check_shrinkage(given_)

        assert refused.value.facts["did_you_mean"] == meant

    @pytest.mark.parametrize("given_", [0.0, 0.12, 0.399])
    def test_passes_on_what_clay_can_do(self, given_):
        assert check_shrinkage(given_) == given_


class TestFromBar:
    def test_reads_each_stage_against_the_one_before(self):
        bar = from_bar(*BAR)

        assert bar.drying == pytest.approx(0.0600, abs=5e-5)
        assert bar.bisque == pytest.approx(0.0085, abs=5e-5)
        assert bar.glaze == pytest.approx(0.0515, abs=5e-5)
        assert bar.total == pytest.approx(0.1160, abs=5e-5)

    def test_refuses_a_bar_that_grew(self):
        with pytest.raises(LongerThanBefore):
            from_bar(100, 94, 94.5, 88)

    @pytest.mark.parametrize("length", [0, -3, float("nan"), float("inf")])
    def test_refuses_no_length(self, length):
        with pytest.raises(NotASize):
            from_bar(length, 94, 93, 88)


class TestEnlarge:
    def test_divides_and_shows_where_adding_ends(self):
        # 142 / 0.88; 142 x 1.12 = 159.04, x 0.88 = 139.96
        model = enlarge(142, 0.12)

        assert model.model_mm == pytest.approx(161.36, abs=0.05)
        assert model.tempting_mm == pytest.approx(159.0, abs=0.05)
        assert model.tempting_finishes_mm == pytest.approx(140.0, abs=0.05)
        assert model.short_mm == pytest.approx(2.0, abs=0.05)
        assert not model.is_unusual

    def test_makes_seven_inches_of_eight(self):
        # 1/8 shrinkage: "Math for Potters", ceramicartsnetwork.org
        assert enlarge(7, 0.125).model_mm == pytest.approx(8)

    def test_takes_the_stages_of_a_bar(self):
        model = enlarge(142, from_bar(*BAR).total)

        assert model.factor == pytest.approx(1.1312, abs=5e-5)
        assert model.model_mm == pytest.approx(160.6, abs=0.05)

    @pytest.mark.parametrize(
        ("plaster", "model_mm"),
        [((), 108.6957), ((0.002,), 108.4787), ((0.002,) * 3, 108.0461)],
    )
    def test_lets_each_plaster_grow(self, plaster, model_mm):
        # 100 / (0.92 x 1.002^n)
        assert enlarge(100, 0.08, plaster_expansions=plaster).model_mm == pytest.approx(
            model_mm, abs=1e-3
        )

    def test_lets_a_clay_model_dry(self):
        # 100 / (0.92 x 1.002 x 0.94)
        model = enlarge(100, 0.08, plaster_expansions=[0.002], model_dries=0.06)

        assert model.model_mm == pytest.approx(115.403, abs=1e-2)

    @pytest.mark.parametrize(("shrinkage", "unusual"), [(0.03, True), (0.04, False), (0.21, True)])
    def test_warns_of_an_unusual_shrinkage(self, shrinkage, unusual):
        assert enlarge(100, shrinkage).is_unusual is unusual

    @pytest.mark.parametrize("shrinkage", [0.40, 0.5, -0.01])
    def test_refuses_what_no_clay_does(self, shrinkage):
        with pytest.raises(ShrinkageOutOfRange):
            enlarge(142, shrinkage)

    def test_refuses_plaster_that_expands_like_dough(self):
        with pytest.raises(ShrinkageOutOfRange):
            enlarge(142, 0.12, plaster_expansions=[0.2])

    @given(st.floats(1, 2000), shares)
    def test_shrinks_back_to_what_was_wanted(self, finished_mm, shrinkage):
        model = enlarge(finished_mm, shrinkage, plaster_expansions=[0.002])

        assert model.model_mm * 1.002 * (1 - shrinkage) == pytest.approx(finished_mm)


class TestSizes:
    def test_follow_a_wet_piece_through_the_kilns(self):
        # 161 x 0.94, x 0.932, x 0.884
        sizes = sizes_from_wet(161, from_bar(*BAR))

        assert sizes.dry_mm == pytest.approx(151.3, abs=0.05)
        assert sizes.bisque_mm == pytest.approx(150.1, abs=0.06)
        assert sizes.finished_mm == pytest.approx(142.3, abs=0.05)

    @given(st.floats(1, 2000), shares, shares, shares)
    def test_are_the_same_from_either_end(self, wet_mm, drying, bisque, glaze):
        by = Shrinkages(drying, bisque, glaze) if combine(drying, bisque, glaze) < 0.4 else None
        if by is None:
            return

        there = sizes_from_wet(wet_mm, by)

        assert sizes_from_finished(there.finished_mm, by).wet_mm == pytest.approx(wet_mm)

    def test_refuse_no_size(self):
        with pytest.raises(NotASize):
            sizes_from_finished(0, from_bar(*BAR))


class TestVolume:
    def test_presses_more_than_the_finished_capacity(self):
        # 600 / 0.88^3 = 880.4; the wrong 600 / 0.88 = 682 ends as 682 x 0.681 = 465
        assert wet_volume_ml(600, 0.12) == pytest.approx(880.4, abs=1)
        assert finished_volume_fraction(0.12) == pytest.approx(0.681, abs=5e-4)
        assert 600 / 0.88 * finished_volume_fraction(0.12) == pytest.approx(465, abs=0.5)

    def test_of_a_cup(self):
        assert wet_volume_ml(250, 0.08) == pytest.approx(321.053, abs=1e-2)

    def test_gives_the_linear_share(self):
        assert 1 - finished_volume_fraction(0.10) == pytest.approx(0.271, abs=1e-9)
        assert linear_from_volume(0.275) == pytest.approx(0.101649, abs=1e-6)

    def test_agrees_with_a_measured_clay(self):
        # linear 6.4 %, volume 17.9 %: Florida Geological Survey, 15th Annual Report, clay tests
        assert 1 - finished_volume_fraction(0.064) == pytest.approx(0.179, abs=1.5e-3)

    @given(st.floats(0, 0.39))
    def test_linear_and_volume_are_inverse(self, shrinkage):
        volume = 1 - finished_volume_fraction(shrinkage)

        assert linear_from_volume(volume) == pytest.approx(shrinkage, abs=1e-9)


class TestOffFinished:
    def test_loses_size_with_every_generation(self):
        # 100 (1.002 x 0.92)^n
        sizes = off_finished(100, 0.08, generations=3, plaster_expansion=0.002)

        assert sizes == pytest.approx([92.184, 84.979, 78.337], abs=1e-2)

    def test_of_a_knop_and_what_to_enlarge_instead(self):
        # 32.0 x 0.884 = 28.3; 32.0 / 0.884 = 36.2
        assert off_finished(32.0, 0.116, generations=1) == [pytest.approx(28.3, abs=0.05)]
        assert enlarge(32.0, 0.116).model_mm == pytest.approx(36.2, abs=0.05)

    def test_takes_less_than_no_generation_for_a_bug(self):
        with pytest.raises(ValueError, match="generations"):
            off_finished(100, 0.08, generations=-1)
