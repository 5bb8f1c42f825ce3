"""The solver against exact solutions of diffusion: series with a surface resistance, erfc.

J. Crank, The Mathematics of Diffusion, 2nd ed., Oxford 1975: plane sheet eqs 4.50 ff., cylinder
5.45 ff., sphere 6.40 ff. (equation numbers from memory). The roots are found here, not copied.
"""

import numpy as np
import pytest
from scipy import optimize, special

from pieces.domain.drying import Batch, Shape, advance, simulate
from tests.pieces.domain.drying.problems import HOUR_S, plain_diffusion, rows

Floats = np.ndarray
ROOTS = 200


def brackets_and_residual(shape: Shape, biot: float):
    """Return where the roots lie, one in each bracket, and the equation they solve."""
    if shape is Shape.FLAT:  # b tan b = L
        low = np.arange(ROOTS) * np.pi
        return low, low + 0.5 * np.pi, lambda b: b * np.sin(b) - biot * np.cos(b)
    if shape is Shape.ROD:  # b J1(b) = L J0(b)
        low = np.concatenate([[0.0], special.jn_zeros(1, ROOTS - 1)])
        return low, special.jn_zeros(0, ROOTS), lambda b: b * special.j1(b) - biot * special.j0(b)
    low = np.arange(ROOTS) * np.pi  # b cot b = 1 - L
    return low, low + np.pi, lambda b: b * np.cos(b) + (biot - 1.0) * np.sin(b)


def water_left(shape: Shape, biot: float, fourier: float) -> float:
    """Return the mean water left, by the series."""
    low, high, residual = brackets_and_residual(shape, biot)
    nudge = 1e-9
    roots = np.array(
        [
            optimize.brentq(residual, a + nudge, b - nudge, xtol=1e-14)
            for a, b in zip(low, high, strict=True)
        ]
    )
    below = {
        Shape.FLAT: roots**2 + biot**2 + biot,
        Shape.ROD: roots**2 + biot**2,
        Shape.LUMP: roots**2 + biot * (biot - 1.0),
    }[shape]
    factor = {Shape.FLAT: 2.0, Shape.ROD: 4.0, Shape.LUMP: 6.0}[shape]
    terms = factor * biot**2 * np.exp(-(roots**2) * fourier) / (roots**2 * below)
    return float(terms.sum())


def reckoned(shape: Shape, biot: float, fourier: float, hours: int, nodes: int) -> float:
    made = plain_diffusion(shape, biot, fourier, hours, nodes=nodes)
    run = simulate(Batch((made,), (12 + hours) * HOUR_S, keeps_track=True))
    return float(run.tracks[0].mean_kg_per_kg[-1, 0]) / 0.25


class TestSimulate:
    @pytest.mark.parametrize("row", rows("diffusion_series.csv"))
    def test_follows_the_series_with_17_nodes_over_half_a_section(self, row) -> None:
        shape, biot, fourier = Shape(row["shape"]), float(row["biot"]), float(row["fourier"])
        nodes = 33 if shape is Shape.FLAT else 17  # a wall's nodes span both halves

        left = reckoned(shape, biot, fourier, 200, nodes)

        by_series = water_left(shape, biot, fourier)
        assert by_series == pytest.approx(float(row["left"]), abs=1e-6)
        assert left == pytest.approx(by_series, abs=float(row["tolerance"]))

    @pytest.mark.parametrize("shape", list(Shape))
    def test_is_of_second_order_in_the_distance_of_nodes(self, shape: Shape) -> None:
        exact = water_left(shape, 2.0, 0.3)

        errors = [abs(reckoned(shape, 2.0, 0.3, 800, n) - exact) for n in (9, 17, 33)]

        orders = np.log2(np.array(errors[:-1]) / np.array(errors[1:]))
        assert orders == pytest.approx([2.0, 2.0], abs=0.1)

    def test_takes_the_full_thickness_where_one_face_dries(self) -> None:
        made = plain_diffusion(Shape.FLAT, 2.0, 0.5, 400, nodes=33, one_face=True)

        after = advance([made], 412 * HOUR_S)[0]

        run = simulate(Batch((made,), 412 * HOUR_S, keeps_track=True))
        mean = run.tracks[0].mean_kg_per_kg[-1, 0] / 0.25
        assert mean == pytest.approx(water_left(Shape.FLAT, 2.0, 0.5), abs=5e-4)
        assert after.state.moisture_kg_per_kg == pytest.approx(
            run.after[0].state.moisture_kg_per_kg, abs=0.0
        )

    @pytest.mark.parametrize("row", rows("semi_infinite.csv"))
    def test_dries_a_deep_body_by_the_error_function(self, row) -> None:
        depth_m, hours = float(row["depth_mm"]) / 1000.0, 400
        spread = 2.0 * np.sqrt(1.29e-8 * HOUR_S)
        exact = 0.03 + 0.11 * special.erf(depth_m / spread)
        assert exact == pytest.approx(float(row["moisture"]), abs=1e-5)
        assert exact == pytest.approx(float(row["printed"]), abs=5e-4)
        fourier = 1.29e-8 * HOUR_S / 0.08**2  # one hour, told as 400 slower ones
        made = plain_diffusion(
            Shape.FLAT,
            1e4,
            fourier,
            hours,
            nodes=129,
            thickest_m=0.08,
            outside_kg_per_kg=0.03,
            pressed_kg_per_kg=0.14,
            one_face=True,
        )

        after = advance([made], (12 + hours) * HOUR_S)[0]

        even = np.linspace(0.0, 1.0, 129)
        places = 0.08 * (even - 0.7 / (2 * np.pi) * np.sin(2 * np.pi * even))
        moisture = np.interp(0.08 - depth_m, places, after.state.moisture_kg_per_kg[:, 0])
        assert moisture == pytest.approx(exact, abs=5e-4)
