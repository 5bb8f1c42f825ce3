"""Free water of moulds.

Weights of the invented studio are by hand from (now - dry) / (0.43 dry). Slip casting table = times
of the first, second and third fill, https://hot-clay.com/terracotta-casting-slip.html.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from moulds.domain.moisture import (
    HeavierThanSoaked,
    LighterThanDry,
    NotAWeight,
    WetterThanPressed,
    dry_basis,
    dryness_word,
    dryness_word_by_presses,
    fraction_after_pressing,
    free_water_fraction,
    presses_until,
    release_of_press,
    water_given_off_g,
)


class TestFreeWaterFraction:
    @pytest.mark.parametrize(
        ("now_g", "dry_g", "fraction", "word"),
        [
            (2405, 2280, 0.13, "usable"),  # 125 / 980
            (1070, 940, 0.32, "rest"),  # 130 / 404
            (7310, 6840, 0.16, "rest"),  # 470 / 2941
            (902, 880, 0.058, "usable"),  # 22 / 378
            (655, 610, 0.172, "rest"),  # 45 / 262
            (4415, 4400, 0.008, "dry"),  # 15 / 1892
            (191, 190, 0.012, "dry"),  # 1 / 82
        ],
    )
    def test_is_water_over_capacity(self, now_g, dry_g, fraction, word):
        found = free_water_fraction(now_g, dry_g)

        assert found == pytest.approx(fraction, abs=5e-3)
        assert dryness_word(found) == word

    def test_takes_a_weighing_just_under_dry_for_dry(self):
        assert free_water_fraction(998, 1000) == 0.0

    def test_does_not_clamp_a_mould_just_poured(self):
        assert free_water_fraction(1433, 1000) > 1.0

    def test_refuses_less_than_dry(self):
        with pytest.raises(LighterThanDry):
            free_water_fraction(900, 1000)

    def test_refuses_more_than_it_can_hold_and_says_how_much_that_is(self):
        with pytest.raises(HeavierThanSoaked) as refused:
            free_water_fraction(2395 + 1500, 2310)

        assert refused.value.facts["most_g"] == 3601  # 2310 (1 + 1.3 x 0.43)

    @pytest.mark.parametrize(
        ("now_g", "dry_g"), [(0, 100), (-5, 100), (100, 0), (float("nan"), 100)]
    )
    def test_refuses_no_weight(self, now_g, dry_g):
        with pytest.raises(NotAWeight):
            free_water_fraction(now_g, dry_g)

    @given(st.floats(100, 20_000), st.floats(0, 1), st.floats(0.3, 0.6))
    def test_comes_back_from_a_mass(self, dry_g, fraction, capacity):
        now_g = dry_g * (1 + fraction * capacity)

        assert free_water_fraction(now_g, dry_g, capacity) == pytest.approx(fraction, abs=1e-9)


class TestDrynessWord:
    @pytest.mark.parametrize(
        ("fraction", "word"),
        [
            (None, "unknown"),
            (0.0, "dry"),
            (0.049, "dry"),
            (0.05, "usable"),
            (0.149, "usable"),
            (0.15, "rest"),
            (1.2, "rest"),
        ],
    )
    def test_follows_the_limits(self, fraction, word):
        assert dryness_word(fraction) == word

    def test_follows_the_limits_of_this_studio(self):
        assert dryness_word(0.2, dry_below=0.1, usable_below=0.3) == "usable"


class TestDrynessWordByPresses:
    @pytest.mark.parametrize(
        ("presses", "word"),
        [(None, "unknown"), (0, "dry"), (1, "usable"), (4, "usable"), (5, "rest"), (9, "rest")],
    )
    def test_rests_after_the_fifth(self, presses, word):
        # "dry after 5": slip casting table
        assert dryness_word_by_presses(presses) == word


class TestWaterGivenOff:
    def test_of_900_g_from_23_to_17_percent_of_wet_clay(self):
        # 900 x 0.77 = 693 g dry; 693 / 0.83 = 834.9 g; 900 - 834.9 = 65.1 g
        given_off = water_given_off_g(
            900, moisture_in=dry_basis(0.23), moisture_out=dry_basis(0.17)
        )

        assert given_off == pytest.approx(65.06, abs=0.01)

    def test_of_1200_g_from_25_to_18_percent_of_dry_clay(self):
        # 1200 / 1.25 x 0.07 = 67.2 g
        given_off = water_given_off_g(1200, moisture_in=0.25, moisture_out=0.18)

        assert given_off == pytest.approx(67.2)

    def test_refuses_clay_that_leaves_wetter(self):
        with pytest.raises(WetterThanPressed):
            water_given_off_g(900, moisture_in=0.17, moisture_out=0.23)

    def test_refuses_no_clay(self):
        with pytest.raises(NotAWeight):
            water_given_off_g(0, moisture_in=0.25, moisture_out=0.18)


class TestPressesUntil:
    def test_counts_whole_pressings(self):
        # 6 kg dry, 5 -> 15 % of dry mass, 67.2 g each: 600 / 67.2 = 8.93
        assert presses_until(0.05 / 0.43, 0.15 / 0.43, 67.2, 6000) == 8

    def test_gives_none_beyond_the_limit(self):
        assert presses_until(0.2, 0.15, 67.2, 6000) == 0

    @given(st.floats(0, 0.14), st.floats(5, 100), st.floats(200, 8000))
    def test_stops_at_the_limit(self, fraction, water_g, dry_g):
        presses = presses_until(fraction, 0.15, water_g, dry_g)
        after = fraction_after_pressing(fraction, presses * water_g, dry_g)

        assert after <= 0.15 + 1e-6
        assert fraction_after_pressing(after, water_g, dry_g) > 0.15 - 1e-6


class TestReleaseOfPress:
    @pytest.mark.parametrize(
        ("press", "least_h", "likely_h", "most_h"), [(2, 3.2, 3.5, 3.8), (3, 3.6, 4.0, 4.5)]
    )
    def test_scales_the_slip_casting_table(self, press, least_h, likely_h, most_h):
        # 30 -> 35 -> 40 min, 50 -> 60 min, 4 -> 4.5 min, on a first release of 3 h
        release = release_of_press(3.0, press)

        assert release.least_h == pytest.approx(least_h, abs=0.05)
        assert release.likely_h == pytest.approx(likely_h, abs=1e-9)
        assert release.most_h == pytest.approx(most_h, abs=0.05)

    def test_leaves_the_first_as_it_is(self):
        assert release_of_press(3.0, 1).likely_h == 3.0

    def test_says_nothing_beyond_the_table(self):
        assert release_of_press(3.0, 6) is None

    @given(st.integers(2, 5))
    def test_keeps_the_likely_inside_the_spread(self, press):
        release = release_of_press(1.0, press)

        assert 1.0 < release.least_h < release.likely_h < release.most_h
