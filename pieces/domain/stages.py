"""The stages of a piece, the states inside them, and which can follow which.

A spot in the job is a pair (stage, state). Going on is free where the craft allows the step; going
back is an ordinary thing that wants a reason; a piece can be lost from anywhere, found again where
it was missed, and what was scrapped comes back only by taking that act back.
"""

from enum import StrEnum, auto
from typing import Final, NamedTuple


class Spot(NamedTuple):
    """Where in the job a piece is."""

    stage: str
    state: str


class Step(StrEnum):
    """What kind of step leads from one spot to another."""

    SAME = auto()
    ON = auto()
    BACK = auto()
    LOST = auto()
    FOUND = auto()
    NONE = auto()


WANTS_MODEL: Final = Spot("model", "wants_model")
WANTS_MOULD: Final = Spot("mould", "wants_mould")
TO_PRESS: Final = Spot("pressing", "to_press")
IN_MOULD: Final = Spot("pressing", "in_mould")
OUT: Final = Spot("assembly", "out")
JOINED: Final = Spot("assembly", "joined")
DRYING: Final = Spot("drying", "drying")
BONE_DRY: Final = Spot("drying", "bone_dry")
IN_BISQUE: Final = Spot("bisque", "in_bisque")
BISQUED: Final = Spot("bisque", "bisqued")
GLAZED: Final = Spot("glaze", "glazed")
IN_GLAZE: Final = Spot("glaze", "in_glaze")
GLAZE_FIRED: Final = Spot("glaze", "glaze_fired")
CHECKED: Final = Spot("finished", "checked")
PACKED: Final = Spot("finished", "packed")
DELIVERED: Final = Spot("delivered", "delivered")
SCRAPPED: Final = Spot("lost", "scrapped")
MISSING: Final = Spot("lost", "missing")
LET_GO: Final = Spot("lost", "let_go")

# In the order of the job; the lost come last.
SPOTS: Final = (
    WANTS_MODEL,
    WANTS_MOULD,
    TO_PRESS,
    IN_MOULD,
    OUT,
    JOINED,
    DRYING,
    BONE_DRY,
    IN_BISQUE,
    BISQUED,
    GLAZED,
    IN_GLAZE,
    GLAZE_FIRED,
    CHECKED,
    PACKED,
    DELIVERED,
    SCRAPPED,
    MISSING,
    LET_GO,
)
STAGES: Final = tuple(dict.fromkeys(spot.stage for spot in SPOTS))
STATES: Final = tuple(spot.state for spot in SPOTS)

WAITING: Final = (WANTS_MODEL, WANTS_MOULD, TO_PRESS)
MAKING: Final = (*WAITING, IN_MOULD, OUT, JOINED)

WORDS: Final[dict[str, str]] = {
    "wants_model": "waits for its model",
    "wants_mould": "waits for its mould",
    "to_press": "to press",
    "in_mould": "in mould",
    "out": "out, to join",
    "joined": "joined",
    "drying": "drying",
    "bone_dry": "bone dry",
    "in_bisque": "in the bisque kiln",
    "bisqued": "bisqued",
    "glazed": "glazed",
    "in_glaze": "in the glaze kiln",
    "glaze_fired": "glaze fired",
    "checked": "checked",
    "packed": "packed",
    "delivered": "delivered",
    "scrapped": "scrapped",
    "missing": "missing",
    "let_go": "let go",
}
COVER_WORDS: Final[dict[str, str]] = {
    "open": "drying open",
    "loose": "drying, loosely covered",
    "tucked": "drying, tucked in",
    "sealed": "drying, sealed",
}

