"""The surface against an exact balance of heat, with the vapour pressure of psychrolib 2.5.0."""

import numpy as np
import psychrolib
import pytest
from scipy import optimize

from pieces.domain.drying import surface
from studio.domain import moist_air

RADIATION_W_M2_K = 5.5


def exact(air_c: float, humidity: float, convection: float, activity: float = 1.0):
    """Return surface temperature [°C] and vapour flow [kg/m²s] of the balance, by root finding."""
    psychrolib.SetUnitSystem(psychrolib.SI)
    k = convection / (1.204 * 1006.0 * 0.90)
    vapour = humidity * psychrolib.GetSatVapPres(air_c) / (461.5 * (air_c + 273.15))

    def flow(at_c: float) -> float:
        full = psychrolib.GetSatVapPres(at_c) / (461.5 * (at_c + 273.15))
        return k * (activity * full - vapour)

    def out_of_balance(at_c: float) -> float:
        return (convection + RADIATION_W_M2_K) * (air_c - at_c) - 2.453e6 * flow(at_c)

    at_c = optimize.brentq(out_of_balance, air_c - 25.0, air_c + 25.0, xtol=1e-10)
    return at_c, flow(at_c)


def secant(air_c: float, humidity: float, convection: float, activity: float = 1.0):
    air = (
        moist_air.saturation_density_kg_m3([air_c]),
        moist_air.saturation_density_slope_kg_m3_k([air_c]),
        moist_air.vapour_density_kg_m3([air_c], humidity),
    )
    heat = np.array([convection + RADIATION_W_M2_K])
    k = np.atleast_1d(surface.vapour_conductance_m_s(convection))
    return surface.evaporation(np.array([activity]), k, heat, air)


class TestVapourConductanceMS:
    def test_follows_from_still_air(self) -> None:
        assert surface.vapour_conductance_m_s(3.0) == pytest.approx(2.75204e-3, rel=1e-5)


class TestEvaporation:
    def test_cools_a_wet_surface_by_4_kelvin_at_20_and_half(self) -> None:
        at_c, flow = exact(20.0, 0.5, 3.0)

        assert at_c == pytest.approx(16.03, abs=0.05)
        assert flow * 3600.0 == pytest.approx(0.0495, abs=2e-4)
        assert secant(20.0, 0.5, 3.0)[0] == pytest.approx(flow, rel=0.01)

    @pytest.mark.parametrize(
        ("convection", "kg_m2_h"), [(1.5, 0.0294), (6.0, 0.0835), (15.0, 0.1755)]
    )
    def test_follows_the_exact_balance_in_draughts(self, convection: float, kg_m2_h: float) -> None:
        _, flow = exact(20.0, 0.5, convection)

        assert flow * 3600.0 == pytest.approx(kg_m2_h, rel=5e-3)
        assert secant(20.0, 0.5, convection)[0] == pytest.approx(flow, rel=0.012)

    @pytest.mark.parametrize("air_c", [5.0, 15.0, 25.0, 35.0])
    @pytest.mark.parametrize("humidity", [0.2, 0.5, 0.9])
    @pytest.mark.parametrize("convection", [1.5, 3.0, 15.0])
    def test_is_within_2_3_percent_of_the_exact_balance(
        self, air_c: float, humidity: float, convection: float
    ) -> None:
        _, flow = exact(air_c, humidity, convection)

        assert secant(air_c, humidity, convection)[0] == pytest.approx(flow, rel=0.023)

    def test_is_the_plain_formula_where_nothing_can_cool(self) -> None:
        air = (np.array([0.0173]), np.array([1.0e-3]), np.array([0.008]))

        flow, slope = surface.evaporation(
            np.array([0.9]), np.array([2.75e-3]), np.array([1e12]), air
        )

        assert flow == pytest.approx(2.75e-3 * (0.9 * 0.0173 - 0.008), rel=1e-6)
        assert slope == pytest.approx(2.75e-3 * 0.0173, rel=1e-6)

    @pytest.mark.parametrize("activity", [0.3, 0.7, 0.99])
    def test_gives_its_own_derivative(self, activity: float) -> None:
        step = 1e-6
        above, _ = secant(22.0, 0.45, 4.0, activity + step)
        below, _ = secant(22.0, 0.45, 4.0, activity - step)

        _, slope = secant(22.0, 0.45, 4.0, activity)

        assert slope == pytest.approx((above - below) / (2 * step), rel=1e-6)


class TestClayActivity:
    @pytest.mark.parametrize(
        ("activity", "moisture"),
        [(0.3, 0.010245), (0.5, 0.015000), (0.8, 0.027991), (0.95, 0.056433)],
    )
    def test_inverts_the_isotherm_of_red_earthenware(
        self, activity: float, moisture: float
    ) -> None:
        # X = A (a/(1-a))^B by hand, A 0.015, B 0.45
        found, _ = surface.clay_activity(np.array([moisture]), np.array([0.015]), np.array([0.45]))

        assert found == pytest.approx(activity, rel=1e-4)

    def test_gives_its_own_derivative(self) -> None:
        scale, power, x, step = np.array([0.015]), np.array([0.45]), np.array([0.05]), 1e-7
        above, _ = surface.clay_activity(x + step, scale, power)
        below, _ = surface.clay_activity(x - step, scale, power)

        _, slope = surface.clay_activity(x, scale, power)

        assert slope == pytest.approx((above - below) / (2 * step), rel=1e-5)


class TestPlasterAtRest:
    @pytest.mark.parametrize(
        ("moisture", "saturation"),
        [(0.25, 0.948683), (0.20, 0.651828), (0.15, 0.239112), (0.10, 0.070378)],
    )
    def test_follows_clay_and_plaster_suction(self, moisture: float, saturation: float) -> None:
        # (1 + (50 kPa exp(-(X - 0.25)/0.04) / 150 kPa)^2)^-1/2 by hand
        found, _ = surface.plaster_at_rest(np.array([moisture]))

        assert found == pytest.approx(saturation, rel=1e-5)

    def test_gives_its_own_derivative(self) -> None:
        x, step = np.array([0.17]), 1e-7
        above, _ = surface.plaster_at_rest(x + step)
        below, _ = surface.plaster_at_rest(x - step)

        _, slope = surface.plaster_at_rest(x)

        assert slope == pytest.approx((above - below) / (2 * step), rel=1e-6)


class TestPlasterActivity:
    def test_is_half_at_its_knee_and_gives_its_own_derivative(self) -> None:
        activity, slope = surface.plaster_activity(np.array([0.02]))

        assert activity == pytest.approx(0.5)
        assert slope == pytest.approx(0.02 / 0.04**2)
