"""Drying: how wet a piece is inside, when it comes to each stage, and how sure that is.

How to use it::

    climate = climate_from(readings, start_s, until_s)  # hourly air, then its forecast
    section = Section(Shape.FLAT, thickest_m=0.010)
    events = (in_mould(pressed_s, section, Plaster(0.09)), out_of_mould(out_s, section))
    problem = Problem(BODIES["smooth_stoneware"], section, events, climate)

    made = ensemble(problem, 64)  # as pressed; nothing reckoned yet
    now = advance([made, ...], to_s)  # many pieces, one call; worth keeping
    kept = now[0].to_bytes()
    again = Ensemble.from_bytes(problem, kept)

    run = simulate(Batch(tuple(now), horizon_s, keeps_track=True))  # into the forecast
    windows = readiness(run.after[0], now_s)  # ReadinessWindows
    line = curve(run.after[0], run.tracks[0], at_s)  # water left, p10/p50/p90
    wrong = faults(run.after[0], run.tracks[0])  # [] or sentences, without the solver

Rules of the road:

- Instants are seconds since 1970 in UTC (`datetime.timestamp()`), quantities SI, moistures water
  by mass of dry clay. `ValueError` means the caller has a bug; "not reached" and "not in this
  room" are answers.
- A state is carried on only through measured air: `advance` to a whole hour not after
  `climate.measured_to_s`; then a stored state continued equals one unbroken run to round-off.
  When a fold changes what happened before `advanced_to_s`, `from_bytes` refuses the state.
- Put all pieces into one call: in numpy a call costs by the hour marched through more than by the
  piece. `engine.use(engine.compiled())` makes this process march in a compiled loop from then on.
- Nothing here knows the time, and nothing is random: draws come from a fixed seed per body and
  section.

Limits: one dimension, one section; room air untouched by the ware; no cracks, rewetting by slip or
warping; figures of bodies are starting centres. It says when a piece is worth a look, never that
it is dry.

References
----------
.. [1] R. B. Keey, "Drying: Principles and Practice" (1972): diffusion with a surface balance
       (from memory).
.. [2] C. R. Oswin, J. Soc. Chem. Ind. 65 (1946) 419: the isotherm (from memory).
.. [3] H. L. Penman, Proc. R. Soc. A 193 (1948) 120: surface balance by the slope of saturation
       (from memory).
.. [4] R. Alexander, SIAM J. Numer. Anal. 14 (1977) 1006: SDIRK2, gamma = 1 - 1/sqrt 2 (from
       memory).
"""

from pieces.domain.drying.belief import FIRST_BELIEF, Belief
from pieces.domain.drying.bodies import BODIES, SOURCES, Body, Mark
from pieces.domain.drying.checks import faults
from pieces.domain.drying.climate import Climate, Reading, climate_from, constant_climate
from pieces.domain.drying.curve import Curve, curve
from pieces.domain.drying.draws import ensemble
from pieces.domain.drying.moving_air import exchange_in
from pieces.domain.drying.problem import (
    STAGES,
    Batch,
    Ensemble,
    Exchange,
    Problem,
    Run,
    Stage,
    State,
    Track,
)
from pieces.domain.drying.sections import (
    Cover,
    Face,
    FaceEvent,
    Plaster,
    Section,
    Shape,
    in_mould,
    out_of_mould,
)
from pieces.domain.drying.solver import MODEL_VERSION, advance, simulate
from pieces.domain.drying.windows import (
    Quantiles,
    ReadinessWindows,
    Window,
    latest,
    readiness,
    together,
)

__all__ = [
    "BODIES",
    "FIRST_BELIEF",
    "MODEL_VERSION",
    "SOURCES",
    "STAGES",
    "Batch",
    "Belief",
    "Body",
    "Climate",
    "Cover",
    "Curve",
    "Ensemble",
    "Exchange",
    "Face",
    "FaceEvent",
    "Mark",
    "Plaster",
    "Problem",
    "Quantiles",
    "ReadinessWindows",
    "Reading",
    "Run",
    "Section",
    "Shape",
    "Stage",
    "State",
    "Track",
    "Window",
    "advance",
    "climate_from",
    "constant_climate",
    "curve",
    "ensemble",
    "exchange_in",
    "faults",
    "in_mould",
    "latest",
    "out_of_mould",
    "readiness",
    "simulate",
    "together",
]
