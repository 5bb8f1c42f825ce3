"""Judging promises, and telling makers and owners when one is no longer likely to be kept.

A promise is told of when it crosses the line, and once more each week while it stays beyond; never
to a client.
"""

from datetime import datetime, time, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from django.db.models import Q

from firings.queries.outlook import Ground, Outlook, outlook_of
from pieces.actions import commissions
from pieces.domain.order_words import time_left
from pieces.models import Commission
from pieces.queries import commissions as queries
from studio.actions import reminders
from studio.actions.reminders import About
from studio.domain.hours import ONE_DAY, instant
from studio.models import Member, Reminder, Studio
from studio.permissions import Role
from studio.queries import people
from studio.queries.reminders import stands_in_for

CAUSE: Final = "promise_at_risk"
TOLD_AT: Final = time(17, 0)
AGAIN_AFTER: Final = timedelta(days=7)
ANSWERED: Final = (Reminder.State.DONE, Reminder.State.LET_GO)


def judge_promises(*, studio: Studio, at: datetime) -> int:
    """Reckon every open order anew, keep the judgement, tell whom it concerns.

    Returns how many are at risk. May run twice without harm.
    """
    open_ones = queries.all_of(studio).filter(closed_at=None, cancelled_at=None)
    orders = queries.orders_now(open_ones)
    pieces = [piece.pk for order in orders for line in order.lines for piece in line.pieces]
    ground = Ground.of(studio, pieces, at=at)
    seen = [outlook_of(order, ground) for order in orders]
    for one in seen:
        _keep(one, at)
    risky = [one for one in seen if one.is_at_risk]
    # Orders that are no longer at risk, or closed, are told of no more.
    still = {(CAUSE, one.order.commission.pk) for one in risky}
    reminders.withdraw_all_but(studio=studio, causes=[CAUSE], still=still)
    owners = people.with_role(studio, Role.OWNER) if risky else []
    for one in risky:
        maker = one.order.commission.maker
        for person in {member.pk: member for member in (maker, *owners)}.values():
            _tell(one, person, at)
    return len(risky)


def next_telling(at: datetime, zone: ZoneInfo) -> datetime:
    """Return the next 17:00 on the studio's clock, `at` itself where it is just that."""
    today = at.astimezone(zone).date()
    first = instant(today, TOLD_AT, zone)
    return first if first >= at else instant(today + ONE_DAY, TOLD_AT, zone)


def _keep(seen: Outlook, at: datetime) -> None:
    commission = seen.order.commission
    risk = Commission.Risk.AT_RISK if seen.is_at_risk else Commission.Risk.ON_COURSE
    likely_from, likely_until = seen.likely
    commissions.judge(
        commission=commission,
        risk=risk,
        words=seen.words,
        likely_from=likely_from,
        likely_until=likely_until,
        at=at,
    )


def _tell(seen: Outlook, person: Member, at: datetime) -> None:
    commission = seen.order.commission
    zone = ZoneInfo(commission.studio.zone)
    due_at = next_telling(at, zone)
    due_date = due_at.astimezone(zone).date()
    person = stands_in_for(person, due_date)
    told = Reminder.objects.filter(
        studio=commission.studio_id, cause=CAUSE, object_id=commission.pk
    ).exclude(state=Reminder.State.WITHDRAWN)
    # An answer holds for everybody who was told: the others' rows are withdrawn with it.
    last = told.filter(Q(person=person) | Q(state__in=ANSWERED)).order_by("-due_at").first()
    if last is not None:
        is_waiting = last.state in (Reminder.State.DUE, Reminder.State.SNOOZED)
        if is_waiting or due_date - last.due_date < AGAIN_AFTER:
            return
    reminders.set_for(
        studio=commission.studio, person=person, about=_about(seen), due_at=due_at, at=at
    )


def _about(seen: Outlook) -> About:
    commission = seen.order.commission
    promised = time_left(commission.promised_date, seen.today)
    risks = [risk.words for line in seen.lines for risk in line.risks]
    return About(
        cause=CAUSE,
        grade="C",
        kind="commission",
        object_id=commission.pk,
        mark=commission.number,
        title=f"{commission.number} is at risk: {promised}.",
        body=" ".join([f"{seen.words.capitalize()}.", *risks[:2]]),
        link=f"/orders/{commission.pk}",
    )
