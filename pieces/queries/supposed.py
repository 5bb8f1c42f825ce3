"""What somebody supposes of a piece from some moment on, laid over what did happen to it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from pieces.domain.drying import Cover
from pieces.domain.schedule import Standing
from pieces.queries.stood import Stood

Covered = tuple[UUID | None, Standing]


@dataclass(frozen=True, slots=True)
class Supposed:
    """From `at` on it stands in `place_id`, under `cover`; what is None stays as it is.

    thick : a part, and how thick it is supposed to have been pressed [mm]
    """

    at: datetime
    place_id: UUID | None = None
    cover: Cover | None = None
    thick: tuple[UUID, float] | None = None

    def covered(self, told: Sequence[Covered]) -> list[Covered]:
        """Return the covers with the one that is supposed, of the piece as a whole, as the last."""
        if self.cover is None:
            return list(told)
        return [*told, (None, Standing(self.at.timestamp(), self.cover))]

    def stood(self, told: Sequence[Stood]) -> list[Stood]:
        """Return where it stood, with the place that is supposed as the last."""
        return list(told) if self.place_id is None else [*told, (self.at, self.place_id, "")]

    def thickest_mm(self, part_id: UUID, pressed_mm: float) -> float:
        """Return how thick a part is supposed to be."""
        if self.thick is None or self.thick[0] != part_id:
            return pressed_mm
        return self.thick[1]
