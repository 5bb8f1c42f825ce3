"""Time the drying of whole studios against scipy's LSODA, one thread, CPU seconds.

Run from the root of the project, with nothing else on the machine::

    OPENBLAS_NUM_THREADS=1 python -m tests.bench.drying

It prints seconds and ratios of one run and never fails. Setting up the steps counts, making the
pieces does not. The LSODA baseline is one 8 mm wall in air that is never covered (the pieces timed
beside it come out of moulds and are covered) on the same nine nodes, with a right-hand side in
numpy, as a person would first write it.
"""

import os
import time
from dataclasses import replace
from pathlib import Path

import numpy as np
from scipy.integrate import solve_ivp

from pieces.domain.drying import (
    BODIES,
    Batch,
    Ensemble,
    Face,
    FaceEvent,
    Problem,
    Run,
    Stage,
    engine,
    ensemble,
    faults,
    simulate,
)
from pieces.domain.drying.checks import mass_error
from pieces.domain.drying.draws import ensemble_of
from pieces.domain.drying.grid import grid
from pieces.domain.drying.march import March
from pieces.domain.drying.march import march as plain
from pieces.domain.drying.surface import clay_activity, evaporation, vapour_conductance_m_s
from pieces.domain.drying.windows import limits_kg_per_kg
from pieces.domain.learning import FIRST, Feel, Groups, Lesson, Touched, learn, weigh
from pieces.domain.learning.likelihood import Limits
from studio.domain import moist_air
from tests.bench.studios import HOUR_S, HOURS, SECTIONS, finely, mixed, one_draw_each, room

PIECES = 10_000
TOUCHED = (Stage.DEMOULD, Stage.JOIN_OPENS, Stage.JOIN_CLOSES, Stage.BISQUE)
COMPARED = 400
KEPT = Path(__file__).resolve().parents[2] / "var" / "numba"


def main() -> None:
    """Print the figures."""
    os.environ.setdefault("NUMBA_CACHE_DIR", str(KEPT))
    began = time.process_time()
    compiled = engine.compiled()
    print(f"numba imported, kernel ready: {time.process_time() - began:.2f} s CPU")
    made = one_draw_each(mixed(PIECES))
    many = ten_thousand(made, compiled)
    accuracy(made[:COMPARED], many.after[:COMPARED], compiled)
    in_the_worker(compiled)
    one_look(compiled)


def ten_thousand(made: tuple[Ensemble, ...], compiled: March) -> Run:
    """Time the batch both ways and against LSODA; return the compiled run."""
    until = tuple(float(each.problem.pressed_at_s + HOURS * HOUR_S) for each in made)
    batch = Batch(made, until)
    ours, run = timed(batch, compiled, 3)
    in_numpy, wanted = timed(batch, plain, 1)
    baseline, moisture = by_lsoda()
    print(f"{len(made)} mixed pieces x {HOURS} h, kernel: {ours:.2f} s CPU (median of 3)")
    print(f"  plain numpy: {in_numpy:.2f} s CPU; ratio {in_numpy / ours:.1f}")
    print(f"  per piece {ours / len(made) * 1e3:.3f} ms; LSODA, one wall in air: {baseline:.3f} s")
    print(f"  ratio per piece, LSODA over kernel: {baseline * len(made) / ours:.0f}")
    print(f"  ratio per piece, LSODA over numpy: {baseline * len(made) / in_numpy:.0f}")
    print(f"  mean moisture after 48 h of that wall: ours {one_wall():.6f}, LSODA {moisture:.6f}")
    print(f"  unsettled {run.unsettled}; worst mass error {worst_mass(run):.1e}")
    print(f"  kernel and numpy differ by {apart(run, wanted)}")
    return run


