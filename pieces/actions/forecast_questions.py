"""What the drying model is asked about each wet part, and whether the last answer still holds."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import Any, Final

from django.conf import settings

from pieces.actions.learning import Lore, groups_of
from pieces.domain.drying import Belief, Ensemble, Problem
from pieces.domain.learning import Groups
from pieces.domain.learning.looks import Look, digest, ordered
from pieces.models import Forecast
from pieces.queries import air, looks
from pieces.queries.drying import WetPart
from studio.models import Studio

DRAWS: Final = 256
DRAWS_UNSEEN: Final = 64  # on one small machine, of a piece that nobody has looked at yet
HORIZON: Final = timedelta(days=21)
REFRESH_EVERY: Final = timedelta(minutes=30)
OLD_AFTER: Final = timedelta(hours=6)


@dataclass(frozen=True, slots=True)
class Question:
    """One part: its story, its air, what was seen of it, and the answer that is kept."""

    part: WetPart
    sky: air.Sky
    looks: tuple[Look, ...]
    groups: Groups
    problem: Problem
    draws: int
    kept: Forecast | None
    lore_digest: str

    @property
    def state(self) -> Ensemble | None:
        """The stored state, where the schedule and the air up to it are still what they were.

        A part that was looked at is reckoned from its pressing: its draws answer every look.
        """
        kept = self.kept
        if self.looks or kept is None or kept.states is None or not self.is_past_air_kept:
            return None
        if kept.draws < self.draws:
            return None
        try:
            return Ensemble.from_bytes(self.problem, bytes(kept.states))
        except ValueError:
            return None

    @property
    def is_past_air_kept(self) -> bool:
        """Whether the air up to the stored state is the one it was reckoned with."""
        kept = self.kept
        if kept is None or kept.advanced_to is None:
            return False
        return kept.air_key == self.sky.digest(kept.advanced_to)

    @property
    def last_reading(self) -> str | None:
        """When the newest of the readings used was taken."""
        at = self.sky.last_taken_at
        return at.astimezone(UTC).isoformat() if at else None

    def drawn_from(self, belief: Belief) -> Question:
        """Return the question with its draws taken from another belief, from the pressing on."""
        return replace(self, problem=replace(self.problem, belief=belief), kept=None)


def questions(
    studio: Studio, parts: Sequence[WetPart], lore: Lore, at: datetime
) -> Iterator[Question]:
    """Yield a question for every part (the queries do not grow with their number)."""
    since = min((part.begun_at for part in parts), default=at)
    skies = air.Skies(studio=studio, since=since, at=at, until=at + HORIZON + timedelta(hours=1))
    rows = Forecast.objects.filter(studio=studio, part_id__in=[part.part_id for part in parts])
    kept = {row.part_id: row for row in rows}
    seen = looks.looks_of(studio, piece_ids={part.piece_id for part in parts})
    looked_at = {part.piece_id for part in parts if seen.get(part.part_id)}
    room_of = looks.rooms(studio)
    name = lore.belief.digest()
    for part in parts:
        own = tuple(ordered(seen.get(part.part_id, ()), part.begun_at.timestamp()))
        row, groups = kept.get(part.part_id), groups_of(part, own, room_of)
        sky = skies.over(part.stays, since=part.begun_at)
        belief = _drawn_from(row, digest(own)) or lore.belief.of_piece(groups)
        problem = part.problem(sky.climate, belief)
        few = settings.IS_EMBEDDED and part.piece_id not in looked_at
        draws = DRAWS_UNSEEN if few else DRAWS
        yield Question(part, sky, own, groups, problem, draws, row, name)


def _drawn_from(row: Forecast | None, looks_key: str) -> Belief | None:
    """Return what a part's draws were taken from, as long as they are kept."""
    if row is None or not row.drawn_from or row.looks_key != looks_key:
        return None
    said: dict[str, Any] = row.drawn_from
    return Belief(tuple(said["mean"]), tuple(tuple(line) for line in said["covariance"]))


def is_stale(question: Question, at: datetime) -> bool:
    """Return whether the kept answer no longer holds.

    At once when the part's own story, its looks or its past air changed; half an hour after the
    last reckoning when there is a new reading, the studio learned something elsewhere, or a cover
    is to be changed *now*.
    """
    kept = question.kept
    if kept is None or kept.computed_at is None or kept.key != question.problem.key():
        return True
    if kept.looks_key != digest(question.looks) or kept.draws < question.draws:
        return True
    if not question.is_past_air_kept or kept.inputs["air"] != list(question.sky.sources):
        return True
    if at - kept.computed_at < REFRESH_EVERY:
        return False
    is_old = at - kept.computed_at > (REFRESH_EVERY if _says_now(kept) else OLD_AFTER)
    learned = kept.lore_key != question.lore_digest
    return is_old or learned or kept.inputs["last_reading_at"] != question.last_reading


def _says_now(kept: Forecast) -> bool:
    """Return whether a cover is advised to be changed now, which soon is another now."""
    meeting: dict[str, Any] = kept.covering.get("meeting") or {}
    return bool(meeting.get("covers"))
