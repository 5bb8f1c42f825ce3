"""What is advised on covering a piece, from what was reckoned with its parts' forecasts."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Final
from uuid import UUID

import numpy as np

from pieces.domain.covering import Level, Levelling, PartLine, held_back, level_out
from pieces.domain.covering import words as said
from pieces.domain.covering.keeping import Advice, Met, advice, met
from pieces.domain.drying import BODIES, Cover
from pieces.models import Forecast, Part

HOUR_S: Final = 3600


@dataclass(frozen=True, slots=True)
class Step:
    """A change of cover that is advised: of the parts named, or of the piece as a whole."""

    at_s: float
    cover: Cover
    parts: tuple[tuple[UUID, str], ...] = ()

    @property
    def words(self) -> str:
        """Return what to do, `cover the handle loosely`."""
        return said.step_words(self.cover, [role for _, role in self.parts])


@dataclass(frozen=True, slots=True)
class Covering:
    """What is told of one piece; each is None where there is nothing to say.

    now, peak : how near to cracking now, and at its worst if nothing is changed
    thin : (thinnest section [mm], when it is too stiff to join [s since 1970]), where it is thinner
    """

    now: Level | None
    peak: Level | None
    reason: str
    steps: tuple[Step, ...]
    meeting: Met | None
    meeting_words: str
    thin: tuple[float, float] | None = None


def covering_of(forecasts: Sequence[Forecast]) -> Covering:
    """Return what is advised on a piece, from the forecasts of its parts that still count."""
    thin, (meeting, meeting_words) = _thin(forecasts), _meeting(forecasts)
    standing = [f for f in forecasts if f.covering.get("plan")]
    meets = _meeting_steps(forecasts, meeting)
    if not standing:
        return Covering(None, None, "", meets or (), meeting, meeting_words, thin)
    lines = _lines(standing)
    change = _level_out(standing, lines)
    lead = change if change is not None and change.last is not None else None
    held = set(held_back(lines)) - ({change.which} if change and not lead else set())
    driver = _driver(standing, held)
    told = advice(driver.covering["plan"])
    steps = _steps(standing, told, change, held) if meets is None else meets
    reason = said.reason(told.peak, _said_driver(driver, standing), _said_lead(standing, lead))
    now = _at_least_watched(told.now, lead is not None and lead.at_s <= _from_s(standing))
    peak = _at_least_watched(told.peak, lead is not None)
    return Covering(now, peak, reason, steps, meeting, meeting_words, thin)


def _at_least_watched(level: Level, pulls: bool) -> Level:
    """Return the level where a part pulls at its joint: only that it does is known, not how far."""
    return Level.WATCH if pulls and level is Level.LOW else level


def _driver(standing: Sequence[Forecast], held: set[int]) -> Forecast:
    """Return the part that is nearest to cracking, of those that are not held back on purpose."""
    rest = [f for i, f in enumerate(standing) if i not in held]
    return max(rest, key=lambda f: float(f.covering["plan"]["peak"]))


def _steps(
    standing: Sequence[Forecast], told: Advice, change: Levelling | None, held: set[int]
) -> tuple[Step, ...]:
    """Return the changes of covers in order of time: of one part first, then of the rest.

    What opens the piece leaves out a part that is held back, so that it is not opened with it.
    """
    found = []
    if change is not None:
        part = standing[change.which].part
        found.append(Step(change.at_s, change.cover, ((part.pk, part.role),)))
    rest = tuple((f.part.pk, f.part.role) for i, f in enumerate(standing) if i not in held)
    named = rest if held else ()
    found += [Step(step.at_s, step.cover, named) for step in told.steps]
    return tuple(sorted(found, key=lambda step: step.at_s))


def _lines(standing: Sequence[Forecast]) -> list[PartLine]:
    """Return how the parts of a joined piece are told to dry; nothing while some is loose."""
    if any(f.part.state != Part.State.JOINED for f in standing) or len(standing) < 2:
        return []
    found = []
    for f in standing:
        plan = f.covering["plan"]
        hourly = plan.get("hourly")  # not yet in what was reckoned before it was kept
        if hourly is None:
            return []
        means = np.array(hourly["mean_kg_per_kg"])
        at_s = hourly["from_s"] + HOUR_S * np.arange(len(means))
        found.append(PartLine(at_s, means, Cover(plan["cover"])))
    return found


def _level_out(standing: Sequence[Forecast], lines: Sequence[PartLine]) -> Levelling | None:
    if not lines:
        return None
    ends = BODIES[standing[0].inputs["body"]].shrinkage_ends_kg_per_kg
    until_s = min(float(line.at_s[-1]) for line in lines)
    return level_out(lines, ends, from_s=_from_s(standing), until_s=until_s)


def _from_s(standing: Sequence[Forecast]) -> float:
    return max(float(f.covering["plan"].get("hourly", {}).get("from_s", 0.0)) for f in standing)


def _said_driver(driver: Forecast, standing: Sequence[Forecast]) -> said.Driver:
    plan, thin = driver.covering["plan"], driver.covering.get("thin")
    return said.Driver(
        role=driver.part.role if len(standing) > 1 else "",
        thickest_mm=plan["thickest_mm"],
        cover=Cover(plan["cover"]),
        humidity_fraction=plan["humidity_fraction"],
        thinnest_mm=thin["thinnest_mm"] if thin else None,
    )


def _said_lead(standing: Sequence[Forecast], lead: Levelling | None) -> said.Lead | None:
    if lead is None or lead.last is None:
        return None
    ahead, last = standing[lead.which], standing[lead.last]
    return said.Lead(ahead.part.role, ahead.covering["plan"]["thickest_mm"], last.part.role)


def _thin(forecasts: Sequence[Forecast]) -> tuple[float, float] | None:
    """Return the thin section that stiffens first, while the piece is still to be joined."""
    told = [
        (kept["closes_s"], kept["thinnest_mm"])
        for f in forecasts
        if (kept := f.covering.get("thin")) and kept["closes_s"] is not None
        if f.part.state != Part.State.JOINED
    ]
    if not told:
        return None
    closes_s, thinnest_mm = min(told)
    return thinnest_mm, closes_s


def _meeting(forecasts: Sequence[Forecast]) -> tuple[Met | None, str]:
    kept = _kept_meeting(forecasts)
    if kept is None:
        return None, ""
    roles = _roles(forecasts)
    told = met(kept)
    order: list[str] = kept["parts"]
    changes = [(roles.get(order[which], "part"), cover) for which, cover in told.covers]
    return told, said.meeting_words(changes, meets=told.opens_s is not None)


def _meeting_steps(forecasts: Sequence[Forecast], meeting: Met | None) -> tuple[Step, ...] | None:
    """Return what brings the parts to meet; None where they do not, or have met."""
    kept = _kept_meeting(forecasts)
    if kept is None or meeting is None or meeting.opens_s is None:
        return None
    at_s, roles = datetime.fromisoformat(kept["at"]).timestamp(), _roles(forecasts)
    return tuple(
        Step(at_s, cover, ((UUID(part), roles.get(part, "part")),))
        for part, cover in ((kept["parts"][which], cover) for which, cover in meeting.covers)
    )


def _kept_meeting(forecasts: Sequence[Forecast]) -> Mapping[str, Any] | None:
    return next((f.covering["meeting"] for f in forecasts if f.covering.get("meeting")), None)


def _roles(forecasts: Sequence[Forecast]) -> Mapping[str, str]:
    return {str(f.part_id): f.part.role for f in forecasts}


def by_part(parts: Sequence[Part]) -> list[Forecast]:
    """Return the forecasts of prefetched parts, each with its part at hand."""
    found: list[Forecast] = []
    for part in parts:
        forecast: Forecast | None = getattr(part, "forecast", None)
        if forecast is not None and forecast.windows:
            forecast.part = part
            found.append(forecast)
    return found


def checks_of(forecasts: Sequence[Forecast]) -> int:
    """Return on how many of the studio's own looks the estimates of these parts rest at least."""
    counts: list[int] = [int(f.inputs.get("checks", 0)) for f in forecasts]
    return min(counts, default=0)
