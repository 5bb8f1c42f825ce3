"""What would come of a piece in another place, under another cover, or of another thickness.

Reckoned as its own forecast is, from the same draws and the same looks; nothing is written.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Final
from uuid import UUID

import numpy as np

from pieces.domain.drying import (
    Batch,
    Cover,
    Curve,
    Ensemble,
    ReadinessWindows,
    curve,
    ensemble,
    latest,
    readiness,
    simulate,
)
from pieces.domain.learning import Groups
from pieces.domain.learning.elsewhere import carried
from pieces.models import Piece
from pieces.queries import drying
from pieces.queries.supposed import Supposed
from studio.models import Place

from .forecast_questions import Question, questions
from .forecast_runs import HOUR_S, Answer, answers, horizon_s
from .learning import Lore, lore_of

POINTS: Final = 60


@dataclass(frozen=True, slots=True)
class Supposal:
    """What a piece does as it is, and what it would do.

    line : water left of the part that stands for the piece, from this hour on
    checks, looks : how many looks at this clay the estimate rests on, and how many at this piece
    room : of another room that it would stand in, its name; is_room_learned : whether anything was
    learned of it
    """

    question: Question
    as_it_is: ReadinessWindows
    windows: ReadinessWindows
    line: Curve
    checks: int
    looks: int
    room: str
    is_room_learned: bool


def suppose(
    *,
    piece: Piece,
    at: datetime,
    place_id: UUID | None = None,
    cover: Cover | None = None,
    thickest_mm: float | None = None,
) -> Supposal | None:
    """Return what would come of it; None where nothing of the piece is wet any more.

    A thickness is of the part that is last to dry, as if it had been pressed so: it has the belief
    of its clay and its room, and no looks of its own.
    """
    lore = lore_of(piece.studio)
    parts = drying.wet_parts(piece.studio, piece_id=piece.pk)
    if not parts:
        return None
    own = answers(list(questions(piece.studio, parts, lore, at)), lore.belief, at)
    are = [readiness(answer.after, at.timestamp()) for answer in own]
    last = int(np.argmax([windows.bisque.p50_s for windows in are]))
    thick = None if thickest_mm is None else (parts[last].part_id, thickest_mm)
    told = Supposed(at, place_id, cover, thick)
    changed = drying.wet_parts(piece.studio, piece_id=piece.pk, supposed=told)
    would = list(questions(piece.studio, changed, lore, at))
    going = _going_on(own, would, lore, at, anew=None if thick is None else last)
    run = simulate(Batch(tuple(going), horizon_s(at), keeps_track=True))
    windows = [readiness(after, at.timestamp()) for after in run.after]
    shown = int(np.argmax([each.bisque.p50_s for each in windows]))
    ends_s = min(horizon_s(at), windows[shown].bisque.p90_s + 24 * HOUR_S)
    drawn_s = np.linspace(going[shown].advanced_to_s, ends_s, POINTS)
    return Supposal(
        question=would[shown],
        as_it_is=latest(are),
        windows=latest(windows),
        line=curve(run.after[shown], run.tracks[shown], drawn_s),
        checks=min(lore.checks.get(part.clay, 0) for part in parts),
        looks=sum(len(answer.question.looks) for answer in own),
        room=_other_room(own[shown].question.groups, would[shown].groups),
        is_room_learned=lore.knows_room(would[shown].groups),
    )


def _going_on(
    own: Sequence[Answer],
    would: Sequence[Question],
    lore: Lore,
    at: datetime,
    *,
    anew: int | None,
) -> list[Ensemble]:
    """Return each part where it stands this hour, with what is supposed of it ahead.

    Up to here it is the piece's own story, so that nothing that happened happens otherwise; the
    part `anew` alone begins at its pressing. Whole hours keep the way of an unbroken run.
    """
    begun = [answer.known for answer in own]
    if anew is not None:
        begun[anew] = _pressed_anew(would[anew], own[anew].question.groups, lore)
    here = simulate(Batch(tuple(begun), at.timestamp() // HOUR_S * HOUR_S)).after
    return [
        replace(
            each,
            problem=question.problem,
            theta=carried(
                each.theta,
                lore.belief.of_piece(answer.question.groups),
                lore.belief.of_piece(question.groups),
            ),
        )
        for each, answer, question in zip(here, own, would, strict=True)
    ]


def _pressed_anew(would: Question, groups: Groups, lore: Lore) -> Ensemble:
    """Return a part as pressed otherwise: what was seen of the one there is tells nothing of it."""
    problem = replace(would.problem, belief=lore.belief.of_piece(groups))
    return ensemble(problem, would.draws)


def _other_room(here: Groups, there: Groups) -> str:
    if here.place == there.place:
        return ""
    return Place.objects.values_list("name", flat=True).get(pk=there.place)
