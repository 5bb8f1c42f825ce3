"""What the clock and the acts set off: every sweep may be delivered twice."""

import logging
import threading
from collections.abc import Iterator

import pytest
from celery import Celery
from kombu.exceptions import OperationalError

from pieces import tasks
from pieces.actions import planning
from pieces.domain.drying import engine
from pieces.domain.drying.march import march as plain
from pieces.models import Forecast, Piece
from studio.domain.ids import uuid7
from studio.models import JournalEntry, Reminder
from tests import factories
from tests.factories import act
from tests.pieces import kit as kits

pytestmark = pytest.mark.usefixtures("short_forecasts")


@pytest.fixture
def in_numpy() -> Iterator[None]:
    """Leave the process as it was found: reckoning in numpy."""
    yield
    engine.use(plain)


class _Worker:
    """As much of a worker as the signal's receiver looks at."""

    def __init__(self, *queues: str) -> None:
        self.app = Celery("worker", set_as_current=False)
        self.app.amqp.queues.select(queues)


@pytest.fixture
def timers(monkeypatch) -> list[tuple[float, object]]:
    """What was put off, and for how long."""
    begun: list[tuple[float, object]] = []

    class Noted(threading.Timer):
        def start(self) -> None:
            begun.append((self.interval, self.function))

    monkeypatch.setattr(tasks, "Timer", Noted)
    return begun


class TestAskForKernel:
    def test_has_the_worker_that_reckons_compile_later(self, timers) -> None:
        tasks.ask_for_kernel(sender=_Worker("work"))

        assert timers == [(tasks.KERNEL_AFTER_S, tasks.compile_kernel)]

    def test_leaves_the_quick_worker_light(self, timers) -> None:
        tasks.ask_for_kernel(sender=_Worker("quick"))

        assert timers == []


class TestCompileKernel:
    def test_has_the_process_march_in_the_compiled_loop(self, in_numpy) -> None:
        tasks.compile_kernel()

        assert engine.is_compiled()

    def test_goes_on_in_numpy_and_says_so_when_it_cannot_compile(
        self, in_numpy, monkeypatch, caplog, studio, kit, maker
    ) -> None:
        def fail() -> None:
            raise OSError("no compiler")

        monkeypatch.setattr(engine, "compiled", fail)

        with caplog.at_level(logging.WARNING):
            tasks.compile_kernel()

        assert caplog.text.count("numpy reckons, slower") == 1
        assert not engine.is_compiled()
        kits.pressed_tile(kit, maker[0])
        tasks.refresh_forecasts(studio_id=str(studio.pk))
        assert Forecast.objects.count() == 1


class TestRefreshForecasts:
    def test_reckons_one_studio(self, studio, kit, maker) -> None:
        kits.pressed_tile(kit, maker[0])

        tasks.refresh_forecasts(studio_id=str(studio.pk))
        tasks.refresh_forecasts(studio_id=str(studio.pk))

        assert Forecast.objects.count() == 1

    def test_passes_over_a_studio_that_is_gone(self, db) -> None:
        tasks.refresh_forecasts(studio_id=str(uuid7()))

        assert not Forecast.objects.exists()


class TestRefreshAllForecasts:
    def test_reckons_every_studio(self, kit, maker, other_studio) -> None:
        kits.pressed_tile(kit, maker[0])
        there = kits.kit(other_studio)
        kits.pressed_tile(there, factories.member(other_studio))

        tasks.refresh_all_forecasts()

        assert set(Forecast.objects.values_list("studio__slug", flat=True)) == {"yard", "quay"}


class TestMoveOnWaitingPieces:
    def test_moves_on_what_has_its_mould_by_now_once(self, studio, kit, maker) -> None:
        casting = kit.tile_mould.casting
        type(casting).objects.filter(pk=casting.pk).update(is_in_use=False)
        planned = planning.plan(act=act(maker[0]), pieces=[kits.given(kit.tile)]).pieces[0]
        assert planned.state == "wants_mould"
        type(casting).objects.filter(pk=casting.pk).update(is_in_use=True)

        tasks.move_on_waiting_pieces()
        tasks.move_on_waiting_pieces()

        assert Piece.objects.get(pk=planned.pk).state == "to_press"
        moved = JournalEntry.objects.get(studio=studio, verb="became_possible")
        assert moved.member.is_clockwork


class TestSetReminders:
    def test_tells_makers_once(self, studio, kit, maker, clock) -> None:
        tile = kits.pressed_tile(kit, maker[0], at=clock.now)
        tasks.refresh_all_forecasts()
        opens_s = Forecast.objects.get(piece=tile).windows["demould"]["opens"]["p10_s"]
        clock.move(seconds=opens_s - clock.now.timestamp() + 60)

        tasks.set_reminders()
        tasks.set_reminders()

        assert Reminder.objects.get().person == maker[0]


class TestAskForForecasts:
    def test_leaves_it_to_the_sweep_when_the_queue_does_not_answer(
        self, studio, monkeypatch, caplog
    ) -> None:
        def refuse(**_: object) -> None:
            raise OperationalError("no broker")

        monkeypatch.setattr(tasks.refresh_forecasts, "delay", refuse)

        with caplog.at_level(logging.WARNING):
            tasks.ask_for_forecasts(studio.pk)

        assert "the next sweep reckons" in caplog.text
