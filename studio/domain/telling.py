"""When somebody may be told of something, and what goes into one message.

Class A (a hot kiln that nobody minds) is told at once, day and night. Class B is told at once and
class D once a day, both outside quiet hours. Class C waits for the next of four times of day, so
that twelve tiles make one message and not twelve.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, time, timedelta
from typing import Final, Literal
from uuid import UUID
from zoneinfo import ZoneInfo

from studio.domain import hours

Grade = Literal["A", "B", "C", "D"]

#: Times of day at which class C is told, on the studio's clock.
GROUPED: Final = (time(7, 45), time(11, 0), time(14, 0), time(17, 0))

A_SNOOZE_MOST: Final = timedelta(minutes=10)
A_SNOOZES_MOST: Final = 2
LET_GO_ASKED_AT: Final = 3


@dataclass(frozen=True, slots=True)
class Due:
    """Something to tell one person. `ready_at` is when it was due, set or woken, whichever is last.

    `turn` counts how often it was told or put off, so that each turn is a message of its own.
    """

    id: UUID
    grade: Grade
    ready_at: datetime
    turn: str = "0"


@dataclass(frozen=True, slots=True)
class Ear:
    """When a person listens: the studio's clock, and every quiet span that holds for them."""

    zone: ZoneInfo
    quiet: Sequence[hours.Span] = ()

    def is_quiet(self, at: datetime) -> bool:
        """Return whether any of the quiet spans holds at the instant."""
        return any(hours.is_quiet(at, span, self.zone) for span in self.quiet)


def messages(dues: Sequence[Due], *, ear: Ear, at: datetime) -> dict[str, list[UUID]]:
    """Return what to tell one person at the instant `at`: key of each message -> what it holds.

    A key is the same for the same message, however often and however late it is asked for; what is
    not due, or must wait for a better time, is in none.
    """
    ready = sorted(
        (due for due in dues if due.ready_at <= at), key=lambda due: (due.ready_at, due.id)
    )
    found: dict[str, list[UUID]] = {}
    is_quiet = ear.is_quiet(at)
    slot = last_slot(at, ear.zone)
    today = at.astimezone(ear.zone).date()
    first_of_b = next((due for due in ready if due.grade == "B"), None)
    for due in ready:
        if due.grade == "A":
            key = f"A {due.id} {due.turn}"
        elif is_quiet:
            continue
        elif due.grade == "B" and first_of_b is not None:
            key = f"B {first_of_b.id} {first_of_b.turn}"
        elif due.grade == "D":
            key = f"D {today.isoformat()}"
        elif slot is not None and due.ready_at <= slot:
            key = f"C {slot:%Y-%m-%dT%H:%MZ}"
        else:
            continue
        found.setdefault(key, []).append(due.id)
    return found


def last_slot(at: datetime, zone: ZoneInfo) -> datetime | None:
    """Return the last grouped time of the day at or before `at`; None in the early morning."""
    today = at.astimezone(zone).date()
    passed = [slot for slot in (hours.instant(today, when, zone) for when in GROUPED) if slot <= at]
    return passed[-1] if passed else None


def may_break_quiet(key: str) -> bool:
    """Return whether the message of this key is told in quiet hours too."""
    return key.startswith("A ")
