"""The sweeps of this app."""

from datetime import timedelta

import pytest
from celery import shared_task
from django.conf import settings

from studio import tasks
from studio.actions import runs
from studio.models import Replay, Run
from tests import factories


@shared_task(name="tests.listen")
def listen(*, run_id, **_):
    """Stand for the task of an app above."""


class TestOfferStaleRuns:
    def test_sends_a_lost_run_to_its_task_and_passes_over_tasks_that_are_gone(
        self, studio, clock, monkeypatch
    ):
        sent = []
        monkeypatch.setattr(listen, "apply_async", lambda **given: sent.append(given))
        for task in ("tests.listen", "tests.gone"):
            runs.ask(studio=studio, task=task, inputs={}, asked_by=None, at=clock.now)
        clock.move(minutes=5)

        tasks.offer_stale_runs()

        waiting = Run.objects.get(task="tests.listen")
        assert [given["kwargs"] for given in sent] == [{"run_id": str(waiting.pk)}]


class TestPruneReplays:
    def test_forgets_by_the_clock(self, studio, clock):
        Replay.objects.create(
            act_id=factories.uuid7(),
            studio=studio,
            digest="",
            status=201,
            written_at=clock.now - timedelta(days=31),
        )

        tasks.prune_replays()

        assert not Replay.objects.exists()


class TestSchedule:
    @pytest.mark.parametrize("name", ["tell", "offer runs again", "prune replays"])
    def test_names_tasks_that_exist_and_lets_no_backlog_grow(self, name):
        entry = settings.CELERY_BEAT_SCHEDULE[name]

        assert callable(getattr(tasks, entry["task"].rpartition(".")[2]))
        assert entry["options"]["expires"] < entry["schedule"]
