"""Where pieces stood at an instant, by what is told of them now."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from uuid import UUID

from pieces.domain.stages import Spot
from pieces.domain.story import Story
from pieces.models import Piece
from pieces.queries.story import Telling, tellings


@dataclass(frozen=True, slots=True)
class Stand:
    """Where a piece was in the job and in the studio, and what it wore.

    `occasion_id` names the firing that brought it there, if one did.
    """

    spot: Spot
    place_id: UUID | None
    cover: str
    grade: str
    occasion_id: UUID | None
    is_one_part: bool

    def kept(self) -> dict[str, Any]:
        """Return it as a placement keeps it, to put the piece back there."""
        return {
            "stage": self.spot.stage,
            "state": self.spot.state,
            "place": str(self.place_id) if self.place_id else None,
            "cover": self.cover,
            "grade": self.grade,
        }


def stands(pieces: Iterable[Piece], at: datetime) -> dict[UUID, Stand]:
    """Return where each piece stood at `at`; pieces not yet made are left out."""
    found = {piece_id: _stood(telling, at) for piece_id, telling in tellings(pieces).items()}
    return {piece_id: stand for piece_id, stand in found.items() if stand is not None}


def _stood(telling: Telling, at: datetime) -> Stand | None:
    before = tuple(fact for fact in telling.facts if fact.happened_at <= at)
    story: Story = Telling(before, telling.recipe).story()
    now = story.now
    if now is None:
        return None
    return Stand(
        spot=now.spot,
        place_id=now.place,
        cover=now.cover,
        grade=now.grade,
        occasion_id=story.visits[-1].occasion_id if story.visits else None,
        is_one_part=telling.recipe.is_one_part,
    )
