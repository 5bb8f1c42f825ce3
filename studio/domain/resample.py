"""Even steps of time out of uneven readings.

Between two readings temperature and vapour density run along straight lines; each step is the mean
of that line over the step. Relative humidity is not averaged, since it does not add up: it is the
mean vapour density over the saturation density at the mean temperature.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from studio.domain import moist_air

#: Readings further apart tell nothing of the hours between them; common practice, no source.
LONGEST_GAP_S: Final = 12 * 3600.0
#: Edges are sums: what lies past a reading by less than this is at the reading.
ROUND_OFF_S: Final = 1e-3

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Step:
    """The mean air from `starts_s` on, one step long; instants in seconds since 1970."""

    starts_s: float
    air_c: float
    vapour_kg_m3: float
    humidity_fraction: float


def even_steps(
    readings: Sequence[tuple[float, float, float]],
    *,
    from_s: float,
    until_s: float,
    step_s: float,
) -> list[Step]:
    """Return the mean air of each whole step that readings cover.

    Parameters
    ----------
    readings
        (instant [s since 1970], air temperature [°C], humidity fraction), in order of time.
    from_s, until_s
        The steps begin at `from_s`; the last one ends by `until_s`. [s since 1970]
    step_s
        Length of a step. [s]

    Returns
    -------
    Steps in order. A step that reaches before the first reading, beyond the last one, or into a gap
    of more than 12 h is left out.

    Raises
    ------
    ValueError
        When `step_s` is not positive, or a reading lies outside the range of `moist_air`.
    """
    if not step_s > 0.0:
        raise ValueError("step_s must be above 0.")
    count = int((until_s - from_s) // step_s)
    if len(readings) < 2 or count < 1:
        return []
    at, air, humidity = (
        np.array(column, dtype=np.float64) for column in zip(*readings, strict=True)
    )
    vapour = moist_air.vapour_density_kg_m3(air, humidity)
    edges = np.linspace(from_s, from_s + count * step_s, count + 1, dtype=np.float64)
    mean_air, mean_vapour = means_between(edges, at, air), means_between(edges, at, vapour)
    full = moist_air.saturation_density_kg_m3(mean_air)
    share = np.minimum(1.0, mean_vapour / full)
    return [
        Step(float(edges[i]), float(mean_air[i]), float(mean_vapour[i]), float(share[i]))
        for i in np.flatnonzero(_covered(edges, at))
    ]


def means_between(edges: Floats, at: Floats, values: Floats) -> Floats:
    """Return the exact means of the line through (at, values) between neighbouring edges."""
    corners = np.union1d(edges, at)
    line = np.interp(corners, at, values)
    areas = np.concatenate([[0.0], np.cumsum(0.5 * (line[1:] + line[:-1]) * np.diff(corners))])
    means: Floats = np.diff(np.interp(edges, corners, areas)) / np.diff(edges)
    return means


def _covered(edges: Floats, at: Floats) -> NDArray[np.bool_]:
    starts, ends = edges[:-1], edges[1:]
    covered = (starts >= at[0] - ROUND_OFF_S) & (ends <= at[-1] + ROUND_OFF_S)
    for gap in np.flatnonzero(np.diff(at) > LONGEST_GAP_S):
        before = ends <= at[gap] + ROUND_OFF_S
        covered &= before | (starts >= at[gap + 1] - ROUND_OFF_S)
    return np.asarray(covered)
