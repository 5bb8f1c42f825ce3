"""What a piece wears beside its stage: cover, grade, a bisque that was interrupted."""

from dataclasses import dataclass, field
from datetime import datetime
from uuid import UUID

from pieces.domain import stages

from .facts import CoverFact, StageFact


@dataclass(slots=True)
class Marks:
    """Beside the state, never states; `part_covers` where a part stands otherwise."""

    cover: str = ""
    cover_since_at: datetime | None = None
    grade: str = ""
    has_interrupted_bisque: bool = False
    part_covers: dict[UUID, str] = field(default_factory=dict)

    def put_on(self, fact: CoverFact) -> None:
        """Cover or uncover a part, or the piece with all its parts."""
        if fact.part is not None:
            self.part_covers[fact.part] = fact.state
            return
        self.cover, self.cover_since_at = fact.state, fact.happened_at
        self.part_covers.clear()

    def remember(self, fact: StageFact) -> None:
        """Take from a visit what outlasts it, and drop what it ends."""
        if stages.rank(fact.spot) >= stages.rank(stages.IN_BISQUE):
            self.cover, self.cover_since_at = "", None
            self.part_covers.clear()
        if fact.spot == stages.BISQUED:
            self.has_interrupted_bisque = fact.is_interrupted
        if fact.spot == stages.CHECKED:
            self.grade = fact.grade or self.grade
        elif fact.stage in ("glaze", "bisque", "drying"):
            self.grade = ""
