"""What a piece wears beside its stage: cover, grade, a bisque that was interrupted."""

from dataclasses import dataclass
from datetime import datetime

from pieces.domain import stages

from .facts import StageFact


@dataclass(slots=True)
class Marks:
    """Beside the state, never states."""

    cover: str = ""
    cover_since_at: datetime | None = None
    grade: str = ""
    has_interrupted_bisque: bool = False

    def put_on(self, cover: str, at: datetime) -> None:
        """Cover or uncover the piece."""
        self.cover, self.cover_since_at = cover, at

    def remember(self, fact: StageFact) -> None:
        """Take from a visit what outlasts it, and drop what it ends."""
        if stages.rank(fact.spot) >= stages.rank(stages.IN_BISQUE):
            self.cover, self.cover_since_at = "", None
        if fact.spot == stages.BISQUED:
            self.has_interrupted_bisque = fact.is_interrupted
        if fact.spot == stages.CHECKED:
            self.grade = fact.grade or self.grade
        elif fact.stage in ("glaze", "bisque", "drying"):
            self.grade = ""
