"""How many to press so that enough survive, and the last day on which to press them.

Each piece is taken to survive or not by itself, so counts are binomial. Ware in one kiln shares its
fate: a burst or a wrong firing takes neighbours, and the chance shown then is too good.
"""

import math
from collections.abc import Container, Hashable, Mapping, Sequence
from dataclasses import dataclass
from typing import Final, Literal, TypeVar

from scipy.special import bdtrc

from studio.domain.refusals import Unworkable

Basis = Literal["guess", "outcomes"]
K = TypeVar("K", bound=Hashable)

ENOUGH_OUTCOMES: Final = 20
"""Own outcomes below which a rate is called a guess: the studio's rule, no source."""

MOST_PRESSED: Final = 2_000
SHARED_FATE: Final = (
    "This holds only if each piece fails by itself. One kiln is one fate: spread them over two "
    "loads."
)


class NeverEnough(Unworkable):
    code = "never-enough"
    title = "However many are pressed, that chance is not reached."


@dataclass(frozen=True, slots=True)
class PressCount:
    """How many to press, and the chance of enough with as many and with one fewer.

    `by_division` is what dividing by the survival gives, with its own, lower chance.
    """

    count: int
    chance: float
    chance_one_fewer: float
    survival: float
    by_division: int
    by_division_chance: float
    caution: str = SHARED_FATE


@dataclass(frozen=True, slots=True)
class FirstTime:
    """How many pieces were good after one glaze firing, of those of which that is known."""

    good: int
    of: int


def overall(survivals: Sequence[float]) -> float:
    """Return the share that survives all stages; each is a share of what reached it, 0 to 1."""
    for share in survivals:
        _check_share(share)
    return math.prod(survivals)


def at_least(wanted: int, pressed: int, survival: float) -> float:
    """Return the chance that at least `wanted` of `pressed` survive (binomial)."""
    _check_share(survival)
    if wanted <= 0:
        return 1.0
    return 0.0 if wanted > pressed else float(bdtrc(wanted - 1, pressed, survival))


def press_count(wanted: int, survival: float, confidence: float) -> PressCount:
    """Return the fewest to press so that enough survive with the chance asked for.

    Parameters
    ----------
    wanted
        Pieces needed, 1 or more.
    survival
        Share that survives everything, not rounded.
    confidence
        Chance asked for, above 0 and below 1.

    Raises
    ------
    NeverEnough
        When 2000 do not reach it.
    """
    _check_ask(wanted, confidence)
    _check_share(survival)
    if at_least(wanted, MOST_PRESSED, survival) < confidence:
        raise NeverEnough(f"{MOST_PRESSED} pressed would not do for {wanted}.")
    count = next(
        pressed
        for pressed in range(wanted, MOST_PRESSED + 1)
        if at_least(wanted, pressed, survival) >= confidence
    )
    divided = math.ceil(wanted / survival)
    return PressCount(
        count=count,
        chance=at_least(wanted, count, survival),
        chance_one_fewer=at_least(wanted, count - 1, survival),
        survival=survival,
        by_division=divided,
        by_division_chance=at_least(wanted, divided, survival),
    )


def chance_of_enough(survivals: Sequence[float], wanted: int) -> float:
    """Return the chance that at least `wanted` pieces live, each with its own chance.

    Exact: the distribution of their number is built piece by piece (a Poisson binomial).
    """
    alive = [1.0]
    for share in survivals:
        _check_share(share)
        grown = [chance * (1.0 - share) for chance in alive] + [0.0]
        for count, chance in enumerate(alive):
            grown[count + 1] += chance * share
        alive = grown
    return min(1.0, math.fsum(alive[max(wanted, 0) :]))


def basis(outcomes: int) -> Basis:
    """Return whether a rate from as many own outcomes is more than a guess."""
    return "outcomes" if outcomes >= ENOUGH_OUTCOMES else "guess"


def survival_after(lost: int, of: int, *, prior_lost: float, prior_of: float) -> float:
    """Return the share that survives a stage, from own counts added to a prior.

    Parameters
    ----------
    lost, of
        Own pieces lost, of those that entered the stage.
    prior_lost, prior_of
        The studio's guess as if it were that many pieces: the mean of a beta distribution.
    """
    if not 0 <= lost <= of or not 0.0 <= prior_lost <= prior_of or of + prior_of <= 0.0:
        raise ValueError("No more are lost than entered, and something entered.")
    return 1.0 - (lost + prior_lost) / (of + prior_of)


def first_time(firings: Mapping[K, int], *, good: Container[K], lost: Container[K]) -> FirstTime:
    """Return how often one glaze firing was enough.

    Parameters
    ----------
    firings
        How many glaze firings each piece has had. What had none is not counted.
    good, lost
        What passed its last look, and what is lost. What was fired once and is neither waits for
        its last look and is not counted; what was fired again was not good the first time.
    """
    once = [piece for piece, count in firings.items() if count == 1]
    again = sum(count > 1 for count in firings.values())
    well = sum(piece in good and piece not in lost for piece in once)
    badly = sum(piece in lost for piece in once)
    return FirstTime(good=well, of=well + badly + again)


def _check_share(share: float) -> None:
    if not 0.0 <= share <= 1.0:
        raise ValueError("A share lies between 0 and 1.")


def _check_ask(wanted: int, confidence: float) -> None:
    if wanted < 1 or not 0.0 < confidence < 1.0:
        raise ValueError("At least one piece, with a chance above 0 and below 1.")
