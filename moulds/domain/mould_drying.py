"""How long a mould takes to dry in given air.

Plaster is one node: it conducts water so much better than clay that twenty nodes change crossing
times by less than 1 %. Its surface evaporates by a Penman balance whose slope is corrected once (a
secant), within 2.2 % of the exact surface balance from 5 to 35 °C and 20 to 90 % humidity. Not
modelled: scum, age, shape, plaster that dries slower as gypsum grows under its skin (Seck et al.,
J. Mater. Sci. 50 (2015) 2491).

References
----------
.. [1] H. L. Penman, Proc. R. Soc. A 193 (1948) 120: evaporation from mass and heat transfer joined.
.. [2] Lewis relation with factor 0.90; air 1.204 kg/m³ and 1006 J/(kg K), latent heat 2.453 MJ/kg
       at 20 °C (handbook values, from memory).
.. [3] Still air 3 W/(m² K), radiation 5.5 W/(m² K), plaster's water activity S/(S + 0.02), spread
       of the room's exchange 0.45 in its logarithm: set here so that published habits come out, not
       measured.
"""

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import ndtri

from moulds.domain.plaster import USUAL_PARTS_WATER, capacity_fraction, dry_density_kg_l
from studio.domain.moist_air import saturation_density_kg_m3, saturation_density_slope_kg_m3_k

Floats = NDArray[np.float64]

STILL_AIR_W_M2K: Final = 3.0
RADIATION_W_M2K: Final = 5.5
LATENT_HEAT_J_KG: Final = 2.453e6
AIR_HEAT_J_M3K: Final = 1.204 * 1006.0
LEWIS_FACTOR: Final = 0.90
SLOPE_DECAY_PER_K: Final = 0.0295
ACTIVITY_HALF: Final = 0.02
EXCHANGE_LOG_SD: Final = 0.45
USUAL_WALL_MM: Final = 30.0
SECONDS_PER_HOUR: Final = 3600.0
STEPS_PER_HOUR: Final = 2
QUANTILES: Final = (0.1, 0.5, 0.9)
NEVER_LANES: Final = 20


@dataclass(frozen=True, slots=True)
class Air:
    """Hourly means of air: `air_c` [°C] and `vapour_kg_m3` [kg/m³], both of shape (n_hours,)."""

    air_c: Floats
    vapour_kg_m3: Floats


@dataclass(frozen=True, slots=True)
class ReadyIn:
    """Hours until a mould is dry enough, infinite where the air given does not bring it there.

    `p_never` is the chance that it does not get there within the air given, in steps of 0.05.
    """

    p10_h: float
    p50_h: float
    p90_h: float
    p_never: float


def capacity_kg_m2(
    *,
    wall_mm: float = USUAL_WALL_MM,
    open_faces: int = 1,
    parts_water: float = USUAL_PARTS_WATER,
) -> float:
    """Return the free water a mould can hold, for each square metre that can dry. [kg/m²]

    Parameters
    ----------
    wall_mm
        Thickness of plaster, above 0. [mm]
    open_faces
        1 when it stands on its back or in its straps, 2 when air reaches both faces.
    parts_water
        Water to 100 of plaster, 30 to 120.

    Raises
    ------
    ValueError
        When `wall_mm` or `open_faces` is out of range.
    """
    if not wall_mm > 0 or open_faces not in (1, 2):
        raise ValueError("wall_mm must be above 0, open_faces 1 or 2.")
    litres_per_m2 = wall_mm / open_faces
    return litres_per_m2 * dry_density_kg_l(parts_water) * capacity_fraction(parts_water)


def evaporation_kg_m2h(
    activity: ArrayLike, air_c: ArrayLike, vapour_kg_m3: ArrayLike, exchange: ArrayLike = 1.0
) -> Floats:
    """Return the water that leaves a surface [1]_ [2]_, negative when it takes water up. [kg/(m²
    h)]

    Parameters
    ----------
    activity
        Water activity of the surface, 0 to 1.
    air_c, vapour_kg_m3
        Temperature [°C, -40 to 50] and vapour density [kg/m³] of the room; all arguments broadcast.
    exchange
        The room's exchange against still air, above 0.
    """
    rate, _ = _evaporation(
        np.asarray(activity, dtype=np.float64),
        saturation_density_kg_m3(air_c),
        saturation_density_slope_kg_m3_k(air_c),
        np.asarray(vapour_kg_m3, dtype=np.float64),
        np.asarray(exchange, dtype=np.float64),
    )
    return rate


def fraction_after(fraction: ArrayLike, capacity: ArrayLike, air: Air) -> Floats:
    """Return the free water fractions of moulds after standing in `air`, at the room's middle
    exchange.

    `fraction` and `capacity` [kg/m², above 0] have the shape (n_moulds,), as has the answer.
    """
    start, capacities = _as_column(fraction), _as_column(capacity)
    curve = _dry(start, capacities, air, np.ones((1, 1)))
    return np.asarray(curve[-1, :, 0], dtype=np.float64)


