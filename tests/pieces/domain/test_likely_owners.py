from datetime import UTC, datetime, timedelta
from uuid import UUID

from pieces.domain.likely_owners import Found, Recorded, candidates

NOW = datetime(2026, 10, 12, 10, 0, tzinfo=UTC)
CREAM, UMBER = UUID(int=1), UUID(int=2)
BEAKER = (80.0, 80.0, 100.0)


def recorded(number, maker=None, **fields):
    given = {
        "here": 2,
        "left_at": NOW - timedelta(days=9),
        "is_missing": False,
        "state": "bone_dry",
        **fields,
    }
    return Recorded(UUID(int=100 + number), UUID(int=maker or 200 + number), **given)


def order(found, *records):
    return [row.piece.int - 100 for row in candidates(found, records)]


class TestCandidates:
    def test_leave_out_what_is_of_another_size(self):
        # Dry clay is some 6 % smaller than pressed; a tray laid on its side is the same tray.
        found = Found(NOW, sizes_mm=(75.0, 94.0, 75.0))

        assert order(found, recorded(1, sizes_mm=BEAKER), recorded(2, sizes_mm=(200, 80, 40))) == [
            1
        ]

    def test_put_the_same_clay_before_another(self):
        found = Found(NOW, body=CREAM)

        assert order(found, recorded(1, body=UMBER), recorded(2, body=CREAM)) == [2, 1]

    def test_ask_each_person_once_and_three_at_most(self):
        rows = [recorded(number, maker=900) for number in (1, 2)]
        others = [recorded(number) for number in (3, 4, 5)]

        asked = candidates(Found(NOW), [*rows, *others])

        assert len(asked) == 3
        assert len({row.maker for row in asked}) == 3

    def test_ask_who_misses_something_even_from_elsewhere(self):
        assert order(Found(NOW), recorded(1, here=0, is_missing=True, left_at=None)) == [1]

    def test_ask_nobody_whose_ware_only_stood_near_by_long_ago(self):
        row = recorded(1, here=1, left_at=NOW - timedelta(days=200), state="drying")

        assert order(Found(NOW), row) == []
