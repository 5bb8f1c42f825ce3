from concurrent.futures import ThreadPoolExecutor

import pytest
from django.db import connection, transaction

from studio.actions import journal
from studio.actions.journal import (
    AlreadyCorrected,
    CannotTakeBack,
    CorrectsAnother,
    CorrectsNothing,
    NotYoursToCorrect,
)
from studio.domain.ids import uuid7
from studio.models import JournalEntry, JournalSubject, Note
from studio.queries import chain
from tests import factories


class TestWrite:
    def test_works(self, studio, maker, now):
        act = factories.act(maker[0], note="seam opened", clock_offset_s=-2.5, based_on=1)
        piece, part = uuid7(), uuid7()

        entry = journal.write(
            act=act,
            verb="pressed",
            subjects=[("piece", piece), ("part", part)],
            facts={"count": 2, "piece": piece, "at": now},
        )

        entry.refresh_from_db()
        assert (entry.pk, entry.seq, entry.member, entry.device) == (
            act.id,
            2,
            maker[0],
            act.device,
        )
        assert entry.happened_at < entry.written_at
        assert entry.facts["piece"] == str(piece)
        assert entry.facts["at"] == "2026-10-31T09:00:00.000Z"
        subjects = JournalSubject.objects.filter(entry=entry)
        assert {(s.kind, s.subject_id) for s in subjects} == {("piece", piece), ("part", part)}

    def test_keeps_the_words_of_a_note_apart(self, studio, maker):
        entry = factories.entry(maker[0], note="ask Odile")

        note = Note.objects.get(entry=entry)
        assert note.text == "ask Odile"
        assert "Odile" not in str(entry.facts)
        assert entry.facts["note_sha256"] == note.sha256

    def test_refuses_to_correct_what_was_never_written(self, studio, maker, stranger):
        elsewhere = factories.entry(stranger[0])

        for corrects in (uuid7(), elsewhere.pk):
            with pytest.raises(CorrectsNothing):
                factories.entry(maker[0], corrects=corrects)

    def test_refuses_to_correct_twice(self, studio, maker, owner):
        wrong = factories.entry(maker[0])
        right = factories.entry(maker[0], corrects=wrong.pk)

        with pytest.raises(AlreadyCorrected) as refused:
            factories.entry(owner[0], corrects=wrong.pk)

        assert refused.value.facts == {"by": str(right.pk)}

    def test_refuses_to_take_back_what_took_back(self, studio, maker):
        wrong = factories.entry(maker[0])
        back = factories.entry(maker[0], verb="took_back", corrects=wrong.pk)

        with pytest.raises(CannotTakeBack):
            factories.entry(maker[0], corrects=back.pk)

    def test_corrects_the_same_kind_of_act_only(self, studio, maker):
        wrong = factories.entry(maker[0], verb="weighed")

        with pytest.raises(CorrectsAnother):
            factories.entry(maker[0], verb="moved", corrects=wrong.pk)

    def test_leaves_what_others_told_to_them_and_the_owner(self, studio, maker, technician, owner):
        wrong = factories.entry(maker[0], verb="weighed")

        with pytest.raises(NotYoursToCorrect):
            factories.entry(technician[0], verb="weighed", corrects=wrong.pk)
        assert factories.entry(owner[0], verb="weighed", corrects=wrong.pk).corrects == wrong.pk

    def test_numbers_writers_that_come_at_once_one_after_another(self, unlocked_journal, clock):
        studio = factories.studio("yard")
        acts = [factories.act(factories.member(studio, first_name=name)) for name in "ABCDEFGH"]

        def write(act):
            try:
                return writes(act).seq
            finally:
                connection.close()

        with ThreadPoolExecutor(4) as phones:
            seqs = list(phones.map(write, acts))

        assert sorted(seqs) == list(range(2, 10))
        assert chain.faults(studio) == []

    def test_numbers_each_studio_by_itself(self, studio, maker, stranger):
        factories.entry(maker[0])
        factories.entry(maker[0])

        assert factories.entry(stranger[0]).seq == 2
        assert list(
            JournalEntry.objects.filter(studio=studio).values_list("seq", flat=True).order_by("seq")
        ) == [1, 2, 3]


def writes(act):
    with transaction.atomic():
        return journal.write(act=act, verb="noted", subjects=[("member", act.member.pk)])
