"""Forecasts: the drying of every wet part, kept, advanced as the air becomes known, reckoned anew.

Stored states go on only through measured air; what comes after is the forecast of the day. A part
whose own story changed has another key and is reckoned from its pressing again.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any, Final
from uuid import UUID

import numpy as np
from django.conf import settings
from django.db import transaction

from pieces.domain.drying import (
    BODIES,
    MODEL_VERSION,
    Batch,
    Ensemble,
    Problem,
    Run,
    curve,
    ensemble,
    readiness,
    simulate,
)
from pieces.domain.window_store import stored
from pieces.models import Forecast
from pieces.queries import air, drying
from pieces.queries.drying import WetPart
from studio.models import Studio

DRAWS: Final = 256
DRAWS_UNSEEN: Final = 64  # on one small machine, of a piece that nobody has looked at yet
HORIZON: Final = timedelta(days=21)
REFRESH_EVERY: Final = timedelta(minutes=30)
HOUR_S: Final = 3600
POINTS_AHEAD: Final = 60
POINTS_KEPT: Final = 400


@dataclass(frozen=True, slots=True)
class _Question:
    part: WetPart
    sky: air.Sky
    problem: Problem
    draws: int
    kept: Forecast | None

    @property
    def has_enough_draws(self) -> bool:
        """Whether the stored forecast has the draws that are wanted by now."""
        return self.kept is not None and self.kept.draws >= self.draws

    @property
    def state(self) -> Ensemble | None:
        """The stored state, where the schedule and the air up to it are still what they were."""
        kept = self.kept
        if kept is None or kept.states is None or not self.is_past_air_kept:
            return None
        if not self.has_enough_draws:
            return None
        try:
            return Ensemble.from_bytes(self.problem, bytes(kept.states))
        except ValueError:
            return None

    @property
    def is_past_air_kept(self) -> bool:
        """Whether the air up to the stored state is the one it was reckoned with."""
        kept = self.kept
        if kept is None or kept.advanced_to is None:
            return False
        return kept.air_key == self.sky.digest(kept.advanced_to)


def refresh(*, studio: Studio, at: datetime, piece_id: UUID | None = None) -> int:
    """Reckon the forecasts that are out of date, all in one call; return how many.

    Out of date is a part without a forecast, one whose own story or past air changed, one that
    stands in other air, one that was looked at for the first time, and one whose room has a new
    reading when the last reckoning is half an hour old.
    """
    parts = drying.wet_parts(studio, piece_id=piece_id)
    _forget_dry(studio, parts, piece_id)
    stale = [question for question in _questions(studio, parts, at) if _is_stale(question, at)]
    if not stale:
        return 0
    now_s = at.timestamp()
    until = tuple(_known_until_s(question, now_s) for question in stale)
    begun = [question.state or ensemble(question.problem, question.draws) for question in stale]
    known = simulate(Batch(tuple(begun), until, keeps_track=True))
    horizon_s = _floor_hour(now_s) + HORIZON.total_seconds()
    ahead = simulate(Batch(known.after, horizon_s, keeps_track=True))
    with transaction.atomic():
        for place, question in enumerate(stale):
            drawn = _drawn_before(question, begun[place])
            _keep(question, drawn, known=known, ahead=ahead, place=place, at=at)
    return len(stale)


def _questions(studio: Studio, parts: Sequence[WetPart], at: datetime) -> Iterable[_Question]:
    since = min((part.begun_at for part in parts), default=at)
    skies = air.Skies(studio=studio, since=since, at=at, until=at + HORIZON + timedelta(hours=1))
    rows = Forecast.objects.filter(studio=studio, part_id__in=[part.part_id for part in parts])
    kept = {row.part_id: row for row in rows}
    seen = drying.looked_at({part.piece_id for part in parts})
    for part in parts:
        sky = skies.over(part.stays, since=part.begun_at)
        problem = Problem(BODIES[part.body], part.section, part.events, sky.climate)
        few = settings.IS_EMBEDDED and part.piece_id not in seen
        draws = DRAWS_UNSEEN if few else DRAWS
        yield _Question(part, sky, problem, draws, kept.get(part.part_id))


def _is_stale(question: _Question, at: datetime) -> bool:
    kept = question.kept
    if kept is None or kept.computed_at is None or kept.key != question.problem.key():
        return True
    if not question.has_enough_draws:
        return True
    if not question.is_past_air_kept or kept.inputs["air"] != list(question.sky.sources):
        return True
    if at - kept.computed_at < REFRESH_EVERY:
        return False
    is_old = at - kept.computed_at > timedelta(hours=6)
    return is_old or kept.inputs["last_reading_at"] != _last_reading(question.sky)


def _known_until_s(question: _Question, now_s: float) -> float:
    measured = question.problem.climate.measured_to_s
    if measured is None:
        return question.problem.pressed_at_s
    return max(_floor_hour(min(now_s, measured)), question.problem.pressed_at_s)


def _keep(
    question: _Question,
    drawn: list[list[float]],
    *,
    known: Run,
    ahead: Run,
    place: int,
    at: datetime,
) -> None:
    state = known.after[place]
    after, track = ahead.after[place], ahead.tracks[place]
    windows = stored(readiness(after, at.timestamp()))
    past = _past(drawn, known, place)
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
            "inputs": _inputs(question, state.draws),
            "computed_at": at,
            "known_since": _known_since(question, at),
        },
    )


def _known_since(question: _Question, at: datetime) -> datetime:
    kept = question.kept
    same = kept is not None and kept.key == question.problem.key()
    return kept.known_since or at if kept is not None and same else at


def _drawn_before(question: _Question, begun: Ensemble) -> list[list[float]]:
    """Return what was drawn up to a stored state; nothing when the part begins anew."""
    if question.kept is None or begun.advanced_to_s == question.problem.pressed_at_s:
        return []
    drawn: list[list[float]] = question.kept.curve.get("past", [])
    return [point for point in drawn if point[0] <= begun.advanced_to_s]


def _past(drawn: list[list[float]], known: Run, place: int) -> list[list[float]]:
    """Return the curve up to the stored state: what was drawn before, and the new hours."""
    track, after = known.tracks[place], known.after[place]
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


def _inputs(question: _Question, draws: int) -> dict[str, Any]:
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
        "readings": sky.readings,
        "last_reading_at": _last_reading(sky),
        "assumed": [*question.part.assumed, *sky.assumed],
    }


def _last_reading(sky: air.Sky) -> str | None:
    return sky.last_taken_at.astimezone(UTC).isoformat() if sky.last_taken_at else None


def _forget_dry(studio: Studio, parts: Sequence[WetPart], piece_id: UUID | None) -> None:
    """Drop the stored states of parts that are no longer wet; forecasts are no facts."""
    dry = Forecast.objects.of(studio).exclude(part_id__in=[part.part_id for part in parts])
    if piece_id is not None:
        dry = dry.filter(piece_id=piece_id)
    dry.delete()


def _floor_hour(instant_s: float) -> float:
    return instant_s // HOUR_S * HOUR_S
