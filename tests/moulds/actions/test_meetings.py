from datetime import timedelta

import pytest
from django.db import transaction

from moulds.actions import bookings, pressings, sets
from studio.actions import journal
from studio.models import Reminder
from tests import factories
from tests.moulds import yard

BRAM_PRESSED = factories.NOW.replace(hour=13, minute=10)  # NOW is in GMT


class Afternoon:
    """One mould, two makers, one afternoon."""

    @pytest.fixture
    def booked(self, maker, studio, join, tile_set):
        """Jun has M01 from 14:00 to 17:00; the set lets go of its first press in three hours."""
        sets.edit(act=factories.act(maker[0]), mould_set=tile_set, changes={"release_h": 3.0})
        jun, _ = join(studio, ["maker"], "Jun")
        return bookings.book(
            act=factories.act(jun),
            mould_set=tile_set,
            from_at=factories.NOW.replace(hour=14),
            until_at=factories.NOW.replace(hour=17),
        )

    def third_press(self, member, casting, **fields):
        yard.weighed(member, casting, 2310, at=BRAM_PRESSED - timedelta(hours=9), is_dry=True)
        yard.pressed(member, casting, at=BRAM_PRESSED - timedelta(hours=7), count=2)
        return yard.pressed(member, casting, at=BRAM_PRESSED, **fields)


class TestMeeting(Afternoon):
    def test_takes_the_press_and_tells_the_presser(self, booked, maker, casting):
        recorded = self.third_press(maker[0], casting)

        said = {caution.code: caution.detail for caution in recorded.cautions}
        assert said["mould-booked"] == "Jun has it from 14:00."

    def test_moves_nobodys_plan(self, booked, maker, casting):
        before = (booked.from_at, booked.until_at)

        self.third_press(maker[0], casting)

        booked.refresh_from_db()
        assert (booked.from_at, booked.until_at, booked.given_up_at) == (*before, None)

    def test_says_nothing_about_ones_own_booking(self, booked, casting):
        recorded = self.third_press(booked.member, casting)

        assert "mould-booked" not in [caution.code for caution in recorded.cautions]

    def test_says_nothing_when_the_clay_is_out_in_time(self, booked, maker, casting):
        recorded = self.third_press(
            maker[0], casting, in_use_until=BRAM_PRESSED + timedelta(minutes=30)
        )

        assert "mould-booked" not in [caution.code for caution in recorded.cautions]

    def test_says_nothing_of_a_booking_given_up(self, booked, maker, casting):
        bookings.give_up(act=factories.act(booked.member), booking=booked)

        recorded = self.third_press(maker[0], casting)

        assert "mould-booked" not in [caution.code for caution in recorded.cautions]


class TestRemind(Afternoon):
    """What both people are told."""

    def told(self, member):
        reminders = Reminder.objects.filter(person=member, cause="mould_booked")
        return [reminder.body for reminder in reminders.exclude(state="withdrawn")]

    def test_tells_both_once(self, booked, maker, casting):
        self.third_press(maker[0], casting)
        yard.pressed(maker[0], casting, at=BRAM_PRESSED + timedelta(minutes=5))

        assert self.told(maker[0]) == ["Jun has it from 14:00."]
        assert len(self.told(booked.member)) == 1
        assert Reminder.objects.filter(cause="mould_booked").count() == 2

    def test_tells_until_when_and_which_other_is_dry(self, booked, maker, casting):
        # Three hours for the first press, a third more for the third: the published ratio 30 to 40
        # minutes of https://hot-clay.com/terracotta-casting-slip.html
        other = factories.mould_set(casting.mould_set.makes, "M02")
        spare = yard.poured(maker[0], other, generation=2)
        yard.weighed(maker[0], spare, 2280, at=BRAM_PRESSED - timedelta(days=1), is_dry=True)

        self.third_press(maker[0], casting)

        assert self.told(booked.member) == [
            "Maud pressed M01 at 13:10. In use till about 17:10, then wet: M02 g2 is dry."
        ]

    def test_offers_no_other_that_has_clay_in_it(self, booked, maker, casting):
        other = factories.mould_set(casting.mould_set.makes, "M02")
        spare = yard.poured(maker[0], other, generation=2)
        yard.weighed(maker[0], spare, 2280, at=BRAM_PRESSED - timedelta(days=1), is_dry=True)

        self.third_press(maker[0], casting, busy={spare.pk})

        assert self.told(booked.member) == [
            "Maud pressed M01 at 13:10. In use till about 17:10, then wet."
        ]

    def test_raises_nothing_for_a_press_heard_when_the_booking_is_over(
        self, booked, maker, casting
    ):
        late = factories.NOW.replace(hour=18)
        act = factories.act(maker[0], BRAM_PRESSED, written_at=late)
        with transaction.atomic():
            entry = journal.write(act=act, verb="pressed", subjects=[("casting", casting.pk)])
            recorded = pressings.record(
                act=act, entry=entry, casting=casting, mould_parts=list(casting.parts.all())
            )

        assert "mould-booked" in [caution.code for caution in recorded.cautions]
        assert self.told(booked.member) == []

    def test_is_withdrawn_when_the_press_is_taken_back(self, booked, maker, casting):
        recorded = self.third_press(maker[0], casting)

        yard.taken_back(maker[0], recorded.pressing.pk)

        assert self.told(booked.member) == []
