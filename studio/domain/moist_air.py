"""Moist air: vapour pressure, vapour density, humidity, dew point and wet bulb.

Everything takes scalars or arrays and returns `numpy` arrays of the same shape. Vapour density, not
relative humidity, is what adds up over time and what drives drying; humidity is for people.

References
----------
.. [1] A. L. Buck, "New equations for computing vapor pressure and enhancement factor", J. Appl.
       Meteorol. 20 (1981) 1527, in the form and with the constants of the Buck Research CR-1A
       manual (1996): 611.21 exp((18.678 - t/234.5) t/(257.14 + t)). Constants from memory; they
       agree with psychrolib 2.5.0 to 0.03 % between 1 and 40 °C (tested).
.. [2] ASHRAE Handbook of Fundamentals (2017), chapter 1: humidity ratio at a wet-bulb temperature,
       equation 33 (number from memory), as used by psychrolib 2.5.0.
"""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

LOWEST_AIR_C: Final = -40.0
HIGHEST_AIR_C: Final = 50.0
VAPOUR_GAS_CONSTANT_J_KG_K: Final = 461.5
FREEZING_K: Final = 273.15
STANDARD_PRESSURE_PA: Final = 101_325.0
VAPOUR_TO_AIR_MASS: Final = 0.621945  # ratio of molar masses [2]_


def saturation_pressure_pa(air_c: ArrayLike) -> Floats:
    """Return the vapour pressure over flat liquid water [1]_.

    Parameters
    ----------
    air_c
        Air temperature, from -40 to 50. [°C]

    Returns
    -------
    Saturation vapour pressure, shaped like `air_c`. [Pa]

    Raises
    ------
    ValueError
        When a temperature is not a number or lies outside the range.
    """
    air = _checked_air(air_c)
    pressure: Floats = 611.21 * np.exp((18.678 - air / 234.5) * air / (257.14 + air))
    return pressure


def saturation_density_kg_m3(air_c: ArrayLike) -> Floats:
    """Return the density of saturated water vapour (ideal gas). [kg/m³]

    `air_c` is the air temperature, from -40 to 50. [°C]  Raises `ValueError` outside.
    """
    air = _checked_air(air_c)
    return saturation_pressure_pa(air) / (VAPOUR_GAS_CONSTANT_J_KG_K * (air + FREEZING_K))


def saturation_density_slope_kg_m3_k(air_c: ArrayLike) -> Floats:
    """Return the analytic slope of `saturation_density_kg_m3`. [kg/(m³ K)]

    `air_c` is the air temperature, from -40 to 50. [°C]  Raises `ValueError` outside.
    """
    air = _checked_air(air_c)
    below = 257.14 + air
    relative = ((18.678 - 2.0 * air / 234.5) * below - (18.678 - air / 234.5) * air) / below**2
    return saturation_density_kg_m3(air) * (relative - 1.0 / (air + FREEZING_K))


def vapour_density_kg_m3(air_c: ArrayLike, humidity_fraction: ArrayLike) -> Floats:
    """Return the vapour density of air at a relative humidity. [kg/m³]

    Parameters
    ----------
    air_c
        Air temperature, from -40 to 50. [°C]
    humidity_fraction
        Relative humidity over water, 0 to 1; broadcasts against `air_c`.

    Raises
    ------
    ValueError
        When the temperature or the humidity lies outside its range.
    """
    return _checked_humidity(humidity_fraction) * saturation_density_kg_m3(air_c)


def humidity_fraction(air_c: ArrayLike, vapour_kg_m3: ArrayLike) -> Floats:
    """Return the relative humidity of air holding `vapour_kg_m3`, 0 to 1 (more: supersaturated).

    `air_c` from -40 to 50 [°C]; `vapour_kg_m3` not negative [kg/m³]. Raises `ValueError` outside.
    """
    vapour = np.asarray(vapour_kg_m3, dtype=np.float64)
    if not np.all(vapour >= 0.0):
        raise ValueError("vapour_kg_m3 must not be negative.")
    return np.asarray(vapour / saturation_density_kg_m3(air_c), dtype=np.float64)


def dew_point_c(air_c: ArrayLike, humidity_fraction: ArrayLike) -> Floats:
    """Return the temperature at which the air's vapour pressure saturates (over water). [°C]

    Inverts [1]_ in closed form (a quadratic). `air_c` from -40 to 50 [°C]; `humidity_fraction`
    above 0, up to 1. Raises `ValueError` outside.
    """
    humidity = _checked_humidity(humidity_fraction)
    if np.any(humidity <= 0.0):
        raise ValueError("humidity_fraction must be above 0 for a dew point.")
    exponent = np.log(humidity * saturation_pressure_pa(air_c) / 611.21)
    half = 0.5 * (18.678 - exponent) * 234.5
    inside = half**2 - exponent * 257.14 * 234.5
    dew: Floats = half - np.sqrt(inside)
    return dew


def wet_bulb_c(
    air_c: ArrayLike, humidity_fraction: ArrayLike, pressure_pa: float = STANDARD_PRESSURE_PA
) -> Floats:
    """Return the thermodynamic wet-bulb temperature [2]_, by bisection to 1e-9 K. [°C]

    Parameters
    ----------
    air_c
        Air temperature, from 0 to 50. [°C]
    humidity_fraction
        Relative humidity, 0 to 1.
    pressure_pa
        Air pressure. [Pa]

    Raises
    ------
    ValueError
        When an argument lies outside its range; freezing bulbs follow another balance.
    """
    air, humidity = np.broadcast_arrays(_checked_air(air_c), _checked_humidity(humidity_fraction))
    if np.any(air < 0.0):
        raise ValueError("air_c must not be below 0 for a wet bulb.")
    ratio = _humidity_ratio(humidity * saturation_pressure_pa(air), pressure_pa)
    low = np.full(air.shape, -30.0)
    high = np.array(air, dtype=np.float64)
    for _ in range(40):
        bulb = 0.5 * (low + high)
        too_warm = _ratio_at_bulb(air, bulb, pressure_pa) > ratio
        high = np.where(too_warm, bulb, high)
        low = np.where(too_warm, low, bulb)
    return np.asarray(0.5 * (low + high), dtype=np.float64)


def _ratio_at_bulb(air: Floats, bulb: Floats, pressure_pa: float) -> Floats:
    saturated = _humidity_ratio(saturation_pressure_pa(bulb), pressure_pa)
    lost = (2501.0 - 2.326 * bulb) * saturated - 1.006 * (air - bulb)
    return np.asarray(lost / (2501.0 + 1.86 * air - 4.186 * bulb), dtype=np.float64)


def _humidity_ratio(vapour_pa: Floats, pressure_pa: float) -> Floats:
    return np.asarray(VAPOUR_TO_AIR_MASS * vapour_pa / (pressure_pa - vapour_pa))


def _checked_air(air_c: ArrayLike) -> Floats:
    air = np.asarray(air_c, dtype=np.float64)
    if not np.all((air >= LOWEST_AIR_C) & (air <= HIGHEST_AIR_C)):
        raise ValueError(f"air_c must lie from {LOWEST_AIR_C:g} to {HIGHEST_AIR_C:g} °C.")
    return air


def _checked_humidity(humidity: ArrayLike) -> Floats:
    fraction = np.asarray(humidity, dtype=np.float64)
    if not np.all((fraction >= 0.0) & (fraction <= 1.0)):
        raise ValueError("humidity_fraction must lie from 0 to 1.")
    return fraction
