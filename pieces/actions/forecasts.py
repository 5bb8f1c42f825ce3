"""Forecasts: the drying of every wet part, kept, advanced as the air becomes known, reckoned anew.

Stored states go on only through measured air; what comes after is the forecast of the day. A part
whose own story changed has another key and is reckoned from its pressing again.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime
from typing import Any, Final
from uuid import UUID

import numpy as np
from django.db import transaction

from pieces.domain.drying import MODEL_VERSION, Belief, Ensemble, curve, readiness
from pieces.domain.learning.looks import digest
from pieces.domain.window_store import stored
from pieces.models import Forecast
from pieces.queries import drying
from pieces.queries.drying import WetPart
from studio.models import Studio

from . import learning
from .forecast_covers import advised
from .forecast_questions import Question, is_stale, questions
from .forecast_runs import Answer, answers
from .learning import Lore

HOUR_S: Final = 3600
POINTS_AHEAD: Final = 60
POINTS_KEPT: Final = 400


def refresh(*, studio: Studio, at: datetime, piece_id: UUID | None = None) -> int:
    """Learn from what was written, then reckon what is out of date in one call; return how many.

    Out of date is a part without a forecast, one whose own story, looks or past air changed, one
    that stands in other air, and, half an hour after the last reckoning, one whose room has a new
    reading or of whose like the studio learned something.
    """
    lore = learning.relearn(studio=studio, at=at)
    parts = drying.wet_parts(studio, piece_id=piece_id)
    _forget_dry(studio, parts, piece_id)
    asked = questions(studio, parts, lore, at)
    stale = _with_siblings(list(asked), at)
    if not stale:
        return 0
    found = answers(stale, lore.belief, at)
    advice = advised(studio, found, at)
    with transaction.atomic():
        for answer in found:
            _keep(answer, lore, advice.get(answer.question.part.part_id, {}), at=at)
    return len(stale)


def _with_siblings(asked: Sequence[Question], at: datetime) -> list[Question]:
    """Return what is out of date, and the other parts of the same pieces: parts meet or do not."""
    stale = {question.part.piece_id for question in asked if is_stale(question, at)}
    return [question for question in asked if question.part.piece_id in stale]


def _keep(answer: Answer, lore: Lore, covering: dict[str, Any], *, at: datetime) -> None:
    question, state = answer.question, answer.known
    after, track = answer.after, answer.ahead
    windows = stored(readiness(after, at.timestamp()))
    past = _past(_drawn_before(question, answer.begun), answer)
    begin_s, end_s = float(state.advanced_to_s), _worth_drawing_s(windows, float(track.at_s[-1]))
    line = curve(after, track, np.linspace(begin_s, end_s, POINTS_AHEAD))
    advanced_to = datetime.fromtimestamp(state.advanced_to_s, tz=UTC)
    Forecast.objects.update_or_create(
        part_id=question.part.part_id,
        defaults={
            "studio": question.sky.studio,
            "piece_id": question.part.piece_id,
            "key": question.problem.key(),
            "draws": state.draws,
            "states": state.to_bytes(),
            "advanced_to": advanced_to,
            "air_key": question.sky.digest(advanced_to),
            "windows": windows,
            "curve": {"past": past, "ahead": _points(line)},
            "inputs": _inputs(question, lore, state.draws)
            | {
                "at_rest_kg_per_kg": line.at_rest_kg_per_kg,
            },
            "covering": covering,
            "drawn_from": _said(question.problem.belief),
            "looks_key": digest(question.looks),
            "lore_key": question.lore_digest,
            "computed_at": at,
            "known_since": _known_since(question, at),
        },
    )


def _said(belief: Belief) -> dict[str, Any]:
    return {"mean": belief.mean, "covariance": belief.covariance}


def _known_since(question: Question, at: datetime) -> datetime:
    kept = question.kept
    same = kept is not None and kept.key == question.problem.key()
    return kept.known_since or at if kept is not None and same else at


def _drawn_before(question: Question, begun: Ensemble) -> list[list[float]]:
    """Return what was drawn up to a stored state; nothing when the part begins anew."""
    if question.kept is None or begun.advanced_to_s == question.problem.pressed_at_s:
        return []
    drawn: list[list[float]] = question.kept.curve.get("past", [])
    return [point for point in drawn if point[0] <= begun.advanced_to_s]


def _past(drawn: list[list[float]], answer: Answer) -> list[list[float]]:
    """Return the curve up to the stored state: what was drawn before, and the new hours."""
    track, after = answer.track, answer.known
    begin_s = drawn[-1][0] if drawn else -np.inf
    fresh = track.at_s[track.at_s > begin_s]
    if len(fresh) == 0:
        return drawn
    points = drawn + _points(curve(after, track, fresh))
    if len(points) <= POINTS_KEPT:
        return points
    return points[:1] + points[1:-1][:: -(-len(points) // POINTS_KEPT)] + points[-1:]


def _points(line: Any) -> list[list[float]]:
    rows = np.stack([line.at_s, line.p10, line.p50, line.p90], axis=1)
    return [[round(value, 4) for value in row] for row in rows.tolist()]


def _worth_drawing_s(windows: dict[str, Any], horizon_s: float) -> float:
    """Return where the picture may end: a day after nine in ten say dry, else the horizon."""
    late = windows["bisque"]["p90_s"]
    return horizon_s if late is None else min(horizon_s, late + 24 * HOUR_S)


def _inputs(question: Question, lore: Lore, draws: int) -> dict[str, Any]:
    section, sky = question.part.section, question.sky
    first = question.part.events[0]
    plaster = first.outer.plaster
    return {
        "model": MODEL_VERSION,
        "draws": draws,
        "body": question.part.body,
        "shape": section.shape.value,
        "thickest_mm": round(section.thickest_m * 1000.0, 3),
        "mould_free_water_fraction": plaster.free_water_fraction if plaster else None,
        "air": list(sky.sources),
        "air_m_s": question.part.air_m_s,
        "readings": sky.readings,
        "last_reading_at": question.last_reading,
        "checks": lore.checks.get(question.part.clay, 0),
        "assumed": [*question.part.assumed, *sky.assumed],
    }


def _forget_dry(studio: Studio, parts: Sequence[WetPart], piece_id: UUID | None) -> None:
    """Drop the stored states of parts that are no longer wet; forecasts are no facts."""
    dry = Forecast.objects.of(studio).exclude(part_id__in=[part.part_id for part in parts])
    if piece_id is not None:
        dry = dry.filter(piece_id=piece_id)
    dry.delete()
