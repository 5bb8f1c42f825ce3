"""One implicit stage of a block of lanes, for the compiler: the same sums as `newton`, quicker.

Thirty-two lanes go through a step together, so that a processor does four or eight at once. One
table of rows, thirty-two numbers each, holds all that they need, so that the compiler sees that no
two rows overlap. A lane that has settled is not touched again: its answer does not depend on its
neighbours, and a stored state goes on as if it had not stopped.

Importing this module imports numba, which the web's processes must not do: see `engine`.
"""

from __future__ import annotations

from typing import Any, Final

import numpy as np

from pieces.domain.drying import newton, surface
from pieces.domain.drying.vectors import exp, log, quick

WIDTH: Final = 32

# Copies of the figures of the plain path: a compiled function takes globals of its own module.
SETTLED, MOST_ITERATIONS = newton.SETTLED, newton.MOST_ITERATIONS
LARGEST_CHANGE, LEAST_SHARE = newton.LARGEST_CHANGE, newton.LEAST_SHARE
LARGEST_PLASTER_CHANGE = newton.LARGEST_PLASTER_CHANGE
CURVATURE_PER_K = surface.CURVATURE_PER_K
PLASTER_KNEE = surface.PLASTER_KNEE
PULL_AT_QUARTER = (surface.SUCTION_PA / surface.PLASTER_ENTRY_PA) ** 2
PULL_SLOPE = 2.0 / surface.SUCTION_SLOPE_KG_PER_KG
SUCTION_SLOPE = surface.SUCTION_SLOPE_KG_PER_KG

# Rows. What a lane is:
SLOPE, SPREAD, INTO, SCALE_LOG, POWER, K, COOLING, INNER, FREED, THROUGH = range(10)
# what it meets in a step, as in `Timetable`, and in a stage:
SPAN, FULL, AIR_SLOPE, VAPOUR, WARMTH = range(10, 15)
FACE = 15  # (inner, outer) of openness, conductance, holds, outside, fresh
OPENNESS, CONDUCTANCE, HOLDS, OUTSIDE, FRESH = range(15, 25, 2)
SPREADS, INTOS, MOVES, MOVING, SIZE, LEFT = range(25, 31)
# for each of two faces: saturation now, before the stage, before the step; then the flow out of the
# clay, its slope by moisture, and the plaster's residual, pull and denominator:
WET, WET_BASE, WET_BEGAN, FLOW, BY_X, RESIDUAL, PULL, BELOW = range(31, 47, 2)
MEAN, DAMPEST, FACE_X, WAS_MEAN, WAS_DAMPEST, WAS_FACE, WHOLE_LEFT = range(47, 54)
NODES: Final = 54  # here the nodes begin, each with:
X, BASE, BEGAN, VOLUME, BETWEEN, BOTH, SHARE, FLUX, STEEP, ELIMINATED, INVERSE = range(11)
PER_NODE: Final = 11


@quick
def evaporation(
    activity: float, k: float, cooling: float, full: float, slope: float, vapour: float
) -> tuple[float, float]:
    """Return flow and slope by activity: `surface.evaporation` of one lane; `cooling` is L/h."""
    tangent = k * cooling * slope
    bend = CURVATURE_PER_K * cooling
    drive = k * (activity * full - vapour)
    inverse = 1.0 / (1.0 + tangent * activity)
    rough = drive * inverse
    rough_slope = (k * full - tangent * rough) * inverse
    secant = tangent * exp(-bend * rough)
    inverse = 1.0 / (1.0 + secant * activity)
    flow = drive * inverse
    turn = secant * (1.0 - bend * rough_slope * activity)
    return flow, (k * full - flow * turn) * inverse


