"""What the drying of a piece says in one sentence, before any figure."""

from __future__ import annotations

from pieces.domain.drying import Quantiles, ReadinessWindows, Stage


def verdict(windows: ReadinessWindows | None, *, is_bone_dry: bool, now_s: float) -> str:
    """Return the large words of the drying screen.

    Parameters
    ----------
    windows
        Of the whole piece; None while nothing has been reckoned.
    is_bone_dry
        Whether a person called it dry.
    now_s
        The present. [s since 1970]
    """
    if is_bone_dry:
        return "Called dry"
    if windows is None:
        return "Not reckoned yet"
    if Stage.BISQUE in windows.not_in_this_room and _is_past(windows.shrinkage_ended, now_s):
        return "Not in this room"
    if _is_past(windows.bisque, now_s):
        return "Perhaps dry"
    if _is_past(windows.shrinkage_ended, now_s):
        return "Nearly"
    if _is_past(windows.join.closes, now_s):
        return "Turning"
    if _is_past(windows.join.opens, now_s):
        return "Leather-hard"
    return "Damp"


def sentence(windows: ReadinessWindows | None) -> str:
    """Return what the windows rest on and what they do not say."""
    if windows is None:
        return "The drying of this piece has not been reckoned yet; go by touch and weight."
    if Stage.BISQUE in windows.not_in_this_room:
        return (
            "In this room's air it will not come dry enough to fire: a warm cupboard or a long "
            "warm hold is needed. No date is given."
        )
    return (
        "A studio guess from thickness, body, mould, cover and the room's air. It never moves the "
        "piece: touch and two equal weighings say that it is dry."
    )


def _is_past(said: Quantiles, now_s: float) -> bool:
    return said.p50_s <= now_s
