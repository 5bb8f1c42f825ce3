"""The march of many lanes as one compiled loop: the same as `march`, quicker.

Importing this module imports numba, which the web's processes must not do: see `engine`.
"""

from __future__ import annotations

from typing import Any, NamedTuple

import numpy as np
from numba import njit
from numpy.typing import NDArray

from pieces.domain.drying.block import (
    BASE,
    BEGAN,
    CONDUCTANCE,
    DAMPEST,
    FACE,
    FACE_X,
    FREED,
    FULL,
    INNER,
    INTO,
    INTOS,
    LEFT,
    MEAN,
    MOVES,
    NODES,
    OPENNESS,
    OUTSIDE,
    PER_NODE,
    SHARE,
    SLOPE,
    SPAN,
    SPREAD,
    SPREADS,
    THROUGH,
    VOLUME,
    WARMTH,
    WAS_DAMPEST,
    WAS_FACE,
    WAS_MEAN,
    WET,
    WET_BASE,
    WET_BEGAN,
    WHOLE_LEFT,
    WIDTH,
    X,
    implicit_stage,
)
from pieces.domain.drying.lanes import Lanes, Timetable
from pieces.domain.drying.march import BEYOND, GAMMA, LEAST_WETNESS, Progress
from pieces.domain.drying.surface import LATENT_J_KG
from pieces.domain.drying.vectors import FAST, quick

Floats = NDArray[np.float64]


@quick
def go_beyond(w: Any, began: int, base: int, now: int) -> None:
    """Set base and guess of the second stage from where the first came to."""
    for j in range(WIDTH):
        grown = w[now, j] - w[began, j]
        w[base, j] = w[began, j] + BEYOND * grown
        w[now, j] = max(w[began, j] + grown / GAMMA, 0.1 * w[now, j])


@quick
def step_on(w: Any, nodes: int, walls: bool, inner: bool, outer: bool) -> int:
    """Take one step of two stages; return how many lanes did not settle, counted each time."""
    end = NODES + nodes * PER_NODE
    for node in range(NODES, end, PER_NODE):
        for j in range(WIDTH):
            w[node + BEGAN, j] = w[node + BASE, j] = w[node + X, j]
    for face in range(2):
        for j in range(WIDTH):
            w[WET_BEGAN + face, j] = w[WET_BASE + face, j] = w[WET + face, j]
    unsettled = 0
    for stage in range(2):
        unsettled += implicit_stage(w, nodes, walls, inner, outer)
        for j in range(WIDTH):
            w[WHOLE_LEFT, j] += (1.0 if stage else BEYOND) * w[LEFT, j]
        if stage == 0:
            for node in range(NODES, end, PER_NODE):
                go_beyond(w, node + BEGAN, node + BASE, node + X)
            for face in range(2):
                go_beyond(w, WET_BEGAN + face, WET_BASE + face, WET + face)
    return unsettled


@quick
def measure(w: Any, nodes: int) -> None:
    """Take down mean, dampest and driest-face moisture, and those of the step before."""
    last = NODES + (nodes - 1) * PER_NODE
    for j in range(WIDTH):
        w[WAS_MEAN, j], w[WAS_DAMPEST, j] = w[MEAN, j], w[DAMPEST, j]
        w[WAS_FACE, j] = w[FACE_X, j]
        w[MEAN, j] = w[DAMPEST, j] = 0.0
        w[FACE_X, j] = min(w[NODES + X, j], w[last + X, j])
    for node in range(NODES, last + PER_NODE, PER_NODE):
        for j in range(WIDTH):
            w[MEAN, j] += w[node + SHARE, j] * w[node + X, j]
            w[DAMPEST, j] = max(w[DAMPEST, j], w[node + X, j])


@quick
def fraction(was: float, now: float) -> float:
    """Return where from `was` to `now` a line falls through 0; 0 where it does not."""
    return was / (was - now) if was > 0.0 >= now else 0.0


@quick
def cross(w: Any, limits: Any, crossed: Any, lane: int, j: int, start: float, end: float) -> None:
    """Record the stages that a lane comes to in a step, by a line through its ends."""
    for stage in range(5 if end > start else 0):
        if crossed[stage, lane] < np.inf:
            continue
        limit = limits[stage, lane]
        was, now = (WAS_MEAN, MEAN) if stage < 3 else (WAS_DAMPEST, DAMPEST)
        if w[now, j] > limit or (stage == 0 and w[FACE_X, j] > w[FREED, j]):
            continue
        part = fraction(w[was, j] - limit, w[now, j] - limit)
        if stage == 0:
            freed = fraction(w[WAS_FACE, j] - w[FREED, j], w[FACE_X, j] - w[FREED, j])
            part = max(part, freed)
        crossed[stage, lane] = start + part * (end - start)


@quick
def meet(w: Any, given: Any, step: int, lane_at: Any, width: int) -> tuple[bool, bool]:
    """Set what the lanes of a block meet in a step; say whether either face lies on plaster."""
    inner = outer = False
    for j in range(WIDTH):
        piece = given.piece[lane_at[j]]
        span = given.at_s[step + 1, piece] - given.at_s[step, piece]
        w[MOVES, j] = 1.0 if span > 0.0 and j < width else 0.0
        w[SPAN, j] = GAMMA * span if span > 0.0 else 1.0
        hour, face = given.hour[step, piece], given.face[step, piece]
        for i in range(4):
            w[FULL + i, j] = given.airs[hour, i]
        for i in range(8):
            w[FACE + i, j] = given.faces[face, i]
        if given.faces[face, 10] > 0.0:
            for side in range(2):
                w[OPENNESS + side, j] = min(w[OPENNESS + side, j] * w[THROUGH, j], 1.0)
                w[OUTSIDE + side, j] = min(w[OUTSIDE + side, j] * w[THROUGH, j], 1.0)
        if given.begins[step, piece]:
            for side in range(2):
                fresh = given.faces[face, 8 + side]
                w[WET + side, j] = max(fresh, LEAST_WETNESS) if fresh >= 0.0 else w[WET + side, j]
        inner = inner or w[CONDUCTANCE, j] > 0.0
        outer = outer or w[CONDUCTANCE + 1, j] > 0.0
    for j in range(WIDTH):
        w[SPREADS, j] = w[SPAN, j] * w[SPREAD, j] * w[WARMTH, j]
        w[INTOS, j] = w[SPAN, j] * w[INTO, j]
    return inner, outer