@quick
def to_air(w: Any, face: int, node: int) -> None:
    """Reckon what leaves through a face in air."""
    for j in range(WIDTH):
        x = w[node + X, j]
        odds = exp((log(x) - w[SCALE_LOG, j]) / w[POWER, j])
        inverse = 1.0 / (1.0 + odds)
        activity = odds * inverse
        flow, by_activity = evaporation(
            activity,
            w[K, j] * w[OPENNESS + face, j],
            w[COOLING, j],
            w[FULL, j],
            w[AIR_SLOPE, j],
            w[VAPOUR, j],
        )
        w[FLOW + face, j] = flow
        w[BY_X + face, j] = by_activity * activity * inverse / (w[POWER, j] * x)


@quick
def to_plaster(w: Any, face: int, node: int) -> None:
    """Reckon what plaster draws, for the lanes that lie on it."""
    for j in range(WIDTH):
        x, wet, span = w[node + X, j], w[WET + face, j], w[SPAN, j]
        pull = PULL_AT_QUARTER * exp((0.25 - x) * PULL_SLOPE)
        rest = 1.0 / np.sqrt(1.0 + pull)
        rest_slope = rest * rest * rest * pull / SUCTION_SLOPE
        over = 1.0 / (wet + PLASTER_KNEE)
        out, by_wet = evaporation(
            wet * over,
            w[K, j] * w[OUTSIDE + face, j],
            w[COOLING, j],
            w[FULL, j],
            w[AIR_SLOPE, j],
            w[VAPOUR, j],
        )
        conductance, held = w[CONDUCTANCE + face, j], w[HOLDS + face, j]
        drawn = conductance * (rest - wet)
        residual = held * (wet - w[WET_BASE + face, j]) - span * (drawn - out)
        below = held + span * (conductance + by_wet * PLASTER_KNEE * over * over)
        on = conductance > 0.0
        flow = drawn + conductance * residual / below
        by_x = conductance * rest_slope * (1.0 - span * conductance / below)
        w[FLOW + face, j] = flow if on else w[FLOW + face, j]
        w[BY_X + face, j] = by_x if on else w[BY_X + face, j]
        w[RESIDUAL + face, j] = residual
        w[PULL + face, j] = span * conductance * rest_slope
        w[BELOW + face, j] = below


@quick
def eliminate(w: Any, nodes: int, walls: bool) -> None:
    """Set the system up from the inner face outwards and eliminate on the way (Thomas)."""
    last = NODES + (nodes - 1) * PER_NODE
    for j in range(WIDTH):
        flux = w[SPREADS, j] * exp(w[SLOPE, j] * (w[NODES + X, j] - 0.20))
        steep = flux * w[SLOPE, j]
        w[NODES + FLUX, j], w[NODES + STEEP, j] = flux, steep
        into = w[INTOS, j] * w[INNER, j]
        right = w[NODES + VOLUME, j] * (w[NODES + X, j] - w[NODES + BASE, j])
        diagonal = w[NODES + VOLUME, j] + w[NODES + BOTH, j] * steep
        w[NODES + ELIMINATED, j] = right + (into * w[FLOW, j] if walls else 0.0)
        w[NODES + INVERSE, j] = diagonal + (into * w[BY_X, j] if walls else 0.0)
    for node in range(NODES + PER_NODE, last + PER_NODE, PER_NODE):
        before = node - PER_NODE
        for j in range(WIDTH):
            flux = w[SPREADS, j] * exp(w[SLOPE, j] * (w[node + X, j] - 0.20))
            steep = flux * w[SLOPE, j]
            w[node + FLUX, j], w[node + STEEP, j] = flux, steep
            between = w[before + BETWEEN, j]
            passed = between * (w[before + FLUX, j] - flux)
            inverse = 1.0 / w[before + INVERSE, j]
            w[before + INVERSE, j] = inverse
            right = (w[before + ELIMINATED, j] + passed) * inverse
            w[before + ELIMINATED, j] = right
            ratio = between * w[before + STEEP, j]
            own = w[node + VOLUME, j] * (w[node + X, j] - w[node + BASE, j])
            w[node + ELIMINATED, j] = own - passed + ratio * right
            diagonal = w[node + VOLUME, j] + w[node + BOTH, j] * steep
            w[node + INVERSE, j] = diagonal - ratio * between * steep * inverse
    for j in range(WIDTH):
        w[last + ELIMINATED, j] += w[INTOS, j] * w[FLOW + 1, j]
        w[last + INVERSE, j] += w[INTOS, j] * w[BY_X + 1, j]
        w[last + ELIMINATED, j] /= w[last + INVERSE, j]


