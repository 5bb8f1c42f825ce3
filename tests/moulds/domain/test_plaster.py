"""Plaster mixes against makers' sheets and hand sums.

USG IG1365 = data sheet of a pottery plaster (https://pt.scribd.com/document/261195086): 70 parts:
1.58 wet, 1.10 dry g/cm³; 74 parts: 1.06 dry. Unit factors: inch 25.4 mm, pound 0.45359237 kg, US
liquid quart 0.946352946 l, all exact.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from moulds.domain.plaster import (
    Mix,
    NoSuchMix,
    advise_mix,
    capacity_fraction,
    dry_density_kg_l,
    dry_mass_kg,
    free_water_after_set_fraction,
    is_wrongly_headed,
    mix_by_handout,
    mix_for_volume,
    wet_density_kg_l,
)

parts = st.floats(30, 120)


class TestMixForVolume:
    @pytest.mark.parametrize(
        ("volume_l", "parts_water", "plaster_kg", "water_kg"),
        # mass balance by hand: V / (c/100 + 1/2.63)
        [(1, 70, 0.9257, 0.6480), (5, 75, 4.424, 3.318), (1, 60, 1.0202, 0.6121)],
    )
    def test_fills_the_volume(self, volume_l, parts_water, plaster_kg, water_kg):
        mix = mix_for_volume(volume_l, parts_water)

        assert mix.plaster_kg == pytest.approx(plaster_kg, rel=2e-3)
        assert mix.water_kg == pytest.approx(water_kg, rel=2e-3)

    @given(st.floats(0.01, 1000), parts)
    def test_keeps_the_ratio_and_the_mass(self, volume_l, parts_water):
        mix = mix_for_volume(volume_l, parts_water)

        assert mix.parts_water == pytest.approx(parts_water)
        assert mix.plaster_kg + mix.water_kg == pytest.approx(
            volume_l * wet_density_kg_l(parts_water)
        )

    @pytest.mark.parametrize(
        ("volume_l", "parts_water"), [(0, 70), (-1, 70), (1e4, 70), (1, 20), (1, 700)]
    )
    def test_refuses_what_is_no_mix(self, volume_l, parts_water):
        with pytest.raises(NoSuchMix):
            mix_for_volume(volume_l, parts_water)

    def test_refuses_a_number_that_is_none(self):
        with pytest.raises(NoSuchMix):
            mix_for_volume(float("nan"), 70)


class TestAdviseMix:
    def test_gives_the_spread_of_plaster_densities(self):
        # 100 in³ at 70:100, grains 2.60-2.75 kg/l (from memory); by hand 1.51-1.54 and 1.06-1.08 kg
        advice = advise_mix(1.639)

        assert advice.least.plaster_kg == pytest.approx(1.51, abs=5e-3)
        assert advice.most.plaster_kg == pytest.approx(1.54, abs=5e-3)
        assert advice.least.water_kg == pytest.approx(1.06, abs=5e-3)
        assert advice.most.water_kg == pytest.approx(1.08, abs=5e-3)

    def test_adds_the_over_mix(self):
        advice = advise_mix(1.639, over_mix_fraction=0.10)

        assert advice.least.plaster_kg == pytest.approx(1.66, abs=5e-3)
        assert advice.most.plaster_kg == pytest.approx(1.70, abs=5e-3)

    def test_warns_of_a_small_mix(self):
        assert advise_mix(0.4).is_small
        assert not advise_mix(1.639).is_small

    @given(st.floats(0.1, 100), parts)
    def test_never_weighs_out_too_little(self, volume_l, parts_water):
        advice = advise_mix(volume_l, parts_water)

        assert advice.most.plaster_kg - 1e-9 <= advice.weigh_out.plaster_kg
        assert advice.weigh_out.plaster_kg < advice.most.plaster_kg + 0.0101


class TestMixByHandout:
    def test_reads_the_rule_in_pounds_and_quarts(self):
        # block 5 x 5 x 4 in: 100 / 80 = 1.25 US qt, 1.25 x 2.85 = 3.5625 lb
        mix = mix_by_handout(5 * 5 * 4)

        assert mix.water_kg == pytest.approx(1.183, abs=5e-4)
        assert mix.plaster_kg == pytest.approx(1.616, abs=5e-4)
        assert mix.parts_water == pytest.approx(73.2, abs=0.05)

    def test_makes_about_a_tenth_too_much(self):
        # against the same mix by mass balance for the same 1.6387 l
        rule = mix_by_handout(100)

        needed = mix_for_volume(1.6387064, rule.parts_water)

        assert rule.plaster_kg / needed.plaster_kg == pytest.approx(1.10, abs=0.01)

    @pytest.mark.parametrize("volume_in3", [0, -5, float("nan"), float("inf")])
    def test_refuses_no_volume(self, volume_in3):
        with pytest.raises(NoSuchMix):
            mix_by_handout(volume_in3)


class TestIsWronglyHeaded:
    def test_finds_the_row_under_the_wrong_heading(self):
        # a school chart headed 73 with 946 ml to 1,248 g: http://potters.org/subject31745.htm
        row = Mix(plaster_kg=1.248, water_kg=0.946)

        assert row.parts_water == pytest.approx(75.8, abs=0.05)
        assert is_wrongly_headed(row, 73)
        assert not is_wrongly_headed(row, 75)


class TestDensities:
    @pytest.mark.parametrize(
        ("density", "parts_water", "maker_g_cm3"),
        [
            (wet_density_kg_l, 70, 1.58),
            (dry_density_kg_l, 70, 1.10),
            (wet_density_kg_l, 74, 1.56),
            (dry_density_kg_l, 74, 1.06),
        ],
    )
    def test_agree_with_the_maker_within_a_hundredth(self, density, parts_water, maker_g_cm3):
        assert density(parts_water) == pytest.approx(maker_g_cm3, rel=1e-2)

    def test_weigh_a_mould_of_six_litres(self):
        # by hand: 6 x 118.617 / (100/2.63 + 70) = 6.588 kg, free water 2.854 kg
        assert dry_mass_kg(6) == pytest.approx(6.588, rel=5e-3)
        assert dry_mass_kg(6) * free_water_after_set_fraction(70) == pytest.approx(2.854, rel=5e-3)

    @given(parts)
    def test_water_that_leaves_is_the_difference_of_wet_and_dry(self, parts_water):
        lost = wet_density_kg_l(parts_water) - dry_density_kg_l(parts_water)
        held = dry_density_kg_l(parts_water) * free_water_after_set_fraction(parts_water)

        assert lost == pytest.approx(held, abs=1e-12)


class TestCapacityFraction:
    def test_is_43_hundredths_at_the_usual_mix(self):
        # (70 - 18.617) / 118.617 = 0.433; handbooks measure 0.36 (USG IG1365)
        assert capacity_fraction() == 0.43

    def test_grows_with_the_water_of_the_mix(self):
        assert capacity_fraction(65) < capacity_fraction(70) < capacity_fraction(80)
