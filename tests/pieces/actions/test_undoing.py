from datetime import timedelta

import pytest

from moulds.models import Master, MouldPart
from pieces.actions import clashes, parts, planning, retractions, stages
from pieces.actions.shapes import PieceGiven, Visit
from pieces.models import Clash, Piece, StageEvent
from studio.actions.journal import AlreadyCorrected, CannotTakeBack
from studio.domain.ids import uuid7
from studio.models import JournalEntry
from studio.queries.journal import highest_seq
from tests.factories import NOW
from tests.pieces.kit import again, given, part_of, press, pressed_tile, spot

HOUR = timedelta(hours=1)


class TestRetract:
    def test_is_as_if_it_had_never_happened(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])
        told = act(maker[0], NOW - HOUR)
        parts.record_event(act=told, part=part_of(piece, "tile"), kind="demoulded")

        retractions.retract(act=act(maker[0], corrects=told.id), may_any=False)

        assert spot(piece) == ("pressing", "in_mould")
        assert part_of(piece, "tile").out_at is None

    def test_takes_a_pressing_off_mould_and_list_and_frees_the_mark(self, kit, maker, act):
        told = act(maker[0], NOW - HOUR)
        piece = press(told, kit.tile_mould, "tile", given(kit.tile, "T29")).pieces[0]

        retractions.retract(act=act(maker[0], corrects=told.id), may_any=False)

        assert again(piece).is_undone
        assert set(MouldPart.objects.values_list("presses", flat=True)) == {0}
        anew = press(act(maker[0]), kit.tile_mould, "tile", given(kit.tile, "T29")).pieces[0]
        assert anew.shown_mark == "T29"

    def test_leaves_what_others_told(self, kit, maker, helper, act):
        piece = pressed_tile(kit, maker[0])
        told = act(maker[0], NOW - HOUR)
        parts.record_event(act=told, part=part_of(piece, "tile"), kind="demoulded")

        with pytest.raises(retractions.SomebodyElses):
            retractions.retract(act=act(helper[0], corrects=told.id), may_any=False)

    def test_takes_nothing_back_twice_nor_a_taking_back(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])
        told = act(maker[0], NOW - HOUR)
        parts.record_event(act=told, part=part_of(piece, "tile"), kind="demoulded")
        back = act(maker[0], corrects=told.id)
        retractions.retract(act=back, may_any=False)

        with pytest.raises(AlreadyCorrected):
            retractions.retract(act=act(maker[0], corrects=told.id), may_any=False)
        with pytest.raises(CannotTakeBack):
            retractions.retract(act=act(maker[0], corrects=back.id), may_any=False)


class TestCorrect:
    def test_moves_what_was_told_of_the_wrong_piece(self, kit, maker, act):
        right, wrong = (pressed_tile(kit, maker[0]) for _ in range(2))
        slip = act(maker[0], NOW - HOUR)
        moved = parts.record_event(act=slip, part=part_of(wrong, "tile"), kind="demoulded")

        told = act(maker[0], NOW - HOUR, corrects=moved.pk)
        parts.record_event(act=told, part=part_of(right, "tile"), kind="demoulded")

        assert spot(right) == ("drying", "drying")
        assert spot(wrong) == ("pressing", "in_mould")

    def test_takes_a_corrected_pressing_off_its_mould(self, kit, maker, act):
        slip = act(maker[0], NOW - HOUR)
        press(slip, kit.tile_mould, "tile", given(kit.tile), given(kit.tile))

        told = act(maker[0], NOW - HOUR, corrects=slip.id)
        press(told, kit.tile_mould, "tile", given(kit.tile))

        assert set(MouldPart.objects.values_list("presses", flat=True)) == {0, 1}
        assert Piece.objects.filter(is_undone=False).count() == 1


def in_doubt(kit, maker, owner, act) -> Clash:
    """Return the clash of the owner's scrapping with the maker's bisque, told without it."""
    piece = pressed_tile(kit, maker, at=NOW - 200 * HOUR)
    drying = act(maker, NOW - 180 * HOUR)
    parts.record_event(act=drying, part=part_of(piece, "tile"), kind="demoulded")
    seen = highest_seq(piece.studio)
    stages.lose(act=act(owner, NOW - 3 * HOUR), pieces=[piece])
    told = act(maker, NOW - 2 * HOUR, based_on=seen)
    stages.advance(act=told, piece=piece, visit=Visit("bisque", "in_bisque"))
    return Clash.objects.get()