NEXT: Final[dict[Spot, tuple[Spot, ...]]] = {
    WANTS_MODEL: (WANTS_MOULD, TO_PRESS, IN_MOULD, OUT),
    WANTS_MOULD: (TO_PRESS, IN_MOULD, OUT),
    TO_PRESS: (IN_MOULD, OUT),
    IN_MOULD: (OUT,),
    OUT: (JOINED,),
    JOINED: (DRYING, BONE_DRY),
    DRYING: (BONE_DRY, IN_BISQUE),
    BONE_DRY: (IN_BISQUE,),
    IN_BISQUE: (BISQUED,),
    BISQUED: (GLAZED,),
    GLAZED: (IN_GLAZE,),
    IN_GLAZE: (GLAZE_FIRED,),
    GLAZE_FIRED: (CHECKED,),
    CHECKED: (PACKED, DELIVERED),
    PACKED: (DELIVERED,),
    DELIVERED: (),
}
# One clay part has nothing to be joined to: from the mould it goes to dry.
NEXT_OF_ONE_PART: Final[dict[Spot, tuple[Spot, ...]]] = {
    **NEXT,
    IN_MOULD: (OUT, DRYING),
    OUT: (JOINED, DRYING, BONE_DRY),
}
BACK: Final[dict[Spot, tuple[Spot, ...]]] = {
    DRYING: (OUT, JOINED),
    BONE_DRY: (OUT, JOINED, DRYING),
    IN_BISQUE: (OUT, JOINED, DRYING, BONE_DRY),
    BISQUED: (IN_BISQUE,),
    GLAZED: (BISQUED,),
    IN_GLAZE: (BISQUED, GLAZED),
    GLAZE_FIRED: (GLAZED, IN_GLAZE),
    CHECKED: (GLAZED, GLAZE_FIRED),
    PACKED: (GLAZED, CHECKED),
}

CATCHING_UP: Final = "catching_up"
# Why a piece is back where it was before a firing: such a visit is none that the fire brought.
NOT_FIRED: Final = "not fired"
CALLED_OFF: Final = "called off"
UNFIRED: Final = (NOT_FIRED, CALLED_OFF)


def is_spot(stage: str, state: str) -> bool:
    """Say whether the state belongs to the stage."""
    return Spot(stage, state) in SPOTS


def step(start: Spot, end: Spot, *, is_one_part: bool, missed_at: Spot | None = None) -> Step:
    """Return what kind of step leads from `start` to `end`.

    Parameters
    ----------
    start, end
        Two of `SPOTS`.
    is_one_part
        Whether the design has a single clay part.
    missed_at
        Where the piece was when it was last said to be missing.

    Returns
    -------
    The kind of step. `NONE` says that the one cannot follow the other.

    Raises
    ------
    ValueError
        When one of the two is not a spot of the job.
    """
    if start not in SPOTS or end not in SPOTS:
        raise ValueError(f"no such spot: {start}, {end}")
    if start == end:
        return Step.SAME
    if start.stage == "lost":
        return _from_lost(start, end, missed_at)
    if end.stage == "lost":
        return Step.LOST
    table = NEXT_OF_ONE_PART if is_one_part else NEXT
    if end in table[start]:
        return Step.ON
    return Step.BACK if end in BACK.get(start, ()) else Step.NONE


def _from_lost(start: Spot, end: Spot, missed_at: Spot | None) -> Step:
    if end.stage == "lost":
        # What was missing may turn up broken; what is scrapped is not lost a second time.
        return Step.LOST if start == MISSING else Step.SAME
    return Step.FOUND if start == MISSING and end == missed_at else Step.NONE


def nexts(spot: Spot, *, is_one_part: bool) -> tuple[Spot, ...]:
    """Return the spots that can follow without a reason."""
    return (NEXT_OF_ONE_PART if is_one_part else NEXT).get(spot, ())


def words(state: str, cover: str = "") -> str:
    """Return the state as a potter says it; a piece that dries says how it is covered."""
    return COVER_WORDS.get(cover, WORDS[state]) if state == "drying" else WORDS[state]


def rank(spot: Spot) -> int:
    """Return how far along the job the spot is, from 0."""
    return SPOTS.index(spot)
