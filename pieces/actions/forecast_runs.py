"""The answers of the drying model: reckoned in one call, weighted by what was seen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Final

from pieces.domain.drying import Batch, Ensemble, Track, ensemble, simulate
from pieces.domain.learning import FEWEST_EFFECTIVE, Lesson, StudioBelief, weigh
from pieces.domain.learning.looks import asked
from pieces.domain.learning.update import drawn_again

from .forecast_questions import HORIZON, Question

HOUR_S: Final = 3600


@dataclass(frozen=True, slots=True)
class Answer:
    """What was reckoned for one question.

    begun : where the run began; known, track : at the end of the measured air, and the way there;
    after, ahead : at the horizon, and the way there; effective : how many draws count
    """

    question: Question
    begun: Ensemble
    known: Ensemble
    track: Track
    after: Ensemble
    ahead: Track
    effective: float


def answers(asked_for: Sequence[Question], belief: StudioBelief, at: datetime) -> list[Answer]:
    """Return the answers in the order of the questions.

    Where what is believed or was seen leaves too few draws that count, the part is drawn and
    reckoned once more from what is left.
    """
    found = _run(asked_for, belief, at)
    thin = [i for i, each in enumerate(found) if each.effective < FEWEST_EFFECTIVE]
    if thin:
        again = []
        for i in thin:
            question = found[i].question
            lesson = _lesson(question, found[i].after, [found[i].track, found[i].ahead])
            again.append(question.drawn_from(drawn_again(belief, lesson)))
        for i, better in zip(thin, _run(again, belief, at), strict=True):
            found[i] = replace(
                better, question=replace(better.question, kept=found[i].question.kept)
            )
    return found


def horizon_s(at: datetime) -> float:
    """Return how far ahead is looked: to a whole hour. [s since 1970]"""
    return at.timestamp() // HOUR_S * HOUR_S + HORIZON.total_seconds()


def _run(asked_for: Sequence[Question], belief: StudioBelief, at: datetime) -> list[Answer]:
    if not asked_for:
        return []
    now_s = at.timestamp()
    until = tuple(_known_until_s(question, now_s) for question in asked_for)
    begun = [question.state or ensemble(question.problem, question.draws) for question in asked_for]
    known = simulate(Batch(tuple(begun), until, keeps_track=True))
    ahead = simulate(Batch(known.after, horizon_s(at), keeps_track=True))
    found = []
    for i, question in enumerate(asked_for):
        tracks = [known.tracks[i], ahead.tracks[i]]
        weights, effective = weigh(belief, _lesson(question, ahead.after[i], tracks))
        found.append(
            Answer(
                question,
                begun[i],
                known.after[i].with_weights(weights),
                known.tracks[i],
                ahead.after[i].with_weights(weights),
                ahead.tracks[i],
                effective,
            )
        )
    return found


def _lesson(question: Question, after: Ensemble, tracks: Sequence[Track]) -> Lesson:
    return Lesson.of(question.groups, after, asked(question.looks, question.problem, tracks))


def _known_until_s(question: Question, now_s: float) -> float:
    measured = question.problem.climate.measured_to_s
    pressed_s = float(question.problem.pressed_at_s)
    if measured is None:
        return pressed_s
    return max(min(now_s, measured) // HOUR_S * HOUR_S, pressed_s)
