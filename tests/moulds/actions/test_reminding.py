from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from moulds.actions import reminding, sets
from studio.models import Reminder
from tests import factories
from tests.moulds import yard

LONDON = ZoneInfo("Europe/London")


def told(state="due"):
    rows = Reminder.objects.filter(state=state)
    return sorted((row.cause, row.object_mark, row.person.first_name) for row in rows)


class TestNextFriday:
    @pytest.mark.parametrize(
        ("at", "told_at"),
        [
            (datetime(2026, 10, 31, 9, tzinfo=UTC), datetime(2026, 11, 6, 15, tzinfo=UTC)),
            (datetime(2026, 11, 6, 14, tzinfo=UTC), datetime(2026, 11, 6, 15, tzinfo=UTC)),
            (datetime(2026, 11, 6, 20, tzinfo=UTC), datetime(2026, 11, 6, 15, tzinfo=UTC)),
            (datetime(2026, 11, 7, 4, tzinfo=UTC), datetime(2026, 11, 13, 15, tzinfo=UTC)),
            (datetime(2026, 7, 1, 4, tzinfo=UTC), datetime(2026, 7, 3, 14, tzinfo=UTC)),
        ],
    )
    def test_is_three_in_the_afternoon_of_the_studios_clock(self, at, told_at):
        assert reminding.next_friday(at, LONDON) == told_at


class TestTellOwners:
    @pytest.fixture
    def wet(self, maker, tile_set, casting):
        """A set of Maud's that was left wet five days ago."""
        member = maker[0]
        sets.edit(act=factories.act(member), mould_set=tile_set, changes={"owner": member})
        yard.weighed(member, casting, 2310, at=factories.NOW - timedelta(days=9), is_dry=True)
        yard.weighed(member, casting, 2600, at=factories.NOW - timedelta(days=5))
        return casting

    def test_tells_the_owner_of_a_wet_mould_once(self, wet, now):
        reminding.tell_owners(at=now)
        reminding.tell_owners(at=now + timedelta(hours=1))

        assert told() == [("mould_resting_wet", "M01", "Maud")]
        assert Reminder.objects.get().due_at == datetime(2026, 11, 6, 15, tzinfo=UTC)

    def test_takes_it_back_when_the_mould_is_dry(self, wet, maker, now):
        reminding.tell_owners(at=now)
        yard.weighed(maker[0], wet, 2320)

        reminding.tell_owners(at=now)

        assert told() == []
        assert told("withdrawn") == [("mould_resting_wet", "M01", "Maud")]

    def test_lets_a_mould_rest_three_days_first(self, wet, maker, now):
        yard.weighed(maker[0], wet, 2600, at=now - timedelta(days=2))

        reminding.tell_owners(at=now)

        assert told() == []

    @pytest.mark.parametrize(
        ("count", "cause"), [(19, None), (20, "mould_detail_due"), (30, "mould_at_limit")]
    )
    def test_tells_the_studios_owners_of_a_worn_mould_of_nobody(
        self, studio, owner, tile_set, casting, now, count, cause
    ):
        habits = {"inspect_at_presses": 20, "retire_at_presses": 30, "rest_after_presses": 100}
        sets.edit(act=factories.act(owner[0]), mould_set=tile_set, changes=habits)
        yard.pressed(owner[0], casting, count=count)

        reminding.tell_owners(at=now)

        people = sorted({name for _, _, name in told()})
        assert {what for what, _, _ in told()} == ({cause} if cause else set())
        assert people == (["Founder", "Orla"] if cause else [])
