"""A tile in its mould in a room with a meter, and what is foretold of it."""

from datetime import timedelta
from typing import Any

from pieces.actions import forecasts, parts
from pieces.models import Forecast, Part, Piece
from tests.factories import NOW, act

PRESSED = NOW - timedelta(hours=16)


def refreshed(piece: Piece, hours: float = 0.0) -> Forecast:
    forecasts.refresh(studio=piece.studio, at=NOW + timedelta(hours=hours))
    return Forecast.objects.get(piece=piece)


def demould(piece: Piece, maker: Any, hours: float) -> None:
    part = Part.objects.get(piece=piece)
    parts.record_event(act=act(maker, NOW + timedelta(hours=hours)), part=part, kind="demoulded")
