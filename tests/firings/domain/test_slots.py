from datetime import date

from firings.domain.slots import free_day, taken

MONDAY = date(2026, 11, 2)


class TestFreeDay:
    def test_passes_over_firings_with_their_cooling_and_closed_days(self):
        firing = taken(MONDAY, date(2026, 11, 3))

        day = free_day(MONDAY, [firing], closed_weekdays={3}, closed_dates={date(2026, 11, 6)})

        # Until Wednesday it cools; Thursday nobody is in, and that Friday is closed.
        assert day == date(2026, 11, 7)

    def test_is_the_first_day_where_nothing_stands_against_it(self):
        assert free_day(MONDAY, []) == MONDAY

    def test_is_none_where_four_weeks_are_taken(self):
        assert free_day(MONDAY, [(MONDAY, date(2027, 1, 1))]) is None
