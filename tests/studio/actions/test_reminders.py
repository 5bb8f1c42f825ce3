"""Reminders: set once, withdrawn, answered."""

from datetime import date, timedelta
from uuid import uuid4

import pytest

from studio.actions import reminders
from studio.models import Away, JournalEntry, Reminder
from studio.queries.people import clockwork
from tests import factories

NOW = factories.NOW
HOUR = timedelta(hours=1)
PIECE = uuid4()


def about(grade="C", object_id=PIECE, cause="demould", title="T26, tile. Bench 1."):
    return reminders.About(
        cause=cause, grade=grade, kind="piece", object_id=object_id, mark="T26", title=title
    )


@pytest.fixture
def set_for(studio, maker):
    def given(thing=None, due_at=NOW, at=NOW, person=None, **more):
        return reminders.set_for(
            studio=studio,
            person=person or maker[0],
            about=thing or about(),
            due_at=due_at,
            at=at,
            **more,
        )

    return given


class TestSetFor:
    def test_is_harmless_twice(self, set_for):
        first, second = set_for(), set_for()

        assert first.pk == second.pk
        assert Reminder.objects.count() == 1

    def test_takes_on_newer_words_while_untold(self, set_for):
        set_for()
        later = set_for(about(title="T26, tile. Rack A."), due_at=NOW + HOUR)

        assert (later.title, later.due_at) == ("T26, tile. Rack A.", NOW + HOUR)
        Reminder.objects.update(state="sent")
        assert set_for(about(title="Other.")).title == "T26, tile. Rack A."

    def test_is_another_for_another_day_person_thing_cause_or_round(self, set_for, helper):
        set_for()
        set_for(due_at=NOW + 24 * HOUR)
        set_for(person=helper[0])
        set_for(about(object_id=uuid4()))
        set_for(about(cause="join"))
        set_for(round=1)

        assert Reminder.objects.count() == 6

    def test_withdraws_what_was_foreseen_for_another_day(self, set_for):
        first = set_for(due_at=NOW + 24 * HOUR)
        set_for(due_at=NOW + 48 * HOUR)

        first.refresh_from_db()
        assert first.state == "withdrawn"

    def test_says_nothing_of_what_was_past_when_it_was_heard(self, set_for):
        assert set_for(due_at=NOW - 72 * HOUR, heard_at=NOW) is None
        assert set_for(due_at=NOW + HOUR, heard_at=NOW) is not None

    def test_goes_to_whoever_stands_in(self, set_for, maker, helper):
        day = date(2026, 10, 31)
        Away.objects.create(
            studio=maker[0].studio,
            member=maker[0],
            from_date=day,
            until_date=day,
            buddy=helper[0],
        )

        assert set_for().person == helper[0]

    def test_stays_with_whoever_is_here_after_all(self, set_for, maker, helper):
        day = date(2026, 10, 31)
        Away.objects.create(
            studio=maker[0].studio,
            member=maker[0],
            from_date=day,
            until_date=day,
            buddy=helper[0],
            called_off_at=NOW - HOUR,
        )

        assert set_for().person == maker[0]

    def test_tells_neither_the_clockwork_nor_leavers(self, studio, set_for, maker):
        assert set_for(person=clockwork(studio)[0]) is None
        maker[0].left_at = NOW
        assert set_for() is None

    def test_counts_the_day_on_the_studios_clock(self, set_for):
        summer = factories.datetime(2026, 10, 24, 23, 30, tzinfo=factories.UTC)

        assert set_for(due_at=summer).due_date == date(2026, 10, 25)

    def test_comes_back_when_it_was_withdrawn_untold(self, studio, set_for):
        set_for()
        reminders.withdraw(studio=studio, object_id=PIECE)

        assert set_for(at=NOW + HOUR).state == "due"


