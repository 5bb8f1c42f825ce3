"""One piece's drying, from its stored forecasts and the evidence people gave."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any

from django.db.models import Max

from pieces.domain.drying import ReadinessWindows, latest
from pieces.domain.window_store import restored
from pieces.models import Cover, Forecast, Move, Part, Piece, PieceWeighing, TouchCheck
from pieces.queries.covering import Covering, checks_of, covering_of


@dataclass(frozen=True, slots=True)
class Evidence:
    """Something a person saw or did that tells of a piece's dampness.

    `is_of_all` is false for a weighing from before all of its parts were joined.
    """

    kind: str
    at: datetime
    member: str
    value: float | str
    is_of_all: bool = True


@dataclass(frozen=True, slots=True)
class Drying:
    """The drying of one piece; `windows` is None while nothing has been reckoned.

    `dampest` is the part whose curve stands for the piece.
    """

    windows: ReadinessWindows | None
    dampest: Forecast | None
    computed_at: datetime | None
    evidence: tuple[Evidence, ...]
    assumed: tuple[str, ...]
    covering: Covering
    checks: int = 0


def drying_of(piece: Piece) -> Drying:
    """Return what is reckoned and known of a piece (six queries)."""
    forecasts = list(
        Forecast.objects.filter(piece=piece)
        .exclude(part__state__in=(Part.State.SCRAPPED, Part.State.REPLACED))
        .exclude(windows={})
        .select_related("part")
    )
    evidence = tuple(sorted(_evidence(piece), key=lambda seen: seen.at))
    if not forecasts:
        return Drying(None, None, None, evidence, (), covering_of(()))
    windows = [restored(forecast.windows) for forecast in forecasts]
    dampest = max(zip(windows, forecasts, strict=True), key=lambda pair: pair[0].bisque.p50_s)[1]
    times = [forecast.computed_at for forecast in forecasts if forecast.computed_at is not None]
    assumed = sorted({word for forecast in forecasts for word in forecast.inputs["assumed"]})
    return Drying(
        latest(windows),
        dampest,
        min(times),
        evidence,
        tuple(assumed),
        covering_of(forecasts),
        checks_of(forecasts),
    )


def _evidence(piece: Piece) -> list[Evidence]:
    found: list[Evidence] = []
    joined = Part.objects.filter(piece=piece).aggregate(last=Max("joined_at"))["last"]
    shown: tuple[tuple[str, Any, str], ...] = (
        ("weighing", PieceWeighing, "mass_g"),
        ("check", TouchCheck, "feel"),
        ("cover", Cover, "state"),
        ("move", Move, "place__name"),
    )
    for kind, model, column in shown:
        rows = model.objects.filter(piece=piece).standing()
        if model is TouchCheck:
            rows = rows.exclude(feel=TouchCheck.Feel.FINE)  # says nothing of how dry it is
        found += [
            Evidence(kind, at, member, value, joined is None or at >= joined)
            for at, member, value in rows.values_list(
                "happened_at", "entry__member__first_name", column
            )
        ]
    return found