@quick
def change(w: Any, nodes: int, walls: bool) -> None:
    """Substitute back, move the moistures on, and take down what leaves and the largest change."""
    last = NODES + (nodes - 1) * PER_NODE
    for j in range(WIDTH):
        w[SIZE, j] = abs(w[last + ELIMINATED, j])
    for node in range(last - PER_NODE, NODES - PER_NODE, -PER_NODE):
        after = node + PER_NODE
        for j in range(WIDTH):
            handed = w[node + BETWEEN, j] * w[after + STEEP, j] * w[after + ELIMINATED, j]
            minus = w[node + ELIMINATED, j] + w[node + INVERSE, j] * handed
            w[node + ELIMINATED, j] = minus
            w[SIZE, j] = max(w[SIZE, j], abs(minus))
    for j in range(WIDTH):
        gone = w[FLOW + 1, j] - w[BY_X + 1, j] * w[last + ELIMINATED, j]
        if walls:
            gone += w[INNER, j] * (w[FLOW, j] - w[BY_X, j] * w[NODES + ELIMINATED, j])
        w[LEFT, j] = w[SPAN, j] * gone if w[MOVING, j] > 0.0 else w[LEFT, j]
    for node in range(NODES, last + PER_NODE, PER_NODE):
        for j in range(WIDTH):
            x = w[node + X, j]
            step = min(max(-w[node + ELIMINATED, j], -LARGEST_CHANGE), LARGEST_CHANGE)
            step = max(step, (LEAST_SHARE - 1.0) * x)
            w[node + X, j] = x + step if w[MOVING, j] > 0.0 else x


@quick
def fill(w: Any, face: int, node: int) -> None:
    """Move the saturation of the plaster on, and let its change count."""
    for j in range(WIDTH):
        wet = w[WET + face, j]
        filled = (-w[PULL + face, j] * w[node + ELIMINATED, j] - w[RESIDUAL + face, j]) / w[
            BELOW + face, j
        ]
        on = w[CONDUCTANCE + face, j] > 0.0
        w[SIZE, j] = max(w[SIZE, j], abs(filled)) if on else w[SIZE, j]
        step = min(max(filled, -LARGEST_PLASTER_CHANGE), LARGEST_PLASTER_CHANGE)
        step = max(step, (LEAST_SHARE - 1.0) * wet)
        w[WET + face, j] = wet + step if on and w[MOVING, j] > 0.0 else wet


@quick
def implicit_stage(w: Any, nodes: int, walls: bool, inner: bool, outer: bool) -> int:
    """Solve one stage from the guess in the table; return how many lanes did not settle.

    `walls`, `inner`, `outer`: whether a lane has two faces, and lies on plaster with either.
    """
    last = NODES + (nodes - 1) * PER_NODE
    for j in range(WIDTH):
        w[LEFT, j] = 0.0
        w[MOVING, j] = w[MOVES, j]
    moving = 0.0
    for _ in range(MOST_ITERATIONS):
        if walls:
            to_air(w, 0, NODES)
            if inner:
                to_plaster(w, 0, NODES)
        to_air(w, 1, last)
        if outer:
            to_plaster(w, 1, last)
        eliminate(w, nodes, walls)
        change(w, nodes, walls)
        if walls and inner:
            fill(w, 0, NODES)
        if outer:
            fill(w, 1, last)
        moving = 0.0
        for j in range(WIDTH):
            w[MOVING, j] = w[MOVING, j] if w[SIZE, j] >= SETTLED else 0.0
            moving += w[MOVING, j]
        if moving == 0.0:
            break
    return int(moving)
