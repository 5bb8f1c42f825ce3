"""A load from settled to unloaded, called off, stopped, told late and told twice."""

import pytest

from firings.actions.events import NotInLoad, OutcomeWanted, WareHeld
from firings.domain.load_rules import LoadOutOfOrder, NotCoolEnough, ReasonWanted
from firings.models import Load, Placement
from pieces.actions import covers, stages
from pieces.domain.stages import DRYING
from pieces.models import StageEvent
from studio.models import JournalEntry
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, again, age_of, fired, place_of, put, spot, tell, tile
from tests.pieces import kit as pieces_kit


class TestLoading:
    def test_takes_ware_into_the_kiln_and_keeps_where_it_came_from(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        placement = put(load, maker[0], piece)[0]
        tell(load, technician[0], "settled", NOW)

        event = tell(load, technician[0], "loading", NOW + HOUR)

        assert spot(piece) == ("bisque", "in_bisque")
        assert place_of(piece) == "K1 Ox"
        placement.refresh_from_db()
        assert placement.came_from == {
            "stage": "drying",
            "state": "bone_dry",
            "place": str(yard.rack.pk),
            "cover": "",
            "grade": "",
        }
        visit = StageEvent.objects.get(entry=event.entry)
        assert (visit.occasion_id, visit.occasion_name) == (load.pk, load.number)

    def test_leaves_out_what_was_scrapped_meanwhile(self, yard, maker, technician):
        whole, broken, load = tile(yard, maker[0]), tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], whole, broken)
        stages.lose(act=factories.act(maker[0], NOW - HOUR), pieces=[broken], cause="dropped")
        tell(load, technician[0], "settled", NOW)

        tell(load, technician[0], "loading", NOW + HOUR)

        assert spot(whole) == ("bisque", "in_bisque")
        assert spot(broken) == ("lost", "scrapped")

    def test_tells_that_bisqued_ware_was_glazed_though_nobody_wrote_it(
        self, yard, maker, technician
    ):
        piece, load = tile(yard, maker[0], yards.BISQUED), yards.load(yard, "glaze")
        put(load, maker[0], piece)
        tell(load, technician[0], "settled", NOW)

        event = tell(load, technician[0], "loading", NOW + HOUR)

        assert spot(piece) == ("glaze", "in_glaze")
        assert StageEvent.objects.get(entry=event.entry).reason == "catching_up"

    def test_is_one_act_of_the_load_and_of_every_piece(self, yard, maker, technician):
        pieces, load = [tile(yard, maker[0]) for _ in range(3)], yards.load(yard)
        put(load, maker[0], *pieces)
        tell(load, technician[0], "settled", NOW)

        event = tell(load, technician[0], "loading", NOW + HOUR)

        told_of = set(event.entry.subjects.values_list("kind", "subject_id"))
        assert told_of >= {("load", load.pk), *(("piece", piece.pk) for piece in pieces)}
        assert JournalEntry.objects.filter(verb="loaded_kiln").count() == 1


