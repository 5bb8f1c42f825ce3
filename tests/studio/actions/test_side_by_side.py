"""Several workers at the same moment, each with a connection of its own."""

from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from threading import Barrier
from uuid import uuid4

from django.db import connections

from studio.actions import climate as climate_actions
from studio.actions import deliveries, reminders, runs
from studio.domain import climate
from studio.models import ClimateReading, Delivery, Reminder, Run
from tests import factories

NOW = factories.NOW
WORKERS = 4


def at_once(work):
    """Do the work in several threads that begin together; return what each returned."""
    line = Barrier(WORKERS)

    def one(number):
        line.wait()
        try:
            return work(number)
        finally:
            connections.close_all()

    with ThreadPoolExecutor(WORKERS) as pool:
        return list(pool.map(one, range(WORKERS)))


class TestSendDue:
    def test_sends_each_message_once(self, unlocked_journal, smtp):
        studio = factories.studio("yard")
        person = factories.member(studio, email="maud@yard.test")
        for mark in ("T25", "T26"):
            about = reminders.About(
                cause="demould",
                grade="A",
                kind="piece",
                object_id=uuid4(),
                mark=mark,
                title=f"{mark}, tile. Bench 1.",
            )
            reminders.set_for(studio=studio, person=person, about=about, due_at=NOW, at=NOW)

        told = at_once(lambda number: deliveries.send_due(at=NOW))

        assert sum(told) == 2
        assert sorted(message["Subject"][5:8] for message in smtp.messages) == ["T25", "T26"]
        assert Delivery.objects.filter(sent_at=None).count() == 0


class TestSetFor:
    def test_makes_one_row(self, unlocked_journal):
        studio = factories.studio("yard")
        person = factories.member(studio)
        about = reminders.About(
            cause="demould", grade="C", kind="piece", object_id=uuid4(), mark="T26", title="T26."
        )

        at_once(
            lambda number: reminders.set_for(
                studio=studio, person=person, about=about, due_at=NOW, at=NOW
            )
        )

        assert Reminder.objects.count() == 1


class TestRuns:
    def test_are_asked_once_and_carried_out_once(self, unlocked_journal):
        studio = factories.studio("yard")
        done = []

        def work(number):
            run = runs.ask(studio=studio, task="pack", inputs={"n": 1}, asked_by=None, at=NOW)
            runs.carry_out(
                run_id=run.pk,
                work=lambda run, tell: done.append(number) or {"by": number},
                at=NOW + timedelta(seconds=1),
            )

        at_once(work)

        assert len(done) == 1
        assert Run.objects.get().result == {"by": done[0]}


class TestReadings:
    def test_count_the_same_reading_once(self, unlocked_journal):
        studio = factories.studio("yard")
        person = factories.member(studio)
        room = factories.place(studio)
        acts = [factories.act(person) for _ in range(WORKERS)]
        one = climate.Reading(NOW, 13.4, 0.71)

        recorded = at_once(
            lambda number: climate_actions.record(act=acts[number], place=room, readings=[one])
        )

        assert sorted(each.repeated for each in recorded) == [0, 1, 1, 1]
        assert ClimateReading.objects.count() == 1
