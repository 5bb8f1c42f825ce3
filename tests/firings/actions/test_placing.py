"""Putting ware on a load: all or none, with every exception named."""

from datetime import timedelta

import pytest

from firings.actions import cones, placing
from firings.actions.gating import NotPlaced
from firings.actions.placing import LoadOver, PastCutOff, PieceAsked, TakenOff, ThingAsked
from firings.domain.cones import MixedCones
from firings.domain.load_rules import LoadSettled
from firings.models import Placement
from pieces.actions import weighings
from pieces.domain.stages import BISQUED, DRYING, GLAZE_FIRED, GLAZED
from pieces.models import Piece
from studio.models import JournalEntry, JournalSubject
from tests import factories
from tests.factories import NOW
from tests.firings import yard as yards
from tests.firings.yard import DAY, HOUR, put, tell, tile

WORKERS = 4


def refused_by(error):
    return {row["mark"]: row["code"] for row in error.value.facts["refused"]}


class TestPlace:
    def test_puts_ware_of_many_makers_on_by_one_act(self, yard, maker, owner):
        load = yards.load(yard)
        pieces = [tile(yard, maker[0]), tile(yard, owner[0]), tile(yard, owner[0])]

        rows = put(load, maker[0], *pieces)

        assert [row.piece for row in rows] == pieces
        entry = JournalEntry.objects.get(verb="put_on_load")
        told_of = set(JournalSubject.objects.filter(entry=entry).values_list("subject_id"))
        assert told_of == {(load.pk,), *((piece.pk,) for piece in pieces)}

    def test_puts_none_where_one_does_not_go_and_names_each(self, yard, maker):
        load = yards.load(yard)
        tile(yard, maker[0], mark="T1")
        tile(yard, maker[0], DRYING, mark="T2")
        tile(yard, maker[0], BISQUED, mark="T3")
        doubtful = tile(yard, maker[0], mark="T4")
        found = tile(yard, maker[0], mark="T5")
        Piece.objects.filter(pk=doubtful.pk).update(has_clash=True)
        Piece.objects.filter(pk=found.pk).update(unclaimed_since=NOW)
        pieces = list(Piece.objects.select_related("design", "maker").order_by("mark"))

        with pytest.raises(NotPlaced) as error:
            put(load, maker[0], *pieces)

        assert refused_by(error) == {
            "T2": "damp-evidence-missing",
            "T3": "wrong-stage",
            "T4": "two-stories",
            "T5": "unclaimed",
        }
        assert Placement.objects.count() == 0

    def test_keeps_a_piece_in_one_load(self, yard, maker):
        piece, first = tile(yard, maker[0]), yards.load(yard)
        put(first, maker[0], piece)

        with pytest.raises(NotPlaced) as error:
            put(yards.load(yard), maker[0], piece)

        assert error.value.facts["refused"][0]["code"] == "in-another-load"
        assert first.number in error.value.facts["refused"][0]["detail"]

    def test_takes_things_that_are_no_pieces_here(self, yard, technician):
        load = yards.load(yard, "test", cone="6")

        rows = put(load, technician[0], things=[ThingAsked("colour test bars", 12)])

        assert (rows[0].what, rows[0].count, rows[0].piece) == ("colour test bars", 12, None)


class TestDryness:
    def test_wants_evidence_and_shows_the_steam_caution(self, yard, maker):
        piece, load = tile(yard, maker[0], DRYING), yards.load(yard)

        with pytest.raises(NotPlaced) as error:
            put(load, maker[0], piece, override_reason="it feels dry to me")

        assert error.value.facts["ask"] == "technician"
        assert "steam" in error.value.facts["cautions"][0]["detail"]

    def test_is_set_aside_by_a_reason_of_who_may(self, yard, maker, technician):
        piece, load = tile(yard, maker[0], DRYING), yards.load(yard)

        rows = put(
            load, technician[0], piece, may_override=True, override_reason="warm hold of 12 h"
        )

        assert rows[0].override_reason == "warm hold of 12 h"
        assert rows[0].overrides == ["damp-evidence-missing"]

    def test_is_not_set_aside_without_a_reason(self, yard, technician):
        piece, load = tile(yard, technician[0], DRYING), yards.load(yard)

        with pytest.raises(NotPlaced):
            put(load, technician[0], piece, may_override=True, override_reason="  ")

    @pytest.mark.parametrize(("later_g", "goes"), [(499.5, True), (470.0, False)])
    def test_is_shown_by_two_weighings_half_a_day_apart(self, yard, maker, later_g, goes):
        piece, load = tile(yard, maker[0], DRYING), yards.load(yard)
        for hours, mass_g in ((40, 500.0), (26, later_g)):
            act = factories.act(maker[0], NOW - hours * HOUR)
            weighings.weigh(act=act, piece=piece, mass_g=mass_g)

        if goes:
            assert put(load, maker[0], piece)
        else:
            with pytest.raises(NotPlaced):
                put(load, maker[0], piece)


