"""Whoever minds a kiln is told: a reading is overdue, its end has passed, it may be opened.

These notes can fail like any other: nobody may rely on them alone, and each of them says so.
"""

from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Final

from firings.domain.firing_times import Point, in_order
from firings.models import KilnReading, Load
from firings.queries import loads
from firings.queries.kilns import expected_end_at
from firings.queries.opening import openings_of
from firings.queries.told import points_of
from studio.actions import reminders
from studio.actions.reminders import About
from studio.domain.telling import Grade
from studio.models import Member, Studio

from . import telling

OVERDUE: Final = "kiln_reading_overdue"
NOT_SEEN_OFF: Final = "kiln_not_seen_off"
MAY_OPEN: Final = "kiln_may_open"
CAUSES: Final = (OVERDUE, NOT_SEEN_OFF, MAY_OPEN, telling.OVER_TOP)
HOT_C: Final = 300.0
AFTER_DUE: Final = timedelta(minutes=15)
AFTER_END: Final = timedelta(minutes=30)
STEP: Final = timedelta(minutes=15)
OVER_TOP_EVERY: Final = timedelta(minutes=5)
GO_AND_LOOK: Final = "Go and look, or ring somebody who can. Natch is not a safety device."

Wish = tuple[Member, About, datetime, int]


def tell_minders(*, studio: Studio, at: datetime) -> int:
    """Set what whoever minds a kiln is to be told, take back what is no longer so."""
    rows = list(loads.listed(studio).filter(state__in=loads.BUSY))
    rows = [load for load in rows if load.started_at is not None]
    points = points_of(rows)
    wishes: list[Wish] = []
    for load in rows:
        read = in_order(points.get(load.pk, []))
        wishes += _overdue(load, read, at)
        wishes += _not_seen_off(load, at)
        wishes += _over_top(load, at)
    openings = openings_of(studio, rows, points, at)
    for load in rows:
        opening = openings.get(load.pk)
        if opening is not None and opening.likely is not None:
            wishes += _may_open(load, opening.staffed_at or opening.likely, opening.words, at)
    for person, about, due_at, turn in wishes:
        reminders.set_for(
            studio=studio, person=person, about=about, due_at=due_at, at=at, round=turn
        )
    wanted = {(about.cause, about.object_id) for _, about, _, _ in wishes}
    reminders.withdraw_all_but(studio=studio, causes=CAUSES, still=wanted)
    return len(wishes)


def _overdue(load: Load, read: list[Point], at: datetime) -> Iterator[Wish]:
    """Tell of a hot kiln that nobody has read; one never read since it was lit may be hot too."""
    if load.state != Load.State.FIRING or load.started_at is None:
        return
    since = [point for point in read if point[0] >= load.started_at]
    if since and since[-1][1] <= HOT_C:
        return
    last_at = since[-1][0] if since else load.started_at
    due_at = last_at + timedelta(minutes=load.reading_every_min) + AFTER_DUE
    title = f"{load.kiln.number} has not been read since it was lit."
    if since:
        title = f"{load.kiln.number} was {since[-1][1]:.0f} °C and is not read since."
    yield from _escalated(load, OVERDUE, title, due_at, at)


def _not_seen_off(load: Load, at: datetime) -> Iterator[Wish]:
    ends_at = expected_end_at(load) if load.state == Load.State.FIRING else None
    if ends_at is not None:
        title = f"{load.number} in {load.kiln.number} should have ended; nobody saw it off."
        yield from _escalated(load, NOT_SEEN_OFF, title, ends_at + AFTER_END, at)


def _escalated(
    load: Load, cause: str, title: str, due_at: datetime, at: datetime
) -> Iterator[Wish]:
    """Tell the watcher, a quarter of an hour later the technicians, then the owners."""
    if due_at > at:
        return
    turn = min((at - due_at) // STEP, 2)
    people = [load.watcher] if load.watcher is not None else telling.technicians(load.studio)
    people += telling.technicians(load.studio) if turn >= 1 else []
    people += telling.owners(load.studio) if turn >= 2 else []
    about = _about(cause, "A", load, title, GO_AND_LOOK)
    for person in dict.fromkeys(people):
        if person is not None:
            yield person, about, due_at, turn


def _over_top(load: Load, at: datetime) -> Iterator[Wish]:
    """Tell again every five minutes of a last reading over the top, until a cooler one comes."""
    last = KilnReading.objects.filter(load=load).standing().order_by("happened_at", "id").last()
    if not isinstance(last, KilnReading) or last.use != KilnReading.Use.OVER_TOP:
        return
    since = at - last.happened_at
    if timedelta(0) <= since <= telling.OVER_TOP_FOR:
        about = telling.about_over_top(load, last)
        for person in telling.minders(load):
            yield person, about, last.happened_at, since // OVER_TOP_EVERY


def _may_open(load: Load, due_at: datetime, words: str, at: datetime) -> Iterator[Wish]:
    if due_at > at or load.state != Load.State.COOLING:
        return
    title = f"{load.kiln.number} may likely be opened now."
    people = [*([load.watcher] if load.watcher else []), *telling.technicians(load.studio)]
    for person in dict.fromkeys(people):
        yield person, _about(MAY_OPEN, "B", load, title, words), due_at, 0


def _about(cause: str, grade: Grade, load: Load, title: str, body: str) -> About:
    return About(
        cause=cause,
        grade=grade,
        kind="load",
        object_id=load.pk,
        mark=load.number,
        title=title,
        body=body,
        link=f"/loads/{load.pk}",
    )
