"""An outlook in words: how likely, how many more, where the risk comes from.

Figures are shown only from 20 own outcomes on; before, words that promise no more than is known.
"""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Final

from firings.domain.survival import ENOUGH_OUTCOMES, FirstTime
from pieces.domain.order_words import day

LADDER: Final = (
    (0.95, "very likely"),
    (0.8, "likely"),
    (0.6, "more likely than not"),
    (0.4, "as likely as not"),
    (0.15, "unlikely"),
    (0.0, "hardly"),
)


def likely(chance: float) -> str:
    """Return how likely something is, in words."""
    return next(words for least, words in LADDER if chance >= least)


def enough(chance: float, promised: date | None, *, is_all_there: bool) -> str:
    """Return whether enough is there in time, in words."""
    if is_all_there:
        return "all that was wanted is finished"
    until = f" by {day(promised)}" if promised is not None else ""
    return f"{likely(chance)} enough{until}"


def press(more: Mapping[str, int] | None) -> str:
    """Return how many more to press, by role, in words."""
    if more is None:
        return "more than 200 would have to be pressed: look at what is lost first"
    asked = _counts(more)
    return f"press {asked} more" if asked else "no more need be pressed"


def press_with(
    more: Mapping[str, int], chance: float, also: Sequence[tuple[Mapping[str, int], float]]
) -> str:
    """Return how many more to press, with what chance, and which other splits would do."""
    if not any(more.values()):
        return press(more)
    others = "".join(f", or {_counts(split)} ({_in_100(share)})" for split, share in also)
    return f"{press(more)} ({_in_100(chance)}){others}"


def _counts(more: Mapping[str, int]) -> str:
    asked = [f"{count} × {role}" if role else f"{count}" for role, count in more.items() if count]
    return " and ".join(asked)


def _in_100(share: float) -> str:
    return f"{round(share * 100)} in 100"


def latest(day_: date, today: date, share: float) -> str:
    """Return the last day on which to press for a chance to be in time."""
    hundred = round(share * 100)
    if day_ < today:
        return f"for {hundred} in 100 it was {day(day_)}"
    return f"for {hundred} in 100 press by {day(day_)}"


def range_words(likely_from: date | None, likely_until: date | None) -> str:
    """Return when enough is likely there."""
    if likely_from is None or likely_until is None:
        return ""
    if likely_from == likely_until:
        return f"likely {day(likely_from)}"
    return f"likely {day(likely_from)} to {day(likely_until)}"


def listed(marks: Sequence[str], most: int = 6) -> str:
    """Return marks as a list, cut where it grows long."""
    shown = ", ".join(marks[:most])
    return f"{shown} and {len(marks) - most} more" if len(marks) > most else shown


def first_time(tried: FirstTime) -> str:
    """Return how often one glaze firing was enough; no share of fewer than 20."""
    if tried.of == 0:
        return "nothing is known yet of a first glaze firing"
    said = f"{tried.good} of {tried.of} good after one glaze firing"
    return said if tried.of >= ENOUGH_OUTCOMES else f"{said}, too few for a figure"


def parts_lost(role: str, lost: int, of: int) -> str:
    """Return how many parts of a role were lost by themselves; no share of fewer than 20."""
    said = f"{role}: {lost} of {of} lost before the piece was whole"
    return said if of >= ENOUGH_OUTCOMES else f"{said}, too few for a figure"
