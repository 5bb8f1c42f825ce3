"""How many equal circles stand on a shelf: by arrangement, since area alone promises too many.

`circles.csv` holds one arrangement for each number from 1 to 30, centres in units of the radius,
found here by a search from many random starts and checked by its distances. The ratios of the
enclosing circle agree to 4e-7 with the published best ones [1]_ [2]_ (recalled from memory). No
better one exists up to 13 circles: proved by Pirl (1969, to 10), Melissen (1994, 11) and Fodor
(2000 and 2003, 12 and 13), likewise from memory. Above that an inequality [3]_ bounds the number.

.. [1] Kravitz, Packing cylinders into cylindrical containers, Mathematics Magazine 40 (1967) 65-71.
.. [2] Graham, Lubachevsky, Nurmela and Östergård, Dense packings of congruent circles in a circle,
   Discrete Mathematics 181 (1998) 139-154.
.. [3] Oler, An inequality in the geometry of numbers, Acta Mathematica 105 (1961) 19-48: at most
   2/√3 A + P/2 + 1 points with distances of 1 or more lie in a convex set of area A and perimeter
   P; from memory.
"""

import math
from functools import cache
from pathlib import Path
from typing import Final

import numpy as np
from numpy.typing import NDArray

MOST_ARRANGED: Final = 30
PROVED_TO: Final = 13
CLOSE: Final = 1e-9
"""Ratios nearer than this are equal: rounding of sums, no slack of a shelf."""


@cache
def places(count: int) -> NDArray[np.float64]:
    """Return the centres of `count` circles of radius 1, 1 to 30, about the middle. `(n, 2)`"""
    if not 1 <= count <= MOST_ARRANGED:
        raise ValueError(f"Arrangements are kept for 1 to {MOST_ARRANGED} circles.")
    found = _table()
    centres = found[found[:, 0] == count, 1:].copy()
    centres.flags.writeable = False
    return centres


@cache
def ratio(count: int) -> float:
    """Return the radius of the circle round `count` circles of radius 1, as arranged here.

    The arrangement is stretched until the nearest two just touch, so this much surely suffices.
    """
    centres = places(count)
    return float(np.hypot(*centres.T).max()) * _stretch(count) + 1.0


def arranged(count: int, radius: float, outer: float) -> NDArray[np.float64] | None:
    """Return centres of circles in a circle, spread out as far as it allows. `(n, 2)`

    None where this arrangement does not go in; all lengths in one unit.
    """
    if outer / radius < ratio(count) - CLOSE:
        return None
    centres = places(count)
    reach = float(np.hypot(*centres.T).max())
    return centres * ((outer - radius) / reach if reach > 0.0 else 0.0)


def most_in_circle(radius: float, outer: float) -> tuple[int, int]:
    """Return how many circles surely stand in a circle, and above how many none can.

    Both are the same up to 13 circles. Sure numbers end at 30.
    """
    given = outer / radius
    sure = max((n for n in range(1, MOST_ARRANGED + 1) if ratio(n) <= given + CLOSE), default=0)
    if sure < PROVED_TO:
        return sure, sure
    spread = max(given - 1.0, 0.0) / 2.0
    return sure, max(sure, _most_points(math.pi * spread**2, 2.0 * math.pi * spread))


def most_in_rectangle(radius: float, width: float, depth: float) -> tuple[int, int]:
    """Return how many circles surely stand in a rectangle, and above how many none can."""
    sure = len(in_rows(radius, width, depth))
    across, along = (side / (2.0 * radius) - 1.0 for side in (width, depth))
    if min(across, along) < -CLOSE:
        return 0, 0
    across, along = max(across, 0.0), max(along, 0.0)
    return sure, max(sure, _most_points(across * along, 2.0 * (across + along)))


def in_rows(radius: float, width: float, depth: float) -> NDArray[np.float64]:
    """Return centres in the best of straight and staggered rows, either way round. `(n, 2)`

    Centres count from the middle of the rectangle.
    """
    found = [_straight(radius, width, depth)]
    found += [_staggered(radius, width, depth), _staggered(radius, depth, width)[:, ::-1]]
    return max(found, key=len)


def _straight(radius: float, width: float, depth: float) -> NDArray[np.float64]:
    sides = (_spaced(width, 2.0 * radius), _spaced(depth, 2.0 * radius))
    return np.array([(x, y) for y in sides[1] for x in sides[0]]).reshape(-1, 2)


def _staggered(radius: float, width: float, depth: float) -> NDArray[np.float64]:
    """Return rows along the width, every other one moved by half a step."""
    step = 2.0 * radius
    if min(width, depth) < step - CLOSE:
        return np.empty((0, 2))
    rows = 1 + math.floor((depth - step) / (math.sqrt(0.75) * step) + CLOSE)
    full = math.floor(width / step + CLOSE)
    has_room = width - full * step >= radius - CLOSE
    heights = (np.arange(rows) - (rows - 1) / 2.0) * math.sqrt(0.75) * step
    left = -width / 2.0 + radius
    centres = [
        (left + (row % 2) * radius + place * step, height)
        for row, height in enumerate(heights)
        for place in range(full if row % 2 == 0 or has_room else full - 1)
    ]
    return np.array(centres).reshape(-1, 2)


def _spaced(side: float, step: float) -> NDArray[np.float64]:
    count = math.floor(side / step + CLOSE)
    middle = np.arange(count, dtype=np.float64) - (count - 1) / 2.0
    return middle * (side / count if count else 0.0)


def _most_points(area: float, perimeter: float) -> int:
    return math.floor(2.0 / math.sqrt(3.0) * area + perimeter / 2.0 + 1.0 + CLOSE)  # [3]_


def _stretch(count: int) -> float:
    if count == 1:
        return 1.0
    centres = places(count)
    apart = centres[:, None, :] - centres[None, :, :]
    distances = np.hypot(apart[..., 0], apart[..., 1])[np.triu_indices(count, 1)]
    return 2.0 / float(distances.min())


@cache
def _table() -> NDArray[np.float64]:
    return np.loadtxt(Path(__file__).with_name("circles.csv"), delimiter=",", skiprows=1)
