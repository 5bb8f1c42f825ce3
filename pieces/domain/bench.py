"""Where a row stands on the bench: now, later today, later; and in which order.

The demould window opens at the model's release and closes at the end of leather-hard. A part is
worth a look once one draw in ten says that it has let go (p10), and past its time once half of
them say that it is too stiff (p50 of the close). Instants are seconds since 1970 in UTC.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from pieces.domain.drying import Quantiles, Window


class Verdict(StrEnum):
    """What a row says first."""

    PAST = "past"
    IN_WINDOW = "in_window"
    LATER = "later"
    NOT_TODAY = "not_today"
    ASKED = "asked"


class Block(StrEnum):
    """The part of the bench a row stands in."""

    LOOK_NOW = "look_now"
    LATER_TODAY = "later_today"
    LATER = "later"


@dataclass(frozen=True, slots=True)
class Seat:
    """Where a row belongs: block, verdict, and what it is sorted by inside the block."""

    block: Block
    verdict: Verdict
    order: tuple[float, float]


def seat(
    window: Window | None, *, now_s: float, closing_s: float, look_again_s: float | None = None
) -> Seat:
    """Return where a part in its mould belongs.

    Parameters
    ----------
    window
        Its demould window; None while nothing has been reckoned: it is worth a look.
    now_s, closing_s
        The present, and when the last person leaves today. [s since 1970]
    look_again_s
        When somebody who felt it said to look again; None when nobody has.
    """
    if window is None:
        return Seat(Block.LOOK_NOW, Verdict.ASKED, (2.0, 0.0))
    if look_again_s is not None and look_again_s > now_s:
        return _coming(look_again_s, closing_s)
    over_s = now_s - window.closes.p50_s
    if over_s > 0.0:
        return Seat(Block.LOOK_NOW, Verdict.PAST, (0.0, -over_s))
    if window.opens.p10_s <= now_s:
        return Seat(Block.LOOK_NOW, Verdict.IN_WINDOW, (1.0, -fraction_used(window, now_s)))
    return _coming(window.opens.p50_s, closing_s)


def fraction_used(window: Window, now_s: float) -> float:
    """Return how much of the window, from first release to close, has gone by, 0 to 1."""
    length = window.closes.p50_s - window.opens.p10_s
    if not math.isfinite(length) or length <= 0.0:
        return 0.0
    return min(1.0, max(0.0, (now_s - window.opens.p10_s) / length))


class JoinVerdict(StrEnum):
    """What the parts of a piece say together."""

    NOW = "now"
    WAIT = "wait"
    TOO_STIFF = "too_stiff"


def joining(window: Window, *, now_s: float, closing_s: float) -> JoinVerdict | None:
    """Return whether parts that are all out can be joined today; None when not today.

    `window` opens when the last of the parts is leather-hard and closes with the first.
    """
    if window.closes.p50_s < now_s:
        return JoinVerdict.TOO_STIFF
    if window.opens.p50_s <= now_s:
        return JoinVerdict.NOW
    if window.opens.p50_s < closing_s:
        return JoinVerdict.WAIT
    return None


def worth_a_touch(bisque: Quantiles, now_s: float) -> bool:
    """Say whether one draw in ten thinks the piece dry enough to fire: a person must say so."""
    return bisque.p10_s <= now_s


def _coming(at_s: float, closing_s: float) -> Seat:
    today = at_s < closing_s
    block = Block.LATER_TODAY if today else Block.LATER
    verdict = Verdict.LATER if today else Verdict.NOT_TODAY
    return Seat(block, verdict, (3.0, at_s))
