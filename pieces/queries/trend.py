"""What the stored forecasts lead one to expect of a look at a piece: its mass, its feel."""

from __future__ import annotations

import math
from datetime import datetime
from typing import Any, cast
from uuid import UUID

from pieces.domain.drying import BODIES, latest
from pieces.domain.weighing import slowest_mass_g
from pieces.domain.window_store import restored
from pieces.models import Forecast, Part, Piece

_GONE = (Part.State.SCRAPPED, Part.State.REPLACED)


def mass_by_now_g(piece: Piece, last: tuple[datetime, float], at: datetime) -> float | None:
    """Return what a piece weighed once weighs by `at` if it dries as slowly as is likely. [g]

    None while nothing has been reckoned.
    """
    kept = max(_kept(piece), key=_dry_at_s, default=None)
    if kept is None or "at_rest_kg_per_kg" not in kept.inputs:
        return None
    points = kept.curve["past"] + kept.curve["ahead"]
    return slowest_mass_g(
        (last[0].timestamp(), last[1]),
        at.timestamp(),
        [(point[0], point[3]) for point in points],
        pressed_kg_per_kg=BODIES[kept.inputs["body"]].pressed_kg_per_kg,
        at_rest_kg_per_kg=kept.inputs["at_rest_kg_per_kg"],
    )


def is_early_for_dry(piece: Piece, at: datetime, part_id: UUID | None = None) -> bool:
    """Whether not one guess in ten has a piece, or its part, done with shrinking by `at`."""
    kept = [each for each in _kept(piece) if part_id in (None, each.part_id)]
    if not kept:
        return False
    windows = latest([restored(each.windows) for each in kept])
    return at.timestamp() < windows.shrinkage_ended.p10_s


def _kept(piece: Piece) -> list[Forecast]:
    found = Forecast.objects.filter(piece=piece).exclude(part__state__in=_GONE).exclude(windows={})
    return list(found.only("part_id", "windows", "curve", "inputs"))


def _dry_at_s(kept: Forecast) -> float:
    at_s = cast(dict[str, Any], kept.windows)["bisque"]["p50_s"]
    return math.inf if at_s is None else float(at_s)
