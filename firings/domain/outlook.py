"""Will enough be ready, and in time? Each piece has a chance to live and a likely day.

First form: a piece goes through four steps; what each step costs in pieces and in days comes from
the studio's own pieces, else from a cautious guess. Pieces are taken to fare by themselves, days to
be normal (see `press_days`), and the number that is ready in time then follows exactly
(`survival.chance_of_enough`).

References
----------
.. [1] potters.org, "loss rates", http://www.potters.org/subject07044.htm: makers report 7 to 70 %
       lost, and call 15 to 19 % normal. The guess below loses about a quarter; how it is spread
       over the steps is common practice, no source, as are the days.
"""

import math
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import permutations
from typing import Final, Literal

from .press_days import Duration
from .survival import chance_of_enough, survival_after

Step = Literal["forming", "bisque", "glaze", "finish"]
STEPS: Final[tuple[Step, ...]] = ("forming", "bisque", "glaze", "finish")
STEP_WORDS: Final[dict[str, str]] = {
    "forming": "until it is dry and in the kiln",
    "bisque": "in the bisque firing",
    "glaze": "until it is glazed and fired",
    "finish": "at the last look",
}

GUESSED_LOSS: Final[dict[str, float]] = {
    "forming": 0.14,
    "bisque": 0.04,
    "glaze": 0.07,
    "finish": 0.03,
}
GUESS_WEIGHT: Final = 10.0
"""How many pieces the guess counts as, beside the studio's own."""

GUESSED_DAYS: Final[dict[str, Duration]] = {
    "forming": Duration("press, join, dry, wait for a kiln", 6.0, 12.0, 24.0),
    "bisque": Duration("bisque firing", 1.0, 2.0, 4.0),
    "glaze": Duration("glaze, wait for a kiln, glaze firing", 2.0, 7.0, 16.0),
    "finish": Duration("last look, mend, pack", 0.0, 1.0, 4.0),
}
ENOUGH_SPANS: Final = 8
"""Own spans of a step below which the guess holds: the studio's rule, no source."""

FIRING_DAYS: Final = 2.0
"""From lighting a booked kiln until its ware is out: common practice, no source."""

LEAST_LEFT: Final = 0.15
"""The share of a step's usual days still to come, however long it took already."""

LEAST_DEVIATION_DAYS: Final = 0.5
TEN_PERCENT: Final = 1.2816
WANTED_CHANCE: Final = 0.9
RISKY_BELOW: Final = 0.8
MOST_MORE: Final = 200


@dataclass(frozen=True, slots=True)
class Figures:
    """What steps cost: the share that survives each, and its days."""

    survival: Mapping[str, float]
    days: Mapping[str, Duration]


@dataclass(frozen=True, slots=True)
class Ahead:
    """What lies ahead of one piece: its chance to be good, and when. [days from today]"""

    survival: float
    mean_days: float
    deviation_days: float

    def in_time(self, days: float) -> float:
        """Return the chance that it is ready in as many days, given that it lives."""
        if self.mean_days <= 0.0:
            return 1.0
        return 0.5 * math.erfc((self.mean_days - days) / (self.deviation_days * math.sqrt(2.0)))


@dataclass(frozen=True, slots=True)
class More:
    """How many more of each role, the chance of enough with them, and splits that do as well."""

    counts: tuple[int, ...]
    chance: float
    also: tuple[tuple[tuple[int, ...], float], ...] = ()


@dataclass(frozen=True, slots=True)
class Span:
    """The days in which enough is likely there: 10, 50 and 90 of a hundred. [days from today]"""

    p10: float
    p50: float
    p90: float


def survivals(
    outcomes: Mapping[str, tuple[int, int]], loss_before: Mapping[str, float] = GUESSED_LOSS
) -> dict[str, float]:
    """Return the share that survives each step, from (lost, entered) of own pieces.

    `loss_before` is what was believed before them: the guess for a studio, and for one design the
    losses of its whole studio.
    """
    return {
        step: survival_after(
            *outcomes.get(step, (0, 0)),
            prior_lost=loss_before[step] * GUESS_WEIGHT,
            prior_of=GUESS_WEIGHT,
        )
        for step in STEPS
    }