class TestSetForClassA:
    def test_tells_the_same_row_again_by_rounds(self, set_for):
        first = set_for(about("A"))
        Reminder.objects.update(state="sent")
        again = set_for(about("A"), due_at=NOW + HOUR, at=NOW + HOUR, round=1)
        same = set_for(about("A"), due_at=NOW + HOUR, at=NOW + HOUR, round=1)

        assert first.pk == again.pk == same.pk
        assert (again.state, again.round, again.updated_at) == ("due", 1, NOW + HOUR)

    def test_keeps_one_row_over_midnight(self, set_for):
        set_for(about("A"))
        later = NOW + 20 * HOUR

        set_for(about("A"), due_at=later, at=later, round=2)

        assert Reminder.objects.get().round == 2

    def test_is_told_anew_for_a_new_time_of_the_same_day(self, set_for, maker, act):
        alert = set_for(about("A"))
        reminders.answer(act=act(maker[0]), reminder=alert, answer="done")
        assert set_for(about("A")).state == "done"

        anew = set_for(about("A"), due_at=NOW + 2 * HOUR, at=NOW + 2 * HOUR)

        assert (anew.state, anew.round) == ("due", 0)


class TestAnswer:
    def test_done_holds_for_everybody_told_of_the_same(self, set_for, maker, helper, act):
        mine, theirs = set_for(), set_for(person=helper[0])
        other = set_for(about(cause="join"))

        reminders.answer(act=act(maker[0]), reminder=mine, answer="done")

        states = dict(Reminder.objects.values_list("pk", "state"))
        assert states == {mine.pk: "done", theirs.pk: "withdrawn", other.pk: "due"}
        entry = JournalEntry.objects.get(verb="answered_reminder")
        assert entry.facts["answer"] == "done"

    def test_asks_to_let_go_the_third_time(self, set_for, maker, act):
        reminder = set_for()
        asked = []
        for number in range(3):
            at = NOW + number * HOUR
            reminder = reminders.answer(
                act=act(maker[0], at), reminder=reminder, answer="snooze", until=at + HOUR
            )
            asked.append(reminders.asks_to_let_go(reminder))

        assert asked == [False, False, True]
        assert reminder.state == "snoozed"

    def test_puts_a_hot_kiln_off_by_ten_minutes_twice_at_most(self, set_for, maker, act):
        alert = set_for(about("A"))
        for _ in range(2):
            alert = reminders.answer(
                act=act(maker[0]), reminder=alert, answer="snooze", until=NOW + 5 * HOUR
            )
            assert alert.snoozed_until == NOW + timedelta(minutes=10)

        with pytest.raises(reminders.SnoozedEnough):
            reminders.answer(
                act=act(maker[0]), reminder=alert, answer="snooze", until=NOW + 5 * HOUR
            )

    @pytest.mark.parametrize("until", [None, NOW, NOW - HOUR])
    def test_refuses_to_put_off_to_no_later_time(self, set_for, maker, act, until):
        with pytest.raises(reminders.NotLater):
            reminders.answer(act=act(maker[0]), reminder=set_for(), answer="snooze", until=until)

    def test_refuses_a_second_answer(self, set_for, maker, act):
        reminder = set_for()
        reminders.answer(act=act(maker[0]), reminder=reminder, answer="let_go")

        with pytest.raises(reminders.AnsweredAlready):
            reminders.answer(act=act(maker[0]), reminder=reminder, answer="done")


class TestWithdraw:
    def test_leaves_other_causes_and_answers(self, studio, set_for, maker, act):
        done = set_for(about(cause="cover"))
        reminders.answer(act=act(maker[0]), reminder=done, answer="done")
        set_for()
        set_for(about(cause="join"))

        taken_back = reminders.withdraw(studio=studio, object_id=PIECE, causes=["demould"])

        assert taken_back == 1
        states = dict(Reminder.objects.values_list("cause", "state"))
        assert states == {"cover": "done", "demould": "withdrawn", "join": "due"}


class TestWithdrawAllBut:
    def test_takes_back_of_its_own_causes_what_is_not_asked_for_any_more(self, studio, set_for):
        set_for()
        set_for(about(cause="join"))
        set_for(about(cause="cover"))

        reminders.withdraw_all_but(
            studio=studio, causes=["demould", "join"], still={("join", PIECE)}
        )

        states = dict(Reminder.objects.values_list("cause", "state"))
        assert states == {"demould": "withdrawn", "join": "due", "cover": "due"}
