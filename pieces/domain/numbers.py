"""The mark cut in the clay: `T29`, a series of letters and a counter.

Any text may be a mark, since ware arrives with marks of its own. Two marks are the same when their
keys are: NFKC, without invisible characters, whatever the case. A mark that two pieces have been
given stays on both, told apart by a suffix: `T29·b`.
"""

import re
import unicodedata
from collections.abc import Collection
from dataclasses import dataclass
from typing import Final

from studio.domain.refusals import Unworkable

LONGEST_MARK: Final = 24
SUFFIX_DOT: Final = "\u00b7"
_NUMBERED: Final = re.compile(r"([^\W\d_]{1,4})([0-9]{1,7})")
_SERIES: Final = re.compile(r"[^\W\d_]{1,4}")
_SUFFIX_LETTERS: Final = "bcdefghijklmnopqrstuvwxyz"
# Besides the format and control characters: fillers that are letters by class and print as nothing.
_INVISIBLE_LETTERS: Final = frozenset("\u115f\u1160\u3164\uffa0\u2800\u034f")


class NotAMark(Unworkable):
    code = "not-a-mark"
    title = "That cannot be cut in clay as a number."


class NotASeries(Unworkable):
    code = "not-a-series"
    title = "A series is one to four letters."


@dataclass(frozen=True, slots=True)
class Numbered:
    """A mark of a series: its letters in capitals, and its counter."""

    series: str
    counter: int


def clean_mark(text: str) -> str:
    """Return the mark as it is shown: NFKC, one blank between words, nothing invisible.

    Raises
    ------
    NotAMark
        When nothing is left, more than 24 characters are left, or the suffix dot is among them.
    """
    visible = "".join(
        char for char in unicodedata.normalize("NFKC", text) if _is_visible(char) or char.isspace()
    )
    mark = unicodedata.normalize("NFKC", " ".join(visible.split()))
    if not mark:
        raise NotAMark("Give the mark as it is cut in the clay.")
    if len(mark) > LONGEST_MARK:
        raise NotAMark(
            f"A mark has at most {LONGEST_MARK} characters; this has {len(mark)}.",
            most=LONGEST_MARK,
            length=len(mark),
        )
    if SUFFIX_DOT in mark:
        raise NotAMark(f"{SUFFIX_DOT} is kept for marks that were given twice.")
    return mark


def mark_key(text: str) -> str:
    """Return what two equal marks share: the clean mark, case folded. Raises `NotAMark`."""
    return unicodedata.normalize("NFKC", clean_mark(text).casefold())


def clean_series(text: str) -> str:
    """Return the letters of a series in capitals. Raises `NotASeries` unless 1 to 4 letters."""
    letters = unicodedata.normalize("NFKC", text).strip().upper()
    if not _SERIES.fullmatch(letters):
        raise NotASeries(f"A series is one to four letters, not \u201c{text[:24]}\u201d.")
    return letters


def mark_of(series: str, counter: int, *, width: int = 2) -> str:
    """Return the mark of a series: `mark_of("T", 7)` is `T07`.

    Raises
    ------
    ValueError
        When `counter` is below 1 or has more than seven figures.
    NotASeries
        When `series` is not one to four letters.
    """
    if not 1 <= counter <= 9_999_999:
        raise ValueError("counter must lie from 1 to 9999999.")
    return f"{clean_series(series)}{counter:0{width}d}"


def numbered(text: str) -> Numbered | None:
    """Return series and counter of a mark, None when it has not that form. Raises `NotAMark`."""
    found = _NUMBERED.fullmatch(clean_mark(text).upper())
    return None if found is None else Numbered(found[1], int(found[2]))


def free_suffix(taken: Collection[str]) -> str:
    """Return the first suffix not in `taken`: b, c … z, then bb, bc ….

    The piece that had the mark first has the empty suffix, so a stands for it and is left out.
    """
    used = {suffix.casefold() for suffix in taken}
    length = len(_SUFFIX_LETTERS)
    place = 0
    while True:
        suffix = _SUFFIX_LETTERS[place % length]
        if place >= length:
            suffix = _SUFFIX_LETTERS[(place // length - 1) % length] + suffix
        if suffix not in used:
            return suffix
        place += 1
        if place >= length * (length + 1):
            raise NotAMark("That mark has been given too often; choose another.")


def shown_mark(mark: str, suffix: str) -> str:
    """Return the mark with its suffix, `T29·b`, or alone when the suffix is empty."""
    return f"{mark}{SUFFIX_DOT}{suffix}" if suffix else mark


def split_shown(text: str) -> tuple[str, str]:
    """Return mark and suffix of a shown mark; the suffix is empty where there is none."""
    mark, _, suffix = text.strip().partition(SUFFIX_DOT)
    return mark, suffix.casefold()


def _is_visible(char: str) -> bool:
    return (
        unicodedata.category(char)[0] != "C"
        and char not in _INVISIBLE_LETTERS
        and not ("\ufe00" <= char <= "\ufe0f" or "\U000e0100" <= char <= "\U000e01ef")
    )
