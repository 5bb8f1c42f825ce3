"""What is advised on covering a piece, from what was reckoned with its parts' forecasts."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from pieces.domain.covering import drying_first
from pieces.domain.covering import words as said
from pieces.domain.covering.keeping import Advice, Met, advice, met, worst
from pieces.domain.drying import BODIES, Cover
from pieces.models import Forecast, Part


@dataclass(frozen=True, slots=True)
class Covering:
    """What is told of one piece; each is None where there is nothing to say.

    ahead : a sentence on a part that dries before the others
    thin : (thinnest section [mm], when it is too stiff to join [s since 1970]), where it is thinner
    """

    advice: Advice | None
    reason: str
    meeting: Met | None
    meeting_words: str
    ahead: str
    thin: tuple[float, float] | None = None


def covering_of(forecasts: Sequence[Forecast]) -> Covering:
    """Return what is advised on a piece, from the forecasts of its parts that still count."""
    plans = [kept["plan"] for f in forecasts if (kept := f.covering).get("plan")]
    thin = _thin(forecasts)
    if not plans:
        return Covering(None, "", *_meeting(forecasts), "", thin)
    chosen = worst(plans)
    told = advice(chosen)
    reason = said.reason(
        told.peak,
        thickest_mm=chosen["thickest_mm"],
        cover=Cover(chosen["cover"]),
        humidity_fraction=chosen["humidity_fraction"],
    )
    return Covering(told, reason, *_meeting(forecasts), _ahead(forecasts), thin)


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
    kept = next((f.covering["meeting"] for f in forecasts if f.covering.get("meeting")), None)
    if kept is None:
        return None, ""
    roles = _roles(forecasts)
    told = met(kept)
    order: list[str] = kept["parts"]
    changes = [(roles.get(order[which], "part"), cover) for which, cover in told.covers]
    return told, said.meeting_words(changes, meets=told.opens_s is not None)


def _roles(forecasts: Sequence[Forecast]) -> Mapping[str, str]:
    return {str(f.part_id): f.part.role for f in forecasts}


def _ahead(forecasts: Sequence[Forecast]) -> str:
    """Say which part of a joined piece leads, where one does."""
    joined = [f for f in forecasts if f.part.state == Part.State.JOINED and f.covering.get("plan")]
    if len(joined) < 2:
        return ""
    ends = BODIES[joined[0].inputs["body"]].shrinkage_ends_kg_per_kg
    found = drying_first([f.covering["plan"]["mean_kg_per_kg"] for f in joined], ends)
    if found is None:
        return ""
    ahead, last = (joined[i].part.role for i in found)
    return said.ahead_words(ahead, last)


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
