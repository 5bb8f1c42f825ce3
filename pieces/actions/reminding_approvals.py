"""An approval comes due: its maker is told, with a text to send. The client never is."""

from collections.abc import Iterator
from datetime import datetime, time, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from pieces.domain import approval_words as words
from pieces.domain.order_words import day
from pieces.models import Approval
from pieces.queries import approvals as queries
from studio.actions import reminders
from studio.actions.reminders import About
from studio.domain.hours import instant
from studio.models import Reminder, Studio

from .approvals import DUE

TOLD_AT: Final = time(9, 0)
#: Days from the due day, by turn: two before, the day itself, once more the day after.
TURNS_DAYS: Final = (-2, 0, 1)


def tell_of_approvals(*, studio: Studio, at: datetime) -> int:
    """Set what has come due, take back what is answered or closed; return how many are wanted."""
    waiting = [one.approval for one in queries.open_ones(studio)]
    wanted = 0
    for row in waiting:
        for turn, due_at in _turns(row, at):
            if not _is_let_go(row):
                _set(row, turn, due_at, at)
                wanted += 1
    still = {(DUE, row.pk) for row in waiting}
    reminders.withdraw_all_but(studio=studio, causes=[DUE], still=still)
    return wanted


def _turns(row: Approval, at: datetime) -> Iterator[tuple[int, datetime]]:
    """Yield the last turn that has come, if any: one reminder takes the place of the one before."""
    zone = ZoneInfo(row.studio.zone)
    come = [
        (turn, due_at)
        for turn, days in enumerate(TURNS_DAYS)
        if (due_at := instant(row.due_date + timedelta(days=days), TOLD_AT, zone)) <= at
    ]
    yield from come[-1:]


def _is_let_go(row: Approval) -> bool:
    said = Reminder.objects.filter(studio=row.studio, cause=DUE, object_id=row.pk)
    return said.filter(state=Reminder.State.LET_GO).exists()


def _set(row: Approval, turn: int, due_at: datetime, at: datetime) -> None:
    said = Reminder.objects.filter(studio=row.studio, cause=DUE, object_id=row.pk)
    said.filter(round__lt=turn, state__in=reminders.OPEN).update(state=Reminder.State.WITHDRAWN)
    commission = row.commission
    about = About(
        cause=DUE,
        grade="C",
        kind="approval",
        object_id=row.pk,
        mark=commission.number,
        title=f"{commission.number}: {words.ABOUT[row.about]} to approve by {day(row.due_date)}.",
        body=f"To send, if you will: {words.message(commission.number, row.about, row.due_date)}",
        link=f"/orders/{commission.pk}",
    )
    reminders.set_for(
        studio=row.studio,
        person=commission.maker,
        about=about,
        due_at=due_at,
        at=at,
        round=turn,
        heard_at=row.entry.written_at,
    )
