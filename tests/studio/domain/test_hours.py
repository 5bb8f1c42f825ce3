"""Wall clocks and real time.

Clock changes of Europe/London in 2026: 29 March 01:00 UTC forward, 25 October 01:00 UTC back (IANA
time zone database, through zoneinfo).
"""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain.hours import (
    NoSuchTime,
    Opening,
    Span,
    TimeHappenedTwice,
    closes_at,
    elapsed_h,
    exact_instant,
    instant,
    is_open,
    is_quiet,
    next_open,
    next_outside,
    open_hours_between,
)

LONDON = ZoneInfo("Europe/London")
NIGHT = Span(time(20), time(7, 30))
WEEKDAYS = Opening(week={day: Span(time(8), time(18)) for day in range(5)})
EMPTY = Span(time(8), time(8))

instants = st.integers(0, 365 * 24 * 60).map(
    lambda minutes: datetime(2026, 1, 1, tzinfo=UTC) + timedelta(minutes=minutes)
)
times = st.times().map(lambda t: t.replace(second=0, microsecond=0))


def at(text):
    return datetime.fromisoformat(text)


class TestElapsedH:
    def test_of_a_firing_over_the_night_the_clocks_went_back(self):
        # lit 19:00 BST, off 05:00 GMT: the clocks show ten hours, eleven passed
        lit = datetime(2026, 10, 24, 19, 0, tzinfo=LONDON)
        off = datetime(2026, 10, 25, 5, 0, tzinfo=LONDON)

        assert elapsed_h(lit, off) == 11.0
        assert off - lit == timedelta(hours=10)

    def test_between_the_two_half_past_ones(self):
        first = datetime(2026, 10, 25, 1, 30, tzinfo=LONDON)

        assert elapsed_h(first, first.replace(fold=1)) == 1.0

    def test_of_the_night_the_clocks_went_forward(self):
        dusk = datetime(2026, 3, 28, 20, 0, tzinfo=LONDON)
        dawn = datetime(2026, 3, 29, 8, 0, tzinfo=LONDON)

        assert elapsed_h(dusk, dawn) == 11.0

    def test_takes_an_instant_without_a_zone_for_a_bug(self):
        with pytest.raises(ValueError, match="zone"):
            elapsed_h(datetime(2026, 10, 25, 1, 30), at("2026-10-25T05:00Z"))  # noqa: DTZ001


class TestExactInstant:
    def test_reads_the_wall_clock(self):
        wall = datetime(2026, 7, 1, 8, 0)  # noqa: DTZ001

        assert exact_instant(wall, LONDON) == at("2026-07-01T07:00Z")

    def test_refuses_a_time_that_happened_twice_and_names_both(self):
        with pytest.raises(TimeHappenedTwice) as refused:
            exact_instant(datetime(2026, 10, 25, 1, 30), LONDON)  # noqa: DTZ001

        assert refused.value.facts == {
            "first": "2026-10-25T00:30:00+00:00",
            "second": "2026-10-25T01:30:00+00:00",
        }

    def test_refuses_a_time_that_did_not_happen(self):
        with pytest.raises(NoSuchTime):
            exact_instant(datetime(2026, 3, 29, 1, 30), LONDON)  # noqa: DTZ001

    def test_takes_a_time_with_a_zone_for_a_bug(self):
        with pytest.raises(ValueError, match="zone"):
            exact_instant(at("2026-07-01T08:00Z"), LONDON)


class TestInstant:
    def test_takes_the_first_of_two(self):
        assert instant(date(2026, 10, 25), time(1, 30), LONDON) == at("2026-10-25T00:30Z")

    def test_counts_on_from_before_the_change(self):
        # RFC 5545, section 3.3.5
        assert instant(date(2026, 3, 29), time(1, 30), LONDON) == at("2026-03-29T01:30Z")


