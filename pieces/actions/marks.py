"""Marks: given from the series, or as cut in the clay; a mark given twice stays on both pieces."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final
from uuid import UUID

from pieces.domain import numbers
from pieces.models import Clash, Piece
from studio.actions import numbers as series
from studio.models import Act, JournalSubject, Studio

from .shapes import PieceGiven, Warned
from .stories import clash_id

# A number above this is a slip of the finger or another studio's; the series does not follow it.
FOLLOWED_UP_TO: Final = 9999


@dataclass(frozen=True, slots=True)
class Mark:
    """A mark as it will stand on a piece; `holder` is who has it without a suffix already."""

    text: str
    key: str
    suffix: str = ""
    holder: UUID | None = None


def choose(*, studio: Studio, given: Sequence[PieceGiven]) -> list[Mark]:
    """Return a mark for each piece, in order. Raises `NotAMark`."""
    keys = [numbers.mark_key(piece.mark) for piece in given if piece.mark]
    taken: dict[str, dict[str, UUID | None]] = {}
    held = Piece.objects.filter(studio=studio, mark_key__in=keys)
    for key, suffix, pk in held.values_list("mark_key", "suffix", "pk"):
        taken.setdefault(key, {})[suffix] = pk
    marks = []
    for piece in given:
        mark = _as_cut(studio, piece.mark, taken) if piece.mark else _next(studio, piece, taken)
        taken.setdefault(mark.key, {})[mark.suffix] = piece.id
        marks.append(mark)
    return marks


def ask_whose(*, act: Act, piece: Piece, mark: Mark) -> Warned | None:
    """Open the question whose mark it is, where another piece had it before."""
    if mark.holder is None:
        return None
    first = JournalSubject.objects.filter(subject_id=mark.holder).order_by("entry__seq")
    told = first.values_list("entry_id", flat=True).first()
    if told is None or told == act.id:
        return Warned("mark-given-twice", f"{mark.text} is given twice here: {piece.shown_mark}.")
    Clash.objects.create(
        id=clash_id(piece, told, act.id),
        studio=piece.studio,
        piece=piece,
        kind="number_taken",
        act_ids=[str(told), str(act.id)],
        stands_meanwhile={"mark": piece.shown_mark},
        opened_at=act.written_at,
    )
    return Warned("number-taken", f"{mark.text} was taken; this one is kept as {piece.shown_mark}.")


def _as_cut(studio: Studio, text: str, taken: dict[str, dict[str, UUID | None]]) -> Mark:
    key = numbers.mark_key(text)
    same = taken.get(key, {})
    counted = numbers.numbered(text)
    if counted is not None and counted.counter <= FOLLOWED_UP_TO:
        series.pass_over(studio=studio, letters=counted.series, number=counted.counter)
    if not same:
        return Mark(numbers.clean_mark(text), key)
    holder = same.get("") or next(iter(same.values()))
    return Mark(numbers.clean_mark(text), key, numbers.free_suffix(same), holder)


def _next(studio: Studio, piece: PieceGiven, taken: dict[str, dict[str, UUID | None]]) -> Mark:
    letters = numbers.clean_series(piece.design.series)
    while True:
        text = numbers.mark_of(letters, series.take(studio=studio, letters=letters))
        key = numbers.mark_key(text)
        is_free = not Piece.objects.filter(studio=studio, mark_key=key).exists()
        if is_free and key not in taken:
            return Mark(text, key)
