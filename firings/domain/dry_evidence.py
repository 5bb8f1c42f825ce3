"""Whether anybody showed that a piece is dry: evidence, not a promise.

Water left in the wall turns to steam below red heat and bursts the ware. A hand or two weighings
are evidence; a forecast is not, whatever it says. Two weighings half a day apart that differ by no
more than a five-hundredth are taken for steady (common practice, no source).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Final

from studio.domain.hours import elapsed_h

STEADY_FRACTION: Final = 0.002
APART_H: Final = 12.0


@dataclass(frozen=True, slots=True)
class Evidence:
    """What shows that a piece is dry: `check`, `weighings` or `none`, and in words."""

    word: str
    is_ok: bool
    detail: str


def evidence(
    *, is_called_dry: bool, called_at: datetime | None, weighings: Sequence[tuple[datetime, float]]
) -> Evidence:
    """Return what there is.

    Parameters
    ----------
    is_called_dry, called_at
        Whether a person said that the piece is bone dry, and when.
    weighings
        (instant, g) since it was last wetted or joined, in any order.
    """
    if is_called_dry:
        when = f", {called_at.day} {called_at:%B}" if called_at else ""
        return Evidence("check", True, f"Called bone dry by touch{when}.")
    ordered = sorted(weighings)
    if not ordered:
        return Evidence("none", False, "Nobody has felt it bone dry or weighed it.")
    last_at, last_g = ordered[-1]
    earlier = [(at, mass) for at, mass in ordered[:-1] if elapsed_h(at, last_at) >= APART_H]
    if not earlier:
        return Evidence("none", False, "Weighed, but not twice half a day apart.")
    lost = (earlier[-1][1] - last_g) / last_g
    if abs(lost) <= STEADY_FRACTION:
        return Evidence("weighings", True, f"Two weighings agree to {100 * abs(lost):.1f} %.")
    return Evidence("none", False, f"It still lost {100 * lost:.1f} % between two weighings.")
