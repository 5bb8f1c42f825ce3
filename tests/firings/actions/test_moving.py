"""Ware goes back where it came from, and what befell it goes with it."""

from datetime import timedelta

import pytest

from firings.domain.load_rules import ReasonWanted
from pieces.actions import moves, parts, stages
from pieces.actions.shapes import Visit
from pieces.domain.stages import GLAZE_FIRED, GLAZED
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, again, age_of, fired, place_of, put, spot, tell, tile
from tests.pieces import kit as pieces_kit


class TestCalledOff:
    """Eight glazed pieces, the vent dead after loading, one of them chipped."""

    def test_takes_all_back_to_where_they_were(self, yard, maker, technician):
        other_shelf = factories.place(yard.studio, "Rack D", "rack")
        pieces = [tile(yard, maker[0], GLAZED) for _ in range(8)]
        moves.move(act=factories.act(maker[0], NOW - HOUR), pieces=pieces[4:], place=other_shelf)
        load = yards.load(yard, "glaze")
        put(load, maker[0], *pieces)
        tell(load, technician[0], "settled", NOW)
        tell(load, technician[0], "loading", NOW + HOUR)
        chipped = pieces[3]
        act = factories.act(technician[0], NOW + HOUR + timedelta(minutes=20))
        parts.report_damage(act=act, pieces=[chipped], how="edge")

        tell(load, technician[0], "called_off", NOW + 2 * HOUR, reason="vent fan dead")

        assert {spot(piece) for piece in pieces} == {("glaze", "glazed")}
        assert [place_of(piece) for piece in pieces] == ["Rack C"] * 4 + ["Rack D"] * 4
        assert [pieces_kit.again(p).is_damaged for p in pieces] == [p == chipped for p in pieces]

    def test_counts_no_firing_of_kiln_elements_or_pieces(self, yard, maker, technician):
        piece, load = tile(yard, maker[0], GLAZE_FIRED), yards.load(yard, "glaze")
        put(load, maker[0], piece)
        before = firings_of(maker, piece)
        tell(load, technician[0], "settled", NOW)
        tell(load, technician[0], "loading", NOW + HOUR)

        tell(load, technician[0], "called_off", NOW + 2 * HOUR, reason="vent fan dead")

        assert spot(piece) == ("glaze", "glaze_fired")
        assert firings_of(maker, piece) == before == {"bisque": 1, "glaze": 1}
        assert (age_of(yard.finch).firings, age_of(yard.finch).hot_h) == (0, 0.0)

    def test_leaves_what_a_later_act_has_moved_on(self, yard, maker, technician):
        stayed, went = tile(yard, maker[0], GLAZED), tile(yard, maker[0], GLAZED)
        load = yards.load(yard, "glaze")
        put(load, maker[0], stayed, went)
        tell(load, technician[0], "settled", NOW)
        tell(load, technician[0], "loading", NOW + HOUR)
        act = factories.act(maker[0], NOW + HOUR + timedelta(minutes=9))
        stages.advance(
            act=act,
            piece=went,
            visit=Visit("bisque", "bisqued", reason="washed off", place=yard.shed),
        )

        tell(load, technician[0], "called_off", NOW + 2 * HOUR, reason="vent fan dead")

        assert spot(stayed) == ("glaze", "glazed")
        assert spot(went) == ("bisque", "bisqued")
        assert place_of(went) == "Kiln shed"

    def test_takes_back_what_was_added_while_it_was_loaded(self, yard, maker, technician):
        load, late = yards.load(yard, "glaze"), tile(yard, maker[0], GLAZED)
        put(load, maker[0], tile(yard, maker[0], GLAZED))
        tell(load, technician[0], "settled", NOW)
        tell(load, technician[0], "loading", NOW + HOUR)
        then = NOW + HOUR + timedelta(minutes=5)
        put(load, technician[0], late, at=then, may_build=True)
        assert (spot(late), place_of(late)) == (("glaze", "in_glaze"), "K2 Finch")

        tell(load, technician[0], "called_off", NOW + 2 * HOUR, reason="vent fan dead")

        assert (spot(late), place_of(late)) == (("glaze", "glazed"), "Rack C")

    def test_frees_the_ware_for_another_load(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)

        tell(load, technician[0], "called_off", NOW, reason="no power on Monday")

        assert put(yards.load(yard), maker[0], piece)

    def test_wants_a_reason(self, yard, technician):
        with pytest.raises(ReasonWanted):
            tell(yards.load(yard), technician[0], "called_off", NOW, reason=" ")


