"""Two people, one mould, one afternoon: a pressing meets somebody else's booking."""

from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final
from uuid import UUID
from zoneinfo import ZoneInfo

from moulds.domain.cautions import Caution
from moulds.domain.moisture import release_of_press
from moulds.domain.words import clock
from moulds.models import Booking, Casting
from moulds.queries.sets import makes_the_same
from studio.actions import reminders
from studio.models import Act

from .folds import MEETING

CAUTION: Final = "mould-booked"

# Where nobody has said how long the mould holds its clay: overnight, common practice.
USUAL_HOLD: Final = timedelta(hours=12)


@dataclass(frozen=True, slots=True)
class _Meeting:
    act: Act
    casting: Casting
    booking: Booking
    until: datetime | None
    instead: str

    @property
    def label(self) -> str:
        return self.casting.mould_set.label

    def clock(self, moment: datetime) -> str:
        zone = ZoneInfo(self.act.studio.zone)
        return clock(moment, zone=zone, beside=self.act.happened_at)

    def to_presser(self) -> str:
        had = self.booking.from_at > self.act.happened_at
        since = f"from {self.clock(self.booking.from_at)}" if had else "now"
        return f"{self.booking.member.first_name} has it {since}."

    def to_booker(self) -> str:
        till = f" till about {self.clock(self.until)}" if self.until else ""
        pressed_at = self.clock(self.act.happened_at)
        pressed = f"{self.act.member.first_name} pressed {self.label} at {pressed_at}."
        return f"{pressed} In use{till}, then wet{self.instead}."


def tell(
    *,
    act: Act,
    casting: Casting,
    press_since_dry: int,
    in_use_until: datetime | None,
    busy: Collection[UUID],
) -> list[Caution]:
    """Warn the presser of each booking that the pressing runs into, and tell both people once."""
    until = in_use_until or _let_go_at(act, casting, press_since_dry)
    bookings = (
        Booking.objects.filter(
            mould_set=casting.mould_set_id,
            given_up_at=None,
            until_at__gt=act.happened_at,
            from_at__lt=until or act.happened_at + USUAL_HOLD,
        )
        .select_related("member")
        .order_by("from_at")
    )
    met = [booking for booking in bookings if not act.member.speaks_for(booking.member)]
    if not met:
        return []
    instead = _instead(act, casting, busy)
    said = []
    for booking in met:
        meeting = _Meeting(act, casting, booking, until, instead)
        said.append(Caution(CAUTION, meeting.to_presser()))
        if booking.until_at > act.written_at:
            _remind(meeting)
    return said


def _remind(meeting: _Meeting) -> None:
    """Tell both people, once a day for each mould."""
    act, mould_set = meeting.act, meeting.casting.mould_set
    for person, body in (
        (meeting.booking.member, meeting.to_booker()),
        (act.member, meeting.to_presser()),
    ):
        about = reminders.About(
            cause=MEETING,
            grade="B",
            kind="mould_set",
            object_id=mould_set.pk,
            mark=mould_set.label,
            title=f"{mould_set.label}: pressed and booked",
            body=body,
            link=f"/moulds/{mould_set.pk}",
        )
        reminders.set_for(
            studio=act.studio,
            person=person,
            about=about,
            due_at=act.written_at,
            at=act.written_at,
            heard_at=act.written_at,
        )


def _let_go_at(act: Act, casting: Casting, press_since_dry: int) -> datetime | None:
    first_h = casting.mould_set.release_h
    release = release_of_press(first_h, press_since_dry) if first_h else None
    return act.happened_at + timedelta(hours=release.likely_h) if release else None


def _instead(act: Act, casting: Casting, busy: Collection[UUID]) -> str:
    others = makes_the_same(casting.mould_set, busy=busy, at=act.happened_at)
    for row in others:
        if row.casting is not None:
            its = row.mould_set.label
            return f": {its} g{row.casting.generation} is {row.dryness.word}"
    return ""
