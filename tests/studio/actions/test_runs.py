"""Runs: asked once, carried out once, offered again."""

from datetime import timedelta

import pytest

from studio.actions import replays, runs
from studio.domain.refusals import Unworkable
from studio.models import Replay, Run
from tests import factories

NOW = factories.NOW


class TooTall(Unworkable):
    code = "too-tall-for-this-test"
    title = "It does not fit."


@pytest.fixture
def ask(studio, maker):
    def asked(inputs=None, at=NOW):
        return runs.ask(
            studio=studio,
            task="pack",
            inputs={"load": 7} if inputs is None else inputs,
            asked_by=maker[0],
            at=at,
        )

    return asked


def nothing(run, tell):
    return {}


class TestAsk:
    def test_gives_the_same_run_to_the_same_question(self, ask):
        first = ask({"load": 7, "gap_mm": 6.0})
        second = ask({"gap_mm": 6.0, "load": 7})
        other = ask({"load": 8, "gap_mm": 6.0})

        assert first.pk == second.pk != other.pk

    def test_queues_a_cancelled_run_anew(self, ask):
        run = runs.cancel(run=ask(), at=NOW)
        assert run.state == Run.State.CANCELLED

        again = ask(at=NOW + timedelta(hours=1))

        assert (again.pk, again.state, again.done_at) == (run.pk, Run.State.QUEUED, None)


class TestCarryOut:
    def test_keeps_the_result(self, ask):
        run = ask()

        runs.carry_out(run_id=run.pk, work=lambda run, tell: {"layers": 3}, at=NOW)

        run.refresh_from_db()
        assert (run.state, run.result, run.progress_fraction) == ("done", {"layers": 3}, 1.0)
        assert run.done_at >= NOW

    def test_leaves_a_run_that_somebody_has(self, ask):
        run = ask()
        seen = []

        def work(run, tell):
            runs.carry_out(run_id=run.pk, work=lambda *_: seen.append("twice") or {}, at=NOW)
            return {}

        runs.carry_out(run_id=run.pk, work=work, at=NOW)

        assert seen == []

    def test_does_nothing_for_a_run_that_is_done(self, ask):
        run = ask()
        runs.carry_out(run_id=run.pk, work=lambda run, tell: {"answer": 1}, at=NOW)

        runs.carry_out(run_id=run.pk, work=lambda run, tell: {"answer": 2}, at=NOW)

        run.refresh_from_db()
        assert run.result == {"answer": 1}

    def test_takes_over_when_the_lease_has_ended_and_the_late_worker_writes_nothing(self, ask):
        run = ask()
        later = NOW + runs.LEASE + timedelta(seconds=1)

        def slow(run, tell):
            runs.carry_out(run_id=run.pk, work=lambda *_: {"by": "second"}, at=later)
            return {"by": "first"}

        runs.carry_out(run_id=run.pk, work=slow, at=NOW)

        run.refresh_from_db()
        assert run.result == {"by": "second"}

    def test_keeps_a_refusal_as_a_result(self, ask):
        run = ask()

        def refuse(run, tell):
            raise TooTall("The jar is 400 mm.", height_mm=400)

        runs.carry_out(run_id=run.pk, work=refuse, at=NOW)

        run.refresh_from_db()
        assert run.state == "refused"
        assert run.problem == {
            "type": "/problems/too-tall-for-this-test",
            "title": "It does not fit.",
            "detail": "The jar is 400 mm.",
            "height_mm": 400,
        }

    def test_marks_what_broke_and_raises_it_again(self, ask):
        run = ask()

        def broken(run, tell):
            raise ZeroDivisionError

        with pytest.raises(ZeroDivisionError):
            runs.carry_out(run_id=run.pk, work=broken, at=NOW)

        run.refresh_from_db()
        assert run.state == "failed"
        assert ask().state == "queued"

    def test_stops_at_the_next_word_when_cancelled(self, ask):
        run = ask()
        reached = []

        def work(run, tell):
            tell(0.5)
            reached.append(Run.objects.get(pk=run.pk).progress_fraction)
            runs.cancel(run=run, at=NOW)
            tell(0.6)
            reached.append("after")
            return {}

        runs.carry_out(run_id=run.pk, work=work, at=NOW)

        run.refresh_from_db()
        assert (reached, run.state, run.result) == ([0.5], "cancelled", None)


class TestToOffer:
    def test_names_what_waits_and_what_was_dropped(self, ask):
        waiting, dropped, fresh = ask({"n": 1}), ask({"n": 2}), ask({"n": 3})
        Run.objects.filter(pk=dropped.pk).update(state="running", lease_until=NOW, tries=1)
        later = NOW + timedelta(minutes=3)
        Run.objects.filter(pk=fresh.pk).update(asked_at=later)

        offered = runs.to_offer(at=later)

        assert {run_id for _, run_id in offered} == {waiting.pk, dropped.pk}
        assert {task for task, _ in offered} == {"pack"}

    def test_gives_up_after_three_tries(self, ask):
        run = ask()
        Run.objects.filter(pk=run.pk).update(state="running", lease_until=NOW, tries=3)

        assert runs.to_offer(at=NOW + timedelta(hours=1)) == []

        run.refresh_from_db()
        assert run.state == "failed"


class TestCancel:
    def test_refuses_what_is_over(self, ask):
        run = ask()
        runs.carry_out(run_id=run.pk, work=nothing, at=NOW)

        with pytest.raises(runs.AlreadyOver):
            runs.cancel(run=run, at=NOW)


class TestPrune:
    def test_forgets_answers_after_thirty_days_only(self, studio):
        for days in (29, 31):
            Replay.objects.create(
                act_id=factories.uuid7(),
                studio=studio,
                digest="",
                status=201,
                written_at=NOW - timedelta(days=days),
            )

        forgotten = replays.prune(at=NOW)

        assert forgotten == 1
        assert Replay.objects.get().written_at == NOW - timedelta(days=29)
