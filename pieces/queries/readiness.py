"""One piece's drying, from its stored forecasts and the evidence people gave."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any

from pieces.domain.drying import ReadinessWindows, latest
from pieces.domain.window_store import restored
from pieces.models import Cover, Forecast, Move, Part, Piece, PieceWeighing, TouchCheck


@dataclass(frozen=True, slots=True)
class Evidence:
    """Something a person saw or did that tells of a piece's dampness."""

    kind: str
    at: datetime
    member: str
    value: float | str


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


def drying_of(piece: Piece) -> Drying:
    """Return what is reckoned and known of a piece (five queries)."""
    forecasts = list(
        Forecast.objects.filter(piece=piece)
        .exclude(part__state__in=(Part.State.SCRAPPED, Part.State.REPLACED))
        .exclude(windows={})
        .select_related("part")
    )
    evidence = tuple(sorted(_evidence(piece), key=lambda seen: seen.at))
    if not forecasts:
        return Drying(None, None, None, evidence, ())
    windows = [restored(forecast.windows) for forecast in forecasts]
    dampest = max(zip(windows, forecasts, strict=True), key=lambda pair: pair[0].bisque.p50_s)[1]
    times = [forecast.computed_at for forecast in forecasts if forecast.computed_at is not None]
    assumed = sorted({word for forecast in forecasts for word in forecast.inputs["assumed"]})
    return Drying(latest(windows), dampest, min(times), evidence, tuple(assumed))


def _evidence(piece: Piece) -> list[Evidence]:
    found: list[Evidence] = []
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
            Evidence(kind, at, member, value)
            for at, member, value in rows.values_list(
                "happened_at", "entry__member__first_name", column
            )
        ]
    return found
