"""The next day on which a kiln is free, for ware whose load was called off."""

from collections.abc import Iterable
from datetime import date, timedelta
from typing import Final

LOOKED_AHEAD_DAYS: Final = 28
ONE_DAY: Final = timedelta(days=1)
COOLS_FOR: Final = ONE_DAY
"""A kiln is taken for a day after its firing ends: common practice, no source."""

Taken = tuple[date, date]


def taken(starts: date, ends: date) -> Taken:
    """Return the days that a firing keeps a kiln, its cooling too: the first and the last."""
    return starts, max(starts, ends) + COOLS_FOR


def free_day(
    first: date,
    spans: Iterable[Taken],
    *,
    closed_weekdays: Iterable[int] = (),
    closed_dates: Iterable[date] = (),
) -> date | None:
    """Return the first day from `first` on which nothing is in the kiln and somebody is in.

    None where there is none within four weeks.
    """
    spans, weekdays, dates = list(spans), set(closed_weekdays), set(closed_dates)
    for ahead in range(LOOKED_AHEAD_DAYS):
        day = first + ahead * ONE_DAY
        is_closed = day.weekday() in weekdays or day in dates
        if not is_closed and not any(start <= day <= end for start, end in spans):
            return day
    return None
