"""The draws of a piece that goes on in another room: what was learned there takes over."""

from __future__ import annotations

from math import sqrt
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying import Belief

Floats = NDArray[np.float64]

EXCHANGE: Final = 1  # its row in theta: ln f_K, the only one that a room has a share in


def carried(theta: Floats, here: Belief, there: Belief) -> Floats:
    """Return theta, shape (5, draws), with the exchange of another room.

    `here` and `there` are what is believed of such a piece in either room. Each draw keeps its
    place in the range: as many standard deviations from the middle there as it was from the middle
    here. Clay, moisture as pressed and covers go along as they are.
    """
    if here == there:
        return theta
    sd_here, sd_there = (sqrt(belief.covariance[EXCHANGE][EXCHANGE]) for belief in (here, there))
    moved = theta.copy()
    off = (theta[EXCHANGE] - here.mean[EXCHANGE]) / sd_here
    moved[EXCHANGE] = there.mean[EXCHANGE] + off * sd_there
    return moved
