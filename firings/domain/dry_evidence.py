"""Whether anybody showed that a piece is dry: evidence, not a promise.

Water left in the wall turns to steam below red heat and bursts the ware. A hand or two weighings
are evidence; a forecast is not, whatever it says. Two weighings half a day apart that differ by no
more than a five-hundredth are taken for steady (common practice, no source).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from pieces.domain.weighing_curve import change


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
    if not weighings:
        return Evidence("none", False, "Nobody has felt it bone dry or weighed it.")
    last = change([(at.timestamp(), mass_g) for at, mass_g in weighings])
    if last is None:
        return Evidence("none", False, "Weighed, but not twice half a day apart.")
    if last.is_steady:
        share = f"{100 * abs(last.lost_fraction):.1f} %"
        return Evidence("weighings", True, f"Two weighings agree to {share}.")
    lost = f"{100 * last.lost_fraction:.1f} %"
    return Evidence("none", False, f"It still lost {lost} between two weighings.")