def ready_in(
    fraction: ArrayLike,
    target: ArrayLike,
    capacity: ArrayLike,
    air: Air,
    *,
    exchange_log_sd: float = EXCHANGE_LOG_SD,
) -> list[ReadyIn]:
    """Return when each mould comes down to its target in the air given.

    The only doubt counted is the room's exchange [3]_. Time falls as exchange rises, so the
    quantiles of time are the times at the quantiles of exchange: nothing is drawn at random.

    Parameters
    ----------
    fraction, target
        Free water fractions now and wanted, shape (n_moulds,).
    capacity
        Water held for each square metre that dries, above 0, shape (n_moulds,). [kg/m²]
    air
        Air from now on; its length is the horizon.

    Raises
    ------
    ValueError
        When a capacity is not above 0, or the air lies outside -40 to 50 °C.
    """
    lanes = np.array([*QUANTILES, *((np.arange(NEVER_LANES) + 0.5) / NEVER_LANES)])
    exchange = np.exp(-exchange_log_sd * ndtri(lanes))[np.newaxis, :]
    curve = _dry(_as_column(fraction), _as_column(capacity), air, exchange)
    hours = _crossing_h(curve, _as_column(target))
    return [
        ReadyIn(
            p10_h=float(row[0]),
            p50_h=float(row[1]),
            p90_h=float(row[2]),
            p_never=float(np.mean(np.isinf(row[len(QUANTILES) :]))),
        )
        for row in hours
    ]


def _dry(start: Floats, capacity: Floats, air: Air, exchange: Floats) -> Floats:
    """Return the fractions at every step, shape (n_steps + 1, n_moulds, n_lanes).

    One step is an exponential Euler step: exact where the rate is linear, and steady however thin
    the plaster.
    """
    if not np.all(capacity > 0):
        raise ValueError("capacity must be above 0.")
    step_h = 1.0 / STEPS_PER_HOUR
    saturated = saturation_density_kg_m3(air.air_c)
    slope = saturation_density_slope_kg_m3_k(air.air_c)
    wet = np.broadcast_to(start, (start.shape[0], exchange.shape[1])).astype(np.float64)
    curve = [wet]
    for step in range(STEPS_PER_HOUR * len(air.air_c)):
        hour = step // STEPS_PER_HOUR
        rate, per_activity = _evaporation(
            wet / (wet + ACTIVITY_HALF),
            saturated[hour],
            slope[hour],
            air.vapour_kg_m3[hour],
            exchange,
        )
        stiffness = per_activity * ACTIVITY_HALF / (wet + ACTIVITY_HALF) ** 2 / capacity * step_h
        wet = np.maximum(wet + np.expm1(-stiffness) / stiffness * rate / capacity * step_h, 0.0)
        curve.append(wet)
    return np.stack(curve)


def _evaporation(
    activity: Floats, saturated: Floats, slope: Floats, vapour: Floats, exchange: Floats
) -> tuple[Floats, Floats]:
    """Return the rate and its slope against activity. [kg/(m² h)]"""
    convection = STILL_AIR_W_M2K * exchange
    heat = convection + RADIATION_W_M2K
    transfer = convection / (AIR_HEAT_J_M3K * LEWIS_FACTOR)
    cooling = transfer * LATENT_HEAT_J_KG * slope / heat
    drive = transfer * (activity * saturated - vapour)
    tangent = drive / (1.0 + cooling * activity)
    cooling = cooling * np.exp(-SLOPE_DECAY_PER_K * LATENT_HEAT_J_KG * tangent / heat)
    below = 1.0 + cooling * activity
    per_activity = transfer * (saturated + cooling * vapour) / below**2
    return drive / below * SECONDS_PER_HOUR, per_activity * SECONDS_PER_HOUR


def _crossing_h(curve: Floats, target: Floats) -> Floats:
    """Return the hours at which each lane comes down to its target, infinite where never."""
    reached = curve <= target
    first = np.argmax(reached, axis=0)
    before = np.maximum(first - 1, 0)
    high = np.take_along_axis(curve, before[np.newaxis], axis=0)[0]
    low = np.take_along_axis(curve, first[np.newaxis], axis=0)[0]
    fall = high - low
    part = np.where(fall > 0, (high - target) / np.where(fall > 0, fall, 1.0), 0.0)
    hours = (before + part) / STEPS_PER_HOUR
    return np.where(reached.any(axis=0), np.where(first > 0, hours, 0.0), np.inf)


def _as_column(values: ArrayLike) -> Floats:
    return np.atleast_1d(np.asarray(values, dtype=np.float64))[:, np.newaxis]
