"""The story of a piece: acts in, what is so now out, whatever the order they were heard in."""

from .facts import (
    AnswerFact,
    CheckFact,
    CoverFact,
    Fact,
    MoveFact,
    PartFact,
    PartMade,
    Recipe,
    StageFact,
    Wanted,
    WeighingFact,
)
from .fold import fold
from .result import ClashFound, Now, PartNow, Said, Story, Visited

__all__ = [
    "AnswerFact",
    "CheckFact",
    "ClashFound",
    "CoverFact",
    "Fact",
    "MoveFact",
    "Now",
    "PartFact",
    "PartMade",
    "PartNow",
    "Recipe",
    "Said",
    "StageFact",
    "Story",
    "Visited",
    "Wanted",
    "WeighingFact",
    "fold",
]
