"""Moist air against psychrolib 2.5.0 (ASHRAE) and CoolProp 8.0.0 (IAPWS-95)."""

import numpy as np
import psychrolib
import pytest
from CoolProp import CoolProp
from hypothesis import given
from hypothesis import strategies as st

from studio.domain import moist_air

ROOMS_C = [1.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0]
PRESSURE_PA = 101_325.0


@pytest.fixture(autouse=True)
def _metric() -> None:
    psychrolib.SetUnitSystem(psychrolib.SI)


class TestSaturationPressurePa:
    def test_is_the_formula_of_buck_at_20(self) -> None:
        assert moist_air.saturation_pressure_pa(20.0) == pytest.approx(2338.34, rel=1e-5)

    @pytest.mark.parametrize("air_c", ROOMS_C)
    def test_agrees_with_psychrolib(self, air_c: float) -> None:
        expected = psychrolib.GetSatVapPres(air_c)

        assert moist_air.saturation_pressure_pa(air_c) == pytest.approx(expected, rel=3e-4)

    @pytest.mark.parametrize("air_c", ROOMS_C)
    def test_agrees_with_coolprop(self, air_c: float) -> None:
        expected = CoolProp.PropsSI("P", "T", air_c + 273.15, "Q", 1, "Water")

        assert moist_air.saturation_pressure_pa(air_c) == pytest.approx(expected, rel=1e-3)

    @pytest.mark.parametrize("air_c", [-41.0, 50.1, float("nan")])
    def test_refuses_what_was_not_fitted(self, air_c: float) -> None:
        with pytest.raises(ValueError, match="air_c"):
            moist_air.saturation_pressure_pa(air_c)


class TestSaturationDensityKgM3:
    @pytest.mark.parametrize("air_c", ROOMS_C)
    def test_agrees_with_coolprop_but_for_the_ideal_gas(self, air_c: float) -> None:
        expected = CoolProp.PropsSI("D", "T", air_c + 273.15, "Q", 1, "Water")

        assert moist_air.saturation_density_kg_m3(air_c) == pytest.approx(expected, rel=6e-3)


class TestSaturationDensitySlopeKgM3K:
    @given(air_c=st.floats(-39.0, 49.0))
    def test_is_the_derivative(self, air_c: float) -> None:
        step = 1e-3
        above = moist_air.saturation_density_kg_m3(air_c + step)
        below = moist_air.saturation_density_kg_m3(air_c - step)

        slope = moist_air.saturation_density_slope_kg_m3_k(air_c)

        assert slope == pytest.approx((above - below) / (2 * step), rel=1e-6)


class TestVapourDensityKgM3:
    @given(air_c=st.floats(-40.0, 50.0), humidity=st.floats(0.0, 1.0))
    def test_comes_back_from_humidity(self, air_c: float, humidity: float) -> None:
        vapour = moist_air.vapour_density_kg_m3(air_c, humidity)

        assert moist_air.humidity_fraction(air_c, vapour) == pytest.approx(humidity, abs=1e-12)

    @pytest.mark.parametrize("humidity", [-0.01, 1.01, float("nan")])
    def test_refuses_humidity_outside_0_to_1(self, humidity: float) -> None:
        with pytest.raises(ValueError, match="humidity_fraction"):
            moist_air.vapour_density_kg_m3(20.0, humidity)


class TestHumidityFraction:
    def test_refuses_vapour_below_nothing(self) -> None:
        with pytest.raises(ValueError, match="vapour_kg_m3"):
            moist_air.humidity_fraction(20.0, -1e-3)


class TestDewPointC:
    @pytest.mark.parametrize("air_c", [5.0, 15.0, 25.0, 35.0])
    @pytest.mark.parametrize("humidity", [0.5, 0.8, 1.0])
    def test_agrees_with_psychrolib_above_freezing(self, air_c: float, humidity: float) -> None:
        dew = moist_air.dew_point_c(air_c, humidity)
        expected = psychrolib.GetTDewPointFromRelHum(air_c, humidity)

        # psychrolib takes the dew point over ice below 0 °C, we over water
        assert dew == pytest.approx(expected, abs=0.02 if expected > 0.0 else 0.6)

    @given(air_c=st.floats(0.0, 50.0), humidity=st.floats(0.05, 1.0))
    def test_is_where_the_air_saturates(self, air_c: float, humidity: float) -> None:
        dew = moist_air.dew_point_c(air_c, humidity)

        pressure = humidity * moist_air.saturation_pressure_pa(air_c)
        assert moist_air.saturation_pressure_pa(dew) == pytest.approx(pressure, rel=1e-9)

    def test_refuses_dry_air(self) -> None:
        with pytest.raises(ValueError, match="above 0"):
            moist_air.dew_point_c(20.0, 0.0)


class TestWetBulbC:
    @pytest.mark.parametrize(
        ("air_c", "humidity", "expected_c"),
        [(20.0, 0.5, 13.78), (25.0, 0.3, 14.42), (15.0, 0.7, 11.92)],
    )
    def test_is_that_of_the_tables(self, air_c: float, humidity: float, expected_c: float) -> None:
        # values computed with psychrolib 2.5.0; CoolProp 8.0.0 HAPropsSI gives 13.78 for the first
        assert moist_air.wet_bulb_c(air_c, humidity) == pytest.approx(expected_c, abs=0.01)

    @pytest.mark.parametrize("air_c", [10.0, 20.0, 30.0, 40.0])
    @pytest.mark.parametrize("humidity", [0.2, 0.5, 0.8])
    def test_agrees_with_psychrolib_and_coolprop(self, air_c: float, humidity: float) -> None:
        bulb = float(moist_air.wet_bulb_c(air_c, humidity))
        by_psychrolib = psychrolib.GetTWetBulbFromRelHum(air_c, humidity, PRESSURE_PA)
        by_coolprop = (
            CoolProp.HAPropsSI("B", "T", air_c + 273.15, "R", humidity, "P", PRESSURE_PA) - 273.15
        )

        assert bulb == pytest.approx(by_psychrolib, abs=0.02)
        assert bulb == pytest.approx(by_coolprop, abs=0.05)

    def test_lies_between_dew_point_and_air(self) -> None:
        air_c, humidity = np.array([5.0, 20.0, 35.0]), np.array([0.6, 0.4, 0.9])

        bulb = moist_air.wet_bulb_c(air_c, humidity)

        assert np.all(bulb <= air_c)
        assert np.all(bulb >= moist_air.dew_point_c(air_c, humidity))

    def test_refuses_frost(self) -> None:
        with pytest.raises(ValueError, match="below 0"):
            moist_air.wet_bulb_c(-1.0, 0.5)
