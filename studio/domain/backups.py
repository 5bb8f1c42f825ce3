"""When the studio is backed up and its backup tried, and which backups are kept.

The times and numbers are common practice and have no source: one a night for a fortnight, one a
month for a year, and one restored each month, since a backup that was never restored is a hope.
"""

import re
from collections.abc import Iterable
from datetime import UTC, datetime, time, timedelta
from typing import Final
from zoneinfo import ZoneInfo

#: On the studio's clock, when nobody presses and few kilns are read.
NIGHTLY_AT: Final = time(2, 30)
NIGHTLY_KEPT: Final = 14
MONTHLY_KEPT: Final = 12

#: A failed one is tried again after this long, not at every sweep.
RETRY_AFTER: Final = timedelta(hours=1)
BACKUP_OLD_AFTER: Final = timedelta(hours=36)
DRILL_OLD_AFTER: Final = timedelta(days=35)

_STAMP: Final = "natch-%Y-%m-%dT%H-%M-%SZ.zip"
_NAME: Final = re.compile(r"natch-\d{4}-\d\d-\d\dT\d\d-\d\d-\d\dZ\.zip")


def name_at(at: datetime) -> str:
    """Return the file name of a backup made at the instant `at`; names sort by time."""
    return at.astimezone(UTC).strftime(_STAMP)


def made_at(name: str) -> datetime | None:
    """Return when the backup of that name was made, or None for the name of anything else."""
    if not _NAME.fullmatch(name):
        return None
    try:
        return datetime.strptime(name, _STAMP).replace(tzinfo=UTC)
    except ValueError:
        return None


def to_drop(names: Iterable[str]) -> list[str]:
    """Return the backups that are kept no longer; names of anything else are never among them.

    Kept are the newest `NIGHTLY_KEPT`, and the newest of each of the newest `MONTHLY_KEPT` months.
    """
    dated = sorted((made, name) for name in names if (made := made_at(name)))
    months = {(made.year, made.month): name for made, name in dated}
    monthly = [months[month] for month in sorted(months)[-MONTHLY_KEPT:]]
    nightly = [name for _, name in dated[-NIGHTLY_KEPT:]]
    return [name for _, name in dated if name not in {*nightly, *monthly}]


def is_backup_due(
    at: datetime, *, zone: ZoneInfo, good_at: datetime | None, failed_at: datetime | None
) -> bool:
    """Return whether a nightly backup is to be made at the instant `at`.

    `good_at` is when the newest good one was made, `failed_at` when one failed since. A night that
    the machine slept through is made good when it wakes.
    """
    if failed_at is not None and at - failed_at < RETRY_AFTER:
        return False
    return good_at is None or good_at < last_night(at, zone)


def last_night(at: datetime, zone: ZoneInfo) -> datetime:
    """Return the last time before `at` at which the studio's clock showed `NIGHTLY_AT`."""
    here = at.astimezone(zone)
    night = datetime.combine(here.date(), NIGHTLY_AT, zone)
    if night > here:
        night = datetime.combine(here.date() - timedelta(days=1), NIGHTLY_AT, zone)
    return night.astimezone(UTC)


def is_drill_due(
    at: datetime, *, zone: ZoneInfo, newest: str, tried: str, tried_at: datetime | None, good: bool
) -> bool:
    """Return whether the newest backup is to be restored for trial at the instant `at`.

    Once in a calendar month of the studio; where the last trial (`tried`, at `tried_at`) was not
    `good`, again as soon as there is a newer backup.
    """
    if tried_at is None:
        return True
    if not good:
        return newest != tried
    then, here = tried_at.astimezone(zone), at.astimezone(zone)
    return (then.year, then.month) < (here.year, here.month)
