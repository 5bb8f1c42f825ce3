"""What the fold answers: the present of a piece, and where its tellers disagree."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from pieces.domain.stages import Spot


@dataclass(frozen=True, slots=True)
class PartNow:
    """The present of one part. A crack counts until the part ends or the piece is accepted.

    `cover` is its own, where it stands otherwise than the piece; empty where it stands like it.
    """

    id: UUID
    role: str
    state: str = "to_press"
    pressed_at: datetime | None = None
    out_at: datetime | None = None
    joined_at: datetime | None = None
    ended_at: datetime | None = None
    look_again_at: datetime | None = None
    cracked_at: datetime | None = None
    cover: str = ""

    @property
    def is_alive(self) -> bool:
        """Whether there is such a part to be reckoned with."""
        return self.state in ("in_mould", "out", "joined")


@dataclass(frozen=True, slots=True)
class Visited:
    """One visit to a spot of the job, by which act and since when."""

    spot: Spot
    at: datetime
    act: UUID
    reason: str = ""
    occasion_id: UUID | None = None
    occasion_name: str = ""


@dataclass(frozen=True, slots=True)
class Said:
    """An act that stands beside the story: told again, or told too late to change it."""

    act: UUID
    happened_at: datetime


@dataclass(frozen=True, slots=True)
class ClashFound:
    """Two acts that cannot both be true as told; `stands` is what holds until a person answers."""

    kind: str
    first: UUID
    second: UUID
    stands: Spot
    part: UUID | None = None


@dataclass(frozen=True, slots=True)
class Doubt:
    """Two stories that wait for a person, and where each of them leads."""

    clash: ClashFound
    ends: tuple[Spot, ...]


@dataclass(frozen=True, slots=True)
class Now:
    """What is so now."""

    spot: Spot
    since_at: datetime
    begun_at: datetime
    touched_at: datetime
    place: UUID | None = None
    cover: str = ""
    cover_since_at: datetime | None = None
    is_damaged: bool = False
    grade: str = ""
    has_interrupted_bisque: bool = False
    look_again_at: datetime | None = None
    last_join_at: datetime | None = None


@dataclass(frozen=True, slots=True)
class Story:
    """The folded story. `now` is None when nothing is left of the piece: its making was taken back.

    `also_said` are acts that changed nothing; `held` are those that wait for a clash to be settled.
    """

    now: Now | None
    parts: Mapping[UUID, PartNow]
    visits: tuple[Visited, ...]
    also_said: tuple[Said, ...]
    held: tuple[UUID, ...]
    clashes: tuple[ClashFound, ...]
