"""Instants against the wall clock of a studio: quiet hours, opening hours, hours that really
passed.

Instants are aware datetimes; answers are in UTC. Wall-clock times that come twice a year are taken
the first time, and those that are skipped are counted on from the clock before the change (RFC
5545, section 3.3.5), unless a function says otherwise.
"""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from studio.domain.refusals import Unworkable

ONE_DAY: Final = timedelta(days=1)
LONGEST_SEARCH_DAYS: Final = 400


class TimeHappenedTwice(Unworkable):
    code = "time-happened-twice"
    title = "The clocks went back: that time happened twice."


class NoSuchTime(Unworkable):
    code = "no-such-time"
    title = "The clocks went forward: that time did not happen."


@dataclass(frozen=True, slots=True)
class Span:
    """From one time of day until, and without, another; over midnight when it ends no later.

    A span that ends when it begins holds nothing.
    """

    starts: time
    ends: time

    def holds(self, at: time) -> bool:
        """Return whether a time of day lies in the span."""
        if self.starts <= self.ends:
            return self.starts <= at < self.ends
        return at >= self.starts or at < self.ends


@dataclass(frozen=True, slots=True)
class Opening:
    """When somebody is usually in: a span for each weekday (Monday is 0), without closed days."""

    week: Mapping[int, Span]
    closed: Collection[date] = field(default_factory=frozenset)


def elapsed_h(start: datetime, end: datetime) -> float:
    """Return the hours that passed between two instants, whatever the clocks did between them.

    Raises `ValueError` when one of them has no zone. Python's own difference of two datetimes of
    one zone is that of their wall clocks, an hour wrong over a change.
    """
    return (_utc(end) - _utc(start)) / timedelta(hours=1)


def instant(day: date, at: time, zone: ZoneInfo) -> datetime:
    """Return the instant at which the wall clock shows `at` on `day`."""
    return datetime.combine(day, at.replace(fold=0, tzinfo=None), zone).astimezone(UTC)


def exact_instant(wall: datetime, zone: ZoneInfo) -> datetime:
    """Return the instant of a wall-clock time that somebody typed without an offset.

    Raises
    ------
    ValueError
        When `wall` has a zone already.
    TimeHappenedTwice, NoSuchTime
        When the clocks were changed there: only a time with its offset says which instant is meant.
    """
    if wall.tzinfo is not None:
        raise ValueError("wall must have no zone.")
    first, second = (wall.replace(fold=fold, tzinfo=zone).astimezone(UTC) for fold in (0, 1))
    shown = f"{wall:%H:%M} on {wall.day} {wall:%B %Y}"
    if first < second:
        raise TimeHappenedTwice(
            f"{shown} happened twice in {zone.key}. Add the offset.",
            first=first.isoformat(),
            second=second.isoformat(),
        )
    if first > second:
        raise NoSuchTime(f"{shown} did not happen in {zone.key}: the clocks went forward.")
    return first


def is_quiet(at: datetime, quiet: Span, zone: ZoneInfo) -> bool:
    """Return whether the wall clock stands in the quiet hours."""
    return quiet.holds(_utc(at).astimezone(zone).time())


def next_outside(at: datetime, quiet: Span, zone: ZoneInfo) -> datetime:
    """Return `at` when it is outside the quiet hours, else the instant at which they end."""
    now = _utc(at)
    if not is_quiet(now, quiet, zone):
        return now
    today = now.astimezone(zone).date()
    ends = sorted(
        datetime.combine(today + days * ONE_DAY, quiet.ends.replace(fold=fold), zone).astimezone(
            UTC
        )
        for days in range(3)
        for fold in (0, 1)
    )
    return next(end for end in ends if end > now and not is_quiet(end, quiet, zone))


def is_open(at: datetime, opening: Opening, zone: ZoneInfo) -> bool:
    """Return whether somebody is usually in."""
    return closes_at(at, opening, zone) is not None


def closes_at(at: datetime, opening: Opening, zone: ZoneInfo) -> datetime | None:
    """Return when the studio closes, None when it is not open at `at`."""
    now = _utc(at)
    for opens, closes in _spans(now, opening, zone, days=1):
        if opens <= now < closes:
            return closes
    return None


def next_open(at: datetime, opening: Opening, zone: ZoneInfo) -> datetime | None:
    """Return `at` when somebody is in, else the next opening; None if none in 400 days."""
    now = _utc(at)
    for opens, closes in _spans(now, opening, zone, days=LONGEST_SEARCH_DAYS):
        if now < closes:
            return max(now, opens)
    return None


def open_hours_between(start: datetime, end: datetime, opening: Opening, zone: ZoneInfo) -> float:
    """Return the hours between two instants at which somebody is usually in; 0 if none passed."""
    first, last = _utc(start), _utc(end)
    days = (last - first) // ONE_DAY + 1
    shares = (
        min(closes, last) - max(opens, first)
        for opens, closes in _spans(first, opening, zone, days=days)
        if opens < last and closes > first
    )
    return sum(shares, timedelta()) / timedelta(hours=1)


def _spans(
    at: datetime, opening: Opening, zone: ZoneInfo, *, days: int
) -> Iterator[tuple[datetime, datetime]]:
    """Yield the openings from the day before `at` on, in order."""
    today = at.astimezone(zone).date()
    for offset in range(-1, days + 1):
        day = today + offset * ONE_DAY
        span = opening.week.get(day.weekday())
        if span is None or span.starts == span.ends or day in opening.closed:
            continue
        last_day = day + ONE_DAY if span.ends < span.starts else day
        yield instant(day, span.starts, zone), instant(last_day, span.ends, zone)


def _utc(at: datetime) -> datetime:
    if at.tzinfo is None:
        raise ValueError("An instant needs a zone.")
    return at.astimezone(UTC)
