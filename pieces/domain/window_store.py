"""Windows as they are kept and read back: plain numbers, None for "not within the horizon"."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from pieces.domain.drying import Quantiles, ReadinessWindows, Stage, Window

Stored = dict[str, Any]


def stored(windows: ReadinessWindows) -> Stored:
    """Return the windows as JSON: instants in seconds since 1970, None for +inf."""
    return {
        "demould": _window(windows.demould),
        "join": _window(windows.join),
        "shrinkage_ended": _quantiles(windows.shrinkage_ended),
        "bisque": _quantiles(windows.bisque),
        "not_in_this_room": sorted(stage.value for stage in windows.not_in_this_room),
    }


def restored(kept: Mapping[str, Any]) -> ReadinessWindows:
    """Return the windows that `stored` kept. Raises `KeyError` when they are of another form."""
    return ReadinessWindows(
        demould=_window_of(kept["demould"]),
        join=_window_of(kept["join"]),
        shrinkage_ended=_quantiles_of(kept["shrinkage_ended"]),
        bisque=_quantiles_of(kept["bisque"]),
        not_in_this_room=frozenset(Stage(name) for name in kept["not_in_this_room"]),
    )


def _window(window: Window) -> Stored:
    return {"opens": _quantiles(window.opens), "closes": _quantiles(window.closes)}


def _window_of(kept: Mapping[str, Any]) -> Window:
    return Window(_quantiles_of(kept["opens"]), _quantiles_of(kept["closes"]))


def _quantiles(said: Quantiles) -> Stored:
    return {
        "p10_s": _finite(said.p10_s),
        "p50_s": _finite(said.p50_s),
        "p90_s": _finite(said.p90_s),
        "p_never": said.p_never,
    }


def _quantiles_of(kept: Mapping[str, Any]) -> Quantiles:
    def instant(name: str) -> float:
        value = kept[name]
        return math.inf if value is None else float(value)

    return Quantiles(instant("p10_s"), instant("p50_s"), instant("p90_s"), float(kept["p_never"]))


def _finite(instant_s: float) -> float | None:
    return instant_s if math.isfinite(instant_s) else None
