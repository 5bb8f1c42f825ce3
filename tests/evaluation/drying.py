"""How good the drying estimates are in simulated studios: coverage and error, by a seed.

    python -m tests.evaluation.drying --seed 20261125 --studios 80

For every studio the shipped design learns from 0, 3, 10 and 30 finished pieces (256 cached draws
each, reweighted) and forecasts pieces that nobody has looked at, from their pressing on. It prints
the share of true instants inside the 80 % range, the median error of the middle guess, and how
many stages the truth or the forecast did not reach: a stage that the truth did not reach within
21 days counts as later than all instants, and is inside a range that reaches beyond them.
"""

import argparse
import math
import time
from dataclasses import dataclass, replace

import numpy as np

from pieces.domain.drying import (
    STAGES,
    Batch,
    Ensemble,
    Problem,
    Stage,
    engine,
    ensemble,
    simulate,
)
from pieces.domain.drying.windows import quantiles
from pieces.domain.learning import (
    FEWEST_EFFECTIVE,
    FIRST,
    Groups,
    Lesson,
    StudioBelief,
    Touched,
    Weighed,
    learn,
    weigh,
)
from pieces.domain.learning.likelihood import Limits
from pieces.domain.learning.update import drawn_again
from tests.evaluation.studios import AS_THE_MODEL, HORIZON_S, MISSPECIFIED, Family, Piece, make

DRAWS = 256
AFTER = (0, 3, 10, 30)
FORECAST = (
    Stage.JOIN_OPENS,
    Stage.JOIN_CLOSES,
    Stage.SHRINKAGE_ENDED,
    Stage.BISQUE,
)


@dataclass(frozen=True)
class Guess:
    """One forecast of one stage beside its truth, hours from the pressing."""

    after: int
    stage: Stage
    p10_h: float
    p50_h: float
    p90_h: float
    true_h: float

    @property
    def is_inside(self) -> bool:
        return self.p10_h <= self.true_h <= self.p90_h

    @property
    def error(self) -> float:
        if math.isinf(self.p50_h) or math.isinf(self.true_h):
            return 0.0 if self.p50_h == self.true_h else math.inf
        return abs(self.p50_h / self.true_h - 1.0)


@dataclass(frozen=True)
class Integrated:
    """A piece's cached draws, with where they stand at the end and what each look makes of them."""

    piece: Piece
    after: Ensemble
    lesson: Lesson


def integrate(pieces: list[Piece], seed: int, *, ahead: bool = False) -> list[Integrated]:
    """Integrate 256 draws of the first belief for every piece: once, as the worker does."""
    made, groups = [], []
    for i, piece in enumerate(pieces):
        hands = tuple(sorted({hand for _, _, hand in piece.checks}))
        groups.append(Groups(piece.body, piece.place, hands))
        known = piece.foreseen if ahead else piece.problem
        asked = replace(known, belief=FIRST.of_piece(groups[-1]))
        made.append(ensemble(asked, DRAWS, seed * 1000 + i))
    until = tuple(each.problem.pressed_at_s + float(HORIZON_S) for each in made)
    run = simulate(Batch(tuple(made), until, keeps_track=True))
    return [
        Integrated(piece, after, Lesson.of(group, after, _looks(piece, track)))
        for piece, group, after, track in zip(pieces, groups, run.after, run.tracks, strict=True)
    ]


def _looks(piece: Piece, track) -> list[Touched | Weighed]:
    body = piece.problem.body
    limits = Limits(
        body.demould_kg_per_kg,
        body.leather_opens_kg_per_kg,
        body.leather_closes_kg_per_kg,
        body.bisque_kg_per_kg,
    )

    def at(moisture, at_s: float):
        place = int(np.searchsorted(track.at_s, at_s))
        low, high = max(0, place - 1), min(place, len(track.at_s) - 1)
        span = track.at_s[high] - track.at_s[low]
        part = (at_s - track.at_s[low]) / span if span else 0.0
        return moisture[low] + part * (moisture[high] - moisture[low])

    looks: list[Touched | Weighed] = []
    for at_s, feel, hand in piece.checks:
        mean, dampest = at(track.mean_kg_per_kg, at_s), at(track.dampest_kg_per_kg, at_s)
        looks.append(Touched(feel, hand, limits, mean, dampest))
    if piece.weighings:
        (first_s, first_g), *later = piece.weighings
        began = 1.0 + at(track.mean_kg_per_kg, first_s)
        for at_s, mass_g in later:
            predicted = (1.0 + at(track.mean_kg_per_kg, at_s)) / began
            looks.append(Weighed(mass_g / first_g, predicted))
    return looks


