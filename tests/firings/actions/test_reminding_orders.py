from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from firings.actions.reminding_orders import judge_promises, next_telling
from pieces.actions import commissions
from pieces.models import Commission
from studio.actions import reminders
from studio.models import Away, Member, Reminder
from tests import factories
from tests.factories import NOW
from tests.pieces.orders import DAY, SECRET, jars, put, take

FIVE = datetime(2026, 10, 31, 17, 0, tzinfo=UTC)


@pytest.fixture
def risky(maker, owner, studio):
    """An order of which nothing is begun, promised for next week."""
    Member.objects.filter(studio=studio, first_name="Founder").update(left_at=NOW)
    return take(maker[0], promised=date(2026, 11, 6))


def told():
    return Reminder.objects.filter(cause="promise_at_risk").order_by("due_at", "person__first_name")


class TestJudging:
    def test_tells_the_maker_and_the_owner_once_at_five(self, risky, studio, maker, owner):
        for _ in range(3):
            assert judge_promises(studio=studio, at=NOW) == 1

        assert [(row.person, row.due_at) for row in told()] == [
            (maker[0], FIVE),
            (owner[0], FIVE),
        ]
        row = told()[0]
        assert row.title == "C-1 is at risk: promised for 6 Nov 2026, in 6 days."
        assert row.grade == "C"
        assert SECRET not in row.body
        assert "Marrowfield" not in row.title + row.body

    def test_keeps_the_judgement_for_the_list(self, risky, studio, maker):
        judge_promises(studio=studio, at=NOW)

        answer = maker[1].get("/api/v1/studios/yard/commissions/").json()

        row = answer["at_risk"][0]
        assert row["risk_words"].startswith("hardly enough by 6 Nov 2026; likely ")
        assert row["judged_at"] == "2026-10-31T09:00:00Z"
        assert row["likely_until"] > "2026-11-06"

    def test_tells_again_after_a_week_and_not_before(self, risky, studio, maker):
        judge_promises(studio=studio, at=NOW)
        told().update(state=Reminder.State.SENT)

        for day in range(1, 7):
            judge_promises(studio=studio, at=NOW + day * DAY)
        assert told().count() == 2
        judge_promises(studio=studio, at=NOW + 7 * DAY)

        assert told().count() == 4
        assert told().last().due_at == FIVE + 7 * DAY

    def test_an_answer_of_one_holds_for_all_for_a_week(self, risky, studio, maker):
        judge_promises(studio=studio, at=NOW)
        act = factories.act(maker[0], FIVE)
        reminders.answer(act=act, reminder=told().get(person=maker[0]), answer="done")

        judge_promises(studio=studio, at=FIVE + DAY)

        assert not told().filter(state=Reminder.State.DUE).exists()

    def test_takes_back_what_was_set_when_the_promise_moves(self, risky, studio, maker):
        judge_promises(studio=studio, at=NOW)
        commissions.close(act=factories.act(maker[0]), commission=risky, is_cancelled=True)

        assert judge_promises(studio=studio, at=NOW) == 0
        assert {row.state for row in told()} == {"withdrawn"}

    def test_says_nothing_of_a_promise_that_is_likely_kept(self, studio, maker, owner):
        order, _ = jars(maker[0], sets=1, wanted=1)
        for mark in ("J01", "L01"):
            put(maker[0], mark, "finished", "checked")

        assert judge_promises(studio=studio, at=NOW) == 0
        assert Commission.objects.get(pk=order.pk).risk == "on_course"
        assert not told().exists()

    def test_tells_who_stands_in_and_only_once(self, risky, studio, maker, owner, join):
        buddy, _ = join(studio, ["maker"], "Bo")
        away = {"from_date": date(2026, 10, 1), "until_date": date(2026, 12, 1)}
        Away.objects.create(studio=studio, member=maker[0], buddy=buddy, **away)

        judge_promises(studio=studio, at=NOW)
        told().update(state=Reminder.State.SENT)
        judge_promises(studio=studio, at=NOW + DAY)

        assert {row.person for row in told()} == {buddy, owner[0]}
        assert told().count() == 2


class TestNextTelling:
    def test_is_today_until_five_and_then_tomorrow(self, studio):
        zone = ZoneInfo("Europe/London")

        assert next_telling(FIVE - timedelta(hours=1), zone) == FIVE
        assert next_telling(FIVE, zone) == FIVE
        assert next_telling(FIVE + timedelta(seconds=1), zone) == FIVE + DAY
