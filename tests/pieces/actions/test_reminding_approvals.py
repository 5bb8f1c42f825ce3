from datetime import UTC, date, datetime, timedelta

import pytest

from pieces.actions import approvals, commissions
from pieces.actions.reminding_approvals import tell_of_approvals
from studio.actions import reminders
from studio.models import Reminder
from tests import factories
from tests.factories import NOW
from tests.pieces.orders import SECRET, take

DUE = date(2026, 11, 6)


def nine(day):
    return datetime(2026, 11, day, 9, 0, tzinfo=UTC)


@pytest.fixture
def asked(maker):
    order = take(maker[0])
    act = factories.act(maker[0])
    return approvals.ask(act=act, commission=order, about="colour", waits="glazing", due_date=DUE)


def told(cause="approval_due"):
    return Reminder.objects.filter(cause=cause).order_by("due_at")


class TestComingDue:
    def test_is_told_to_the_maker_two_days_before_with_a_text_to_send(self, asked, studio, maker):
        assert tell_of_approvals(studio=studio, at=nine(4) - timedelta(minutes=1)) == 0

        for _ in range(2):
            assert tell_of_approvals(studio=studio, at=nine(4)) == 1

        row = told().get()
        assert (row.person, row.due_at, row.grade) == (maker[0], nine(4), "C")
        assert row.title == "C-1: colour to approve by 6 Nov 2026."
        assert "Your order C-1: we need your yes or no" in row.body
        assert SECRET not in row.body

    def test_is_told_on_the_day_and_once_more_each_in_place_of_the_last(self, asked, studio):
        for day in range(4, 12):
            tell_of_approvals(studio=studio, at=nine(day))

        open_ones = told().filter(state__in=reminders.OPEN)
        assert [row.due_at for row in told()] == [nine(4), nine(6), nine(7)]
        assert [row.due_at for row in open_ones] == [nine(7)]

    def test_ends_with_an_answer(self, asked, studio, maker):
        tell_of_approvals(studio=studio, at=nine(4))

        approvals.answer(act=factories.act(maker[0], nine(5)), approval=asked, answer="yes")
        tell_of_approvals(studio=studio, at=nine(6))

        assert [row.state for row in told()] == ["withdrawn"]

    def test_ends_with_the_order(self, asked, studio, maker):
        tell_of_approvals(studio=studio, at=nine(4))

        act = factories.act(maker[0], nine(5))
        commissions.close(act=act, commission=asked.commission, is_cancelled=True)
        tell_of_approvals(studio=studio, at=nine(6))

        assert [row.state for row in told()] == ["withdrawn"]

    def test_says_no_more_once_it_was_let_go(self, asked, studio, maker):
        tell_of_approvals(studio=studio, at=nine(4))
        reminders.answer(act=factories.act(maker[0], nine(5)), reminder=told()[0], answer="let_go")

        tell_of_approvals(studio=studio, at=nine(6))

        assert told().count() == 1


class TestGiven:
    def test_is_told_at_once_to_the_maker_when_the_client_says_so(self, asked, maker):
        act = factories.act(maker[0], NOW + timedelta(hours=1))

        approvals.answer(act=act, approval=asked, answer="no", through="link")

        row = told("approval_given").get()
        assert (row.person, row.grade, row.due_at) == (maker[0], "B", act.happened_at)
        assert row.title == "C-1, colour: the client said no."

    def test_is_not_told_to_whoever_wrote_it_down(self, asked, maker):
        approvals.answer(act=factories.act(maker[0]), approval=asked, answer="yes")

        assert not told("approval_given").exists()