class TestCones:
    def test_refuses_to_mix_them(self, yard, maker):
        load, low = yards.load(yard, "glaze"), tile(yard, maker[0], GLAZED)
        high = tile(yard, maker[0], GLAZED)
        act = factories.act(maker[0], NOW - 2 * DAY)
        cones.ask_for(act=act, piece=low, given=cones.TicketGiven("glaze", "04"))

        with pytest.raises(MixedCones):
            put(load, maker[0], low, high)

        assert put(load, maker[0], high)

    def test_refuses_a_body_that_does_not_bear_it(self, yard, maker):
        yard.body.top_cone = "2"
        yard.body.save()

        with pytest.raises(MixedCones):
            put(yards.load(yard, "glaze"), maker[0], tile(yard, maker[0], GLAZED))

    def test_warns_of_a_body_nobody_knows_the_top_of(self, yard, maker):
        yard.body.top_cone = ""
        yard.body.save()
        asked = [PieceAsked(tile(yard, maker[0], GLAZED))]

        act = factories.act(maker[0], NOW - HOUR)
        placed = placing.place(act=act, load=yards.load(yard, "glaze"), pieces=asked)

        assert "body-unknown" in {said.code for said in placed.warnings}


class TestWarnings:
    def test_are_given_of_thick_ware_for_the_whole_load(self, yard, maker):
        yard.kit.tile.parts.update(thickest_mm=14.0)
        asked = [PieceAsked(tile(yard, maker[0]))]

        placed = placing.place(
            act=factories.act(maker[0], NOW - HOUR), load=yards.load(yard), pieces=asked
        )

        said = {warning.code: warning.detail for warning in placed.warnings}
        assert "thick-wall" in said
        assert said["warm-hold-for-all"].startswith(f"Thick: {asked[0].piece.shown_mark}.")

    def test_are_given_of_a_second_glaze_firing(self, yard, maker):
        asked = [PieceAsked(tile(yard, maker[0], GLAZE_FIRED))]
        act = factories.act(maker[0], NOW - HOUR)

        placed = placing.place(act=act, load=yards.load(yard, "glaze"), pieces=asked)

        assert "glaze-fired-again" in {said.code for said in placed.warnings}


class TestSettledLoad:
    def test_refuses_late_claims_with_the_next_one_named(self, yard, maker, technician):
        load = yards.load(yard)
        later = yards.load(yard, starts_at=NOW + 9 * DAY)
        tell(load, technician[0], "settled", NOW - 30 * HOUR)

        with pytest.raises(LoadSettled) as error:
            put(load, maker[0], tile(yard, maker[0]))

        facts = error.value.facts
        assert facts["next_load"]["number"] == later.number
        assert facts["ask"] == "technician"
        assert facts["settled_at"] == (NOW - 30 * HOUR + timedelta(seconds=20)).isoformat()

    def test_takes_nothing_off_either(self, yard, maker, technician):
        load = yards.load(yard)
        row = put(load, maker[0], tile(yard, maker[0]))[0]
        tell(load, technician[0], "settled", NOW)

        with pytest.raises(LoadSettled):
            placing.take_off(act=factories.act(maker[0], NOW + HOUR), placement=row)


class TestCutOff:
    def test_closes_the_list_to_all_but_who_builds(self, yard, maker, technician):
        load, piece = yards.load(yard), tile(yard, maker[0])
        late = load.cutoff_at + HOUR

        with pytest.raises(PastCutOff) as error:
            put(load, maker[0], piece, at=late)

        assert error.value.facts["ask"] == "technician"
        assert put(load, technician[0], piece, at=late, may_build=True)


class TestRoom:
    """K2 takes nine round jars of 110 mm to a shelf of 430 mm with 6 mm between."""

    def jars(self, yard, maker, count):
        yards.size(yard.kit.tile, 110.0, 110.0, 480.0, is_round=True)
        yard.body.dry_shrinkage_fraction = 0.0
        yard.body.save()
        return [tile(yard, maker[0], GLAZED) for _ in range(count)]

    def test_is_not_given_twice(self, yard, maker):
        jars, load = self.jars(yard, maker, 10), yards.load(yard, "glaze")
        put(load, maker[0], *jars[:9])

        with pytest.raises(NotPlaced) as error:
            put(load, maker[0], jars[9])

        assert error.value.facts["refused"][0]["code"] == "too-full"
        assert Placement.objects.filter(load=load).count() == 9

    def test_may_be_stretched_by_who_builds_with_a_reason(self, yard, maker, technician):
        jars, load = self.jars(yard, maker, 10), yards.load(yard, "glaze")
        put(load, maker[0], *jars[:9])

        rows = put(load, technician[0], jars[9], may_build=True, override_reason="on its lid")

        assert rows[0].overrides == ["too-full"]


class TestTakeOff:
    def test_frees_the_piece_and_is_done_once(self, yard, maker):
        load, piece = yards.load(yard), tile(yard, maker[0])
        row = put(load, maker[0], piece)[0]

        placing.take_off(act=factories.act(maker[0], NOW - HOUR), placement=row)

        with pytest.raises(TakenOff):
            placing.take_off(act=factories.act(maker[0], NOW), placement=row)
        assert put(load, maker[0], piece)


class TestShift:
    def test_writes_the_shelf_until_the_load_is_over(self, yard, maker, technician):
        load = yards.load(yard)
        row = put(load, maker[0], tile(yard, maker[0]))[0]
        tell(load, technician[0], "settled", NOW)

        act = factories.act(technician[0], NOW + HOUR)
        placing.shift(act=act, placement=row, changes={"level": 2, "x_mm": 40.0})

        assert Placement.objects.get(pk=row.pk).level == 2
        tell(load, technician[0], "called_off", NOW + HOUR, reason="no power")
        act = factories.act(technician[0], NOW + 2 * HOUR)
        with pytest.raises(LoadOver):
            placing.shift(act=act, placement=row, changes={"level": 1})
