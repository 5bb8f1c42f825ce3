"""What is believed of a studio's clays, rooms, covers and hands: one Gaussian over all of them."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying import Belief
from pieces.domain.drying.belief import PIECE_VARIANCE, SHARED_SD, THETA

Floats = NDArray[np.float64]

#: Width at first of each kind of what is shared: theta's, then a hand's habit (from memory).
FIRST_SD: Final[Mapping[str, float]] = {
    **dict(zip(("diffusivity", "exchange", "pressed", "cover", "rest"), SHARED_SD, strict=True)),
    "touch": 0.008,
}


@dataclass(frozen=True, slots=True)
class Groups:
    """What a piece shares with others: its clay, the place it dries in, who touched it.

    `touchers` are the people whose checks tell of the piece, each once.
    """

    body: str
    place: str
    touchers: tuple[str, ...] = ()

    @property
    def room_air(self) -> str:
        """Return the name of the exchange with the air of its room."""
        return f"exchange:{self.place}"

    @property
    def names(self) -> tuple[str, ...]:
        """Return the names of the shared unknowns: first those of theta, then the touches."""
        own = (f"diffusivity:{self.body}", self.room_air, f"pressed:{self.body}")
        return (*own, "cover:", f"rest:{self.body}", *(f"touch:{who}" for who in self.touchers))


@dataclass(frozen=True, slots=True)
class Prior:
    """What is believed of one piece before it is looked at.

    mean : (unknowns,), covariance : (unknowns, unknowns): ln f_D, ln f_K, X0 as a difference from
    the body's figure [kg/kg], ln f_C, ln f_W, then the touch of each person [kg/kg].
    """

    mean: Floats
    covariance: Floats


@dataclass(frozen=True, slots=True)
class StudioBelief:
    """A Gaussian over everything shared; what is not named yet has its first width and mean 0.

    mean : (names,), covariance : (names, names)
    pieces : how many pieces it was learned from
    """

    names: tuple[str, ...]
    mean: Floats
    covariance: Floats
    pieces: int = 0

    def naming(self, names: Sequence[str]) -> StudioBelief:
        """Return the same belief with `names` among its names, new ones as first believed.

        Raises `ValueError` for a name of no kind that is known.
        """
        fresh = tuple(name for name in dict.fromkeys(names) if name not in self.names)
        if not fresh:
            return self
        kinds = [name.partition(":")[0] for name in fresh]
        if unknown := [kind for kind in kinds if kind not in FIRST_SD]:
            raise ValueError(f"Nothing is believed of {unknown[0]!r}.")
        width = np.diag([FIRST_SD[kind] ** 2 for kind in kinds])
        known = len(self.names)
        covariance = np.zeros((known + len(fresh), known + len(fresh)))
        covariance[:known, :known] = self.covariance
        covariance[known:, known:] = width
        mean = np.concatenate([self.mean, np.zeros(len(fresh))])
        return StudioBelief((*self.names, *fresh), mean, covariance, self.pieces)

    def places(self, names: Sequence[str]) -> NDArray[np.intp]:
        """Return where `names` stand in the belief. Raises `ValueError` when one does not."""
        return np.array([self.names.index(name) for name in names], dtype=np.intp)

    def prior(self, groups: Groups) -> Prior:
        """Return what is believed of a piece of these groups."""
        named = self.naming(groups.names)
        at = named.places(groups.names)
        covariance = named.covariance[np.ix_(at, at)].copy()
        covariance[np.arange(THETA), np.arange(THETA)] += PIECE_VARIANCE
        return Prior(named.mean[at], covariance)

    def of_piece(self, groups: Groups) -> Belief:
        """Return what to draw a piece of these groups from."""
        prior = self.prior(groups)
        return Belief.of(prior.mean[:THETA], prior.covariance[:THETA, :THETA])

    def digest(self) -> str:
        """Return a short digest of the belief, to tell one from another."""
        said = repr((self.names, self.mean.tolist(), self.covariance.tolist(), self.pieces))
        return hashlib.sha256(said.encode()).hexdigest()[:16]

    def to_json(self) -> dict[str, Any]:
        """Return the belief as JSON can hold it, exactly."""
        return {
            "names": list(self.names),
            "mean": self.mean.tolist(),
            "covariance": self.covariance.tolist(),
            "pieces": self.pieces,
        }

    @classmethod
    def from_json(cls, kept: Mapping[str, Any]) -> StudioBelief:
        """Return the belief kept by `to_json`."""
        names = tuple(kept["names"])
        mean = np.array(kept["mean"], dtype=np.float64)
        covariance = np.array(kept["covariance"], dtype=np.float64).reshape(len(names), len(names))
        return cls(names, mean, covariance, int(kept["pieces"]))


FIRST: Final = StudioBelief((), np.zeros(0), np.zeros((0, 0)))
