"""The question put to the drying model, and the state it is in: frozen, without a clock."""

from __future__ import annotations

import hashlib
import json
import math
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import StrEnum
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying.belief import FIRST_BELIEF, THETA, Belief
from pieces.domain.drying.bodies import Body
from pieces.domain.drying.climate import Climate
from pieces.domain.drying.sections import FaceEvent, Section, checked_events

Floats = NDArray[np.float64]


class Stage(StrEnum):
    """What a drying piece comes to; the order is that of the rows of `State.crossed_s`."""

    DEMOULD = "demould"  # mean moisture low enough and some face shrunk free
    JOIN_OPENS = "join_opens"  # leather-hard
    JOIN_CLOSES = "join_closes"  # too dry to join
    SHRINKAGE_ENDED = "shrinkage_ended"  # dampest point
    BISQUE = "bisque"  # dampest point


STAGES: Final = tuple(Stage)


@dataclass(frozen=True, slots=True)
class Exchange:
    """How the room's air takes heat and vapour from a surface.

    `convection_w_m2_k` 3 is still air [from memory]; `radiation_w_m2_k` 5.5 follows from
    4 sigma T^3 at 20 °C and an emissivity near 0.95.
    """

    convection_w_m2_k: float = 3.0
    radiation_w_m2_k: float = 5.5

    def __post_init__(self) -> None:
        """Refuse coefficients that are not positive."""
        if not (self.convection_w_m2_k > 0.0 and self.radiation_w_m2_k >= 0.0):
            raise ValueError("convection_w_m2_k must be above 0, radiation_w_m2_k not below 0.")


STILL_AIR: Final = Exchange()


@dataclass(frozen=True, slots=True)
class Problem:
    """One section of one piece, from its pressing on.

    `events` is the whole schedule (the first is the pressing); `climate` must cover every hour
    from the pressing, or from the state that is carried on, to the instant asked for.
    """

    body: Body
    section: Section
    events: tuple[FaceEvent, ...]
    climate: Climate
    exchange: Exchange = STILL_AIR
    belief: Belief = FIRST_BELIEF

    def __post_init__(self) -> None:
        """Refuse a schedule out of order."""
        object.__setattr__(self, "events", checked_events(self.events))

    @property
    def pressed_at_s(self) -> int:
        """Return the instant of the pressing. [s since 1970]"""
        return round(self.events[0].at_s)

    def with_climate(self, climate: Climate) -> Problem:
        """Return the same problem in other air (a reading has come in)."""
        return replace(self, climate=climate)

    def key(self, until_s: float = math.inf) -> str:
        """Return a digest of everything but the climate, as it was known by `until_s`.

        Events at or after `until_s` are left out: a state carried on to there serves every
        schedule that agrees up to there. Equal keys may share a stored state.
        """
        past = tuple(event for event in self.events if round(event.at_s) < until_s)
        said = repr((self.body, self.section, past, self.exchange, self.belief))
        return hashlib.sha256(said.encode()).hexdigest()

    def seed(self) -> int:
        """Return the seed of the draws: fixed for body and section, so pieces alike agree."""
        said = repr((self.body.name, self.section)).encode()
        return int.from_bytes(hashlib.sha256(said).digest()[:4], "big")


@dataclass(frozen=True, slots=True)
class State:
    """Where every draw has come to. Arrays are read-only by custom.

    moisture_kg_per_kg : (nodes, draws), from the inner face or the centre to the outer face
    saturation : (2, draws), of the plaster at the inner and the outer face (meaningless in air)
    crossed_s : (5, draws), instant of each `Stage`; +inf while not reached. [s since 1970]
    left_kg_m2 : (draws,), water gone through the faces, per square metre of outer face
    """

    moisture_kg_per_kg: Floats
    saturation: Floats
    crossed_s: Floats
    left_kg_m2: Floats


