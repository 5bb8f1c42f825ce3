"""What makers are told of loads, once each, and what is taken back."""

from datetime import timedelta

from firings.actions import kilns, loads, reminding_loads
from pieces.domain.stages import DRYING, GLAZED
from studio.models import Reminder
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, put, tell, tile

MINUTE = timedelta(minutes=1)


def sweep(yard, at):
    reminding_loads.tell_makers(studio=yard.studio, at=at)


def told(cause, **more):
    rows = Reminder.objects.filter(cause=cause, **more).exclude(state="withdrawn")
    return sorted(rows, key=lambda row: row.person.first_name)


class TestClosing:
    def test_tells_who_has_fit_ware_not_on_it_four_hours_before(self, yard, maker, owner):
        load, piece = yards.load(yard), tile(yard, maker[0], mark="T7")
        put(load, owner[0], tile(yard, owner[0]))
        tile(yard, owner[0], DRYING)

        sweep(yard, load.cutoff_at - 4 * HOUR - MINUTE)
        assert told("load_closing") == []
        sweep(yard, load.cutoff_at - 4 * HOUR + MINUTE)
        sweep(yard, load.cutoff_at - 4 * HOUR + 2 * MINUTE)

        (row,) = told("load_closing")
        assert (row.person, row.due_at) == (maker[0], load.cutoff_at - 4 * HOUR)
        assert piece.shown_mark in row.body

    def test_is_taken_back_when_the_list_is_closed(self, yard, maker, technician):
        load = yards.load(yard)
        tile(yard, maker[0])
        sweep(yard, load.cutoff_at - 3 * HOUR)

        tell(load, technician[0], "settled", load.cutoff_at - 2 * HOUR)
        sweep(yard, load.cutoff_at - 2 * HOUR + MINUTE)

        assert told("load_closing") == []


class TestSettled:
    def test_tells_each_maker_once_what_is_in_and_what_is_out_and_why(
        self, yard, maker, owner, technician
    ):
        load = yards.load(yard)
        inside, outside = tile(yard, maker[0], mark="T7"), tile(yard, maker[0], mark="T8")
        put(load, maker[0], inside)
        tile(yard, owner[0], mark="T9")
        tell(load, technician[0], "settled", NOW)

        sweep(yard, NOW + MINUTE)
        sweep(yard, NOW + 2 * MINUTE)

        mine, others = told("load_settled")
        assert (mine.person, others.person) == (maker[0], owner[0])
        assert f"In: {inside.shown_mark}." in mine.body
        assert f"Out: {outside.shown_mark}." in mine.body
        assert "Has waited" in mine.body
        assert others.body.startswith("Nothing of yours is in it. Out: T9.")


class TestCalledOff:
    def test_tells_each_maker_inside_and_names_the_next_one(self, yard, maker, owner, technician):
        load, following = yards.load(yard), yards.load(yard, starts_at=NOW + 9 * DAY)
        put(load, maker[0], tile(yard, maker[0], mark="T7"), tile(yard, maker[0], mark="T8"))
        put(load, owner[0], tile(yard, owner[0]))
        tell(load, technician[0], "called_off", NOW, reason="vent fan dead")

        sweep(yard, NOW + MINUTE)
        sweep(yard, NOW + 3 * MINUTE)

        rows = told("load_called_off")
        assert [row.person for row in rows] == [maker[0], owner[0]]
        assert {row.grade for row in rows} == {"B"}
        assert "vent fan dead" in rows[0].body
        assert "T7, T8" in rows[0].body
        assert following.number in rows[0].body

    def test_is_told_once_more_next_day_unless_answered(self, yard, maker, technician):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0]))
        tell(load, technician[0], "called_off", NOW, reason="vent fan dead")
        sweep(yard, NOW + MINUTE)
        Reminder.objects.update(state="sent")

        for later in (HOUR, DAY + 2 * MINUTE, DAY + HOUR, 3 * DAY):
            sweep(yard, NOW + later)

        assert [row.round for row in told("load_called_off")] == [0, 1]

    def test_told_long_afterwards_is_told_to_nobody(self, yard, maker, technician):
        load = yards.load(yard, starts_at=NOW - 20 * DAY, made_at=NOW - 30 * DAY)
        put(load, maker[0], tile(yard, maker[0], days=40), at=NOW - 25 * DAY)
        then = NOW - 20 * DAY
        late = {"written_at": NOW}
        tell(load, technician[0], "called_off", then, reason="vent fan dead", act=late)

        sweep(yard, NOW + MINUTE)

        assert told("load_called_off") == []


