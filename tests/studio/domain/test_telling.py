"""When somebody may be told, and what goes into one message."""

from datetime import UTC, datetime, time, timedelta
from uuid import uuid4
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.domain.hours import Span
from studio.domain.telling import GROUPED, Due, Ear, last_slot, messages

LONDON = ZoneInfo("Europe/London")
NIGHT = Span(time(20, 0), time(7, 30))
EAR = Ear(LONDON, [NIGHT])

START = datetime(2026, 10, 20)  # noqa: DTZ001  (hypothesis adds the zone itself)
moments = st.datetimes(
    min_value=START, max_value=START + timedelta(days=16), timezones=st.just(UTC)
)
times = st.times()


def at(hour, minute=0, day=30):
    return datetime(2026, 10, day, hour, minute, tzinfo=UTC)


def due(grade="C", ready_at=None, **fields):
    return Due(id=uuid4(), grade=grade, ready_at=ready_at or at(9), **fields)


class TestMessages:
    def test_groups_twelve_tiles_into_one_message_at_the_next_grouped_time(self):
        tiles = [due(ready_at=at(9, minute)) for minute in range(12)]

        assert messages(tiles, ear=EAR, at=at(10, 59)) == {}
        assert [len(ids) for ids in messages(tiles, ear=EAR, at=at(11)).values()] == [12]

    def test_keeps_the_key_until_the_next_grouped_time(self):
        tile = due(ready_at=at(9))

        keys = {tuple(messages([tile], ear=EAR, at=at(hour, 5))) for hour in (11, 12, 13)}

        assert len(keys) == 1
        assert tuple(messages([tile], ear=EAR, at=at(14, 5))) not in keys

    def test_makes_what_comes_after_a_grouped_time_wait_for_the_next(self):
        assert messages([due(ready_at=at(11, 1))], ear=EAR, at=at(11, 2)) == {}

    def test_tells_a_hot_kiln_in_the_night(self):
        kiln = due("A", ready_at=at(2))

        assert list(messages([kiln, due("B")], ear=EAR, at=at(2, day=31)).values()) == [[kiln.id]]

    def test_gives_each_alert_a_message_of_its_own(self):
        kilns = [due("A"), due("A")]

        assert len(messages(kilns, ear=EAR, at=at(10))) == 2

    def test_gives_an_alert_told_again_another_key(self):
        first = due("A", turn="0")
        again = Due(id=first.id, grade="A", ready_at=first.ready_at, turn="1")

        assert not messages([first], ear=EAR, at=at(10)).keys() & messages(
            [again], ear=EAR, at=at(10)
        )

    @pytest.mark.parametrize("grade", ["B", "D"])
    def test_tells_other_classes_when_quiet_hours_are_over(self, grade):
        load = due(grade, ready_at=at(21))

        assert messages([load], ear=EAR, at=at(7, 29, day=31)) == {}
        assert len(messages([load], ear=EAR, at=at(7, 30, day=31))) == 1

    def test_groups_class_d_by_the_day(self):
        first = messages([due("D")], ear=EAR, at=at(9))
        later = messages([due("D", ready_at=at(12))], ear=EAR, at=at(15))

        assert list(first) == list(later)

    @given(moments, times, times, st.lists(st.sampled_from("ABCD"), max_size=6))
    def test_never_breaks_anybodys_quiet_hours_but_for_class_a(self, now, begins, ends, grades):
        ear = Ear(LONDON, [NIGHT, Span(begins, ends)])
        dues = [due(grade, ready_at=now - timedelta(days=1)) for grade in grades]

        told = [each for ids in messages(dues, ear=ear, at=now).values() for each in ids]

        if ear.is_quiet(now):
            assert {each.grade for each in dues if each.id in told} <= {"A"}
        assert len(told) == len(set(told))

    @given(moments, st.lists(moments, max_size=8))
    def test_tells_class_c_only_what_was_ready_by_a_grouped_time_of_that_day(self, now, readies):
        dues = [due(ready_at=ready) for ready in readies]

        told = [each for ids in messages(dues, ear=EAR, at=now).values() for each in ids]

        for each in dues:
            if each.id in told:
                slot = last_slot(now, LONDON)
                assert each.ready_at <= slot <= now
                assert slot.astimezone(LONDON).time() in GROUPED


class TestLastSlot:
    def test_follows_the_wall_clock_over_the_change(self):
        # The clocks went back on 25 October 2026 (tz database 2026, Europe/London).
        assert last_slot(at(11, 30, day=24), LONDON) == at(10, 0, day=24)
        assert last_slot(at(11, 30, day=25), LONDON) == at(11, 0, day=25)

    def test_is_none_before_the_first(self):
        assert last_slot(at(7, 44), LONDON) is None
