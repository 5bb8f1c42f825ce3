"""What is told of one piece, and what its design asks for."""

from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from pieces.domain.stages import CATCHING_UP, Spot


@dataclass(frozen=True, slots=True, kw_only=True)
class Fact:
    """Something told of a piece: by which act, on which device, and when it happened."""

    id: UUID
    act: UUID
    happened_at: datetime
    device: UUID


@dataclass(frozen=True, slots=True, kw_only=True)
class StageFact(Fact):
    """The piece came to a spot of the job."""

    stage: str
    state: str
    reason: str = ""
    place: UUID | None = None
    occasion_id: UUID | None = None
    occasion_name: str = ""
    grade: str = ""
    is_interrupted: bool = False

    @property
    def spot(self) -> Spot:
        """Where in the job the piece came to."""
        return Spot(self.stage, self.state)

    @property
    def is_catching_up(self) -> bool:
        """Whether the teller knows that steps between were not written down."""
        return self.reason == CATCHING_UP


@dataclass(frozen=True, slots=True, kw_only=True)
class PartFact(Fact):
    """Something happened to one part: a kind of `pieces.models.PartEvent`."""

    part: UUID
    kind: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CoverFact(Fact):
    """The piece was covered or uncovered, or one part of it otherwise than the rest."""

    state: str
    part: UUID | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class MoveFact(Fact):
    """The piece was put somewhere."""

    place: UUID


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckFact(Fact):
    """A hand felt the piece, or one part of it."""

    feel: str
    part: UUID | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighingFact(Fact):
    """The piece stood on a scale."""

    mass_g: float


@dataclass(frozen=True, slots=True, kw_only=True)
class AnswerFact(Fact):
    """A person said which of two clashing acts stands, or how both do."""

    kind: str
    first: UUID
    second: UUID
    choice: str


@dataclass(frozen=True, slots=True)
class Wanted:
    """A role that the design requires, how many of it, and whether a mould gives it."""

    role: str
    count: int = 1
    is_moulded: bool = True


@dataclass(frozen=True, slots=True)
class PartMade:
    """A part that somebody began."""

    id: UUID
    role: str


@dataclass(frozen=True, slots=True)
class Recipe:
    """What the design requires, and the parts begun so far."""

    wanted: tuple[Wanted, ...]
    parts: tuple[PartMade, ...] = ()

    @property
    def is_one_part(self) -> bool:
        """Whether there is nothing to join."""
        return sum(wanted.count for wanted in self.wanted) <= 1

    @property
    def is_moulded(self) -> bool:
        """Whether any of it comes out of a mould."""
        return any(wanted.is_moulded for wanted in self.wanted)

    def role_is_moulded(self, role: str) -> bool:
        """Whether parts of this role come out of a mould."""
        return all(wanted.is_moulded for wanted in self.wanted if wanted.role == role)
