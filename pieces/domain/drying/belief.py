"""What is believed of a piece before it is looked at: a Gaussian over five unknowns.

theta = (ln f_D, ln f_K, X0, ln f_C, ln f_W): diffusivity of the clay, exchange with the room's
air, moisture as pressed, what a cover lets through, and the water that the clay holds at rest in
given air. Each is the sum of what pieces share (a clay, a room, the studio's covers) and of what is
a piece's own.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

THETA: Final = 5

# Widths of what pieces share. K: the best correlation for a pool's evaporation is 18 % off on
# average (Shah, HVAC&R Research 8(1), 2002, abstract), and nobody knows where in the room a piece
# stands; the others are from memory. A body that holds more water as pressed (.012 from body to
# body, from memory) is also firm at more water, so that its limits move along: of X0 counts only
# what lies between it and those limits. Water held at rest differs by a third between bodies
# (from memory): where the air is damp it decides when a piece is bone dry, and a belief that took
# it for known was wrong there in simulated studios (see the evaluation).
SHARED_SD: Final = (0.35, 0.45, 0.004, 0.30, 0.30)
# Widths of what is a piece's own; from memory. Their squares count a quarter more: simulated
# studios were slightly too sure without it (see the evaluation). Of the water at rest a little is
# a piece's own as well, as clay holds more of it on the way to dry than on the way back (from
# memory): without it the range of bone dry held seven in ten where clay dries by another law.
PIECE_SD: Final = (0.12, 0.15, 0.006, 0.0, 0.15)
PIECE_VARIANCE: Final = 1.25 * np.square(PIECE_SD)


@dataclass(frozen=True, slots=True)
class Belief:
    """Mean (5) and covariance (5 x 5) of theta; X0 as a difference from the body's [kg/kg].

    Tuples, so that a problem that holds it can be told from another. Raises `ValueError` where the
    covariance is not one.
    """

    mean: tuple[float, ...]
    covariance: tuple[tuple[float, ...], ...]

    def __post_init__(self) -> None:
        """Refuse what is no covariance."""
        matrix = np.array(self.covariance)
        if len(self.mean) != THETA or matrix.shape != (THETA, THETA):
            raise ValueError("A belief is about five unknowns.")
        if not np.allclose(matrix, matrix.T) or np.linalg.eigvalsh(matrix).min() < -1e-12:
            raise ValueError("covariance must be symmetric and not negative.")

    @classmethod
    def of(cls, mean: Floats, covariance: Floats) -> Belief:
        """Return the belief of arrays (5,) and (5, 5)."""
        rows = tuple(tuple(float(value) for value in row) for row in covariance)
        return cls(tuple(float(value) for value in mean), rows)

    @classmethod
    def independent(
        cls, sd: Sequence[float] | Floats, mean: Sequence[float] = (0.0,) * THETA
    ) -> Belief:
        """Return a belief whose unknowns have nothing to do with each other."""
        return cls.of(np.asarray(mean, dtype=float), np.diag(np.square(sd)))

    @property
    def sd(self) -> Floats:
        """Return the width of each unknown, shape (5,)."""
        widths: Floats = np.sqrt(np.diag(np.array(self.covariance)))
        return widths

    @property
    def root(self) -> Floats:
        """Return a matrix (5, 5) whose square is the covariance; widths of 0 are welcome."""
        matrix = np.array(self.covariance)
        told = np.diag(matrix) > 0.0
        root = np.zeros_like(matrix)
        root[np.ix_(told, told)] = np.linalg.cholesky(matrix[np.ix_(told, told)])
        return root

    @property
    def version(self) -> str:
        """Return a short name, equal for equal beliefs."""
        said = repr((self.mean, self.covariance)).encode()
        return hashlib.sha256(said).hexdigest()[:12]


FIRST_BELIEF: Final = Belief.of(np.zeros(THETA), np.diag(np.square(SHARED_SD) + PIECE_VARIANCE))
