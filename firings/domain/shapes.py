"""Shelves and pieces as seen from above: circles and boxes, and the room each takes.

Every piece is a box with rounded corners: a round piece has no box, a square one corners of half
the gap. Spaces are thus kept as the crow flies.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

CLOSE_MM: Final = 1e-6


@dataclass(frozen=True, slots=True)
class Outline:
    """A shelf seen from above, its middle at (0, 0); a round one is `width_mm` across. [mm]"""

    is_round: bool
    width_mm: float
    depth_mm: float

    @property
    def area_mm2(self) -> float:
        return _area(self.is_round, self.width_mm, self.depth_mm)


@dataclass(frozen=True, slots=True)
class Footprint:
    """A piece seen from above; a round one is `width_mm` across. [mm]"""

    width_mm: float
    depth_mm: float
    is_round: bool = False

    @property
    def area_mm2(self) -> float:
        return _area(self.is_round, self.width_mm, self.depth_mm)

    @property
    def inner_radius_mm(self) -> float:
        """The radius of the largest circle inside."""
        return min(self.width_mm, self.depth_mm) / 2.0

    def turned(self) -> "Footprint":
        return Footprint(self.depth_mm, self.width_mm, self.is_round)


@dataclass(frozen=True, slots=True)
class Spot:
    """A footprint where it stands: middle [mm], turned by 0 or 90 degrees already."""

    x_mm: float
    y_mm: float
    footprint: Footprint
    is_turned: bool = False


def swollen_area_mm2(is_round: bool, width_mm: float, depth_mm: float, by_mm: float) -> float:
    """Return the area of a shape with everything nearer to it than `by_mm`. [mm²]"""
    if is_round:
        return math.pi * (width_mm / 2.0 + by_mm) ** 2
    rim = 2.0 * (width_mm + depth_mm) * by_mm
    return width_mm * depth_mm + rim + math.pi * by_mm**2


def box(piece: Footprint, gap_mm: float) -> tuple[float, float, float]:
    if piece.is_round:
        return 0.0, 0.0, (piece.width_mm + gap_mm) / 2.0
    return piece.width_mm / 2.0, piece.depth_mm / 2.0, gap_mm / 2.0


def boxes(standing: Sequence[Spot], gap_mm: float) -> tuple[Floats, Floats, Floats, Floats, Floats]:
    rows = [(spot.x_mm, spot.y_mm, *box(spot.footprint, gap_mm)) for spot in standing]
    x, y, w, d, r = np.array(rows, dtype=np.float64).reshape(-1, 5).T
    return x, y, w, d, r


def _area(is_round: bool, width_mm: float, depth_mm: float) -> float:
    return math.pi * width_mm**2 / 4.0 if is_round else width_mm * depth_mm