def forecasts(belief: StudioBelief, unseen: list[Integrated], after: int) -> list[Guess]:
    """Return the guesses about unseen pieces: their draws reweighted by the belief alone.

    Pieces of whose draws too few count by now are drawn and integrated anew, as the product does.
    """
    blank = [replace(each.lesson, seen=()) for each in unseen]
    weighed = [weigh(belief, lesson) for lesson in blank]
    thin = [i for i, (_, effective) in enumerate(weighed) if effective < FEWEST_EFFECTIVE]
    again = [replace(unseen[i].after.problem, belief=drawn_again(belief, blank[i])) for i in thin]
    anew = dict(zip(thin, _at_the_end(again), strict=True))
    found = []
    for i, each in enumerate(unseen):
        ended = anew.get(i, each.after)
        weights, _ = weigh(belief, Lesson.of(each.lesson.groups, ended))
        for stage in FORECAST:
            row = STAGES.index(stage)
            said = quantiles(ended.state.crossed_s[row], weights)
            began = each.piece.problem.pressed_at_s
            hours = [(at - began) / 3600.0 for at in (said.p10_s, said.p50_s, said.p90_s)]
            found.append(Guess(after, stage, *hours, each.piece.crossed_s[row] / 3600.0))
    return found


def _at_the_end(problems: list[Problem]) -> tuple[Ensemble, ...]:
    """Return 256 draws of each problem, integrated to the horizon."""
    if not problems:
        return ()
    made = tuple(ensemble(each, DRAWS) for each in problems)
    until = tuple(each.problem.pressed_at_s + float(HORIZON_S) for each in made)
    return simulate(Batch(made, until)).after


def judge(seed: int, family: Family) -> list[Guess]:
    """Return all guesses about one studio."""
    studio = make(seed, family)
    finished, unseen = (
        integrate(studio.finished, seed),
        integrate(studio.unseen, seed + 500_000, ahead=True),
    )
    belief, found = FIRST, []
    for count in range(len(finished) + 1):
        if count in AFTER:
            found += forecasts(belief, unseen, count)
        if count < len(finished):
            belief = learn(belief, finished[count].lesson)
    return found


def table(guesses: list[Guess]) -> list[str]:
    """Return the lines of the table."""
    lines = ["| finished pieces | forecasts | inside the 80 % range | median error | not reached |"]
    lines.append("|---|---|---|---|---|")
    for after in AFTER:
        own = [guess for guess in guesses if guess.after == after]
        inside = np.mean([guess.is_inside for guess in own])
        error = np.median([guess.error for guess in own])
        beyond = sum(math.isinf(guess.true_h) for guess in own)
        lines.append(f"| {after} | {len(own)} | {inside:.1%} | {error:.1%} | {beyond} |")
    return lines


def by_stage(guesses: list[Guess]) -> list[str]:
    """Return the lines of the table by stage, after the most finished pieces."""
    lines = [
        f"| after {AFTER[-1]}, by stage | inside the 80 % range | median error |",
        "|---|---|---|",
    ]
    for stage in FORECAST:
        own = [guess for guess in guesses if guess.stage is stage and guess.after == AFTER[-1]]
        inside = np.mean([guess.is_inside for guess in own])
        error = np.median([guess.error for guess in own])
        lines.append(f"| {stage.value.replace('_', ' ')} | {inside:.1%} | {error:.1%} |")
    return lines


def main() -> None:
    """Print the tables."""
    words = argparse.ArgumentParser()
    words.add_argument("--seed", type=int, default=20261125)
    words.add_argument("--studios", type=int, default=80)
    words.add_argument("--misspecified", type=int, default=80)
    given = words.parse_args()
    engine.use(engine.compiled())
    for family, count in ((AS_THE_MODEL, given.studios), (MISSPECIFIED, given.misspecified)):
        began, found = time.process_time(), []
        for i in range(count):
            found += judge(given.seed + i, family)
        spent = time.process_time() - began
        if not found:
            continue
        print(f"Truth: {family.name}; {count} studios, seed {given.seed}, {spent:.0f} s CPU")
        print("\n".join([*table(found), "", *by_stage(found), ""]))


if __name__ == "__main__":
    main()
