"""Drying of plaster.

References: an independent integration (scipy 1.17 DOP853) of the same balance; values of a
prototype of this model at 435 kg water per m³ of plaster and 20 °C; the exact surface balance, 20
°C, 50 %, still air.
"""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from moulds.domain.mould_drying import (
    Air,
    capacity_kg_m2,
    evaporation_kg_m2h,
    fraction_after,
    ready_in,
)
from studio.domain.moist_air import vapour_density_kg_m3

PROTOTYPE_CAPACITY = 0.030 * 435


def still(air_c, humidity_fraction, hours):
    vapour = float(vapour_density_kg_m3(air_c, humidity_fraction))
    return Air(np.full(hours, float(air_c)), np.full(hours, vapour))


class TestEvaporation:
    @pytest.mark.parametrize(
        ("exchange", "exact"), [(0.5, 0.0294), (1.0, 0.0495), (2.0, 0.0835), (5.0, 0.1755)]
    )
    def test_agrees_with_the_exact_surface_balance(self, exchange, exact):
        vapour = vapour_density_kg_m3(20.0, 0.5)

        assert evaporation_kg_m2h(1.0, 20.0, vapour, exchange) == pytest.approx(exact, rel=1e-2)

    @given(st.floats(0, 40), st.floats(0.05, 1), st.floats(0.2, 6))
    def test_is_nought_in_balance(self, air_c, humidity, exchange):
        vapour = vapour_density_kg_m3(air_c, humidity)

        rate = evaporation_kg_m2h(humidity, air_c, vapour, exchange)

        assert rate == pytest.approx(0.0, abs=1e-12)


class TestReadyIn:
    @pytest.mark.parametrize(
        ("start", "target", "humidity", "faces", "hours"),
        [
            *[(1.0, 0.05, 0.5, 2, 140), (1.0, 0.05, 0.5, 1, 279)],
            *[(0.4, 0.1, 0.5, 1, 92), (0.4, 0.1, 0.5, 2, 46), (0.4, 0.1, 0.65, 1, 147)],
            *[(0.4, 0.1, 0.65, 2, 74), (0.4, 0.1, 0.8, 1, 376), (0.4, 0.1, 0.8, 2, 188)],
        ],
    )
    def test_agrees_with_the_prototype(self, start, target, humidity, faces, hours):
        [ready] = ready_in(start, target, PROTOTYPE_CAPACITY / faces, still(20, humidity, 700))

        assert ready.p50_h == pytest.approx(hours, rel=1e-2)

    def test_agrees_with_an_independent_integration_in_changing_air(self):
        hours = np.arange(200)
        temperature = 16.0 + 3.0 * np.sin(hours * 2 * np.pi / 24)
        vapour = np.asarray(vapour_density_kg_m3(temperature, 0.65 - 0.1 * np.sin(hours / 17)))

        def slope(t, fraction):
            at = min(int(t), 199)
            activity = fraction / (fraction + 0.02)
            return -evaporation_kg_m2h(activity, temperature[at], vapour[at]) / 6.0

        exact = solve_ivp(slope, (0, 200), [0.5], method="DOP853", max_step=0.25, rtol=1e-9)

        [after] = fraction_after(0.5, 6.0, Air(temperature, vapour))

        assert after == pytest.approx(exact.y[0, -1], abs=2e-4)

    def test_orders_its_quantiles_and_says_never_where_air_is_too_damp(self):
        # at 80 % the plaster rests at S = 0.08, from S/(S + 0.02) = 0.8
        damp, dry = still(20, 0.8, 600), still(20, 0.5, 600)

        [never] = ready_in(0.4, 0.05, 6.0, damp)
        [soon] = ready_in(0.4, 0.05, 6.0, dry)

        assert (never.p10_h, never.p90_h, never.p_never) == (np.inf, np.inf, 1.0)
        assert soon.p10_h < soon.p50_h < soon.p90_h < 600
        assert soon.p_never == 0.0

    def test_counts_the_chance_that_the_time_given_is_too_short(self):
        [whole] = ready_in(0.4, 0.1, 6.0, still(20, 0.5, 600))

        [short] = ready_in(0.4, 0.1, 6.0, still(20, 0.5, round(whole.p50_h)))

        assert short.p_never == pytest.approx(0.5, abs=0.05)
        assert short.p90_h == np.inf

    def test_is_ready_now_when_it_is_dry_already(self):
        [ready] = ready_in(0.04, 0.05, 6.0, still(15, 0.65, 24))

        assert (ready.p10_h, ready.p50_h, ready.p90_h) == (0.0, 0.0, 0.0)

    def test_takes_moulds_together_as_it_takes_them_alone(self):
        air = still(15, 0.65, 300)

        together = ready_in([0.2, 0.4], [0.05, 0.15], [6.0, 13.0], air)

        assert together == [
            *ready_in(0.2, 0.05, 6.0, air),
            *ready_in(0.4, 0.15, 13.0, air),
        ]

    def test_refuses_a_mould_that_holds_nothing(self):
        with pytest.raises(ValueError, match="capacity"):
            ready_in(0.2, 0.1, 0.0, still(15, 0.65, 24))


class TestFractionAfter:
    @settings(max_examples=30, deadline=None)
    @given(st.floats(0, 1.2), st.floats(0.5, 30), st.floats(2, 30), st.floats(0.1, 0.95))
    def test_never_passes_the_balance_with_its_air(self, start, capacity, air_c, humidity):
        balance = 0.02 * humidity / (1 - humidity)

        [after] = fraction_after(start, capacity, still(air_c, humidity, 48))

        assert min(start, balance) - 1e-9 <= after <= max(start, balance) + 1e-9


class TestCapacity:
    def test_is_water_held_over_the_faces_that_dry(self):
        # 30 mm is 30 l/m²; 1.098 kg/l dry; 0.43 of it: 14.2 kg/m²
        assert capacity_kg_m2() == pytest.approx(14.2, abs=0.05)
        assert capacity_kg_m2(open_faces=2) == pytest.approx(7.1, abs=0.03)

    @pytest.mark.parametrize(("wall_mm", "open_faces"), [(0, 1), (30, 0), (30, 3)])
    def test_refuses_no_wall(self, wall_mm, open_faces):
        with pytest.raises(ValueError, match="wall_mm"):
            capacity_kg_m2(wall_mm=wall_mm, open_faces=open_faces)
