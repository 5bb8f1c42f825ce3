"""Whoever minds a kiln is told of what nobody has read, seen off or opened."""

from datetime import time, timedelta

import pytest

from firings.actions import readings, reminding_watch
from firings.actions.readings import ReadingGiven
from firings.models import Load
from studio.models import OpeningHours, Reminder
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import HOUR, tell

MINUTE = timedelta(minutes=1)


def sweep(yard, at):
    reminding_watch.tell_minders(studio=yard.studio, at=at)


def told(cause):
    rows = Reminder.objects.filter(cause=cause).exclude(state="withdrawn")
    return {row.person.first_name: row for row in rows.select_related("person")}


def read(load, by, at, reading_c, **more):
    given = [ReadingGiven(at, reading_c, **more)]
    load = Load.objects.select_related("kiln", "watcher", "studio").get(pk=load.pk)
    return readings.record(act=factories.act(by, at), load=load, readings=given)


@pytest.fixture
def lit(yard, maker, technician):
    """A bisque lit at the clock's time, watched by the maker, read hourly, of nine hours."""
    load = yards.load(yard, watcher=maker[0], more={"expected_h": 9.0})
    for kind, hours in (("settled", -2), ("loading", -1), ("started", 0)):
        tell(load, technician[0], kind, NOW + hours * HOUR)
    return load


class TestReadingOverdue:
    def test_is_told_a_quarter_of_an_hour_late_and_then_to_more(
        self, yard, lit, maker, technician, owner
    ):
        read(lit, maker[0], NOW + HOUR, 420.0)
        due = NOW + 2 * HOUR + 15 * MINUTE

        sweep(yard, due - MINUTE)
        assert told("kiln_reading_overdue") == {}
        sweep(yard, due)
        assert set(told("kiln_reading_overdue")) == {"Maud"}
        sweep(yard, due + 15 * MINUTE)
        assert set(told("kiln_reading_overdue")) == {"Maud", "Tess"}
        sweep(yard, due + 30 * MINUTE)

        rows = told("kiln_reading_overdue")
        assert set(rows) == {"Maud", "Tess", "Orla", "Founder"}
        assert {row.grade for row in rows.values()} == {"A"}
        assert rows["Maud"].round == 2
        assert "not a safety device" in rows["Maud"].body

    def test_is_taken_back_by_a_reading(self, yard, lit, maker):
        read(lit, maker[0], NOW + HOUR, 420.0)
        sweep(yard, NOW + 3 * HOUR)

        read(lit, maker[0], NOW + 3 * HOUR, 610.0)
        sweep(yard, NOW + 3 * HOUR + MINUTE)

        assert told("kiln_reading_overdue") == {}

    def test_is_told_of_a_hot_kiln_only(self, yard, lit, maker):
        read(lit, maker[0], NOW + HOUR, 300.0)

        sweep(yard, NOW + 5 * HOUR)

        assert told("kiln_reading_overdue") == {}

    def test_is_told_of_a_kiln_nobody_has_read_at_all(self, yard, lit):
        sweep(yard, NOW + HOUR + 16 * MINUTE)

        assert "since it was lit" in told("kiln_reading_overdue")["Maud"].title

    def test_is_told_by_elapsed_time_over_a_change_of_the_clocks(self, yard, maker, technician):
        """25 October 2026: 01:30 BST and 01:30 GMT are an hour apart."""
        lit = NOW.replace(day=24, hour=18)
        load = yards.load(yard, watcher=maker[0], starts_at=lit, made_at=lit - HOUR)
        tell(load, technician[0], "started", lit, is_catching_up=True)
        half_past_one_summer = lit + 6.5 * HOUR
        read(load, maker[0], half_past_one_summer, 890.0)

        sweep(yard, half_past_one_summer + 74 * MINUTE)
        assert told("kiln_reading_overdue") == {}
        sweep(yard, half_past_one_summer + 75 * MINUTE)
        assert set(told("kiln_reading_overdue")) == {"Maud"}


class TestNotSeenOff:
    def test_is_told_half_an_hour_after_the_expected_end(self, yard, lit, technician):
        read(lit, technician[0], NOW + 9 * HOUR, 200.0)

        sweep(yard, NOW + 9 * HOUR + 29 * MINUTE)
        assert told("kiln_not_seen_off") == {}
        sweep(yard, NOW + 9 * HOUR + 30 * MINUTE)
        assert set(told("kiln_not_seen_off")) == {"Maud"}

        tell(lit, technician[0], "ended", NOW + 10 * HOUR)
        sweep(yard, NOW + 10 * HOUR + MINUTE)
        assert told("kiln_not_seen_off") == {}


class TestOverTop:
    def test_is_told_at_once_to_all_who_mind_it_and_again(self, yard, lit, maker, owner):
        read(lit, maker[0], NOW + 8 * HOUR, 1310.0)

        rows = told("kiln_over_top")
        assert set(rows) == {"Maud", "Tess", "Orla", "Founder"}
        assert {row.grade for row in rows.values()} == {"A"}

        sweep(yard, NOW + 8 * HOUR + 11 * MINUTE)
        assert told("kiln_over_top")["Maud"].round == 2

        read(lit, maker[0], NOW + 8.3 * HOUR, 1100.0)
        sweep(yard, NOW + 8.4 * HOUR)
        assert told("kiln_over_top") == {}

    def test_is_not_told_of_what_was_asked_about(self, yard, lit, maker):
        recorded = read(lit, maker[0], NOW + 8 * HOUR, 2232.0)

        assert recorded.rows[0].use == "asked"
        assert told("kiln_over_top") == {}


class TestMayOpen:
    def test_is_told_when_somebody_is_in_and_it_is_likely_cool(self, yard, lit, maker, technician):
        OpeningHours.objects.bulk_create(
            OpeningHours(studio=yard.studio, weekday=day, opens=time(8), closes=time(18))
            for day in range(5)
        )
        tell(lit, technician[0], "ended", NOW + 9 * HOUR, outcome="fired")
        read(lit, maker[0], NOW + 12 * HOUR, 600.0)
        read(lit, maker[0], NOW + 16 * HOUR, 350.0)

        sweep(yard, NOW + 30 * HOUR)
        assert told("kiln_may_open") == {}
        monday_at_eight = NOW + 47 * HOUR
        sweep(yard, monday_at_eight)

        rows = told("kiln_may_open")
        assert set(rows) == {"Maud", "Tess"}
        assert rows["Tess"].due_at == monday_at_eight
        assert "read the temperature first" in rows["Tess"].body