@dataclass(frozen=True, slots=True)
class Ensemble:
    """Equally likely ways a piece may be, with where each has come to by `advanced_to_s`.

    theta : (5, draws): ln f_D, ln f_K, X0 [kg/kg], ln f_C (what a cover lets through), ln f_W (the
        water held at rest)
    weights : (draws,), sum 1; equal until someone has looked at the piece
    """

    problem: Problem
    theta: Floats
    state: State
    advanced_to_s: int
    weights: Floats

    @property
    def draws(self) -> int:
        """Return the number of draws."""
        return int(self.theta.shape[1])

    @property
    def nodes(self) -> int:
        """Return the number of nodes of the grid."""
        return int(self.state.moisture_kg_per_kg.shape[0])

    def with_climate(self, climate: Climate) -> Ensemble:
        """Return the ensemble, where it stands, in other air from there on."""
        return replace(self, problem=self.problem.with_climate(climate))

    def with_weights(self, weights: Floats) -> Ensemble:
        """Return the ensemble reweighted; weights are scaled to sum 1.

        Raises `ValueError` when they are negative, all zero or of another shape.
        """
        if weights.shape != (self.draws,) or np.any(weights < 0.0) or not weights.sum() > 0.0:
            raise ValueError("weights must be one per draw, not negative, not all 0.")
        return replace(self, weights=np.asarray(weights / weights.sum(), dtype=np.float64))

    def to_bytes(self) -> bytes:
        """Return theta, weights and state for storage (the problem is not kept)."""
        header = {
            "format": "drying-3",
            "key": self.problem.key(self.advanced_to_s),
            "nodes": self.nodes,
            "draws": self.draws,
            "advanced_to_s": self.advanced_to_s,
        }
        arrays = [
            self.theta,
            self.weights[None],
            self.state.moisture_kg_per_kg,
            self.state.saturation,
            self.state.crossed_s,
            self.state.left_kg_m2[None],
        ]
        body = np.concatenate(arrays).astype("<f8").tobytes()
        return json.dumps(header, sort_keys=True).encode() + b"\n" + body

    @classmethod
    def from_bytes(cls, problem: Problem, stored: bytes) -> Ensemble:
        """Return the ensemble kept by `to_bytes`, to go on with `problem`.

        The problem must agree with the one kept up to `advanced_to_s`; later events and the
        climate may differ. Raises `ValueError` when it does not, or for another format: reckon
        anew from the pressing then.
        """
        head, _, body = stored.partition(b"\n")
        header: Mapping[str, object] = json.loads(head)
        past = problem.key(int(str(header.get("advanced_to_s", 0))))
        if header.get("format") != "drying-3" or header.get("key") != past:
            raise ValueError("The stored state belongs to another problem or format.")
        draws, nodes = int(str(header["draws"])), int(str(header["nodes"]))
        rows = np.frombuffer(body, dtype="<f8").astype(np.float64).reshape(-1, draws)
        cuts = np.cumsum([THETA, 1, nodes, 2, len(STAGES)])
        theta, weights, moisture, saturation, crossed, left = np.split(rows, cuts)
        state = State(moisture, saturation, crossed, left[0])
        return cls(problem, theta, state, int(str(header["advanced_to_s"])), weights[0])


@dataclass(frozen=True, slots=True)
class Track:
    """How an ensemble went, step by step.

    at_s : (steps + 1,), instants, the first where the run began. [s since 1970]
    mean_kg_per_kg, dampest_kg_per_kg : (steps + 1, draws)
    """

    at_s: Floats
    mean_kg_per_kg: Floats
    dampest_kg_per_kg: Floats


@dataclass(frozen=True, slots=True)
class Batch:
    """Ensembles to be carried on together: one call, whatever their number.

    until_s
        Instant to carry all on to, the same for all or one each. A past instant leaves an
        ensemble as it is. Whole hours keep a stored state exactly on the way of an unbroken run.
    keeps_track
        Whether to return a `Track` of each, needed for curves.
    """

    ensembles: tuple[Ensemble, ...]
    until_s: float | tuple[float, ...]
    keeps_track: bool = False


@dataclass(frozen=True, slots=True)
class Run:
    """What `simulate` found.

    after : the ensembles at `until_s`, in the order given
    tracks : one per ensemble, or empty when not kept
    unsettled : steps of single draws whose Newton iteration did not settle (0 in health)
    """

    after: tuple[Ensemble, ...]
    tracks: tuple[Track, ...] = field(default=())
    unsettled: int = 0
