"""What owners of moulds are told on Fridays: worn, due for a look, resting wet."""

from collections.abc import Iterator
from datetime import datetime, time, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from moulds.domain.readiness import say_dryness
from moulds.queries import sets
from moulds.queries.sets import SetNow
from studio.actions import reminders
from studio.actions.reminders import About
from studio.domain.hours import ONE_DAY, instant
from studio.models import Member, Studio
from studio.permissions import Role
from studio.queries.people import with_role

CAUSES: Final = ("mould_at_limit", "mould_detail_due", "mould_resting_wet")
FRIDAY: Final = 4
TOLD_AT: Final = time(15, 0)
STILL_TODAY: Final = timedelta(hours=12)  # until then the Friday that has come is not yet past
RESTS_TOO_LONG: Final = timedelta(days=3)  # wet, and nobody looked; common practice, no source


def tell_owners(*, at: datetime) -> None:
    """Set the next Friday's reminders about moulds, and withdraw what is no longer so."""
    for studio in Studio.objects.select_related("settings"):
        _tell_studio(studio, at)


def next_friday(at: datetime, zone: ZoneInfo) -> datetime:
    """Return the coming Friday, 15:00 on the studio's clock."""
    since = at - STILL_TODAY
    day = since.astimezone(zone).date()
    ahead = [instant(day + days * ONE_DAY, TOLD_AT, zone) for days in range(8)]
    return next(
        told for told in ahead if told >= since and told.astimezone(zone).weekday() == FRIDAY
    )


def _tell_studio(studio: Studio, at: datetime) -> None:
    due_at = next_friday(at, ZoneInfo(studio.zone))
    everything = sets.now_of(sets.all_of(studio), studio=studio, at=at)
    abouts = [(row, about) for row in everything for about in _abouts(row, at)]
    still = {(about.cause, about.object_id) for _, about in abouts}
    reminders.withdraw_all_but(studio=studio, causes=CAUSES, still=still)
    owners: list[Member] = with_role(studio, Role.OWNER)
    for row, about in abouts:
        owner = row.mould_set.owner
        for person in [owner] if owner is not None else owners:
            reminders.set_for(studio=studio, person=person, about=about, due_at=due_at, at=at)


def _abouts(row: SetNow, at: datetime) -> Iterator[About]:
    if row.casting is None or row.unfit is not None:
        return
    if row.wear.word == "at its limit":
        yield _about(row, "mould_at_limit", f"{row.presses} pressings, the limit that was set.")
    elif row.wear.word == "look at its detail":
        yield _about(row, "mould_detail_due", f"{row.presses} pressings: look at its detail.")
    touched = [row.casting.weighed_at, row.damp.since.last_at if row.damp else None]
    last_at = max((moment for moment in touched if moment is not None), default=None)
    if row.dryness.word == "rest" and last_at is not None and at - last_at > RESTS_TOO_LONG:
        body = f"{say_dryness(row.dryness).capitalize()}. Weigh it, or stand it where air moves."
        yield _about(row, "mould_resting_wet", body)


def _about(row: SetNow, cause: str, body: str) -> About:
    label = row.mould_set.label
    titles = {
        "mould_at_limit": f"{label} is at its limit",
        "mould_detail_due": f"{label}: look at its detail",
        "mould_resting_wet": f"{label} rests wet",
    }
    return About(
        cause=cause,
        grade="D",
        kind="mould_set",
        object_id=row.mould_set.pk,
        mark=label,
        title=titles[cause],
        body=body,
        link=f"/moulds/{row.mould_set.pk}",
    )