class TestMoved:
    def test_tells_makers_inside_the_new_time(self, yard, maker, technician):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0], mark="T7"))
        act = factories.act(technician[0], NOW)
        loads.change(act=act, load=load, changes={"starts_at": NOW + 4 * DAY})

        sweep(yard, NOW + MINUTE)

        (row,) = told("load_moved")
        assert row.person == maker[0]
        assert "Wed 4 Nov" in row.title
        assert "T7" in row.body


class TestUnplanned:
    def test_tells_those_in_the_next_load_of_that_kiln_once(self, yard, maker):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0], mark="T7"))
        fired = yards.load(yard, starts_at=NOW - 20 * HOUR, made_at=NOW, is_unplanned=True)

        sweep(yard, NOW + MINUTE)
        sweep(yard, NOW + HOUR)

        (row,) = told("load_unplanned")
        assert (row.person, row.object_mark) == (maker[0], fired.number)
        assert f"Yours in {load.number}" in row.body
        assert "T7" in row.body


class TestStopped:
    def test_tells_technicians_at_once_and_makers_until_it_is_decided(
        self, yard, maker, technician
    ):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0]))
        for kind, hours in (("settled", 0), ("loading", 1), ("started", 2), ("stopped", 8)):
            tell(load, technician[0], kind, NOW + hours * HOUR)

        sweep(yard, NOW + 8 * HOUR + MINUTE)

        mine, theirs = told("load_stopped")
        assert (mine.person, mine.grade) == (maker[0], "B")
        assert (theirs.person, theirs.grade) == (technician[0], "A")

        sweep(yard, NOW + DAY + 9 * HOUR)
        assert len(told("load_stopped", person=maker[0])) >= 1

        tell(load, technician[0], "ended", NOW + DAY + 10 * HOUR, outcome="not_fired")
        sweep(yard, NOW + DAY + 11 * HOUR)
        assert told("load_stopped") == []


class TestOut:
    def test_tells_what_is_out_and_where(self, yard, maker, technician):
        load = yards.load(yard)
        put(load, maker[0], tile(yard, maker[0], mark="T7"), tile(yard, maker[0], mark="T8"))
        for kind, hours in (("settled", 0), ("loading", 1), ("started", 2), ("ended", 9)):
            tell(load, technician[0], kind, NOW + hours * HOUR)
        tell(load, technician[0], "opened", NOW + 30 * HOUR, celsius=80.0)
        out = NOW + 31 * HOUR
        tell(load, technician[0], "unloaded", out, outcome="fired", place=yard.shed)

        sweep(yard, out + MINUTE)

        (row,) = told("ware_out")
        assert row.person == maker[0]
        assert row.body == "T7, T8: Kiln shed."


class TestNeedsKiln:
    def test_tells_technicians_of_loads_whose_kiln_is_out_of_use(self, yard, technician):
        load = yards.load(yard)
        act = factories.act(technician[0], NOW)
        kilns.tell(act=act, kiln=yard.ox, kind="out_of_use", reason="vent")
        sweep(yard, NOW + MINUTE)

        (row,) = told("load_needs_kiln")
        assert (row.person, row.object_mark) == (technician[0], load.number)

        act = factories.act(technician[0], NOW + HOUR)
        kilns.tell(act=act, kiln=yard.ox, kind="in_use", reason="")
        sweep(yard, NOW + HOUR + MINUTE)
        assert told("load_needs_kiln") == []


def test_a_studio_without_news_is_told_nothing(yard, maker):
    yards.load(yard, "glaze")
    tile(yard, maker[0], GLAZED)

    sweep(yard, NOW)

    assert Reminder.objects.count() == 0
