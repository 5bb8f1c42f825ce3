"""One implicit stage for many lanes: Newton's method on a tridiagonal system.

The unknowns are the moistures of the nodes. Fluxes between nodes use the Kirchhoff transform of an
exponential diffusivity, so a face value needs no averaging. The plaster's one node is eliminated
inside each iteration. What leaves is kept in the linearised form that the iteration solves, so
water balances to round-off whatever the number of iterations.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying.lanes import Lanes, Moment
from pieces.domain.drying.surface import (
    clay_activity,
    evaporation,
    plaster_activity,
    plaster_at_rest,
)

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

SETTLED: Final = 1e-6  # a last change this small leaves an error of about its square
MOST_ITERATIONS: Final = 60
LARGEST_CHANGE: Final = 0.06  # unclipped hourly steps at plaster run away
LARGEST_PLASTER_CHANGE: Final = 0.2
LEAST_SHARE: Final = 0.1  # a moisture never falls below a tenth of itself in one iteration


@dataclass(frozen=True, slots=True)
class Stage:
    """Where an implicit stage ended: (nodes, lanes), (2, lanes), (lanes,) [kg/m²], count."""

    x: Floats
    saturation: Floats
    left: Floats
    unsettled: int


@dataclass(slots=True)
class _Side:
    """Flow out of the clay through one face, its slope by moisture, and what plaster needs."""

    flow: Floats
    slope: Floats
    plaster: NDArray[np.intp]
    residual: Floats
    pull: Floats
    denominator: Floats


def implicit_stage(
    lanes: Lanes,
    moment: Moment,
    span_s: Floats,
    base: tuple[Floats, Floats],
    guess: tuple[Floats, Floats],
) -> Stage:
    """Solve x = base + span_s f(x) for moisture and plaster together, from `guess`.

    Lanes with a span of 0 keep their guess. A lane that has settled is not touched again, so its
    answer does not depend on the lanes beside it.
    """
    x, saturation = guess[0].copy(), guess[1].copy()
    moving = span_s > 0.0
    span = np.where(moving, span_s, 1.0)
    left = np.zeros_like(span)
    spread = span * lanes.spread * moment.arrhenius
    into = span / (lanes.depth_m * lanes.dry_kg_m3)
    walls = bool(lanes.inner_area.any())
    for _ in range(MOST_ITERATIONS):
        sides = [
            _side(lanes, moment, span, x[node], saturation[i], base[1][i], i)
            for i, node in ((0, 0), (1, -1))
            if i or walls
        ]
        change = _change(lanes, x, base[0], spread, into, sides)
        size = np.maximum(change.max(axis=0), -change.min(axis=0))
        step = np.clip(change, -LARGEST_CHANGE, LARGEST_CHANGE)
        np.maximum(step, (LEAST_SHARE - 1.0) * x, out=step)
        gone = span * (sides[-1].flow + sides[-1].slope * change[-1])
        if walls:
            gone += span * lanes.inner_area * (sides[0].flow + sides[0].slope * change[0])
        for i, side in enumerate(sides, start=0 if walls else 1):
            if side.plaster.size:
                _fill(saturation[i], side, change[0 if i == 0 else -1], moving, size)
        if moving.all():
            x += step
            left = gone
        else:
            x += np.where(moving, step, 0.0)
            left = np.where(moving, gone, left)
        moving = moving & (size >= SETTLED)
        if not moving.any():
            break
    return Stage(x, saturation, left, int(moving.sum()))


def _side(
    lanes: Lanes,
    moment: Moment,
    span: Floats,
    x: Floats,
    saturation: Floats,
    was: Floats,
    i: int,
) -> _Side:
    activity, activity_slope = clay_activity(x, lanes.scale, lanes.power)
    k = lanes.k_m_s * moment.openness[i]
    flow, by_activity = evaporation(activity, k, lanes.heat_w_m2_k, moment.air)
    slope = by_activity * activity_slope
    at = moment.on_plaster[i]
    none = np.empty(0)
    if not at.size:
        return _Side(flow, slope, at, none, none, none)
    air = (moment.air[0][at], moment.air[1][at], moment.air[2][at])
    rest, rest_slope = plaster_at_rest(x[at])
    wet, wet_slope = plaster_activity(saturation[at])
    out, out_slope = evaporation(
        wet, lanes.k_m_s[at] * moment.outside[i][at], lanes.heat_w_m2_k[at], air
    )
    conductance, held, seconds = moment.conductance[i][at], moment.holds[i][at], span[at]
    drawn = conductance * (rest - saturation[at])
    residual = held * (saturation[at] - was[at]) - seconds * (drawn - out)
    denominator = held + seconds * (conductance + out_slope * wet_slope)
    flow[at] = drawn + conductance * residual / denominator
    slope[at] = conductance * rest_slope * (1.0 - seconds * conductance / denominator)
    pull = seconds * conductance * rest_slope
    return _Side(flow, slope, at, residual, pull, denominator)


def _fill(saturation: Floats, side: _Side, change: Floats, moving: Flags, size: Floats) -> None:
    """Move the plaster's saturation on, in place, and let its change count in `size`."""
    at = side.plaster
    fill = (side.pull * change[at] - side.residual) / side.denominator
    size[at] = np.maximum(size[at], np.abs(fill))
    kept = saturation[at]
    step = np.maximum(
        np.clip(fill, -LARGEST_PLASTER_CHANGE, LARGEST_PLASTER_CHANGE), (LEAST_SHARE - 1.0) * kept
    )
    saturation[at] = kept + np.where(moving[at], step, 0.0)


def _change(
    lanes: Lanes,
    x: Floats,
    base: Floats,
    spread: Floats,
    into: Floats,
    sides: list[_Side],
) -> Floats:
    """Return Newton's change of moisture, unclipped: one symmetric tridiagonal solve.

    Columns are scaled by the slope of the transformed moisture, which leaves the constant
    conductances off the diagonal.
    """
    potential = x - 0.20
    potential *= lanes.slope
    np.exp(potential, out=potential)
    potential *= spread
    between = potential[:-1] - potential[1:]
    between *= lanes.conductance
    residual = x - base
    residual *= lanes.volume
    residual[:-1] += between
    residual[1:] -= between
    potential *= lanes.slope  # from here on: slope of the transformed moisture
    diagonal = lanes.volume / potential
    diagonal += lanes.both
    outer = sides[-1]
    residual[-1] += into * outer.flow
    diagonal[-1] += into * outer.slope / potential[-1]
    if len(sides) > 1:
        inner = into * lanes.inner_area
        residual[0] += inner * sides[0].flow
        diagonal[0] += inner * sides[0].slope / potential[0]
    _thomas(diagonal, residual, lanes.conductance)
    residual /= potential
    np.negative(residual, out=residual)
    return residual


def _thomas(diagonal: Floats, right: Floats, off: Floats) -> None:
    """Solve the symmetric system with -`off` beside the diagonal, in place, into `right`."""
    for i in range(1, len(diagonal)):
        ratio = off[i - 1] / diagonal[i - 1]
        diagonal[i] -= ratio * off[i - 1]
        right[i] += ratio * right[i - 1]
    right[-1] /= diagonal[-1]
    for i in range(len(diagonal) - 2, -1, -1):
        right[i] += off[i] * right[i + 1]
        right[i] /= diagonal[i]