def timed(batch: Batch, march: March, times: int) -> tuple[float, Run]:
    """Return CPU seconds, the median of so many runs, and the last run."""
    seconds = []
    for _ in range(times):
        began = time.process_time()
        run = simulate(batch, march)
        seconds.append(time.process_time() - began)
    return sorted(seconds)[len(seconds) // 2], run


def worst_mass(run: Run) -> float:
    """Return the largest share of water missing from any piece."""
    return max(mass_error(each) for each in run.after)


def apart(found: Run, wanted: Run) -> str:
    """Return how far two runs lie apart, in states and in crossing times."""
    states = times = 0.0
    for one, other in zip(found.after, wanted.after, strict=True):
        gap = one.state.moisture_kg_per_kg - other.state.moisture_kg_per_kg
        states = max(states, float(np.abs(gap).max()))
        times = max(times, float(np.max(errors(one, other))))
    return f"{states:.1e} kg/kg in states, {times:.1e} of the crossing times"


def errors(found: Ensemble, wanted: Ensemble) -> np.ndarray:
    """Return relative errors of the crossing times since the pressing; inf where only one comes."""
    one, other = found.state.crossed_s, wanted.state.crossed_s
    since = np.maximum(other - wanted.problem.pressed_at_s, 1.0)
    both = np.isfinite(one) & np.isfinite(other)
    gap = np.abs(np.where(both, one, 0.0) - np.where(both, other, 0.0)) / since
    return np.where(np.isfinite(one) == np.isfinite(other), gap, np.inf)


def accuracy(made: tuple[Ensemble, ...], after: tuple[Ensemble, ...], compiled: March) -> None:
    """Print how far the crossing times lie from those on 65 nodes in a quarter of the steps."""
    fine = tuple(finely(each) for each in made)
    until = tuple(float(each.problem.pressed_at_s + HOURS * HOUR_S) for each in fine)
    reference = simulate(Batch(fine, until), compiled).after
    gaps = np.concatenate(
        [
            errors(one, other)[np.isfinite(other.state.crossed_s)]
            for one, other in zip(after, reference, strict=True)
        ]
    )
    shown = [float(np.quantile(gaps, level)) for level in (0.5, 0.99)]
    print(f"{len(gaps)} crossing times of {len(made)} pieces against 65 nodes, steps of 1/4:")
    print(f"  median {shown[0]:.2%}, p99 {shown[1]:.2%}, largest {gaps.max():.2%}")


def in_the_worker(compiled: March) -> None:
    """Print what sixty pieces cost a worker, 256 draws each, with what a screen draws."""
    made = tuple(ensemble(problem, 256) for problem in mixed(60))
    until = tuple(float(each.problem.pressed_at_s + HOURS * HOUR_S) for each in made)
    ours, run = timed(Batch(made, until, keeps_track=True), compiled, 3)
    wrong = [each for pair in zip(run.after, run.tracks, strict=True) for each in faults(*pair)]
    print(f"60 pieces x 256 draws x {HOURS} h, with tracks: {ours:.2f} s CPU; faults {wrong}")


def one_look(compiled: March) -> None:
    """Print what it costs to learn from a touch and reweigh a piece whose draws are kept."""
    problem = mixed(1)[0]
    groups = Groups("cream", "drying room", ("Nessa",))
    made = ensemble(replace(problem, belief=FIRST.of_piece(groups)), 256, 1)
    at_s = problem.pressed_at_s + 20.0 * HOUR_S
    track = simulate(Batch((made,), at_s, keeps_track=True), compiled).tracks[0]
    limits = Limits(*(limits_kg_per_kg(problem)[stage] for stage in TOUCHED))
    mean, dampest = track.mean_kg_per_kg[-1], track.dampest_kg_per_kg[-1]
    seen = (Touched(Feel.LEATHER_HARD, "Nessa", limits, mean, dampest),)
    lesson = Lesson.of(groups, made, seen)
    seconds = []
    for _ in range(51):
        began = time.process_time()
        weigh(learn(FIRST, lesson), lesson)
        seconds.append(time.process_time() - began)
    print(
        f"one look at 256 kept draws, learned and reweighed: {np.median(seconds) * 1e3:.2f} ms CPU"
    )


def by_lsoda() -> tuple[float, float]:
    """Return CPU seconds and the mean moisture after 48 h of one wall in the same room."""
    body, section, climate = BODIES["red_earthenware"], SECTIONS[0], room()
    cells, dry, depth = grid(0, 9), body.dry_density_kg_m3, section.depth_m
    full = moist_air.saturation_density_kg_m3(climate.air_c)
    slope = moist_air.saturation_density_slope_kg_m3_k(climate.air_c)
    warm = np.exp(-20_000 / 8.314462 * (1 / (climate.air_c + 273.15) - 1 / 293.15))
    k = float(vapour_conductance_m_s(3.0)) * np.array([0.4, 1.0])
    scale, power, heat = np.array([0.015] * 2), np.array([0.45] * 2), np.array([8.5] * 2)

    def rate(now: float, x: np.ndarray) -> np.ndarray:
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


def one_wall() -> float:
    """Return the mean moisture after 48 h of the wall LSODA dries, by the model."""
    event = FaceEvent(0.0, Face(0.4), Face(1.0))
    problem = Problem(BODIES["red_earthenware"], SECTIONS[0], (event,), room())
    one = ensemble_of(problem, np.array([[0.0], [0.0], [0.25], [0.0], [0.0]]))
    run = simulate(Batch((one,), 48.0 * HOUR_S, keeps_track=True))
    return float(run.tracks[0].mean_kg_per_kg[-1, 0])


if __name__ == "__main__":
    main()
