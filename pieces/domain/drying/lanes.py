"""Many draws of many pieces side by side: the constants and the steps of a batch, as arrays."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying.grid import grid
from pieces.domain.drying.problem import Ensemble, Problem
from pieces.domain.drying.steps import Steps, airs_of, faces_of
from pieces.domain.drying.surface import vapour_conductance_m_s
from pieces.domain.drying.windows import limits_kg_per_kg

Floats = NDArray[np.float64]

SHRUNK_FREE_KG_PER_KG: Final = 0.02  # drying of a face that frees it from the plaster


@dataclass(frozen=True, slots=True)
class Lanes:
    """Constants of a batch; one lane is one draw of one piece.

    (nodes, 1) where all sections are of one shape, else (nodes, lanes):
    volume, share, conductance (one row fewer), both (sum of a node's conductances)
    (lanes,): inner_area, depth_m, dry_kg_m3, slope (b), spread (D20 f_D / (b depth²)), scale,
    power, k_m_s, heat_w_m2_k, through (what covers let through over what is usual), freed (face
    moisture at which the piece is free), piece (its column in the steps);  limits : (5, lanes)
    """

    volume: Floats
    share: Floats
    conductance: Floats
    both: Floats
    inner_area: Floats
    depth_m: Floats
    dry_kg_m3: Floats
    slope: Floats
    spread: Floats
    scale: Floats
    power: Floats
    k_m_s: Floats
    heat_w_m2_k: Floats
    through: Floats
    freed: Floats
    limits: Floats
    piece: NDArray[np.intp]

    @classmethod
    def of(cls, ensembles: Sequence[Ensemble]) -> Lanes:
        """Lay `ensembles`, all of one number of nodes, side by side."""
        draws = [each.draws for each in ensembles]
        piece = np.repeat(np.arange(len(ensembles)), draws)
        theta = np.concatenate([each.theta for each in ensembles], axis=1)
        problems = [each.problem for each in ensembles]

        def spread(values: Sequence[float]) -> Floats:
            return np.asarray(values, dtype=np.float64)[piece]

        grids = [grid(each.problem.section.power, each.nodes) for each in ensembles]
        alike = all(each is grids[0] for each in grids)

        def laid(columns: Sequence[Floats]) -> Floats:
            if alike:
                return columns[0][:, None].copy()
            return np.stack(columns, axis=1)[:, piece]

        conductance = laid([each.conductance for each in grids])
        both = np.zeros((conductance.shape[0] + 1, conductance.shape[1]))
        both[:-1] += conductance
        both[1:] += conductance
        depth = spread([each.section.depth_m for each in problems])
        slope = spread([each.body.diffusivity_slope for each in problems])
        diffusivity = spread([each.body.diffusivity_m2_s for each in problems])
        convection = np.exp(theta[1]) * spread(
            [each.exchange.convection_w_m2_k for each in problems]
        )
        radiation = spread([each.exchange.radiation_w_m2_k for each in problems])
        limits = np.array([list(limits_kg_per_kg(each).values()) for each in problems])
        return cls(
            volume=laid([each.volume for each in grids]),
            share=laid([each.share for each in grids]),
            conductance=conductance,
            both=both,
            inner_area=spread([each.inner_area for each in grids]),
            depth_m=depth,
            dry_kg_m3=spread([each.body.dry_density_kg_m3 for each in problems]),
            slope=slope,
            spread=diffusivity * np.exp(theta[0]) / (slope * depth**2),
            scale=np.exp(theta[4])
            * spread([each.body.isotherm_scale_kg_per_kg for each in problems]),
            power=spread([each.body.isotherm_power for each in problems]),
            k_m_s=vapour_conductance_m_s(convection),
            heat_w_m2_k=convection + radiation,
            through=np.exp(theta[3]),
            freed=theta[2] - SHRUNK_FREE_KG_PER_KG,
            limits=np.ascontiguousarray(limits.T[:, piece]),
            piece=piece,
        )


@dataclass(frozen=True, slots=True)
class Moment:
    """What every lane meets during one step: arrays (lanes,), or (2, lanes) for the two faces."""

    span_s: Floats
    air: tuple[Floats, Floats, Floats]
    arrhenius: Floats
    openness: Floats
    conductance: Floats
    holds: Floats
    outside: Floats
    fresh: Floats | None
    on_plaster: tuple[NDArray[np.intp], NDArray[np.intp]]


@dataclass(frozen=True, slots=True)
class Timetable:
    """The steps of several pieces in columns, short ones filled up with steps of no length.

    at_s : (steps + 1, pieces); counts : (pieces,), steps of each
    hour, face : (steps, pieces), rows of `airs` and `faces`; begins : whether `face` begins there
    airs, faces : see `airs_of`, `faces_of`, one row an hour of a room and one an event of a piece
    """

    at_s: Floats
    counts: NDArray[np.int64]
    hour: NDArray[np.int32]
    face: NDArray[np.int32]
    begins: NDArray[np.bool_]
    airs: Floats
    faces: Floats

    @classmethod
    def of(cls, problems: Sequence[Problem], each_steps: Sequence[Steps]) -> Timetable:
        """Set the steps of the pieces side by side; pieces in one room share its air."""
        longest = max(steps.count for steps in each_steps)
        at = np.zeros((longest + 1, len(problems)))
        hour = np.zeros((longest, len(problems)), dtype=np.int32)
        face, begins = np.zeros_like(hour), np.zeros_like(hour, dtype=bool)
        rooms: dict[tuple[int, float], int] = {}
        airs: list[Floats] = []
        faces: list[tuple[float, ...]] = []
        hours = 0
        for column, (problem, steps) in enumerate(zip(problems, each_steps, strict=True)):
            room = (id(problem.climate), problem.body.activation_j_mol)
            if room not in rooms:
                rooms[room] = hours
                airs.append(airs_of(problem.climate, problem.body.activation_j_mol))
                hours += len(airs[-1])
            count = steps.count
            hour[:count, column] = steps.hour + rooms[room]
            face[:count, column] = steps.event + len(faces)
            begins[:count, column] = steps.begins
            at[: count + 1, column] = steps.at_s
            at[count + 1 :, column] = steps.at_s[-1]
            faces += [faces_of(event) for event in problem.events]
        counts = np.array([steps.count for steps in each_steps], dtype=np.int64)
        return cls(at, counts, hour, face, begins, np.concatenate(airs), np.array(faces))

    @property
    def count(self) -> int:
        """Return the number of steps of the longest column."""
        return len(self.hour)

    def moment(self, step: int, lanes: Lanes) -> Moment:
        """Return what the lanes meet in `step`."""
        piece = lanes.piece
        air = self.airs[self.hour[step]].T[:, piece]
        faces = self.faces[self.face[step]].T[:, piece]
        through = np.where(faces[10] > 0.0, lanes.through, 1.0)
        begins = self.begins[step]
        fresh = np.where(begins[piece], faces[8:10], np.nan) if begins.any() else None
        return Moment(
            span_s=(self.at_s[step + 1] - self.at_s[step])[piece],
            air=(air[0], air[1], air[2]),
            arrhenius=air[3],
            openness=np.minimum(faces[0:2] * through, 1.0),
            conductance=faces[2:4],
            holds=faces[4:6],
            outside=np.minimum(faces[6:8] * through, 1.0),
            fresh=fresh,
            on_plaster=(np.flatnonzero(faces[2]), np.flatnonzero(faces[3])),
        )
