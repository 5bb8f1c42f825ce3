"""What is advised on covers, reckoned with the forecasts: a plan for each part, a meeting for each
piece that is still to be joined.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any, Final
from uuid import UUID
from zoneinfo import ZoneInfo

import numpy as np

from pieces.domain.covering import PartNow, PieceNow, meet, plan_covers
from pieces.domain.covering.keeping import kept_meeting, kept_plan
from pieces.domain.covering.plan import middle
from pieces.domain.drying import STAGES, Batch, Ensemble, Stage, advance, simulate
from pieces.domain.drying.draws import ensemble_of
from pieces.domain.drying.sections import THINNEST_M
from pieces.models import Part
from studio.domain.hours import is_open
from studio.models import Studio
from studio.queries.hours import opening_of

from .forecast_runs import Answer

HOUR: Final = timedelta(hours=1)
LOOKS_AHEAD: Final = timedelta(days=14)
CHANGES_APART_H: Final = 3  # a cover is not changed more often than that
HOURS_TOLD: Final = 24  # of each part, to tell which will be ahead
UNEVEN_BELOW: Final = 0.8  # thinnest by thickest; common practice, no source


def advised(studio: Studio, answers: Sequence[Answer], at: datetime) -> dict[UUID, dict[str, Any]]:
    """Return what is advised, by part: a `plan` where it stands in the air, and a `meeting`."""
    now = at.replace(minute=0, second=0, microsecond=0)
    now_s = now.timestamp()
    found: defaultdict[UUID, dict[str, Any]] = defaultdict(dict)
    states = advance([answer.known for answer in answers], now_s) if answers else []
    standing = [
        (answer, state)
        for answer, state in zip(answers, states, strict=True)
        if answer.question.part.may_be_covered and state.advanced_to_s == now_s
    ]
    changes = _changes(studio, now)
    plans = plan_covers(
        [PieceNow(middle(state), answer.question.part.cover) for answer, state in standing], changes
    )
    for (answer, _), plan in zip(standing, plans, strict=True):
        found[answer.question.part.part_id]["plan"] = {**kept_plan(plan), **_why(answer, now_s)}
    for part, thin in _thin(answers, standing_s=now_s).items():
        found[part]["thin"] = thin
    for part, meeting in _meetings(answers, states, now_s).items():
        found[part]["meeting"] = meeting
    return dict(found)


def _why(answer: Answer, now_s: float) -> dict[str, Any]:
    """Return what the reason is told from: the section, how it stands, its air and its water."""
    part, climate = answer.question.part, answer.known.problem.climate
    humidity = climate.humidity_between(now_s, now_s + 24 * 3600)
    return {
        "thickest_mm": round(part.section.thickest_m * 1000.0, 1),
        "cover": part.cover.value,
        "humidity_fraction": round(humidity, 3),
        "hourly": {"from_s": now_s, "mean_kg_per_kg": _hourly(answer, now_s)},
    }


def _hourly(answer: Answer, now_s: float) -> list[float]:
    """Return the mean moisture at each hour of the coming day, over the draws. [kg/kg]"""
    track, weights = answer.ahead, answer.after.weights
    hours_s = now_s + 3600.0 * np.arange(HOURS_TOLD + 1)
    means = np.interp(hours_s, track.at_s, track.mean_kg_per_kg @ weights)
    return [round(float(mean), 5) for mean in means]


def _thin(answers: Sequence[Answer], *, standing_s: float) -> dict[UUID, dict[str, Any]]:
    """Return when the thinnest section of each uneven part stiffens, by its middle way.

    The windows are those of the thickest section, which is the last to dry; where another part of
    the same clay is much thinner, that one is too stiff to join long before.
    """
    uneven = [
        (answer, thinnest)
        for answer in answers
        if (thinnest := answer.question.part.thinnest_m) is not None
        and THINNEST_M <= thinnest <= UNEVEN_BELOW * answer.question.part.section.thickest_m
    ]
    made = []
    for answer, thinnest in uneven:
        problem = answer.after.problem
        section = replace(problem.section, thickest_m=thinnest)
        theta = answer.after.theta @ answer.after.weights[:, None]
        made.append(ensemble_of(replace(problem, section=section), theta))
    if not made:
        return {}
    until = min(each.problem.climate.end_s for each in made)
    run = simulate(Batch(tuple(made), float(min(until, standing_s + 14 * 24 * 3600))))
    closes = STAGES.index(Stage.JOIN_CLOSES)
    return {
        answer.question.part.part_id: {
            "thinnest_mm": round(thinnest * 1000.0, 1),
            "closes_s": _finite(float(after.state.crossed_s[closes, 0])),
        }
        for (answer, thinnest), after in zip(uneven, run.after, strict=True)
    }


def _finite(instant_s: float) -> float | None:
    return instant_s if math.isfinite(instant_s) else None


def _changes(studio: Studio, now: datetime) -> list[int]:
    """Return the hours of the coming fortnight at which somebody is in to change a cover."""
    opening, zone = opening_of(studio), ZoneInfo(studio.zone)
    found: list[int] = []
    for step in range(int(LOOKS_AHEAD / HOUR)):
        at = now + step * HOUR
        is_due = not found or at.timestamp() - found[-1] >= CHANGES_APART_H * 3600
        if is_due and (not opening.week or is_open(at, opening, zone)):
            found.append(round(at.timestamp()))
    return found


def _meetings(
    answers: Sequence[Answer], states: Sequence[Ensemble], now_s: float
) -> dict[UUID, dict[str, Any]]:
    pieces: defaultdict[UUID, list[tuple[Answer, Ensemble]]] = defaultdict(list)
    for answer, state in zip(answers, states, strict=True):
        pieces[answer.question.part.piece_id].append((answer, state))
    wanted = _to_join(pieces)
    found: dict[UUID, dict[str, Any]] = {}
    for piece, parts in wanted.items():
        asked = [
            PartNow(
                state, answer.question.part.cover if answer.question.part.may_be_covered else None
            )
            for answer, state in pieces[piece]
        ]
        if len({part.state.draws for part in asked}) > 1:
            asked = [PartNow(middle(part.state), part.cover) for part in asked]
        kept = kept_meeting(meet(asked, now_s))
        order = [str(answer.question.part.part_id) for answer, _ in pieces[piece]]
        for part in parts:
            found[part] = {
                **kept,
                "parts": order,
                "at": datetime.fromtimestamp(now_s, tz=UTC).isoformat(),
            }
    return found


def _to_join(pieces: Mapping[UUID, Sequence[tuple[Answer, Ensemble]]]) -> dict[UUID, list[UUID]]:
    """Return the parts of each piece whose required parts are all reckoned here and not joined."""
    live = Part.objects.filter(piece_id__in=pieces, design_part__is_required=True).exclude(
        state__in=(Part.State.SCRAPPED, Part.State.REPLACED)
    )
    parts: defaultdict[UUID, list[tuple[UUID, str]]] = defaultdict(list)
    for piece, part, state in live.values_list("piece_id", "pk", "state"):
        parts[piece].append((part, state))
    found = {}
    for piece, rows in parts.items():
        known = {answer.question.part.part_id for answer, _ in pieces[piece]}
        unjoined = any(state in (Part.State.IN_MOULD, Part.State.OUT) for _, state in rows)
        if len(rows) > 1 and unjoined and {part for part, _ in rows} == known:
            found[piece] = [part for part, _ in rows]
    return found
