from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from moulds.domain.words import clock, listed, ordinal

LONDON = ZoneInfo("Europe/London")


class TestClock:
    @pytest.mark.parametrize(
        ("moment", "words"),
        [
            (datetime(2026, 10, 31, 14, 0, tzinfo=UTC), "14:00"),
            (datetime(2026, 11, 1, 14, 0, tzinfo=UTC), "14:00 on Sunday"),
            (datetime(2026, 11, 20, 14, 0, tzinfo=UTC), "14:00 on 20 November"),
        ],
    )
    def test_names_the_day_only_where_it_is_another(self, moment, words):
        assert clock(moment, zone=LONDON, beside=datetime(2026, 10, 31, 9, tzinfo=UTC)) == words

    def test_reads_the_clock_of_the_studio(self):
        summer = datetime(2026, 7, 1, 12, 10, tzinfo=UTC)

        assert clock(summer, zone=LONDON, beside=summer) == "13:10"


class TestOrdinal:
    def test_speaks(self):
        assert [ordinal(n) for n in (1, 3, 10, 11, 21, 112)] == [
            "first",
            "third",
            "tenth",
            "11th",
            "21st",
            "112th",
        ]


class TestListed:
    def test_joins_with_and(self):
        assert [listed(words) for words in ([], ["a"], ["a", "b"], ["a", "b", "c"])] == [
            "",
            "a",
            "a and b",
            "a, b and c",
        ]