class TestUnloaded:
    def test_brings_fired_ware_on_to_where_it_was_put(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)

        fired(load, technician[0], place=yard.rack)

        assert spot(piece) == ("bisque", "bisqued")
        assert place_of(piece) == "Rack C"
        assert again(load).state == "unloaded"
        assert Placement.objects.get(load=load).result == "fired"

    def test_takes_each_piece_by_its_own_result(self, yard, maker, technician):
        pieces = good, damp, cold, broken = [tile(yard, maker[0]) for _ in range(4)]
        load = yards.load(yard)
        rows = put(load, maker[0], *pieces)
        own = zip([row.pk for row in rows[1:]], ["damp", "not_fired", "broken"], strict=True)

        fired(load, technician[0], place=yard.shed, results=list(own))

        assert spot(good) == ("bisque", "bisqued")
        assert spot(damp) == ("drying", "drying")
        assert spot(cold) == ("drying", "bone_dry")
        assert spot(broken) == ("bisque", "bisqued")
        assert pieces_kit.again(broken).is_damaged
        assert not pieces_kit.again(good).is_damaged
        assert [place_of(piece) for piece in pieces] == [
            "Kiln shed",
            "Rack C",
            "Rack C",
            "Kiln shed",
        ]

    def test_wants_to_know_whether_it_fired(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        placement = put(load, maker[0], piece)[0]

        with pytest.raises(OutcomeWanted) as refused:
            fired(load, technician[0], outcome="unsure")

        assert refused.value.facts["placements"] == [str(placement.pk)]

    def test_knows_only_what_is_in_the_load(self, yard, maker, technician):
        other = put(yards.load(yard), maker[0], tile(yard, maker[0]))[0]
        load = yards.load(yard)

        with pytest.raises(NotInLoad):
            fired(load, technician[0], results=[(other.pk, "fired")])

    def test_lets_a_load_go_that_fired_nothing(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)

        fired(load, technician[0], outcome="not_fired")

        assert spot(piece) == ("drying", "bone_dry")
        assert age_of(yard.ox).firings == 0

    def test_puts_the_cover_back_on_what_was_damp(self, yard, maker, technician):
        piece, load = tile(yard, maker[0], DRYING), yards.load(yard)
        act = factories.act(maker[0], NOW - 2 * HOUR)
        covers.cover(act=act, pieces=[piece], state="loose")
        put(load, technician[0], piece, may_override=True, override_reason="warm hold tonight")

        placement = Placement.objects.get(piece=piece)
        fired(load, technician[0], results=[(placement.pk, "damp")])

        assert spot(piece) == ("drying", "drying")
        assert pieces_kit.again(piece).cover == "loose"


class TestOpened:
    def test_refuses_what_nobody_measured(self, yard, technician):
        load = yards.load(yard)
        for kind, hours in (("settled", 0), ("loading", 1), ("started", 2), ("ended", 9)):
            tell(load, technician[0], kind, NOW + hours * HOUR)

        with pytest.raises(NotCoolEnough):
            tell(load, technician[0], "opened", NOW + 30 * HOUR)
        with pytest.raises(NotCoolEnough):
            tell(load, technician[0], "opened", NOW + 30 * HOUR, celsius=180.0)

        tell(load, technician[0], "opened", NOW + 30 * HOUR, celsius=180.0, reason="crash cooled")
        assert again(load).opened_c == 180.0


class TestOrder:
    def test_refuses_what_the_writer_could_have_known(self, yard, technician):
        with pytest.raises(LoadOutOfOrder) as refused:
            tell(yards.load(yard), technician[0], "started")

        assert refused.value.facts["state"] == "open"

    def test_takes_a_leap_from_somebody_who_catches_up(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard, starts_at=NOW - 2 * DAY)
        put(load, technician[0], piece, may_build=True)

        tell(load, technician[0], "unloaded", outcome="fired", is_catching_up=True)

        assert again(load).state == "unloaded"
        assert spot(piece) == ("bisque", "bisqued")

    def test_keeps_in_doubt_what_others_told_otherwise(self, yard, maker, technician, owner):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)
        tell(load, technician[0], "settled", NOW)
        heard = JournalEntry.objects.order_by("-seq").first().seq
        tell(load, technician[0], "called_off", NOW + HOUR, reason="vent fan dead")

        late = {"based_on": heard}
        event = tell(load, owner[0], "loading", NOW + 2 * HOUR, act=late)

        assert again(load).state == "called_off"
        assert again(load).is_in_doubt
        assert spot(piece) == ("drying", "bone_dry")
        assert event.pk in [e.pk for e in Load.objects.get(pk=load.pk).events.all()]

    def test_does_not_depend_on_which_was_heard_first(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)
        tell(load, technician[0], "settled", NOW)
        steps = [("started", 2, {}), ("ended", 9, {}), ("loading", 1, {}), ("opened", 30, {})]
        for kind, hours, more in steps:
            given = {"celsius": 60.0} if kind == "opened" else more
            tell(
                load,
                technician[0],
                kind,
                NOW + hours * HOUR,
                is_catching_up=True,
                **given,
            )

        tell(load, technician[0], "unloaded", NOW + 31 * HOUR, outcome="fired")

        now = again(load)
        assert (now.state, now.loaded_at) == ("unloaded", NOW + HOUR)
        assert not now.is_in_doubt
        assert spot(piece) == ("bisque", "bisqued")


class TestSettled:
    def test_wants_every_story_settled_first(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)
        type(piece).objects.filter(pk=piece.pk).update(has_clash=True)

        with pytest.raises(WareHeld) as refused:
            tell(load, technician[0], "settled", NOW)

        assert refused.value.facts["refused"][0]["id"] == str(piece.pk)

    def test_is_refused_twice_and_can_be_reopened_with_a_reason(self, yard, technician):
        load = yards.load(yard)
        tell(load, technician[0], "settled", NOW)
        with pytest.raises(LoadOutOfOrder):
            tell(load, technician[0], "settled", NOW + HOUR)
        with pytest.raises(ReasonWanted):
            tell(load, technician[0], "reopened", NOW + HOUR)

        tell(load, technician[0], "reopened", NOW + HOUR, reason="a shelf is free")

        assert again(load).state == "open"


class TestClockChange:
    def test_counts_hours_that_passed(self, yard, technician):
        """24 October 2026, 19:00 BST to 05:00 GMT: 11 h 00, though clocks show ten."""
        lit = NOW.replace(day=24, hour=18)
        load = yards.load(yard, starts_at=lit, made_at=lit - DAY, is_unplanned=True)

        tell(load, technician[0], "started", lit)
        tell(load, technician[0], "ended", lit + 11 * HOUR, outcome="fired")

        now = again(load)
        assert (now.ended_at - now.started_at) / HOUR == 11.0
