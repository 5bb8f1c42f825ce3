"""Where ware goes as it enters and leaves a kiln.

What comes back unfired goes to where it was, and wears a reason that says so: only then is a visit
told from one that the fire brought.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Final

from pieces.domain import stages
from pieces.domain.stages import Spot, Step

INTO: Final = {"bisque": stages.IN_BISQUE, "glaze": stages.IN_GLAZE}
OUT_OF: Final = {"bisque": stages.BISQUED, "glaze": stages.GLAZE_FIRED}
# What may be put on a load: in a glaze firing, bisqued ware is glazed before it is loaded.
MAY_JOIN: Final = {
    "bisque": (stages.DRYING, stages.BONE_DRY),
    "glaze": (stages.BISQUED, stages.GLAZED, stages.GLAZE_FIRED, stages.CHECKED, stages.PACKED),
}
WORD_OF_RESULT: Final = {"not_fired": stages.NOT_FIRED, "damp": "damp"}


@dataclass(frozen=True, slots=True)
class Way:
    """Where a piece goes, for which reason, and whether it goes back where it came from."""

    spot: Spot
    reason: str
    is_back: bool = False


def into(kind: str, stood: Spot, *, is_one_part: bool, reason: str = "") -> Way:
    """Return the way into a kiln; `reason` is what a person said about it."""
    return Way(INTO[kind], _reason(stood, INTO[kind], reason, is_one_part=is_one_part))


def out_of(
    kind: str, stood: Spot, came_from: Spot | None, result: str, *, outcome: str, is_one_part: bool
) -> Way | None:
    """Return the way out after a firing, None when there is nowhere to go.

    Parameters
    ----------
    kind
        `bisque` or `glaze`.
    stood, came_from
        Where the piece is, and where it was before it went in; None when nobody wrote that down.
    result, outcome
        How this piece came out, and how the load did. A broken piece went through the fire if the
        load did.
    is_one_part
        Whether the design has a single clay part.
    """
    fired = outcome if result == "broken" else result
    if fired == "fired":
        spot = OUT_OF[kind]
        return Way(spot, _reason(stood, spot, "", is_one_part=is_one_part))
    if result == "damp":
        return Way(stages.DRYING, "damp", is_back=True) if stood != stages.DRYING else None
    return _home(stood, came_from, stages.NOT_FIRED, is_one_part=is_one_part)


def called_off(stood: Spot, came_from: Spot | None, *, is_one_part: bool) -> Way | None:
    """Return the way back of a piece whose load was called off."""
    return _home(stood, came_from, stages.CALLED_OFF, is_one_part=is_one_part)


@dataclass(frozen=True, slots=True)
class Stay:
    """A visit as the queue sees it: the state it brought, its reason, and when."""

    state: str
    reason: str
    at: datetime


def waits_since(stays: Sequence[Stay]) -> datetime:
    """Return since when ware waits for its fire: no kiln that let it down costs it its turn.

    Parameters
    ----------
    stays
        All visits of one piece, oldest first; at least one.

    Returns
    -------
    The time of the last visit, or of the one before the ware went in where it came back unfired.
    """
    last = len(stays) - 1
    while last >= 2 and stays[last].reason in stages.UNFIRED:
        before = last - 2  # the visit between is the way in
        if stays[before].state != stays[last].state:
            break
        last = before
    return stays[last].at


def _home(stood: Spot, came_from: Spot | None, word: str, *, is_one_part: bool) -> Way | None:
    if came_from is None or stood == came_from:
        return None
    return Way(came_from, _reason(stood, came_from, word, is_one_part=is_one_part), is_back=True)


def _reason(stood: Spot, spot: Spot, word: str, *, is_one_part: bool) -> str:
    """Return the word, or that steps between are missing where the job has no such step."""
    step = stages.step(stood, spot, is_one_part=is_one_part)
    return word if step in (Step.ON, Step.BACK, Step.SAME) else stages.CATCHING_UP
