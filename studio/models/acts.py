"""The envelope of every write."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from uuid import UUID, uuid5

from .photos import Photo
from .tenancy import Device, Member, Studio


@dataclass(frozen=True, slots=True)
class Act:
    """Who does something, on which device, when it happened and when it was heard.

    The interface builds it; nothing below reads the clock.
    """

    id: UUID
    studio: Studio
    member: Member
    device: Device
    happened_at: datetime
    written_at: datetime
    clock_offset_s: float = 0.0
    based_on: int = 0
    corrects: UUID | None = None
    as_typed: Mapping[str, str] = field(default_factory=dict)
    note: str = ""
    photos: Sequence[Photo] = ()

    def row_id(self, subject_id: UUID) -> UUID:
        """Return the id of this act's row about one of its many subjects."""
        return uuid5(self.id, str(subject_id))
