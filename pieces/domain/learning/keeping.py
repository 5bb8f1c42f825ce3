"""A lesson as a table can keep it: words as JSON, numbers as bytes, exactly."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying import Belief
from pieces.domain.drying.belief import THETA
from pieces.domain.learning.belief import Groups
from pieces.domain.learning.likelihood import Feel, Limits, Seen, StillInMould, Touched, Weighed
from pieces.domain.learning.update import Lesson

Floats = NDArray[np.float64]
Kept = dict[str, Any]

FORMAT: Final = "lesson-2"


def kept(lesson: Lesson) -> tuple[Kept, bytes]:
    """Return a lesson's words and its numbers."""
    rows = [*lesson.theta]
    said: list[Kept] = []
    for look in lesson.seen:
        words, answers = _told(look)
        said.append(words)
        rows += answers
    head = {
        "format": FORMAT,
        "body": lesson.groups.body,
        "place": lesson.groups.place,
        "touchers": list(lesson.groups.touchers),
        "mean": list(lesson.drawn_from.mean),
        "covariance": [list(row) for row in lesson.drawn_from.covariance],
        "seen": said,
    }
    return head, np.stack(rows).astype("<f8").tobytes()


def restored(head: Mapping[str, Any], numbers: bytes) -> Lesson:
    """Return the lesson that `kept` gave. Raises `ValueError` for another format."""
    if head.get("format") != FORMAT:
        raise ValueError("The lesson was kept in another format: reckon it anew.")
    count = THETA + sum(_answers(words) for words in head["seen"])
    rows = np.frombuffer(numbers, dtype="<f8").astype(np.float64).reshape(count, -1)
    at, seen = THETA, []
    for words in head["seen"]:
        answers = rows[at : at + _answers(words)]
        seen.append(_look(words, answers))
        at += len(answers)
    drawn_from = Belief(tuple(head["mean"]), tuple(tuple(row) for row in head["covariance"]))
    groups = Groups(head["body"], head["place"], tuple(head["touchers"]))
    return Lesson(groups, rows[:THETA], drawn_from, tuple(seen))


def _told(look: Seen) -> tuple[Kept, list[Floats]]:
    match look:
        case Weighed():
            return {"kind": "weighed", "ratio": look.ratio}, [look.predicted]
        case Touched():
            words = {"kind": "touched", "feel": look.feel.value, "who": look.who}
            return {**words, **_limits(look.limits)}, [look.mean, look.dampest]
        case StillInMould():
            return {"kind": "in_mould", "who": look.who, **_limits(look.limits)}, [look.mean]


def _limits(limits: Limits) -> Kept:
    return {"limits": [limits.demould, limits.leather_opens, limits.leather_closes, limits.bisque]}


def _answers(words: Mapping[str, Any]) -> int:
    return 2 if words["kind"] == "touched" else 1


def _look(words: Mapping[str, Any], answers: Floats) -> Seen:
    if words["kind"] == "weighed":
        return Weighed(words["ratio"], answers[0])
    limits = Limits(*words["limits"])
    if words["kind"] == "touched":
        return Touched(Feel(words["feel"]), words["who"], limits, answers[0], answers[1])
    return StillInMould(words["who"], limits, answers[0])
