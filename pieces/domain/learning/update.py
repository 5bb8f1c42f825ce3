"""Draws reweighted by what was seen, and the shared belief moved by one piece's evidence.

The draws of a piece are integrated once and kept; each new look only multiplies their weights.
The shared belief takes a piece's looks one by one [1]_ of the package: the number that a look is
about is made linear in the unknowns by a regression over the draws (what the line misses counts as
noise), its mean and variance after the look are found on a line, and the Gaussian is conditioned on
them. A number that hardly depends on an unknown says hardly anything of it: so nothing is learned
of diffusivity from thin walls.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray
from scipy.special import logsumexp, ndtri
from scipy.stats import qmc

from pieces.domain.drying import Belief, Ensemble
from pieces.domain.drying.belief import PIECE_VARIANCE, THETA
from pieces.domain.learning.belief import (
    FIRST,
    Groups,
    Prior,
    StudioBelief,
)
from pieces.domain.learning.likelihood import Factor, Seen

Floats = NDArray[np.float64]

# Evidence counts for a little less than its face: the model is not the clay, and looks at one
# piece are not independent. Plain Bayes was too sure in simulated studios (see the evaluation).
LIKELIHOOD_EXPONENT: Final = 0.7
FEWEST_EFFECTIVE: Final = 30.0  # fewer draws that count: draw and integrate the piece anew
LINE: Final = np.linspace(-6.0, 6.0, 241)  # widths about the middle, for sums along a line
LEAST_SHARE: Final = 0.5  # of the draws that counted before a look, when those were few
WIDER: Final = 1.5
FLOOR_SHARE: Final = 0.1
HALVINGS: Final = 30
TOUCH_SEED: Final = 7_919
_MOISTURE: Final = 2  # the row of theta that is a moisture


@dataclass(frozen=True, slots=True)
class Lesson:
    """The cached draws of one piece with what was seen of it.

    theta : (5, draws), with X0 as its difference from the body's
    drawn_from : what they were drawn from
    seen : what people saw, with each draw's answer
    """

    groups: Groups
    theta: Floats
    drawn_from: Belief
    seen: Sequence[Seen] = ()

    @classmethod
    def of(cls, groups: Groups, made: Ensemble, seen: Sequence[Seen] = ()) -> Lesson:
        """Return the lesson of an ensemble."""
        theta = made.theta.copy()
        theta[_MOISTURE] -= made.problem.body.pressed_kg_per_kg
        return cls(groups, theta, made.problem.belief, seen)


def weigh(belief: StudioBelief, lesson: Lesson) -> tuple[Floats, float]:
    """Return the weights of a piece's draws, shape (draws,), sum 1, and their effective number.

    They join what the studio believes by now with what was seen of the piece itself.
    """
    sample = _Sample.of(belief, lesson)
    return _normalised(sample.log_prior_ratio + LIKELIHOOD_EXPONENT * sample.log_likelihood)


def drawn_again(belief: StudioBelief, lesson: Lesson) -> Belief:
    """Return what to draw a piece from where too few of its draws count.

    As wide as what is left of them and a little wider, so that nothing that is still likely is
    missed; a piece nobody looked at is drawn from what the studio believes.
    """
    prior = belief.of_piece(lesson.groups)
    if not lesson.seen:
        return prior
    weights = _tempered(_Sample.of(belief, lesson))
    mean = lesson.theta @ weights
    apart = lesson.theta - mean[:, None]
    spread = WIDER * (weights * apart) @ apart.T
    return Belief.of(mean, spread + FLOOR_SHARE * np.array(prior.covariance))


def learn(belief: StudioBelief, lesson: Lesson) -> StudioBelief:
    """Return the belief after a piece's evidence, which must not have been learned from yet.

    A lesson without looks teaches nothing. The order of pieces matters a little, so that callers
    keep one: by the time of pressing.
    """
    if not lesson.seen:
        return belief
    named = belief.naming(lesson.groups.names)
    sample = _Sample.of(named, lesson)
    weights = _tempered(sample)
    state = _State.of(named, lesson.groups)
    for look in lesson.seen:
        for factor in look.factors:
            state.take(factor, _line(lesson.theta, factor.predicted, weights))
    return state.belief(named)


def fold(lessons: Iterable[Lesson]) -> StudioBelief:
    """Return what the studio believes after all lessons, in the order given."""
    belief = FIRST
    for lesson in lessons:
        belief = learn(belief, lesson)
    return belief


@dataclass(frozen=True, slots=True)
class _Sample:
    """A piece's draws under a belief: theta as it was integrated, touches as now believed.

    log_prior_ratio : (draws,), of the belief to what they were drawn from
    log_likelihood : (draws,), of everything seen
    """

    log_prior_ratio: Floats
    log_likelihood: Floats

    @classmethod
    def of(cls, belief: StudioBelief, lesson: Lesson) -> _Sample:
        prior = belief.prior(lesson.groups)
        theta = lesson.theta
        touches = _touches_given(theta, prior)
        offsets = dict(zip(lesson.groups.touchers, touches, strict=True))
        said = np.zeros(theta.shape[1])
        for look in lesson.seen:
            for factor in look.factors:
                touch = offsets[factor.who] if factor.who is not None else 0.0
                said += factor.log_likelihood(factor.predicted - touch)
        ratio = _log_normal(theta, belief.of_piece(lesson.groups)) - _log_normal(
            theta, lesson.drawn_from
        )
        return cls(ratio, said)


def _touches_given(theta: Floats, prior: Prior) -> Floats:
    """Return a draw of the touches for every draw of theta: they need no integration."""
    count = len(prior.mean) - THETA
    if count == 0:
        return np.empty((0, theta.shape[1]))
    cross, own = prior.covariance[THETA:, :THETA], prior.covariance[THETA:, THETA:]
    gain = np.linalg.solve(prior.covariance[:THETA, :THETA], cross.T).T
    rest = own - gain @ cross.T
    root = np.linalg.cholesky(0.5 * (rest + rest.T) + 1e-14 * np.eye(count))
    middle = prior.mean[THETA:, None] + gain @ (theta - prior.mean[:THETA, None])
    touched: Floats = middle + root @ _normals(count, theta.shape[1], TOUCH_SEED)
    return touched


def _normals(rows: int, draws: int, seed: int) -> Floats:
    uniform = qmc.Sobol(rows, scramble=True, rng=seed).random(draws)
    normal: Floats = ndtri(np.clip(uniform, 1e-9, 1.0 - 1e-9)).T
    return normal


def _log_normal(theta: Floats, belief: Belief) -> Floats:
    root = np.linalg.cholesky(np.array(belief.covariance))
    scaled = np.linalg.solve(root, theta - np.asarray(belief.mean)[:, None])
    density: Floats = -0.5 * (scaled**2).sum(axis=0) - np.log(np.diag(root)).sum()
    return density


def _normalised(logs: Floats) -> tuple[Floats, float]:
    weights: Floats = np.exp(logs - logsumexp(logs))
    return weights, float(1.0 / np.sum(weights**2))


def _tempered(sample: _Sample) -> Floats:
    """Return the weights after the looks, by the largest exponent that keeps enough draws."""

    def at(exponent: float) -> tuple[Floats, float]:
        return _normalised(sample.log_prior_ratio + exponent * sample.log_likelihood)

    weights, effective = at(LIKELIHOOD_EXPONENT)
    fewest = min(FEWEST_EFFECTIVE, LEAST_SHARE * at(0.0)[1])
    if effective >= fewest:
        return weights
    low, high = 0.0, LIKELIHOOD_EXPONENT
    for _ in range(HALVINGS):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if at(middle)[1] >= fewest else (low, middle)
    return at(low)[0]


def _line(theta: Floats, predicted: Floats, weights: Floats) -> tuple[Floats, float, float]:
    """Return (slopes, level, variance left) of the weighted line through the draws."""
    root = np.sqrt(weights)
    middle = theta @ weights
    width = np.sqrt(((theta - middle[:, None]) ** 2) @ weights) + 1e-12
    scaled = (theta - middle[:, None]) / width[:, None]
    columns = np.concatenate([np.ones((1, theta.shape[1])), scaled])
    found, *_ = np.linalg.lstsq((columns * root).T, predicted * root, rcond=None)
    left = predicted - found @ columns
    slopes = found[1:] / width
    return slopes, float(found[0] - slopes @ middle), float(weights @ left**2)


@dataclass(slots=True)
class _State:
    """Everything shared and what is this piece's own, under way through its looks.

    mean : (names + 5,), covariance : square; at : where the piece's groups stand among the names
    """

    groups: Groups
    at: NDArray[np.intp]
    mean: Floats
    covariance: Floats

    @classmethod
    def of(cls, named: StudioBelief, groups: Groups) -> _State:
        shared = len(named.names)
        covariance = np.zeros((shared + THETA, shared + THETA))
        covariance[:shared, :shared] = named.covariance
        covariance[shared:, shared:] = np.diag(PIECE_VARIANCE)
        mean = np.concatenate([named.mean, np.zeros(THETA)])
        return cls(groups, named.places(groups.names), mean, covariance)

    def take(self, factor: Factor, line: tuple[Floats, float, float]) -> None:
        """Condition on one look."""
        slopes, level, left = line
        pull = self._pull(factor, slopes)
        along = self.covariance @ pull
        variance = float(pull @ along) + left
        middle = level + float(pull @ self.mean)
        shift, kept = _after_look(factor, middle, variance)
        self.mean = self.mean + along * (shift / variance)
        self.covariance = self.covariance - np.outer(along, along) * ((1.0 - kept) / variance)

    def _pull(self, factor: Factor, slopes: Floats) -> Floats:
        pull = np.zeros(len(self.mean))
        pull[self.at[:THETA]] += slopes
        pull[-THETA:] += slopes
        if factor.who is not None:
            pull[self.at[THETA + self.groups.touchers.index(factor.who)]] -= 1.0
        return pull

    def belief(self, named: StudioBelief) -> StudioBelief:
        """Return what is shared, without the piece's own."""
        shared = len(named.names)
        covariance = self.covariance[:shared, :shared]
        covariance = 0.5 * (covariance + covariance.T)
        return StudioBelief(named.names, self.mean[:shared], covariance, named.pieces + 1)


def _after_look(factor: Factor, middle: float, variance: float) -> tuple[float, float]:
    """Return how far a look moves its number, and what share of the variance it leaves (0 to 1)."""
    number = middle + np.sqrt(variance) * LINE
    logs = LIKELIHOOD_EXPONENT * factor.log_likelihood(number) - 0.5 * LINE**2
    weights = np.exp(logs - logsumexp(logs))
    shift = float(weights @ number) - middle
    after = float(weights @ (number - middle - shift) ** 2)
    return shift, min(1.0, after / variance)
