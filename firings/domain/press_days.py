"""The last day on which to press for a promised day, from how long each stage takes.

Durations of a stage go by the three-point estimate, mean (a + 4m + b)/6 and deviation (b - a)/6;
stages are taken to be independent and their sum normal [1]_. First form: days are calendar days,
and waiting for a load is a stage like any other.

.. [1] Malcolm, Roseboom, Clark and Fazar, Application of a technique for research and development
   program evaluation, Operations Research 7 (1959) 646-669; from memory.
"""

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from studio.domain.refusals import Unworkable

QUANTILES: Final = {0.50: 0.0, 0.80: 0.8416, 0.90: 1.2816}
"""Of the standard normal distribution, to four decimals; any table of it."""

LONGEST_SEARCH_DAYS: Final = 400


class NoOpenDay(Unworkable):
    code = "no-open-day"
    title = "The studio is closed on every day before."


@dataclass(frozen=True, slots=True)
class Duration:
    """How long a stage takes at least, usually and at most. [days]"""

    name: str
    least: float
    usual: float
    most: float


@dataclass(frozen=True, slots=True)
class LatestDays:
    """The last open day to press for a chance of 50, 80 and 90 % to be in time, and the sums."""

    at_50: date
    at_80: date
    at_90: date
    mean_days: float
    deviation_days: float


def latest_press_day(
    due_date: date,
    stages: Sequence[Duration],
    *,
    closed_weekdays: Collection[int] = (),
    closed_dates: Collection[date] = (),
) -> LatestDays:
    """Return the last days on which pressing is still in time.

    Parameters
    ----------
    due_date
        Day of the promise.
    stages
        All stages from the press to the finished piece.
    closed_weekdays
        Weekdays on which nobody presses (Monday is 0).
    closed_dates
        Other days on which nobody presses.

    Raises
    ------
    NoOpenDay
        When no day in the 400 before is open.
    """
    for stage in stages:
        if not 0.0 <= stage.least <= stage.usual <= stage.most < math.inf:
            raise ValueError(f"{stage.name}: least, usual and most go up from 0.")
    mean = math.fsum((s.least + 4.0 * s.usual + s.most) / 6.0 for s in stages)
    deviation = math.sqrt(math.fsum(((s.most - s.least) / 6.0) ** 2 for s in stages))

    def latest(share: float) -> date:
        needed = math.ceil(round(mean + QUANTILES[share] * deviation, 9))
        return _open_day(due_date - timedelta(days=needed), closed_weekdays, closed_dates)

    return LatestDays(latest(0.50), latest(0.80), latest(0.90), mean, deviation)


def _open_day(day: date, weekdays: Collection[int], dates: Collection[date]) -> date:
    for back in range(LONGEST_SEARCH_DAYS):
        here = day - timedelta(days=back)
        if here.weekday() not in weekdays and here not in dates:
            return here
    raise NoOpenDay("No open day was found to press on.")
