import pytest

from pieces.actions import uses
from studio.models import JournalEntry
from tests.pieces.kit import again, pressed_tile


class TestChange:
    def test_keeps_what_it_was_in_the_journal(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])

        uses.change(act=act(maker[0]), piece=piece, use="display", may_lift=False)

        assert again(piece).use == "display"
        facts = JournalEntry.objects.get(verb="changed_piece").facts
        assert facts == {"use": "display", "was": "food"}

    def test_lifts_display_only_for_an_owner_alone(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])
        uses.change(act=act(maker[0]), piece=piece, use="display", may_lift=False)

        with pytest.raises(uses.DisplayOnly):
            uses.change(act=act(maker[0]), piece=piece, use="food", may_lift=False)
