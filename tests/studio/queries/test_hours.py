from datetime import UTC, datetime, time
from zoneinfo import ZoneInfo

import pytest

from studio.models import ClosedDay, OpeningHours, StudioSettings
from studio.queries.hours import closing_at

LONDON = ZoneInfo("Europe/London")


@pytest.fixture
def opening(studio):
    """Open on Saturdays from eight to one, and on no other day."""
    return OpeningHours.objects.create(
        studio=studio, weekday=5, opens=time(8, 0), closes=time(13, 0)
    )


def local(*parts: int) -> datetime:
    return datetime(*parts, tzinfo=LONDON).astimezone(UTC)


class TestClosingAt:
    def test_is_the_end_of_the_day_s_opening_hours(self, studio, opening) -> None:
        assert closing_at(studio, local(2026, 10, 31, 9)) == local(2026, 10, 31, 13)

    def test_goes_by_the_clock_on_the_wall(self, studio, opening) -> None:
        assert closing_at(studio, local(2026, 7, 4, 9)) == datetime(2026, 7, 4, 12, tzinfo=UTC)

    def test_is_when_the_quiet_hours_begin_where_no_hours_are_set(self, studio, opening) -> None:
        StudioSettings.objects.filter(studio=studio).update(quiet_from=time(19, 15))

        assert closing_at(studio, local(2026, 11, 1, 9)) == local(2026, 11, 1, 19, 15)

    def test_is_the_end_of_the_day_for_somebody_still_in(self, studio, opening) -> None:
        found = closing_at(studio, local(2026, 10, 31, 15))

        assert found == local(2026, 10, 31, 23, 59, 59)

    def test_is_the_local_day_s_even_just_after_midnight(self, studio, opening) -> None:
        # 00:30 on a Saturday in July is still Friday in UTC.
        at = datetime(2026, 7, 3, 23, 30, tzinfo=UTC)

        assert closing_at(studio, at) == local(2026, 7, 4, 13)

    def test_is_when_the_quiet_hours_begin_on_a_closed_day(self, studio, opening) -> None:
        ClosedDay.objects.create(studio=studio, date=datetime(2026, 10, 31, tzinfo=UTC).date())

        assert closing_at(studio, local(2026, 10, 31, 9)) == local(2026, 10, 31, 20)
