"""Pieces as they stand, for trying covers on them."""

import numpy as np

from pieces.domain.covering import crack_index
from pieces.domain.drying import (
    BODIES,
    Batch,
    Cover,
    Ensemble,
    FaceEvent,
    Problem,
    Section,
    advance,
    constant_climate,
    out_of_mould,
    simulate,
)
from pieces.domain.drying.draws import ensemble_of

HOUR_S = 3600


def piece(
    section: Section,
    *,
    events: tuple[FaceEvent, ...] | None = None,
    cover: Cover = Cover.OPEN,
    exchange: tuple[float, ...] = (0.0,),
) -> Ensemble:
    """Return a piece as pressed, in still air at 20 °C and 50 %; one draw for each ln f_K."""
    climate = constant_climate(0, 60 * 24 * HOUR_S, 20.0, 0.5)
    schedule = events or (out_of_mould(0, section, cover=cover),)
    problem = Problem(BODIES["red_earthenware"], section, schedule, climate)
    draws = len(exchange)
    theta = np.array(
        [np.zeros(draws), np.asarray(exchange), np.full(draws, 0.25), *np.zeros((2, draws))]
    )
    return ensemble_of(problem, theta)


def worst_index(state: Ensemble, until_h: int, since_h: int = 0) -> float:
    """Return the worst index of a piece's hours, left as it is."""
    worst = 0.0
    for hour in range(1, until_h + 1):
        (state,) = simulate(Batch((state,), float(hour * HOUR_S))).after
        if hour >= since_h:
            worst = max(worst, float(crack_index(state)[0]))
    return worst


def after(state: Ensemble, hours: int) -> Ensemble:
    """Return the piece some hours later."""
    return advance([state], float(hours * HOUR_S))[0]
