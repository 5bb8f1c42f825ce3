"""What every act has in common: its envelope, its repeats, its place in the journal."""

from datetime import timedelta

import pytest

from studio.actions import replays
from studio.domain.ids import uuid7
from studio.models import Away, JournalEntry, Replay
from tests.factories import NOW, sent

PATH = "/api/v1/studios/yard/away/"
DAYS = {"from_date": "2026-11-02", "until_date": "2026-11-08"}


class TestRepeat:
    def test_gets_the_same_answer_and_happens_once(self, maker):
        act = {"id": str(uuid7()), **DAYS}
        first = sent(maker[1], PATH, act)

        again = sent(maker[1], PATH, act)

        assert (again.status_code, again.json()) == (first.status_code, first.json())
        assert "Idempotent-Replay" not in first
        assert again["Idempotent-Replay"] == "true"
        assert Away.objects.count() == 1

    def test_may_come_at_another_time_of_sending(self, maker, clock):
        act = {"id": str(uuid7()), **DAYS}
        first = sent(maker[1], PATH, {**act, "sent_at": NOW.isoformat()})
        clock.move(hours=3)

        again = sent(maker[1], PATH, {**act, "sent_at": clock.now.isoformat()})

        assert again.json() == first.json()

    def test_with_other_contents_is_refused(self, maker):
        act = sent(maker[1], PATH, DAYS).json()["id"]

        other = sent(maker[1], PATH, {**DAYS, "id": act, "until_date": "2026-11-09"})

        assert other.status_code == 422
        assert other.json()["type"] == "/problems/act-id-reused"

    def test_by_somebody_else_is_another_act(self, maker, technician):
        act = {"id": str(uuid7()), **DAYS}
        sent(maker[1], PATH, act)

        assert sent(technician[1], PATH, act).status_code == 422

    def test_in_another_studio_writes_nothing(self, maker, stranger):
        act = sent(maker[1], PATH, DAYS).json()["id"]

        there = sent(stranger[1], PATH.replace("yard", "quay"), {**DAYS, "id": act})

        assert there.status_code == 409
        assert there.json()["type"] == "/problems/act-id-taken"
        assert Away.objects.filter(member=stranger[0]).count() == 0

    def test_is_known_when_its_answer_was_forgotten(self, studio, maker, stranger, clock):
        first = sent(maker[1], PATH, DAYS).json()
        replays.prune(at=clock.move(days=31))

        here = sent(maker[1], PATH, {**DAYS, "id": first["id"]})
        there = sent(stranger[1], PATH.replace("yard", "quay"), {**DAYS, "id": first["id"]})

        assert Replay.objects.count() == 0
        assert here.status_code == 200
        assert here.json()["journal_seq"] == first["journal_seq"]
        assert there.status_code == 409
        assert Away.objects.count() == 1

    def test_is_tried_anew_after_a_refusal(self, maker):
        standing = sent(maker[1], PATH, DAYS).json()["id"]
        act = {"id": str(uuid7()), **DAYS}

        refused = sent(maker[1], PATH, act)
        maker[1].delete(f"{PATH}{standing}/")

        assert refused.status_code == 409
        assert sent(maker[1], PATH, act).status_code == 201


class TestEnvelope:
    @pytest.mark.parametrize(
        ("field", "value", "code"),
        [
            ("id", "7", "invalid"),
            ("id", None, "null"),
            ("happened_at", "yesterday", "invalid"),
            ("happened_at", "2026-10-31T09:00:00", "no-offset"),
            ("happened_at", "2026-10-31T09:05:01Z", "in-the-future"),
            ("based_on", -1, "min-value"),
            ("sent_at", "noon", "invalid"),
            ("corrects", "that one", "invalid"),
            ("note", "x" * 4001, "max-length"),
        ],
    )
    def test_names_the_field_it_cannot_read(self, maker, field, value, code):
        answer = sent(maker[1], PATH, {**DAYS, field: value})

        assert answer.status_code == 400
        assert answer["Content-Type"] == "application/problem+json"
        assert answer.json()["type"] == "/problems/invalid-request"
        assert answer.json()["errors"] == [
            {"pointer": f"#/{field}", "code": code, "detail": answer.json()["detail"]}
        ]

    def test_names_every_field_at_once(self, maker):
        answer = maker[1].post(PATH, {"based_on": "many"}, format="json")

        pointers = {error["pointer"] for error in answer.json()["errors"]}
        assert pointers == {"#/id", "#/happened_at", "#/based_on", "#/from_date", "#/until_date"}

    def test_takes_a_clock_that_is_a_little_fast(self, maker):
        ahead = (NOW + timedelta(minutes=5)).isoformat()

        assert sent(maker[1], PATH, {**DAYS, "happened_at": ahead}).status_code == 201

    def test_keeps_both_times_and_the_clock(self, maker, clock):
        clock.move(hours=2)
        late = (clock.now - timedelta(seconds=400)).isoformat()

        act = sent(maker[1], PATH, {**DAYS, "sent_at": late, "based_on": 1}).json()["id"]

        entry = JournalEntry.objects.get(pk=act)
        assert (entry.happened_at, entry.written_at) == (NOW, clock.now)
        assert (entry.clock_offset_s, entry.based_on) == (-400.0, 1)

    def test_must_agree_with_the_key(self, maker):
        body = {**DAYS, "id": str(uuid7())}
        other = sent(maker[1], PATH, body, **{"Idempotency-Key": str(uuid7())})
        same = sent(maker[1], PATH, body, **{"Idempotency-Key": body["id"]})

        assert other.status_code == 400
        assert other.json()["errors"][0]["code"] == "key-differs"
        assert same.status_code == 201

    def test_answers_with_the_number_in_the_journal(self, studio, maker):
        answer = sent(maker[1], PATH, DAYS).json()

        assert (
            JournalEntry.objects.get(studio=studio, seq=answer["journal_seq"]).verb == "goes_away"
        )
