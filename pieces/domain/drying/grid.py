"""Nodes of a section: close together at the faces, on the faces themselves (vertex-centred)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Final

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

GRADING: Final = 0.7  # nodes are (1 + g)/(1 - g) = 5.7 times closer at a face than in the middle


@dataclass(frozen=True, slots=True)
class Grid:
    """A grid over a depth of 1; arrays have shape (nodes,) or (nodes - 1,).

    at : places of the nodes, 0 (inner face or centre) to 1 (outer face)
    volume : of each node's cell, in units of depth^(m+1); `conductance` : area over distance
    between neighbours; `share` : volume over the whole, for means; `inner_area` : 1 wall, else 0
    """

    at: Floats
    volume: Floats
    conductance: Floats
    share: Floats
    inner_area: float


@lru_cache(maxsize=64)
def grid(power: int, nodes: int) -> Grid:
    """Return the grid of a wall (`power` 0), rod (1) or lump (2) with `nodes` >= 3 nodes."""
    even = np.linspace(0.0, 1.0, nodes)
    if power == 0:
        at = even - GRADING / (2.0 * np.pi) * np.sin(2.0 * np.pi * even)
    else:
        at = even + GRADING / np.pi * np.sin(np.pi * even)
    at[0], at[-1] = 0.0, 1.0
    between = 0.5 * (at[1:] + at[:-1])
    edges = np.concatenate([[0.0], between, [1.0]])
    volume = np.diff(edges ** (power + 1)) / (power + 1)
    return Grid(
        at=at,
        volume=volume,
        conductance=between**power / np.diff(at),
        share=volume / volume.sum(),
        inner_area=1.0 if power == 0 else 0.0,
    )
