"""The fixtures themselves: that a real transaction is cleared away and the locks come back."""

import pytest
from django.db import DatabaseError, transaction

from studio.models import JournalEntry
from tests import factories


@pytest.mark.parametrize("turn", ["one", "another"])
class TestUnlockedJournal:
    def test_leaves_nothing_and_locks_again(self, unlocked_journal, turn):
        assert JournalEntry.objects.count() == 0

        factories.studio("yard")

        with pytest.raises(DatabaseError, match="append-only"), transaction.atomic():
            JournalEntry.objects.update(verb=turn)


class TestRowsOfEveryApp:
    def test_can_be_made(self, studio, maker):
        design = factories.design(studio, body=factories.clay_body(studio))
        made_as = factories.design_part(design)
        casting = factories.casting(factories.mould_set(made_as))
        factories.mould_part(casting)
        factories.colour_batch(studio)
        factories.slab_block(studio)

        piece = factories.piece(design, maker[0])
        part = factories.part(piece)

        assert part.role == "tile"
        assert factories.entry(maker[0]).seq == 2
