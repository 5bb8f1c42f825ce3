from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from studio.domain import backups

LONDON = ZoneInfo("Europe/London")
NOON = datetime(2026, 10, 31, 12, 0, tzinfo=UTC)
NIGHT = datetime(2026, 10, 31, 2, 30, tzinfo=UTC)


class TestName:
    def test_tells_when_it_was_made_and_sorts_by_it(self):
        names = [backups.name_at(NOON + timedelta(days=30 * month)) for month in range(14)]

        assert backups.made_at(names[0]) == NOON
        assert names == sorted(names)

    @pytest.mark.parametrize("name", ["natch.zip", "natch-2026-13-31T12-00-00Z.zip", "photos.zip"])
    def test_of_anything_else_tells_nothing(self, name):
        assert backups.made_at(name) is None


class TestToDrop:
    def test_leaves_a_fortnight_of_nights_and_the_last_of_each_month_of_a_year(self):
        nights = [NIGHT - timedelta(days=n) for n in range(800)]
        dropped = set(backups.to_drop([*map(backups.name_at, nights), "holiday-photos.zip"]))

        kept = [night for night in nights if backups.name_at(night) not in dropped]
        assert kept[:14] == nights[:14]
        assert {(night.year, night.month) for night in kept} == {
            (2026 - (m > 10), m) for m in range(1, 13)
        }
        # October's fourteen, the thirtieth or so of eleven months before it.
        assert len(kept) == 14 + 11
        assert "holiday-photos.zip" not in dropped


class TestIsBackupDue:
    @pytest.mark.parametrize(
        ("good_at", "failed_at", "is_due"),
        [
            (None, None, True),
            (NIGHT - timedelta(minutes=1), None, True),
            (NIGHT, None, False),
            (NIGHT - timedelta(days=9), NOON - timedelta(minutes=59), False),
            (NIGHT - timedelta(days=9), NOON - timedelta(minutes=60), True),
        ],
    )
    def test_asks_for_one_a_night_and_not_at_every_sweep(self, good_at, failed_at, is_due):
        assert is_due == backups.is_backup_due(
            NOON, zone=LONDON, good_at=good_at, failed_at=failed_at
        )

    def test_goes_by_the_studios_clock_in_summer(self):
        before = datetime(2026, 7, 1, 1, 29, tzinfo=UTC)

        nights = [backups.last_night(before + timedelta(minutes=m), LONDON) for m in (0, 1)]

        assert [night.day for night in nights] == [30, 1]


class TestIsDrillDue:
    @pytest.mark.parametrize(
        ("tried", "tried_at", "good", "is_due"),
        [
            ("", None, False, True),
            ("older", NOON - timedelta(days=30), True, False),
            ("older", NOON - timedelta(days=31), True, True),
            ("newest", NOON - timedelta(days=1), False, False),
            ("older", NOON - timedelta(days=1), False, True),
        ],
    )
    def test_asks_once_a_month_and_again_after_a_bad_one(self, tried, tried_at, good, is_due):
        assert is_due == backups.is_drill_due(
            NOON, zone=LONDON, newest="newest", tried=tried, tried_at=tried_at, good=good
        )
