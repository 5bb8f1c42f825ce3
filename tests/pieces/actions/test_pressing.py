from datetime import timedelta

import pytest

from moulds.models import MouldPart, Pressing
from pieces.actions import pressing
from pieces.actions.pressing import PartExists, RoleUnknown, TooManyParts
from pieces.actions.shapes import PartGiven, PieceGiven
from pieces.models import Clash, Part, Piece
from studio.models import JournalEntry
from tests import factories
from tests.factories import NOW
from tests.pieces.kit import again, given, part_of, press, pressed_boat, pressed_tile, spot


class TestPress:
    def test_makes_the_piece_and_its_part_in_one_act(self, kit, maker, act):
        told = act(maker[0])

        pressed = press(told, kit.tile_mould, "tile", given(kit.tile, "T29"))

        piece = pressed.pieces[0]
        assert (piece.mark, piece.maker, piece.body) == ("T29", maker[0], kit.tile.body)
        assert spot(piece) == ("pressing", "in_mould")
        assert pressed.parts[0].pressing == pressed.pressing
        entry = JournalEntry.objects.get(pk=told.id)
        assert entry.verb == "pressed"
        kinds = set(entry.subjects.values_list("kind", flat=True))
        assert kinds == {"piece", "part", "casting", "mould_set", "mould_part"}

    def test_counts_on_every_mould_part_it_used(self, kit, maker, act):
        pieces = [given(kit.tile) for _ in range(12)]

        press(act(maker[0]), kit.tile_mould, "tile", *pieces)

        assert Pressing.objects.get().count == 12
        assert set(MouldPart.objects.values_list("presses", flat=True)) == {0, 12}
        marks = Piece.objects.order_by("mark_key").values_list("mark", flat=True)
        assert list(marks)[:2] == ["T01", "T02"]

    def test_adds_a_part_to_a_piece_that_is_there(self, kit, maker):
        boat = pressed_boat(kit, maker[0])

        assert Piece.objects.count() == 1
        assert spot(boat) == ("pressing", "in_mould")
        assert set(Part.objects.values_list("role", flat=True)) == {"body", "handle"}

    def test_puts_a_new_piece_where_its_mould_is_kept(self, kit, maker, studio):
        bench = factories.place(studio, "Bench 1")
        kit.tile_mould.casting.mould_set.place = bench
        kit.tile_mould.casting.mould_set.save()

        assert again(pressed_tile(kit, maker[0])).place == bench

    def test_passes_on_what_the_mould_says(self, kit, maker, act):
        pressed = press(act(maker[0]), kit.tile_mould, "tile", given(kit.tile))

        assert [warning.code for warning in pressed.warnings] == ["first-press-may-stick"]

    def test_keeps_a_piece_whose_mark_is_taken(self, kit, maker, owner, act):
        first = pressed_tile(kit, maker[0], mark="T29")

        pressed = press(act(owner[0]), kit.tile_mould, "tile", given(kit.tile, "\u200bt29"))

        second = again(pressed.pieces[0])
        assert (second.shown_mark, second.has_clash) == ("t29·b", True)
        assert again(first).shown_mark == "T29"
        clash = Clash.objects.get()
        assert (clash.kind, clash.piece) == ("number_taken", second)
        assert "number-taken" in {warning.code for warning in pressed.warnings}

    def test_refuses_a_role_that_the_mould_does_not_make(self, kit, maker, act):
        with pytest.raises(RoleUnknown):
            press(act(maker[0]), kit.body_mould, "handle", given(kit.boat))

    def test_refuses_more_parts_than_pressings(self, kit, maker, act):
        with pytest.raises(TooManyParts):
            press(act(maker[0]), kit.tile_mould, "tile", given(kit.tile), given(kit.tile), count=1)

    def test_refuses_a_part_that_is_there(self, kit, maker, act):
        pressed_tile(kit, maker[0])
        taken = Part.objects.get()
        piece = given(kit.tile)

        with pytest.raises(PartExists):
            pressing.press(
                act=act(maker[0]),
                casting=kit.tile_mould.casting,
                mould_parts=kit.tile_mould.parts,
                parts=[PartGiven(taken.pk, "tile", piece)],
            )

    def test_begins_the_piece_when_it_was_pressed_however_late_it_is_told(self, kit, maker, act):
        long_ago = NOW - timedelta(days=3)
        told = act(maker[0], long_ago, written_at=NOW)

        piece = again(press(told, kit.tile_mould, "tile", given(kit.tile)).pieces[0])

        assert (piece.begun_at, piece.since_at) == (long_ago, long_ago)

    def test_replaces_a_handle_in_the_same_act(self, kit, maker, act):
        boat = pressed_boat(kit, maker[0])
        old = part_of(boat, "handle")

        again_pressed = act(maker[0], NOW - timedelta(hours=2))
        press(again_pressed, kit.handle_mould, "handle", given_for(boat), replaces=old)

        assert part_of(boat, "handle").state == "replaced"
        assert part_of(boat, "handle", 2).replaces == old


def given_for(piece):
    return PieceGiven(piece.pk, piece.design)
