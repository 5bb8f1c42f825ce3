"""Where a piece was put, and when two people put it in two places at once."""

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime
from uuid import UUID

from pieces.domain.stages import Spot

from .facts import Fact
from .result import ClashFound


@dataclass(slots=True)
class Whereabouts:
    """The place of a piece: the last word is right, until two people name one minute."""

    place: UUID | None = None
    clashes: list[ClashFound] = field(default_factory=list)
    before: UUID | None = None
    last: Fact | None = None

    def put(
        self, place: UUID, fact: Fact, *, spot: Spot, is_agreed: Callable[[UUID, UUID], bool]
    ) -> None:
        """Take in that the piece was put at `place`."""
        last = self.last
        is_same_minute = last is not None and _minute(last) == _minute(fact)
        if last is not None and is_same_minute and not self.clashes and place == self.place:
            return
        if (
            last is not None
            and is_same_minute
            and fact.device != last.device
            and not is_agreed(last.act, fact.act)
        ):
            self.clashes.append(ClashFound("two_places", last.act, fact.act, spot))
            self.place = self.before
            return
        if not is_same_minute:
            self.clashes.clear()
        self.before, self.place, self.last = self.place, place, fact


def _minute(fact: Fact) -> datetime:
    return fact.happened_at.replace(second=0, microsecond=0)
