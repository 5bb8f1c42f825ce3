"""Reminders over the wire."""

from datetime import timedelta
from uuid import uuid4

import pytest

from studio.actions import deliveries, reminders
from tests import factories
from tests.factories import sent

NOW = factories.NOW
S = "/api/v1/studios/yard/reminders/"


@pytest.fixture
def remind(studio, maker):
    def given(due_at=NOW, grade="C"):
        about = reminders.About(
            cause="demould",
            grade=grade,
            kind="piece",
            object_id=uuid4(),
            mark="T26",
            title="T26, tile. Bench 1.",
            link="/yard/bench",
        )
        return reminders.set_for(
            studio=studio, person=maker[0], about=about, due_at=due_at, at=due_at
        )

    return given


class TestReminderList:
    def test_works(self, maker, helper, remind, stranger):
        reminder = remind()
        remind(due_at=NOW + timedelta(hours=1))

        [row] = maker[1].get(S).json()["results"]

        assert row["id"] == str(reminder.pk)
        assert (row["kind"], row["class"], row["state"]) == ("demould", "C", "due")
        assert row["objects"] == [{"kind": "piece", "id": str(reminder.object_id), "mark": "T26"}]
        assert helper[1].get(S).json()["results"] == []
        assert stranger[1].get(S).status_code == 404

    def test_still_lists_what_was_told(self, maker, remind):
        remind()
        deliveries.send_due(at=NOW + timedelta(hours=2))

        [row] = maker[1].get(S, {"state": "due"}).json()["results"]

        assert row["state"] == "sent"

    def test_sorts_what_was_put_off_and_done(self, maker, remind):
        off, done = remind(), remind()
        body = {"answer": "snooze", "until": (NOW + timedelta(hours=2)).isoformat()}
        sent(maker[1], f"{S}{off.pk}/answers/", body)
        sent(maker[1], f"{S}{done.pk}/answers/", {"answer": "done"})

        listed = {
            state: [row["id"] for row in maker[1].get(S, {"state": state}).json()["results"]]
            for state in ("due", "snoozed", "done")
        }

        assert listed == {"due": [], "snoozed": [str(off.pk)], "done": [str(done.pk)]}

    def test_lists_with_a_fixed_number_of_queries(
        self, maker, remind, django_assert_max_num_queries
    ):
        for _ in range(15):
            remind()

        with django_assert_max_num_queries(6):
            maker[1].get(S)

    def test_refuses_a_state_there_is_not(self, maker):
        answer = maker[1].get(S, {"state": "gone"})

        assert answer.json()["errors"][0]["pointer"] == "#/state"


class TestReminderAnswerList:
    def test_works(self, maker, remind):
        reminder = remind()

        answer = sent(maker[1], f"{S}{reminder.pk}/answers/", {"answer": "done"})

        assert answer.status_code == 201
        assert answer.json()["reminder"]["state"] == "done"
        assert answer.json()["journal_seq"] > 0

    def test_asks_until_when(self, maker, remind):
        answer = sent(maker[1], f"{S}{remind().pk}/answers/", {"answer": "snooze"})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/until"

    def test_is_the_persons_own_or_an_owners(self, helper, owner, remind):
        path = f"{S}{remind().pk}/answers/"

        assert sent(helper[1], path, {"answer": "done"}).status_code == 403
        assert sent(owner[1], path, {"answer": "done"}).status_code == 201
