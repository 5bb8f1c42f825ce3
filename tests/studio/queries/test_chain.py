from types import SimpleNamespace

import pytest
from django.db import connection
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from studio.domain.ids import uuid7
from studio.models import AppendOnly, JournalEntry, JournalHead, JournalSubject, Note
from studio.queries import chain
from tests import factories

WORDS = st.text(st.characters(exclude_categories=("Cs",), exclude_characters="\x00"), max_size=20)
NUMBERS = st.integers(-(2**53), 2**53) | st.floats(allow_nan=False, allow_infinity=False)
FACTS = st.dictionaries(
    WORDS,
    st.recursive(
        st.none() | st.booleans() | NUMBERS | WORDS,
        lambda inner: st.lists(inner, max_size=3) | st.dictionaries(WORDS, inner, max_size=3),
        max_leaves=6,
    ),
    max_size=4,
)
ACTS = st.lists(st.tuples(FACTS, WORDS, st.integers(0, 4)), min_size=1, max_size=6)

# The database is rolled back after all examples; each example writes into a studio of its own.
many = settings(
    max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)


def written(acts):
    """Return a studio whose journal tells of the acts."""
    studio = factories.studio(f"yard-{uuid7()}")
    member = factories.member(studio)
    for facts, note, subjects in acts:
        factories.entry(
            member, facts=facts, note=note, subjects=[("piece", uuid7()) for _ in range(subjects)]
        )
    return studio


@pytest.fixture
def forger(db):
    """Lifts the locks, as somebody with the database's password could."""

    def lifted():
        connection.check_constraints()  # PostgreSQL lets no trigger go while it has checks to make
        with connection.cursor() as cursor:
            editor = SimpleNamespace(execute=cursor.execute, connection=connection)
            for table in ("studio_journalentry", "studio_journalsubject"):
                AppendOnly(editor).unlock(table)

    return lifted


class TestWhole:
    @many
    @given(acts=ACTS)
    def test_has_no_gap_and_no_fault(self, db, acts):
        studio = written(acts)

        seqs = JournalEntry.objects.filter(studio=studio).order_by("seq")
        assert list(seqs.values_list("seq", flat=True)) == list(range(1, len(acts) + 2))
        assert chain.faults(studio) == []

    def test_stays_whole_when_a_note_is_blanked(self, db):
        studio = written([({}, "the lid dropped", 1)])

        Note.objects.filter(studio=studio).update(text="", blanked_at=factories.NOW)

        assert chain.faults(studio) == []


class TestForged:
    @many
    @given(acts=ACTS, data=st.data())
    def test_is_found_in_every_column(self, forger, acts, data):
        studio = written(acts)
        forger()
        seq = data.draw(st.integers(1, len(acts) + 1), label="seq")
        column, value = data.draw(
            st.sampled_from(
                [
                    ("verb", "forged"),
                    ("happened_at", factories.NOW.replace(year=2025)),
                    ("written_at", factories.NOW.replace(year=2025)),
                    ("clock_offset_s", 7.5),
                    ("based_on", 99),
                    ("corrects", uuid7()),
                    ("facts", {"forged": True}),
                    ("as_typed", {"/mass_g": "1 lb"}),
                    ("digest", "0" * 64),
                    ("previous_digest", "0" * 64),
                ]
            ),
            label="column",
        )

        JournalEntry.objects.filter(studio=studio, seq=seq).update(**{column: value})

        assert seq in {fault.seq for fault in chain.faults(studio)}

    def test_is_found_in_what_it_is_about(self, forger):
        studio = written([({}, "", 2)])
        forger()

        JournalSubject.objects.filter(entry__studio=studio, kind="piece").update(kind="part")

        assert chain.faults(studio) == [chain.Fault(2, "changed")]

    def test_is_found_in_the_words_of_a_note(self, db):
        studio = written([({}, "the lid dropped", 1)])

        Note.objects.filter(studio=studio).update(text="the lid was fine")

        assert chain.faults(studio) == [chain.Fault(2, "note changed")]

    @pytest.mark.parametrize(("seq", "what"), [(2, "missing"), (3, "end missing")])
    def test_misses_what_was_taken_out(self, forger, seq, what):
        studio = written([({}, "", 1), ({}, "", 1)])
        forger()

        JournalSubject.objects.filter(entry__studio=studio, entry__seq=seq).delete()
        JournalEntry.objects.filter(studio=studio, seq=seq).delete()

        assert chain.Fault(seq, what) in chain.faults(studio)

    def test_is_found_when_the_whole_chain_is_made_anew(self, forger):
        """Whoever rewrites every digest still has to rewrite the head."""
        studio = written([({"mass_g": 900}, "", 1)])
        forger()
        entry = JournalEntry.objects.get(studio=studio, seq=2)
        entry.facts = {"mass_g": 100}
        entry.digest = chain.chained(entry.previous_digest, chain.body_of(entry))

        entry.save()

        head = JournalHead.objects.get(studio=studio)
        assert chain.faults(studio) == [chain.Fault(head.seq, "end missing")]