class TestQuietHours:
    @pytest.mark.parametrize(
        ("moment", "quiet"),
        [
            ("2026-10-31T07:29Z", True),
            ("2026-10-31T07:30Z", False),
            ("2026-10-31T19:59Z", False),
            ("2026-10-31T20:00Z", True),
            ("2026-10-31T23:59Z", True),
            ("2026-07-01T06:30Z", False),
            ("2026-07-01T19:00Z", True),
        ],
    )
    def test_follow_the_wall_clock(self, moment, quiet):
        assert is_quiet(at(moment), NIGHT, LONDON) is quiet

    @pytest.mark.parametrize(
        ("moment", "outside"),
        [
            ("2026-10-31T09:00Z", "2026-10-31T09:00Z"),
            ("2026-10-31T21:00Z", "2026-11-01T07:30Z"),
            ("2026-10-31T03:00Z", "2026-10-31T07:30Z"),
            ("2026-10-24T20:00Z", "2026-10-25T07:30Z"),
            ("2026-03-28T21:00Z", "2026-03-29T06:30Z"),
        ],
    )
    def test_end_by_the_wall_clock(self, moment, outside):
        assert next_outside(at(moment), NIGHT, LONDON) == at(outside)

    def test_end_at_the_second_half_past_one_when_the_first_is_over(self):
        quiet = Span(time(1), time(1, 30))

        assert next_outside(at("2026-10-25T01:10Z"), quiet, LONDON) == at("2026-10-25T01:30Z")

    def test_may_be_none(self):
        assert not is_quiet(at("2026-10-31T08:00Z"), EMPTY, LONDON)

    @given(instants, times, times)
    def test_next_outside_is_outside_and_the_quiet_lasts_until_then(self, moment, starts, ends):
        quiet = Span(starts, ends)

        outside = next_outside(moment, quiet, LONDON)

        assert moment <= outside < moment + timedelta(hours=26)
        assert not is_quiet(outside, quiet, LONDON)
        if outside > moment:
            assert is_quiet(moment, quiet, LONDON)


class TestOpening:
    def test_on_a_saturday_is_next_on_monday(self):
        assert next_open(at("2026-10-31T21:35Z"), WEEKDAYS, LONDON) == at("2026-11-02T08:00Z")
        assert not is_open(at("2026-10-31T09:00Z"), WEEKDAYS, LONDON)

    def test_is_now_when_somebody_is_in(self):
        now = at("2026-11-02T12:00Z")

        assert next_open(now, WEEKDAYS, LONDON) == now
        assert closes_at(now, WEEKDAYS, LONDON) == at("2026-11-02T18:00Z")

    def test_ends_when_it_ends(self):
        assert not is_open(at("2026-11-02T18:00Z"), WEEKDAYS, LONDON)

    def test_passes_over_closed_days(self):
        closed = Opening(week=WEEKDAYS.week, closed={date(2026, 11, 2)})

        assert next_open(at("2026-10-31T21:35Z"), closed, LONDON) == at("2026-11-03T08:00Z")

    def test_may_last_past_midnight(self):
        friday = Opening(week={4: Span(time(18), time(1))})

        assert is_open(at("2026-10-31T00:30Z"), friday, LONDON)
        assert not is_open(at("2026-10-31T01:00Z"), friday, LONDON)
        assert not is_open(at("2026-10-30T00:30Z"), friday, LONDON)

    def test_never_comes_in_a_studio_without_hours(self):
        assert next_open(at("2026-10-31T09:00Z"), Opening(week={}), LONDON) is None
        assert next_open(at("2026-10-31T09:00Z"), Opening(week={0: EMPTY}), LONDON) is None

    def test_counts_the_open_hours_between(self):
        # Friday 16:00-18:00 and Monday 08:00-10:00
        friday, monday = at("2026-10-30T16:00Z"), at("2026-11-02T10:00Z")

        assert open_hours_between(friday, monday, WEEKDAYS, LONDON) == 4.0
        assert open_hours_between(monday, friday, WEEKDAYS, LONDON) == 0.0

    @given(instants, st.timedeltas(timedelta(), timedelta(days=40)), st.floats(0, 1))
    def test_open_hours_add_up(self, start, length, share):
        end, middle = start + length, start + length * share

        parts = [
            open_hours_between(start, middle, WEEKDAYS, LONDON),
            open_hours_between(middle, end, WEEKDAYS, LONDON),
        ]

        whole = open_hours_between(start, end, WEEKDAYS, LONDON)
        assert sum(parts) == pytest.approx(whole, abs=1e-6)
        assert whole <= elapsed_h(start, end) + 1e-6