@quick
def load(w: Any, given: Any, kept: Any, lane_at: Any) -> None:
    """Fill the table with what the lanes of a block are, and where they stand."""
    nodes, is_wide = kept.x.shape[0], given.shape.shape[2] > 1
    for j in range(WIDTH):
        lane = lane_at[j]
        for i in range(len(given.constants)):
            w[SLOPE + i, j] = given.constants[i, lane]
        w[WHOLE_LEFT, j] = kept.left[lane]
        for face in range(2):
            w[WET + face, j] = kept.saturation[face, lane]
        for i in range(nodes):
            node = NODES + i * PER_NODE
            w[node + X, j] = kept.x[i, lane]
            for part in range(4):
                w[node + VOLUME + part, j] = given.shape[part, i, lane if is_wide else 0]


@quick
def store(w: Any, kept: Any, first: int, width: int) -> None:
    """Write back where the lanes of a block have come to."""
    for j in range(width):
        kept.left[first + j] = w[WHOLE_LEFT, j]
        for face in range(2):
            kept.saturation[face, first + j] = w[WET + face, j]
        for i in range(kept.x.shape[0]):
            kept.x[i, first + j] = w[NODES + i * PER_NODE + X, j]


@quick
def note(w: Any, kept: Any, place: int, first: int, width: int) -> None:
    """Keep what the track shows, where one is asked for."""
    if len(kept.means):
        for j in range(width):
            kept.means[place, first + j] = w[MEAN, j]
            kept.dampest[place, first + j] = w[DAMPEST, j]


@njit(nogil=True, fastmath=FAST, error_model="numpy", cache=True)
def march_blocks(given: Any, kept: Any) -> int:
    """Carry all lanes through all their steps; return how many lane-stages did not settle."""
    nodes, lanes = kept.x.shape
    w = np.zeros((NODES + nodes * PER_NODE, WIDTH))
    lane_at = np.zeros(WIDTH, np.int64)
    unsettled = 0
    for first in range(0, lanes, WIDTH):
        width = min(WIDTH, lanes - first)
        count, walls = 0, False
        for j in range(WIDTH):
            lane_at[j] = min(first + j, lanes - 1)  # a last block is filled up with its last lane
            count = max(count, given.counts[given.piece[lane_at[j]]])
            walls = walls or given.constants[INNER, lane_at[j]] > 0.0
        load(w, given, kept, lane_at)
        measure(w, nodes)
        note(w, kept, 0, first, width)
        for step in range(count):
            inner, outer = meet(w, given, step, lane_at, width)
            unsettled += step_on(w, nodes, walls, inner, outer)
            measure(w, nodes)
            for j in range(width):
                piece = given.piece[first + j]
                start, end = given.at_s[step, piece], given.at_s[step + 1, piece]
                cross(w, given.limits, kept.crossed, first + j, j, start, end)
            note(w, kept, step + 1, first, width)
        store(w, kept, first, width)
    return unsettled


class Given(NamedTuple):
    """What a march does not change, in arrays that a compiled function can take."""

    constants: Floats
    limits: Floats
    shape: Floats
    piece: NDArray[np.int64]
    counts: NDArray[np.int64]
    at_s: Floats
    hour: NDArray[np.int32]
    face: NDArray[np.int32]
    begins: NDArray[np.bool_]
    airs: Floats
    faces: Floats


def march(lanes: Lanes, table: Timetable, progress: Progress) -> int:
    """Carry all lanes through all their steps; a `March`."""
    constants = [
        lanes.slope,
        lanes.spread,
        1.0 / (lanes.depth_m * lanes.dry_kg_m3),
        np.log(lanes.scale),
        lanes.power,
        lanes.k_m_s,
        LATENT_J_KG / lanes.heat_w_m2_k,
        lanes.inner_area,
        lanes.freed,
        lanes.through,
    ]
    between = np.zeros_like(lanes.volume)
    between[:-1] = lanes.conductance
    given = Given(
        constants=np.stack(constants),
        limits=lanes.limits,
        shape=np.stack([lanes.volume, between, lanes.both, lanes.share]),
        piece=lanes.piece,
        counts=table.counts,
        at_s=table.at_s,
        hour=table.hour,
        face=table.face,
        begins=table.begins,
        airs=table.airs,
        faces=table.faces,
    )
    return int(march_blocks(given, progress))


def get_ready() -> None:
    """Compile the loop, or load it where it was kept, by marching no lanes at all."""
    none = np.zeros((0, 0))
    hours = np.zeros((0, 0), dtype=np.int32)
    lanes = np.zeros(0, dtype=np.int64)
    given = Given(
        constants=none,
        limits=none,
        shape=np.zeros((4, 0, 0)),
        piece=lanes,
        counts=lanes,
        at_s=none,
        hour=hours,
        face=hours,
        begins=hours.astype(bool),
        airs=none,
        faces=none,
    )
    march_blocks(given, Progress(none, none, none, np.zeros(0), none, none))
