"""Time the drying of a whole studio against scipy's LSODA, one thread, CPU seconds.

Run from the root of the project, with nothing else on the machine::

    OPENBLAS_NUM_THREADS=1 python -m tests.bench.drying

It prints the seconds and the ratio of the same run and never fails. The LSODA baseline is one draw
of one 8 mm wall on the same 9 nodes with a right-hand side in numpy, as a person would first write
it; it is multiplied by the number of draws.
"""

import time

import numpy as np
from scipy.integrate import solve_ivp

from pieces.domain.drying import (
    BODIES,
    Batch,
    Cover,
    Face,
    FaceEvent,
    Plaster,
    Problem,
    Reading,
    Section,
    Shape,
    climate_from,
    ensemble,
    faults,
    in_mould,
    out_of_mould,
    simulate,
)
from pieces.domain.drying.draws import ensemble_of
from pieces.domain.drying.grid import grid
from pieces.domain.drying.surface import clay_activity, evaporation, vapour_conductance_m_s
from studio.domain import moist_air

HOUR_S = 3600
HOURS = 336
PIECES = 60
DRAWS = 64
SECTIONS = [
    Section(Shape.FLAT, 0.008),
    Section(Shape.FLAT, 0.010),
    Section(Shape.FLAT, 0.014),
    Section(Shape.ROD, 0.010),
    Section(Shape.LUMP, 0.030),
]


def room():
    """Return the air of a room that warms by day."""
    readings = [
        Reading(
            4.0 * i * HOUR_S,
            15.0 + 3.0 * np.sin(2 * np.pi * i / 6),
            0.6 + 0.1 * np.cos(2 * np.pi * i / 6),
        )
        for i in range(110)
    ]
    return climate_from(readings, 0, 400 * HOUR_S)


def studio() -> list[Problem]:
    """Return sixty pieces: five sections, six bodies, in and out of moulds, covered, uncovered."""
    climate, bodies = room(), list(BODIES.values())
    problems = []
    for i in range(PIECES):
        section, begun = SECTIONS[i % len(SECTIONS)], 600 * i
        events = (
            in_mould(begun, section, Plaster(0.05 + 0.005 * i)),
            out_of_mould(begun + 5 * HOUR_S + 60 * i, section),
            out_of_mould(begun + 30 * HOUR_S, section, cover=Cover.LOOSE),
            out_of_mould(begun + 60 * HOUR_S, section),
        )
        problems.append(Problem(bodies[i % len(bodies)], section, events, climate))
    return problems


def by_lsoda() -> tuple[float, float]:
    """Return CPU seconds and the mean moisture after 48 h of one wall in the same room."""
    body, section, climate = BODIES["red_earthenware"], SECTIONS[0], room()
    cells, dry, depth = grid(0, 9), body.dry_density_kg_m3, section.depth_m
    full = moist_air.saturation_density_kg_m3(climate.air_c)
    slope = moist_air.saturation_density_slope_kg_m3_k(climate.air_c)
    warm = np.exp(-20_000 / 8.314462 * (1 / (climate.air_c + 273.15) - 1 / 293.15))
    k = float(vapour_conductance_m_s(3.0)) * np.array([0.4, 1.0])
    scale, power, heat = np.array([0.015] * 2), np.array([0.45] * 2), np.array([8.5] * 2)

    def rate(now: float, x):
        hour = min(int(now // HOUR_S), len(full) - 1)
        x = np.maximum(x, 1e-6)
        activity, _ = clay_activity(x[[0, -1]], scale, power)
        out, _ = evaporation(
            activity, k, heat, (full[hour], slope[hour], climate.vapour_kg_m3[hour])
        )
        potential = 2.0e-9 * warm[hour] / 10.0 * np.exp(10.0 * (x - 0.20))
        flow = np.zeros(10)
        flow[1:-1] = cells.conductance * (potential[:-1] - potential[1:]) / depth**2
        flow[0], flow[-1] = -out[0] / (dry * depth), out[1] / (dry * depth)
        return (flow[:-1] - flow[1:]) / cells.volume

    began = time.process_time()
    found = solve_ivp(
        rate,
        (0.0, HOURS * HOUR_S),
        np.full(9, 0.25),
        method="LSODA",
        rtol=1e-6,
        atol=1e-8,
        max_step=HOUR_S,
        t_eval=[48.0 * HOUR_S, HOURS * HOUR_S],
    )
    return time.process_time() - began, float(cells.share @ found.y[:, 0])


def main() -> None:
    """Print the figures."""
    made = tuple(ensemble(problem, DRAWS) for problem in studio())
    until = tuple(float(each.problem.pressed_at_s + HOURS * HOUR_S) for each in made)
    seconds = []
    for _ in range(3):
        began = time.process_time()
        run = simulate(Batch(made, until, keeps_track=True))
        seconds.append(time.process_time() - began)
    ours = sorted(seconds)[1]
    wrong = [each for pair in zip(run.after, run.tracks, strict=True) for each in faults(*pair)]
    alone = simulate_one()
    baseline, moisture = by_lsoda()
    lanes = PIECES * DRAWS
    print(f"{PIECES} pieces x {DRAWS} draws x {HOURS} h: {ours:.2f} s CPU (median of 3)")
    print(f"  {ours / lanes * 1e3:.3f} ms a draw; unsettled {run.unsettled}; faults {wrong}")
    print(f"LSODA, one draw of one wall in air: {baseline:.3f} s CPU")
    print(f"  ratio for all draws, LSODA over ours: {baseline * lanes / ours:.0f}")
    print(f"mean moisture after 48 h: ours {alone:.6f}, LSODA {moisture:.6f}")


def simulate_one() -> float:
    """Return the mean moisture after 48 h of the wall LSODA dries, by the model."""
    event = FaceEvent(0.0, Face(0.4), Face(1.0))
    problem = Problem(BODIES["red_earthenware"], SECTIONS[0], (event,), room())
    one = ensemble_of(problem, np.array([[0.0], [0.0], [0.25]]))
    run = simulate(Batch((one,), 48.0 * HOUR_S, keeps_track=True))
    return float(run.tracks[0].mean_kg_per_kg[-1, 0])


if __name__ == "__main__":
    main()
