"""An order in words: what was wanted, what there is, and how long there is left."""

from datetime import date
from typing import Final

from .sets import Counts

SET_WORDS: Final = {1: ("", ""), 2: (" pair", " pairs")}
#: States past the first firing, most advanced first: what a line names before "on the way".
AHEAD: Final = ("glaze_fired", "in_glaze", "glazed", "bisqued")


def counted(wanted: int, counts: Counts, *, set_size: int, ahead: tuple[int, str] = (0, "")) -> str:
    """Return how a line stands.

    Parameters
    ----------
    wanted
        Sets wanted.
    counts
        What its pieces come to.
    set_size
        Pieces in a set.
    ahead
        How many sets that are not finished have come how far, in words; none by default.

    Returns
    -------
    As in "2 wanted: 1 bisqued, 3 on the way, 1 lost".
    """
    one, many = SET_WORDS.get(set_size, (" set", " sets"))
    way = counts.made - counts.finished - ahead[0]
    said = [
        (counts.delivered, "delivered"),
        (counts.finished - counts.delivered, "finished"),
        ahead,
        (way, "on the way"),
        (counts.in_doubt, "in doubt"),
        (counts.planned, "planned"),
        (counts.lost_pieces, "lost" if set_size == 1 else "lost in pieces"),
    ]
    told = ", ".join(f"{number} {words}" for number, words in said if number)
    return f"{wanted}{one if wanted == 1 else many} wanted: {told or 'none begun'}"


def time_left(promised: date | None, today: date) -> str:
    """Return how long there is until a promise, as in "promised for 20 Nov 2026, in 20 days"."""
    if promised is None:
        return "no day promised"
    days = (promised - today).days
    match days:
        case 0:
            when = "today"
        case 1:
            when = "tomorrow"
        case -1:
            when = "a day ago"
        case _:
            when = f"in {days} days" if days > 0 else f"{-days} days ago"
    return f"promised for {day(promised)}, {when}"


def day(date_: date) -> str:
    """Return a date as people here say it: 20 Nov 2026."""
    return f"{date_.day} {date_:%b %Y}"


def stands_with(role: str | None, partner_marks: list[str]) -> str:
    """Return what a piece is to those it was matched with, as in "lid for J06"."""
    if not partner_marks:
        return ""
    return f"{role or 'piece'} for {' and '.join(partner_marks)}"