def firings_of(maker, piece):
    answer = maker[1].get(f"/api/v1/studios/yard/pieces/{piece.pk}/")
    return answer.json()["firings"]


class TestFiredTwice:
    """Glazed, fired, crawled; ground, glazed thick and fired again."""

    def test_is_two_visits_and_two_glaze_firings(self, yard, maker, technician):
        piece, first = tile(yard, maker[0], GLAZED), yards.load(yard, "glaze")
        put(first, maker[0], piece)
        fired(first, technician[0], at=NOW, place=yard.rack)
        second = yards.load(yard, "glaze", starts_at=NOW + 9 * DAY)
        put(second, maker[0], piece, at=NOW + 3 * DAY)

        fired(second, technician[0], at=NOW + 4 * DAY, place=yard.rack)

        assert firings_of(maker, piece) == {"bisque": 1, "glaze": 2}
        answer = maker[1].get(f"/api/v1/studios/yard/pieces/{piece.pk}/").json()
        ends = [v for v in answer["visits"] if v["state"] == "glaze_fired"]
        assert [v["occasion_name"] for v in ends] == [first.number, second.number]


class TestStopped:
    """A bisque at 868 °C, power off for 95 minutes, cone 05 upright next day."""

    def test_moves_nothing_until_somebody_decides(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)
        for kind, hours in (("settled", 0), ("loading", 1), ("started", 2)):
            tell(load, technician[0], kind, NOW + hours * HOUR)

        tell(load, technician[0], "stopped", NOW + 8 * HOUR, celsius=868.0)

        assert again(load).state == "stopped"
        assert spot(piece) == ("bisque", "in_bisque")

    def test_follows_every_piece_to_glazing_whatever_is_chosen(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)
        for kind, hours in (("settled", 0), ("loading", 1), ("started", 2), ("stopped", 8)):
            tell(load, technician[0], kind, NOW + hours * HOUR)
        tell(load, technician[0], "ended", NOW + 10 * HOUR, outcome="not_fired")
        tell(load, technician[0], "opened", NOW + 24 * HOUR, celsius=94.0)
        tell(load, technician[0], "unloaded", NOW + 25 * HOUR)
        assert spot(piece) == ("drying", "bone_dry")

        refire = yards.load(yard, starts_at=NOW + 60 * HOUR)
        put(refire, maker[0], piece, at=NOW + 26 * HOUR)
        fired(refire, technician[0], at=NOW + 27 * HOUR)

        assert spot(piece) == ("bisque", "bisqued")
        assert pieces_kit.again(piece).has_interrupted_bisque
        assert age_of(yard.ox).firings == 1
        assert firings_of(maker, piece) == {"bisque": 1, "glaze": 0}

    def test_goes_on_when_it_is_lit_again(self, yard, maker, technician):
        piece, load = tile(yard, maker[0]), yards.load(yard)
        put(load, maker[0], piece)
        for kind, hours in (("settled", 0), ("loading", 1), ("started", 2), ("stopped", 8)):
            tell(load, technician[0], kind, NOW + hours * HOUR)
        tell(load, technician[0], "resumed", NOW + 9.5 * HOUR, celsius=702.0)
        tell(load, technician[0], "ended", NOW + 14 * HOUR, outcome="fired")
        tell(load, technician[0], "opened", NOW + 30 * HOUR, celsius=80.0)
        tell(load, technician[0], "unloaded", NOW + 31 * HOUR)

        assert spot(piece) == ("bisque", "bisqued")
        assert pieces_kit.again(piece).has_interrupted_bisque
