"""The curve a screen draws: water left in the piece, with its range."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from pieces.domain.drying.problem import Ensemble, Track

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Curve:
    """Water left that this room can take, 1 as pressed to 0 at rest with the air.

    at_s : (points,) instants [s since 1970]; p10, p50, p90 : (points,), fractions
    at_rest_kg_per_kg : the moisture that counts as 0 (clay at rest in the mean air at the end)
    """

    at_s: Floats
    p10: Floats
    p50: Floats
    p90: Floats
    at_rest_kg_per_kg: float


def curve(after: Ensemble, track: Track, at_s: ArrayLike) -> Curve:
    """Return the water left at the instants `at_s`, median and the middle 80 %.

    Parameters
    ----------
    after, track
        Of one ensemble, from `simulate` with `keeps_track`.
    at_s
        Instants within the track; before and after it the first and last values are given.

    Raises
    ------
    ValueError
        When the track belongs to another number of draws.
    """
    if track.mean_kg_per_kg.shape[1] != after.draws:
        raise ValueError("The track belongs to another ensemble.")
    instants = np.atleast_1d(np.asarray(at_s, dtype=np.float64))
    rest = at_rest_kg_per_kg(after)
    order_free = np.stack(
        [np.interp(instants, track.at_s, column) for column in track.mean_kg_per_kg.T]
    )
    pressed = after.theta[2][:, None]
    left = np.clip((order_free - rest) / (pressed - rest), 0.0, None)
    low, middle, high = _weighted_levels(left, after.weights, (0.1, 0.5, 0.9))
    return Curve(instants, low, middle, high, rest)


def at_rest_kg_per_kg(after: Ensemble) -> float:
    """Return the moisture at which the clay rests in the mean air of the last day. [kg/kg]

    Never more than half of what the body holds as pressed, so that the curve keeps a scale.
    """
    climate, body = after.problem.climate, after.problem.body
    humidity = climate.humidity_between(climate.end_s - 24 * 3600, climate.end_s)
    most = 0.5 * body.pressed_kg_per_kg
    return most if humidity >= 1.0 else min(most, body.at_rest_kg_per_kg(humidity))


def _weighted_levels(
    values: Floats, weights: Floats, levels: tuple[float, ...]
) -> tuple[Floats, ...]:
    """Return mid-rank quantiles over the first axis of (draws, points)."""
    order = np.argsort(values, axis=0, kind="stable")
    ranked = np.take_along_axis(values, order, axis=0)
    share = weights[order]
    middle = np.cumsum(share, axis=0) - 0.5 * share
    return tuple(
        np.array([np.interp(level, middle[:, i], ranked[:, i]) for i in range(values.shape[1])])
        for level in levels
    )
