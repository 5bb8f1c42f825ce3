"""Pages over the places and the journal of a studio."""

from datetime import timedelta

import pytest

from studio.api.pages import keyset
from studio.models import ClimateReading, JournalEntry, Place
from tests import factories

PAGE = "/api/v1/studios/yard/places/"


@pytest.fixture
def ask(rf):
    """Return a function that makes the request a list view gets."""
    from rest_framework.request import Request

    return lambda query="": Request(rf.get(f"{PAGE}?{query}"))


def walk(rows, ask, **how):
    """Return every page of the list, following `next`."""
    pages, query = [], ""
    while True:
        page = keyset(rows, ask(query), **how)
        pages.append(page.rows)
        if page.next is None:
            return pages
        query = page.next.partition("?")[2]


class TestKeyset:
    def test_gives_every_row_once_in_order(self, studio, ask):
        for number in range(7):
            factories.place(studio, f"Shelf {number}", order=number // 2)

        pages = walk(Place.objects.all(), ask, fields=("order", "id"), size=3)

        rows = [row for page in pages for row in page]
        assert [len(page) for page in pages] == [3, 3, 1]
        assert rows == list(Place.objects.order_by("order", "id"))

    def test_falls_where_told_and_keeps_microseconds(self, studio, maker, ask):
        room = factories.place(studio)
        entry = factories.entry(maker[0])
        for number in range(5):
            ClimateReading.objects.create(
                studio=studio,
                entry=entry,
                place=room,
                taken_at=factories.NOW + timedelta(microseconds=number),
            )

        pages = walk(ClimateReading.objects.all(), ask, fields=("-taken_at", "id"), size=2)

        rows = [row.taken_at.microsecond for page in pages for row in page]
        assert rows == [4, 3, 2, 1, 0]

    def test_follows_rows_given_as_dicts(self, studio, maker, ask):
        for _ in range(4):
            factories.entry(maker[0])

        rows = JournalEntry.objects.values("seq", "member__first_name")
        pages = walk(rows, ask, fields=("member__first_name", "-seq"), size=2)

        assert [row["seq"] for page in pages for row in page] == [
            1,
            5,
            4,
            3,
            2,
        ]  # Founder before Maud

    def test_is_not_moved_by_a_row_added_meanwhile(self, studio, ask):
        for name in "bdf":
            factories.place(studio, name)
        first = keyset(Place.objects.all(), ask(), fields=("name", "id"), size=2)

        factories.place(studio, "a")
        query = first.next.partition("?")[2]
        second = keyset(Place.objects.all(), ask(query), fields=("name", "id"), size=2)

        assert [row.name for row in second.rows] == ["f"]

    def test_keeps_the_filters_of_the_request(self, studio, ask):
        factories.place(studio, "a")
        factories.place(studio, "b")

        page = keyset(Place.objects.all(), ask("kind=room"), fields=("name", "id"), size=1)

        assert page.next.startswith(f"{PAGE}?kind=room&cursor=")

    @pytest.mark.parametrize("cursor", ["%%%", "bm9uZQ", "WzFd", "W251bGwsbnVsbF0", "é"])
    def test_refuses_a_cursor_that_is_none(self, owner, cursor):
        answer = owner[1].get(PAGE, {"cursor": cursor})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/cursor"
