"""The air of a place as hourly temperature and vapour density, measured, assumed and forecast.

Readings are joined by straight lines in temperature and *vapour density* and integrated exactly
over each hour. Beyond the last reading the room goes on as it was: its own daily shape, shifted
to meet the last reading (persistence). Instants are seconds since 1970 (UTC); hours of the day are
UTC hours, so after the clocks change the shape is an hour off until new days fill it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from studio.domain import moist_air
from studio.domain.resample import means_between

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

HOUR_S: Final = 3600
DAY_H: Final = 24
LONGEST_GAP_S: Final = 12 * HOUR_S
SHAPE_DAYS: Final = 7
DEFAULT_AIR_C: Final = 15.0  # assumed where a room has no readings; common practice, no source
DEFAULT_HUMIDITY_FRACTION: Final = 0.65
DRIEST_FRACTION: Final = 0.05


@dataclass(frozen=True, slots=True)
class Reading:
    """One look at the meter that is fit for use.

    at_s : instant [s since 1970]; air_c : 0 to 50 [°C]; humidity_fraction : 0.05 to 1.
    Raises `ValueError` outside: what is odd must be left out or asked about before it comes here.
    """

    at_s: float
    air_c: float
    humidity_fraction: float

    def __post_init__(self) -> None:
        """Refuse what no room shows."""
        if not 0.0 <= self.air_c <= 50.0:
            raise ValueError("air_c must lie from 0 to 50.")
        if not DRIEST_FRACTION <= self.humidity_fraction <= 1.0:
            raise ValueError("humidity_fraction must lie from 0.05 to 1.")


@dataclass(frozen=True, slots=True)
class Climate:
    """Hourly means from `start_s` (a whole hour) on; arrays have shape (hours,).

    assumed : hours without a reading within reach: gaps over 12 h and rooms without a meter
    measured_to_s : instant of the last reading (None: no reading); later hours are forecast
    """

    start_s: int
    air_c: Floats
    vapour_kg_m3: Floats
    assumed: Flags
    measured_to_s: float | None

    def __post_init__(self) -> None:
        """Refuse arrays that do not fit together."""
        if self.start_s % HOUR_S:
            raise ValueError("start_s must be a whole hour.")
        if not self.air_c.shape == self.vapour_kg_m3.shape == self.assumed.shape:
            raise ValueError("air_c, vapour_kg_m3 and assumed must be of one shape.")

    @property
    def end_s(self) -> int:
        """Return the instant up to which the air is given. [s since 1970]"""
        return self.start_s + HOUR_S * len(self.air_c)

    def humidity_between(self, from_s: float, to_s: float) -> float:
        """Return mean vapour density over mean saturation between two instants, 0 to 1.

        Raises `ValueError` when no hour lies between them.
        """
        first = max(0, int((from_s - self.start_s) // HOUR_S))
        last = min(len(self.air_c), int(-((self.start_s - to_s) // HOUR_S)))
        if last <= first:
            raise ValueError("The climate has no hour between those instants.")
        air = self.air_c[first:last]
        full = float(np.mean(moist_air.saturation_density_kg_m3(air)))
        return min(1.0, float(np.mean(self.vapour_kg_m3[first:last])) / full)


def constant_climate(
    start_s: float, until_s: float, air_c: float, humidity_fraction: float
) -> Climate:
    """Return air that does not change, for sums on the calculator. Raises `ValueError`."""
    start, hours = _whole_hours(start_s, until_s)
    vapour = float(moist_air.vapour_density_kg_m3(air_c, humidity_fraction))
    return Climate(
        start, np.full(hours, air_c), np.full(hours, vapour), np.zeros(hours, bool), None
    )


def climate_from(readings: Sequence[Reading], start_s: float, until_s: float) -> Climate:
    """Return the hourly air of a place from its readings, then its forecast.

    Parameters
    ----------
    readings
        Fit for use, in any order; two at one instant count once (the later in the sequence).
        Readings before `start_s` are welcome: they give the daily shape.
    start_s, until_s
        Instants to cover, widened to whole hours. [s since 1970]

    Returns
    -------
    Climate. Without readings it is 15 °C and 0.65, all assumed.

    Raises
    ------
    ValueError
        When `until_s` does not lie after `start_s`.
    """
    start, hours = _whole_hours(start_s, until_s)
    if not readings:
        plain = constant_climate(start_s, until_s, DEFAULT_AIR_C, DEFAULT_HUMIDITY_FRACTION)
        return Climate(start, plain.air_c, plain.vapour_kg_m3, np.ones(hours, bool), None)
    at, values = _sorted(readings)
    air, vapour = values
    first = min(start, int(at[0] // HOUR_S) * HOUR_S)
    grid = np.arange(first, start + hours * HOUR_S + 1, HOUR_S, dtype=np.float64)
    seen = grid[:-1] < at[-1]
    air_h = means_between(grid, at, air)
    vapour_h = means_between(grid, at, vapour)
    air_h = _carry_on(grid, air_h, seen, float(at[-1]), float(air[-1]))
    vapour_h = _carry_on(grid, vapour_h, seen, float(at[-1]), float(vapour[-1]))
    air_h = np.clip(air_h, 0.0, moist_air.HIGHEST_AIR_C)
    full = moist_air.saturation_density_kg_m3(air_h)
    vapour_h = np.clip(vapour_h, DRIEST_FRACTION * full, full)
    keep = grid[:-1] >= start
    return Climate(start, air_h[keep], vapour_h[keep], _assumed(grid, at)[keep], float(at[-1]))


def _whole_hours(start_s: float, until_s: float) -> tuple[int, int]:
    start = int(start_s // HOUR_S) * HOUR_S
    hours = int(-((start - until_s) // HOUR_S))
    if hours < 1:
        raise ValueError("until_s must lie after start_s.")
    return start, hours


def _sorted(readings: Sequence[Reading]) -> tuple[Floats, Floats]:
    by_instant = {reading.at_s: reading for reading in readings}
    ordered = [by_instant[at] for at in sorted(by_instant)]
    at = np.array([reading.at_s for reading in ordered], dtype=np.float64)
    air = np.array([reading.air_c for reading in ordered], dtype=np.float64)
    humidity = np.array([reading.humidity_fraction for reading in ordered], dtype=np.float64)
    return at, np.stack([air, moist_air.vapour_density_kg_m3(air, humidity)])


def _carry_on(grid: Floats, hourly: Floats, seen: Flags, last_s: float, last: float) -> Floats:
    """Replace the hours after the last reading by the room's own day, shifted to meet it."""
    hour_of_day = ((grid[:-1] // HOUR_S) % DAY_H).astype(int)
    known = np.flatnonzero(seen)[-SHAPE_DAYS * DAY_H :]
    counts = np.bincount(hour_of_day[known], minlength=DAY_H)
    if len(known) < DAY_H or np.any(counts == 0):
        return np.where(seen, hourly, last)
    shape = np.bincount(hour_of_day[known], hourly[known], minlength=DAY_H) / counts
    middle = (last_s - HOUR_S / 2) / HOUR_S
    usual = float(np.interp(middle % DAY_H, np.arange(DAY_H + 1), np.append(shape, shape[0])))
    return np.where(seen, hourly, shape[hour_of_day] + (last - usual))


def _assumed(grid: Floats, at: Floats) -> Flags:
    """Mark the hours of gaps over 12 h, and those more than 12 h before the first reading."""
    starts = grid[:-1]
    after = np.searchsorted(at, starts + HOUR_S / 2)
    before = np.concatenate([[-np.inf], at])[after]
    following = np.concatenate([at, [np.inf]])[after]
    inside = np.isfinite(before) & np.isfinite(following)
    gap = inside & (following - before > LONGEST_GAP_S)
    early = ~np.isfinite(before) & (at[0] - starts > LONGEST_GAP_S)
    return np.asarray(gap | early)
