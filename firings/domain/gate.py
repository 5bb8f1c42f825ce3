"""What speaks against a piece in a load, piece by piece: named so that each can be answered."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from firings.domain.ware import MAY_JOIN
from pieces.domain import stages
from pieces.domain.stages import Spot

DAMP: Final = "damp-evidence-missing"
FULL: Final = "too-full"
LIFTED_BY_REASON: Final = (DAMP, FULL)


@dataclass(frozen=True, slots=True)
class Objection:
    """Why a piece does not go: a code for screens, a sentence for people."""

    code: str
    detail: str


@dataclass(frozen=True, slots=True)
class Asked:
    """A piece that somebody wants in a load."""

    mark: str
    spot: Spot
    in_load: str = ""
    has_clash: bool = False
    is_unclaimed: bool = False
    is_dry: bool = True
    dry_words: str = ""


def objections(kind: str, asked: Asked) -> Sequence[Objection]:
    """Return what speaks against it, the gravest first; nothing when it may go."""
    mark, found = asked.mark, []
    if asked.is_unclaimed:
        detail = f"{mark} was found and nobody has claimed it: it is fired by nobody."
        found.append(Objection("unclaimed", detail))
    if asked.has_clash:
        detail = f"Two stories are told of {mark}; say first which stands."
        found.append(Objection("two-stories", detail))
    if asked.in_load:
        found.append(Objection("in-another-load", f"{mark} is in {asked.in_load}."))
    if asked.spot not in MAY_JOIN.get(kind, ()):
        words = stages.WORDS[asked.spot.state]
        found.append(Objection("wrong-stage", f"{mark} is {words}: not for a {kind} firing."))
    elif kind == "bisque" and not asked.is_dry:
        found.append(Objection(DAMP, f"{mark}: {asked.dry_words}"))
    return found
