"""How near the skin of a drying piece is to what it can stand.

Clay shrinks as it dries, down to the moisture at which shrinkage ends. A surface that is drier than
the inside wants to be smaller than it may: the strain it lacks is held against a limit that falls
from plastic to stiff clay. Both ends of the limit are calibrated, so that a 12 mm wall open on both
faces at 20 °C and 50 % comes to about 1; nobody measured them. Against plaster the first minutes
give large numbers that mean nothing, so that clay in its mould has no index.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying import Body, Ensemble, Shape
from pieces.domain.drying.grid import grid

Floats = NDArray[np.float64]

PLASTIC_STRAIN: Final = 0.060  # at the moisture as pressed; calibrated
STIFF_STRAIN: Final = 0.008  # where shrinkage ends; calibrated
LIMIT: Final = 0.8  # what a cover plan keeps under; calibrated
WATCH: Final = 0.6
HIGH: Final = 1.0


class Level(StrEnum):
    """The index in the words a screen may show."""

    LOW = "low"
    WATCH = "watch"
    HIGH = "high"


def level(index: float) -> Level:
    """Return the word for an index (0 and above)."""
    if index >= HIGH:
        return Level.HIGH
    return Level.WATCH if index >= WATCH else Level.LOW


def shrunk(body: Body, moisture: Floats, pressed: Floats | float) -> Floats:
    """Return the free linear shrinkage since the pressing, as a fraction.

    moisture : any shape [kg/kg]; pressed : the moisture as pressed, of a shape that fits [kg/kg]
    """
    ends = body.shrinkage_ends_kg_per_kg
    per_moisture = body.drying_shrinkage_fraction / (body.pressed_kg_per_kg - ends)
    free: Floats = per_moisture * np.clip(pressed - np.maximum(moisture, ends), 0.0, None)
    return free


def strain_limit(body: Body, moisture: Floats, pressed: Floats | float) -> Floats:
    """Return the strain that clay of a moisture stands: log-linear from plastic to stiff."""
    ends = body.shrinkage_ends_kg_per_kg
    gone = np.clip((pressed - moisture) / (pressed - ends), 0.0, 1.0)
    stands: Floats = PLASTIC_STRAIN * (STIFF_STRAIN / PLASTIC_STRAIN) ** gone
    return stands


def crack_index(state: Ensemble) -> Floats:
    """Return each draw's index as it stands, shape (draws,): strain of the skin over its limit.

    0 in a mould, and once shrinkage has ended all through.
    """
    problem = state.problem
    if _is_on_plaster(state):
        return np.zeros(state.draws)
    body, section = problem.body, problem.section
    moisture, pressed = state.state.moisture_kg_per_kg, state.theta[2]
    share = grid(section.power, state.nodes).share
    free = shrunk(body, moisture, pressed)
    held = share @ free
    skins = (0, -1) if section.shape is Shape.FLAT else (-1,)
    each = [
        np.clip(free[skin] - held, 0.0, None) / strain_limit(body, moisture[skin], pressed)
        for skin in skins
    ]
    worst: Floats = np.max(each, axis=0)
    return worst


def _is_on_plaster(state: Ensemble) -> bool:
    met = [event for event in state.problem.events if round(event.at_s) <= state.advanced_to_s]
    if not met:
        return True
    return met[-1].outer.plaster is not None
