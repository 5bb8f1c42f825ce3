"""Where posts can stand among the ware, so that they carry the shelf above.

Three posts carry a shelf when its middle lies inside their triangle. They stand one above another,
so a place must be free on every layer that carries one. Makers move posts by hand: a little room to
spare is asked for round each.
"""

import math
from collections.abc import Sequence
from typing import Final

import numpy as np

from firings.domain.fit_problem import POST_SPARE_MM
from firings.domain.placing import free_places
from firings.domain.shapes import Floats, Footprint, Outline, Spot

STEP_DEG: Final = 2.0
INSETS_MM: Final = (0.0, 10.0, 20.0)
EVEN_DEG: Final = 120.0
WIDEST_DEG: Final = 170.0
"""Widest angle between neighbouring posts, seen from the middle; 180 would tip. No source."""


def foot(footprint_mm: float) -> Footprint:
    """Return the room a square post takes whichever way it is turned, with room to spare. [mm]"""
    across = footprint_mm * math.sqrt(2.0) + 2.0 * POST_SPARE_MM
    return Footprint(across, across, is_round=True)


def stand_posts(
    outline: Outline, layers: Sequence[Sequence[Spot]], footprint_mm: float, gap_mm: float
) -> list[Spot] | None:
    """Return places for three posts, clear of the ware of all layers; None when none were found."""
    post = foot(footprint_mm)
    x, y = _round_the_rim(outline, post.width_mm / 2.0 - POST_SPARE_MM)
    # The spare room may hang over the rim; the post itself does not.
    wider = Outline(
        outline.is_round,
        outline.width_mm + 2.0 * POST_SPARE_MM,
        outline.depth_mm + 2.0 * POST_SPARE_MM,
    )
    free = np.ones(len(x), dtype=bool)
    for layer in layers:
        free &= free_places(wider, layer, post, gap_mm, x, y)
    found = _most_even(x[free], y[free])
    return None if found is None else [Spot(px, py, post) for px, py in found]


def _round_the_rim(outline: Outline, radius_mm: float) -> tuple[Floats, Floats]:
    angles = np.radians(np.arange(0.0, 360.0, STEP_DEG))
    towards = np.cos(angles), np.sin(angles)
    sides = []
    for inset in INSETS_MM:
        room_x = outline.width_mm / 2.0 - radius_mm - inset
        room_y = outline.depth_mm / 2.0 - radius_mm - inset
        if min(room_x, room_y) <= 0.0:
            continue
        if outline.is_round:
            reach = np.full(len(angles), room_x)
        else:
            with np.errstate(divide="ignore"):
                reach = np.minimum(room_x / np.abs(towards[0]), room_y / np.abs(towards[1]))
        sides.append((reach * towards[0], reach * towards[1]))
    empty = (np.empty(0), np.empty(0))
    return (
        np.concatenate([empty[0], *(x for x, _ in sides)]),
        np.concatenate([empty[1], *(y for _, y in sides)]),
    )


def _most_even(x: Floats, y: Floats) -> list[tuple[float, float]] | None:
    """Return three points with the middle inside, the widest angle between them the least found."""
    if len(x) < 3:
        return None
    angles = np.degrees(np.arctan2(y, x)) % 360.0
    best: tuple[float, tuple[int, int, int]] | None = None
    for first in range(len(x)):
        others = [
            int(np.argmin(np.abs((angles - angles[first] - turn + 180.0) % 360.0 - 180.0)))
            for turn in (EVEN_DEG, 2.0 * EVEN_DEG)
        ]
        three = sorted(float(angles[i]) for i in (first, *others))
        widest = max(three[1] - three[0], three[2] - three[1], 360.0 - three[2] + three[0])
        if best is None or widest < best[0] - 1e-9:
            best = (widest, (first, others[0], others[1]))
    if best is None or best[0] > WIDEST_DEG:
        return None
    return [(float(x[i]), float(y[i])) for i in best[1]]
