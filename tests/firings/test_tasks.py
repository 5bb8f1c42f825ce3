"""The sweeps of this app may run twice without harm."""

from firings import tasks
from studio.models import Reminder
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import HOUR, put, tell, tile


class TestTellMinders:
    def test_sets_each_reminder_once(self, yard, technician, clock):
        load = yards.load(yard, watcher=technician[0])
        tell(load, technician[0], "started", NOW - 3 * HOUR, is_catching_up=True)

        tasks.tell_minders()
        tasks.tell_minders()

        rows = Reminder.objects.filter(cause="kiln_reading_overdue", person=technician[0])
        assert rows.count() == 1


class TestTellMakersOfLoads:
    def test_sets_each_reminder_once(self, yard, maker, technician, clock):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0]))
        tell(load, technician[0], "called_off", NOW, reason="vent fan dead")
        clock.move(minutes=1)

        tasks.tell_makers_of_loads()
        tasks.tell_makers_of_loads()

        assert Reminder.objects.filter(cause="load_called_off").count() == 1
