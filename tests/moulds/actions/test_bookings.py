from datetime import timedelta

import pytest

from moulds.actions import bookings
from moulds.actions.bookings import BookingBackwards, BookingOver, MouldTaken
from tests import factories

NOON = factories.NOW.replace(hour=12)


def book(member, mould_set, hours, length=2.0):
    from_at = NOON + timedelta(hours=hours)
    return bookings.book(
        act=factories.act(member),
        mould_set=mould_set,
        from_at=from_at,
        until_at=from_at + timedelta(hours=length),
    )


class TestBook:
    def test_lets_two_follow_one_another(self, maker, owner, tile_set):
        book(maker[0], tile_set, 0)

        assert book(owner[0], tile_set, 2).member == owner[0]

    @pytest.mark.parametrize("hours", [-1.0, 0.0, 0.5, 1.9])
    def test_refuses_an_overlap_and_says_who_has_it(self, maker, owner, tile_set, hours):
        first = book(maker[0], tile_set, 0)

        with pytest.raises(MouldTaken, match="Maud has M01") as refused:
            book(owner[0], tile_set, hours)

        assert refused.value.facts["booking"] == str(first.pk)
        assert refused.value.facts["until_at"] == "2026-10-31T14:00:00+00:00"

    def test_takes_the_time_of_a_booking_given_up(self, maker, owner, tile_set):
        first = book(maker[0], tile_set, 0)
        bookings.give_up(act=factories.act(maker[0]), booking=first)

        assert book(owner[0], tile_set, 0).member == owner[0]

    def test_refuses_one_that_ends_before_it_begins(self, maker, tile_set):
        with pytest.raises(BookingBackwards):
            book(maker[0], tile_set, 0, length=-1)


class TestGiveUp:
    def test_refuses_to_do_so_twice(self, maker, tile_set):
        first = book(maker[0], tile_set, 0)
        bookings.give_up(act=factories.act(maker[0]), booking=first)

        with pytest.raises(BookingOver):
            bookings.give_up(act=factories.act(maker[0]), booking=first)
