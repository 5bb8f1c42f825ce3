"""From when to when a piece stood where: its life line.

A stay ends where the next one begins; the last one is open. Drying is cut where its cover changed.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

from .stages import DRYING, Spot
from .story import CoverFact, Fact, Story


@dataclass(frozen=True, slots=True)
class Stay:
    """A stay at one spot of the job, under one cover; `until_at` is None while it lasts."""

    spot: Spot
    cover: str
    from_at: datetime
    until_at: datetime | None


def stays(story: Story, facts: Iterable[Fact]) -> list[Stay]:
    """Return where a piece stood, in order of time, from its folded story and what was told.

    What waits for a clash to be settled is left out, as the story leaves it out; a spot that was
    passed within the same instant is no stay.
    """
    covers = sorted(
        (
            (fact.happened_at, fact.state)
            for fact in facts
            if isinstance(fact, CoverFact) and fact.part is None and fact.act not in story.held
        ),
        key=lambda cover: cover[0],
    )
    visits = story.visits
    ends = [visit.at for visit in visits[1:]]
    found: list[Stay] = []
    for visit, end in zip(visits, [*ends, None], strict=True):
        found += _cut(visit.spot, visit.at, end, covers)
    return [stay for stay in found if stay.until_at is None or stay.until_at > stay.from_at]


def _cut(
    spot: Spot, begin: datetime, end: datetime | None, covers: Sequence[tuple[datetime, str]]
) -> list[Stay]:
    if spot != DRYING:
        return [Stay(spot, "", begin, end)]
    cover = next((state for at, state in reversed(covers) if at <= begin), "")
    found: list[Stay] = []
    since = begin
    for at, state in covers:
        if at > begin and (end is None or at < end) and state != cover:
            found.append(Stay(spot, cover, since, at))
            since, cover = at, state
    return [*found, Stay(spot, cover, since, end)]