class TestAnswer:
    @pytest.mark.parametrize(
        ("choice", "state"), [("first", "scrapped"), ("second", "in_bisque"), ("both", "scrapped")]
    )
    def test_settles_the_story(self, kit, maker, owner, act, choice, state):
        clash = in_doubt(kit, maker[0], owner[0], act)

        clashes.answer(act=act(maker[0]), clash=clash, choice=choice, may_any=False)

        piece = again(clash.piece)
        assert (piece.state, piece.has_clash) == (state, False)
        assert Clash.objects.get().state == "answered"

    def test_counts_once(self, kit, maker, owner, act):
        clash = in_doubt(kit, maker[0], owner[0], act)
        clashes.answer(act=act(maker[0]), clash=clash, choice="first", may_any=False)

        with pytest.raises(clashes.AlreadySettled):
            clashes.answer(act=act(owner[0]), clash=clash, choice="second", may_any=True)

    def test_leaves_the_loser_out_of_the_figures(self, kit, maker, owner, act):
        clash = in_doubt(kit, maker[0], owner[0], act)

        clashes.answer(act=act(maker[0]), clash=clash, choice="second", may_any=False)

        states = StageEvent.objects.of(clash.studio).agreed().values_list("state", flat=True)
        assert list(states) == ["in_bisque"]

    def test_can_be_taken_back(self, kit, maker, owner, act):
        clash = in_doubt(kit, maker[0], owner[0], act)
        answered = act(maker[0])
        clashes.answer(act=answered, clash=clash, choice="second", may_any=False)

        retractions.retract(act=act(maker[0], corrects=answered.id), may_any=False)

        assert again(clash.piece).has_clash
        assert Clash.objects.get().state == "open"

    def test_asks_the_maker_and_the_writers(self, kit, maker, owner, technician, act):
        clash = in_doubt(kit, maker[0], owner[0], act)

        assert set(clashes.asked(clash)) == {maker[0], owner[0]}
        with pytest.raises(clashes.NotAsked):
            clashes.answer(act=act(technician[0]), clash=clash, choice="first", may_any=False)

    def test_gives_the_plain_mark_to_the_one_chosen(self, kit, maker, act):
        first = pressed_tile(kit, maker[0], mark="T29")
        second = pressed_tile(kit, maker[0], mark="T29", at=NOW - HOUR)

        told = act(maker[0])
        clashes.answer(act=told, clash=Clash.objects.get(), choice="second", may_any=False)

        assert (again(second).shown_mark, again(first).shown_mark) == ("T29", "T29·b")
        assert not again(second).has_clash


class TestPlan:
    def test_begins_where_the_design_is(self, kit, maker, act):
        planned = planning.plan(act=act(maker[0]), pieces=[given(kit.tile), given(kit.tile)])

        assert [piece.mark for piece in planned.pieces] == ["T01", "T02"]
        assert {(piece.stage, piece.state) for piece in planned.pieces} == {
            ("pressing", "to_press")
        }

    def test_waits_for_its_model_and_goes_on_by_itself(self, kit, maker, act, studio):
        Master.objects.filter(design=kit.tile).update(is_ready=False)
        kit.tile_mould.casting.is_in_use = False
        kit.tile_mould.casting.save()
        piece = planning.plan(act=act(maker[0]), pieces=[given(kit.tile)]).pieces[0]
        assert spot(piece) == ("model", "wants_model")
        assert planning.become_possible(studio=studio, at=NOW + HOUR) == 0

        Master.objects.filter(design=kit.tile).update(is_ready=True)

        assert planning.become_possible(studio=studio, at=NOW + HOUR) == 1
        assert spot(piece) == ("mould", "wants_mould")
        entry = JournalEntry.objects.get(verb="became_possible")
        assert entry.member.is_clockwork
        assert planning.become_possible(studio=studio, at=NOW + 2 * HOUR) == 0

    def test_refuses_an_id_that_is_taken(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])

        with pytest.raises(planning.PieceExists):
            planning.plan(act=act(maker[0]), pieces=[PieceGiven(piece.pk, kit.tile)])

    def test_gives_no_number_twice(self, kit, maker, act):
        pressed_tile(kit, maker[0], mark="T02")

        planned = planning.plan(
            act=act(maker[0]), pieces=[PieceGiven(uuid7(), kit.tile) for _ in range(2)]
        )

        assert [piece.mark for piece in planned.pieces] == ["T03", "T04"]
        assert Piece.objects.count() == 3
