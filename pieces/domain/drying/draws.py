"""Draws of what is not known of a piece: quasi-random, the same every time."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtri
from scipy.stats import qmc

from pieces.domain.drying.belief import THETA, Belief
from pieces.domain.drying.problem import STAGES, Ensemble, Problem, State

Floats = NDArray[np.float64]


def draw(belief: Belief, pressed_kg_per_kg: float, draws: int, seed: int) -> Floats:
    """Return theta, shape (5, draws), with X0 itself in its third row, by scrambled Sobol points.

    `draws` is a power of two, 2 to 4096 (the sequence is balanced only there). X0 is kept within
    a third of the body's figure. Raises `ValueError` otherwise.
    """
    if not (2 <= draws <= 4096 and draws & (draws - 1) == 0):
        raise ValueError("draws must be a power of two from 2 to 4096.")
    uniform = qmc.Sobol(THETA, scramble=True, rng=seed).random(draws)
    normal = ndtri(np.clip(uniform, 1e-9, 1.0 - 1e-9)).T
    theta: Floats = np.asarray(belief.mean)[:, None] + belief.root @ normal
    theta[2] += pressed_kg_per_kg
    theta[2] = np.clip(theta[2], pressed_kg_per_kg / 1.5, pressed_kg_per_kg * 1.5)
    return theta


def ensemble(problem: Problem, draws: int = 64, seed: int | None = None) -> Ensemble:
    """Return the ensemble of `problem` as pressed, nothing reckoned yet.

    Parameters
    ----------
    problem
        The section, its body, schedule and air.
    draws
        Power of two, 2 to 4096: 64 for a bench, 256 once a piece has been looked at.
    seed
        Of the quasi-random sequence; by default `problem.seed()`.

    Raises
    ------
    ValueError
        When `draws` is not such a number.
    """
    chosen = problem.seed() if seed is None else seed
    theta = draw(problem.belief, problem.body.pressed_kg_per_kg, draws, chosen)
    return ensemble_of(problem, theta)


def ensemble_of(problem: Problem, theta: Floats, nodes: int | None = None) -> Ensemble:
    """Return the ensemble of given draws `theta`, shape (5, draws), as pressed.

    `nodes` (odd, from 5) overrules the number the section asks for, to see what the grid costs.
    """
    draws = theta.shape[1]
    state = State(
        moisture_kg_per_kg=np.tile(theta[2], (nodes or problem.section.nodes, 1)),
        saturation=np.zeros((2, draws)),
        crossed_s=np.full((len(STAGES), draws), np.inf),
        left_kg_m2=np.zeros(draws),
    )
    weights = np.full(draws, 1.0 / draws)
    return Ensemble(problem, theta, state, problem.pressed_at_s, weights)
