"""Thick ware in a bisque wants longer below 100 °C, and all the others wait with it."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from .cautions import Caution
from .outlook_words import listed

# Common practice, no source.
HOLD_H: Final = 6


@dataclass(frozen=True, slots=True)
class Inside:
    """One piece of a load, whose it is, and whether it is above the studio's wall limit."""

    mark: str
    maker: str
    is_thick: bool


def warm_hold_for_all(inside: Sequence[Inside]) -> Caution | None:
    """Return the question whether the whole load is to be held, naming whom it makes wait."""
    thick = [piece.mark for piece in inside if piece.is_thick]
    if not thick:
        return None
    others: defaultdict[str, list[str]] = defaultdict(list)
    for piece in inside:
        if not piece.is_thick:
            others[piece.maker or "nobody named"].append(piece.mark)
    asked = "; ".join(f"{maker}: {listed(marks)}" for maker, marks in sorted(others.items()))
    detail = f"Thick: {listed(thick)}. Add about {HOLD_H} h below 100 °C for the whole load?"
    if asked:
        detail += f" Ask the others in it. {asked}."
    return Caution("warm-hold-for-all", detail)
