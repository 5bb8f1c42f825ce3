"""Learning: what a studio's own weighings and touches say of its clays, its rooms and its covers.

How to use it::

    belief = FIRST                                  # nothing looked at yet
    problem = Problem(..., belief=belief.of_piece(groups))
    after = simulate(Batch((ensemble(problem, 256),), ...)).after[0]  # integrated once, kept
    lesson = Lesson.of(groups, after, seen)         # seen: looks, with each draw's answer
    weights, effective = weigh(belief, lesson)      # of the cached draws: nothing is integrated
    belief = learn(belief, lesson)                  # once for every piece, in a fixed order

A piece's unknowns are theta = (ln f_D, ln f_K, X0, ln f_C): its clay's diffusivity, its room's
exchange, its moisture as pressed and what a cover lets through, each the sum of what all pieces of
that clay, room or studio share and of what is the piece's own. The makers' touch is a further
unknown: somebody who calls clay leather-hard sooner than others does so on every piece.

What it does not do: diffusivity is not learned from thin walls. Their drying hardly depends on it
(d ln t / d ln D is 0.00 for the leather-hard of an 8 mm wall, -0.16 for its bisque), so that its
width stays what it was; only thick lumps move it.

References
----------
.. [1] T. P. Minka, "Expectation Propagation for Approximate Bayesian Inference", UAI 2001:
       moments matched piece by piece (from memory).
.. [2] A. Doucet, N. de Freitas, N. Gordon, "Sequential Monte Carlo Methods in Practice" (2001):
       importance weights and their effective number (from memory).
"""

from pieces.domain.learning.belief import FIRST, Groups, Prior, StudioBelief
from pieces.domain.learning.likelihood import (
    Feel,
    StillInMould,
    Touched,
    Weighed,
)
from pieces.domain.learning.update import FEWEST_EFFECTIVE, Lesson, fold, learn, weigh

__all__ = [
    "FEWEST_EFFECTIVE",
    "FIRST",
    "Feel",
    "Groups",
    "Lesson",
    "Prior",
    "StillInMould",
    "StudioBelief",
    "Touched",
    "Weighed",
    "fold",
    "learn",
    "weigh",
]
