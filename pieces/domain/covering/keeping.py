"""Cover plans and meetings as a table can keep them: plain numbers, None for what does not come."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from pieces.domain.covering.cracking import Level, level
from pieces.domain.covering.meeting import Meeting
from pieces.domain.covering.plan import CoverPlan, CoverStep
from pieces.domain.drying import Cover

Kept = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Advice:
    """What is told of covering one part, without numbers.

    now, peak : how near to cracking now, and at its worst if nothing is changed
    steps : changes of the cover in order of time
    """

    now: Level
    peak: Level
    steps: tuple[CoverStep, ...]
    ends_s: float | None


@dataclass(frozen=True, slots=True)
class Met:
    """When the parts of a piece meet: instants [s since 1970], or None where they do not.

    covers : (index among the parts that were asked about, cover from now on)
    """

    opens_s: float | None
    closes_s: float | None
    covers: tuple[tuple[int, Cover], ...]


def kept_plan(plan: CoverPlan) -> Kept:
    """Return a plan as JSON; the indices are kept to compare by, never to be shown."""
    return {
        "index_now": round(plan.index_now, 4),
        "peak": round(plan.peak_as_it_stands, 4),
        "peak_planned": round(plan.peak, 4),
        "steps": [{"at_s": step.at_s, "cover": step.cover.value} for step in plan.steps],
        "ends_s": plan.ends_s,
    }


def advice(kept: Mapping[str, Any]) -> Advice:
    """Return what may be shown of a plan that `kept_plan` kept."""
    steps = tuple(CoverStep(step["at_s"], Cover(step["cover"])) for step in kept["steps"])
    return Advice(level(kept["index_now"]), level(kept["peak"]), steps, kept["ends_s"])


def kept_meeting(meeting: Meeting) -> Kept:
    """Return a meeting as JSON."""
    window = meeting.window
    return {
        "opens_s": _finite(window.opens.p50_s) if window else None,
        "closes_s": _finite(window.closes.p50_s) if window else None,
        "covers": [[which, cover.value] for which, cover in meeting.covers],
    }


def met(kept: Mapping[str, Any]) -> Met:
    """Return the meeting that `kept_meeting` kept."""
    covers = tuple((int(which), Cover(cover)) for which, cover in kept["covers"])
    return Met(kept["opens_s"], kept["closes_s"], covers)


def _finite(instant_s: float) -> float | None:
    return instant_s if math.isfinite(instant_s) else None
