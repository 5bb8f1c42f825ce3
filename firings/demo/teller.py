"""Tells the demo's story: instants on its own clock, acts by its own people, in order of time."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from studio.domain.ids import uuid7
from studio.models import Act, Device, JournalHead, Member, Place, Studio

from .tables import CLOCK, ZONE

HEARD_AFTER: Final = timedelta(seconds=20)  # else every act of the demo would count as late


@dataclass(frozen=True, slots=True)
class Clock:
    """Moves the demo's instants so that its own now falls on `now`.

    Instants move by the difference, rounded to the minute; dates by whole days. None leaves the
    demo where it stands.
    """

    now: datetime | None = None

    @property
    def shift(self) -> timedelta:
        if self.now is None:
            return timedelta(0)
        minutes = round((self.now.astimezone(UTC) - _parsed(CLOCK)).total_seconds() / 60.0)
        return timedelta(minutes=minutes)

    def at(self, wall: str) -> datetime:
        """Return a wall-clock time of the demo ("2026-10-31 09:00", UTC with a Z) as an instant."""
        return _parsed(wall) + self.shift

    def day(self, text: str) -> date:
        """Return a date of the demo."""
        return date.fromisoformat(text) + timedelta(days=self.shift.days)


def _parsed(wall: str) -> datetime:
    # In UTC, as a sum in London's own time follows its clocks and loses or gains an hour.
    at = datetime.fromisoformat(wall)
    return (at if at.tzinfo else at.replace(tzinfo=ZoneInfo(ZONE))).astimezone(UTC)


Telling = Callable[[], object]


@dataclass(slots=True)
class Teller:
    """Holds the cast, and everything still to be told."""

    studio: Studio
    clock: Clock
    members: dict[str, Member]
    devices: dict[str, Device]
    places: dict[str, Place] = field(default_factory=dict)
    _queue: list[tuple[datetime, int, Telling]] = field(default_factory=list)

    def act(self, who: str, at: datetime, note: str = "") -> Act:
        """Return an act of `who` that happened at `at` and was heard at once."""
        seen = JournalHead.objects.values_list("seq", flat=True).get(studio=self.studio)
        return Act(
            id=uuid7(),
            studio=self.studio,
            member=self.members[who],
            device=self.devices[who],
            happened_at=at,
            written_at=at + HEARD_AFTER,
            based_on=seen,
            note=note,
        )

    def then(self, at: datetime, telling: Telling) -> None:
        """Put a telling in its place in time; those of one instant keep the order given."""
        self._queue.append((at, len(self._queue), telling))

    def tell(self) -> None:
        """Tell everything in order of time."""
        for _, _, telling in sorted(self._queue, key=lambda told: told[:2]):
            telling()
        self._queue.clear()

    def place(self, name: str) -> Place | None:
        """Return a place by its name; kilns also answer to their number ("K2")."""
        if name in self.places:
            return self.places[name]
        return next((row for key, row in self.places.items() if key.startswith(f"{name} ")), None)