def durations(spans_days: Mapping[str, Sequence[float]]) -> dict[str, Duration]:
    """Return the days of each step: least, middle and most of own spans where there are enough."""
    found: dict[str, Duration] = {}
    for step in STEPS:
        own = sorted(spans_days.get(step, ()))
        guess = GUESSED_DAYS[step]
        found[step] = (
            Duration(guess.name, own[0], own[len(own) // 2], own[-1])
            if len(own) >= ENOUGH_SPANS
            else guess
        )
    return found


def ahead(
    figures: Figures, done: int, *, days_in_step: float = 0.0, fired_in_days: float | None = None
) -> Ahead:
    """Return what lies ahead of a piece.

    Parameters
    ----------
    figures
        What steps cost.
    done
        How many of the four steps it has behind it: 4 is finished, 0 is to be pressed or formed.
    days_in_step
        How long it has been in the step it is in.
    fired_in_days
        When the firing that ends its step is lit, where it has a place in one; negative once lit.
    """
    left = STEPS[done:]
    if not left:
        return Ahead(1.0, 0.0, 0.0)
    survival = math.prod(figures.survival[step] for step in left)
    means, squares = zip(*(_mean_and_square(figures.days[step]) for step in left), strict=True)
    first = max(means[0] - days_in_step, LEAST_LEFT * means[0])
    if fired_in_days is not None:
        # Drying ends as the kiln is lit; a firing, when its ware is out.
        first = max(fired_in_days + (0.0 if left[0] == "forming" else FIRING_DAYS), 0.0)
        squares = (LEAST_DEVIATION_DAYS**2, *squares[1:])
    deviation = max(math.sqrt(math.fsum(squares)), LEAST_DEVIATION_DAYS)
    return Ahead(survival, first + math.fsum(means[1:]), deviation)


def chance(pieces: Sequence[Ahead], wanted: int, *, days: float | None) -> float:
    """Return the chance that enough are good, and ready in `days` where that is given."""
    shares = [piece.survival * (1.0 if days is None else piece.in_time(days)) for piece in pieces]
    return chance_of_enough(shares, wanted)


def more_to_press(
    roles: Sequence[tuple[Sequence[Ahead], int]], survivals: Sequence[float]
) -> More | None:
    """Return the fewest more that make enough good ones of every role with a chance of 90 %.

    Parameters
    ----------
    roles
        For each role what there is, planned pieces among them, and how many are wanted.
    survivals
        For each role the chance of a piece that is pressed now.

    Returns
    -------
    The least total, shared out for the best chance; None where 200 more would not do.
    """
    shares = [[piece.survival for piece in pieces] for pieces, _ in roles]
    more = [0] * len(roles)

    def enough(role: int, count: int) -> float:
        return chance_of_enough(shares[role] + [survivals[role]] * count, roles[role][1])

    def gain(role: int) -> float:
        # The logarithm of each chance is concave in the count: adding where the product grows
        # most gives the best chance of every total.
        now = chances[role]
        return enough(role, more[role] + 1) / now if now > 0.0 else math.inf

    chances = [enough(role, 0) for role in range(len(roles))]
    while math.prod(chances) < WANTED_CHANCE:
        if sum(more) >= MOST_MORE or min(survivals) <= 0.0:
            return None
        best = max(range(len(roles)), key=gain)
        more[best] += 1
        chances[best] = enough(best, more[best])
    return More(tuple(more), math.prod(chances), tuple(_also(more, chances, enough)))


def _also(
    more: Sequence[int], chances: Sequence[float], enough: Callable[[int, int], float]
) -> Iterator[tuple[tuple[int, ...], float]]:
    """Yield what one fewer of a role and one more of another would do, where that is enough."""
    for less, other in permutations(range(len(more)), 2):
        if more[less] == 0:
            continue
        counts = list(more)
        counts[less] -= 1
        counts[other] += 1
        kept = [
            enough(role, counts[role]) if role in (less, other) else chances[role]
            for role in range(len(more))
        ]
        if math.prod(kept) >= WANTED_CHANCE:
            yield tuple(counts), math.prod(kept)


def likely_span(pieces: Sequence[Ahead], wanted: int, fresh: Ahead, *, more: int) -> Span | None:
    """Return when the piece is likely ready with which enough are there; None if they are now.

    `fresh` is what lies ahead of one pressed now, of which `more` are reckoned with. The piece is
    the first, in order of their days, with which enough are good more likely than not.
    """
    ordered = sorted([*pieces, *[fresh] * more], key=lambda piece: piece.mean_days)
    for count in range(wanted, len(ordered) + 1):
        shares = [piece.survival for piece in ordered[:count]]
        if chance_of_enough(shares, wanted) >= 0.5:
            last = ordered[count - 1] if count else None
            break
    else:
        last = ordered[-1] if ordered else fresh
    if last is None or last.mean_days <= 0.0:
        return None
    spread = TEN_PERCENT * last.deviation_days
    return Span(max(last.mean_days - spread, 0.0), last.mean_days, last.mean_days + spread)


def day_after(today: date, days: float) -> date:
    """Return the day that many days on; a day begun counts as its own."""
    return today + timedelta(days=math.ceil(round(days, 6)))


def _mean_and_square(duration: Duration) -> tuple[float, float]:
    """Return the mean of a step and the square of its deviation, by the three-point estimate."""
    mean = (duration.least + 4.0 * duration.usual + duration.most) / 6.0
    return mean, ((duration.most - duration.least) / 6.0) ** 2
