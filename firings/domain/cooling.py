"""When a kiln may be cool enough to open, as a range: it never says that it is.

Newton's law of cooling, T = T_a + (T_0 - T_a) exp(-k t), overstates the early fall at red heat and
the tail, so k is fitted below 600 °C where readings allow (common practice). Usual rates: time
constants of 3 to 5 h for a small top-loader, 5 to 9 h for larger or thicker kilns (from memory).
Only a measured temperature opens a kiln.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final, Literal

import numpy as np
from numpy.typing import NDArray

from firings.domain.firing_times import Point, in_order
from studio.domain.hours import elapsed_h
from studio.domain.refusals import Unworkable

Basis = Literal["guess", "known", "readings"]

FITTED_FROM_C: Final = 600.0
NEAREST_TO_AIR_K: Final = 20.0
"""Closer to the air than this, a degree of the sensor moves the rate too much; no source. [K]"""

SLOWEST_PER_H: Final = 1.0 / 9.0
FASTEST_PER_H: Final = 1.0 / 3.0
LEAST_SPREAD: Final = 0.10
"""Share of k never claimed to be known better than this; common practice, no source."""

ONLY_MEASURED: Final = "An estimate opens no kiln: read the temperature first."


class NotCooling(Unworkable):
    code = "not-cooling"
    title = "Those readings do not fall."


class NeverThatCool(Unworkable):
    code = "never-that-cool"
    title = "The kiln does not get that cool in this air."


@dataclass(frozen=True, slots=True)
class Cooling:
    """How a kiln loses heat: rate constant and its range [1/h], and the air around it [°C]."""

    k_per_h: float
    k_low: float
    k_high: float
    ambient_c: float
    basis: Basis
    readings: int = 0


@dataclass(frozen=True, slots=True)
class CoolAt:
    """When a temperature is reached: not before `early`, likely, and hardly after `late`."""

    early: datetime
    likely: datetime
    late: datetime
    caution: str = ONLY_MEASURED


def air_at_kiln(room_c: float, assumed_c: float) -> float:
    """Return the air that a hot kiln cools to: the room's, but at least what the studio assumes.

    A meter hangs away from the kiln, and the air at a hot kiln is warmer than it reads: taking a
    cold night for it would call the kiln cool too early. Common practice, no source. [°C]
    """
    return max(room_c, assumed_c)


def guess(ambient_c: float) -> Cooling:
    """Return the cooling of a kiln nobody has watched: all usual rates, their middle for likely."""
    middle = math.sqrt(SLOWEST_PER_H * FASTEST_PER_H)
    return Cooling(middle, SLOWEST_PER_H, FASTEST_PER_H, ambient_c, "guess")


def known(k_per_h: float, ambient_c: float, *, spread_fraction: float = LEAST_SPREAD) -> Cooling:
    """Return the cooling of a kiln whose rate earlier firings showed.

    Parameters
    ----------
    k_per_h
        Rate constant. [1/h]
    ambient_c
        Air of the kiln room. [°C]
    spread_fraction
        How far the rate goes either way from load to load; at least a tenth is taken.
    """
    if not (math.isfinite(k_per_h) and k_per_h > 0.0):
        raise ValueError("A rate constant is above 0 per hour.")
    spread = max(spread_fraction, LEAST_SPREAD)
    return Cooling(k_per_h, k_per_h / (1.0 + spread), k_per_h * (1.0 + spread), ambient_c, "known")


def fit(points: Sequence[Point], ambient_c: float) -> Cooling:
    """Return how a kiln cools, from its readings after the end of the firing.

    Parameters
    ----------
    points
        Two readings or more while it cools, in any order, (instant, °C).
    ambient_c
        Air of the kiln room. [°C]

    Returns
    -------
    The slope of ln(T - T_a) by least squares, with two standard errors but at least a tenth.

    Raises
    ------
    NotCooling
        When fewer than two readings stand apart in time and above the air, or they do not fall.
    """
    usable = [(at, c) for at, c in in_order(points) if c - ambient_c >= NEAREST_TO_AIR_K]
    cooler = [(at, c) for at, c in usable if c <= FITTED_FROM_C]
    used = cooler if len({at for at, _ in cooler}) > 1 else usable
    if len({at for at, _ in used}) <= 1:
        raise NotCooling("Two readings, some time apart, are needed to see how it cools.")
    hours = np.array([elapsed_h(used[0][0], at) for at, _ in used])
    logs = np.log(np.array([celsius - ambient_c for _, celsius in used]))
    slope, level = np.polyfit(hours, logs, 1)
    k = -float(slope)
    if k <= 0.0:
        raise NotCooling("The readings rise or stay: it does not cool yet.")
    spread = max(LEAST_SPREAD, 2.0 * _slope_error(hours, logs, float(slope), float(level)) / k)
    return Cooling(k, k / (1.0 + spread), k * (1.0 + spread), ambient_c, "readings", len(used))


def reaches(cooling: Cooling, at: datetime, celsius: float, limit_c: float) -> CoolAt:
    """Return when a kiln that reads `celsius` at `at` comes down to `limit_c`. [°C]

    Raises `NeverThatCool` when the limit does not lie above the air. A kiln that is there already
    reaches it at `at`.
    """
    if limit_c <= cooling.ambient_c:
        raise NeverThatCool(
            f"The air around it has {cooling.ambient_c:.0f} °C; it does not cool to "
            f"{limit_c:.0f} °C."
        )
    if celsius <= limit_c:
        return CoolAt(at, at, at)
    fall = math.log((celsius - cooling.ambient_c) / (limit_c - cooling.ambient_c))
    early, likely, late = (
        at + timedelta(hours=fall / k) for k in (cooling.k_high, cooling.k_per_h, cooling.k_low)
    )
    return CoolAt(early, likely, late)


def _slope_error(
    hours: NDArray[np.float64], logs: NDArray[np.float64], slope: float, level: float
) -> float:
    """Return the standard error of a regression slope, 0 when two points leave nothing over."""
    if len(hours) < 3:
        return 0.0
    left = logs - (level + slope * hours)
    spread = float(((hours - hours.mean()) ** 2).sum())
    return math.sqrt(float((left**2).sum()) / (len(hours) - 2) / spread)
