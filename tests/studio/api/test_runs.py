"""Runs over the wire."""

from studio.actions import runs
from tests import factories

RUNS = "/api/v1/studios/yard/runs/"


def asked(member):
    return runs.ask(studio=member.studio, task="pack", inputs={}, asked_by=member, at=factories.NOW)


class TestRunOne:
    def test_works(self, maker, helper, stranger):
        run = asked(maker[0])
        runs.carry_out(run_id=run.pk, work=lambda run, tell: {"layers": 3}, at=factories.NOW)

        answer = helper[1].get(f"{RUNS}{run.pk}/")

        assert answer.status_code == 200
        assert answer.json()["result"] == {"layers": 3}
        assert stranger[1].get(f"{RUNS}{run.pk}/").status_code == 404

    def test_is_cancelled_by_whoever_asked_or_an_owner(self, maker, helper, owner):
        run = asked(maker[0])

        assert helper[1].delete(f"{RUNS}{run.pk}/").status_code == 403
        assert owner[1].delete(f"{RUNS}{run.pk}/").json()["state"] == "cancelled"
        assert maker[1].delete(f"{RUNS}{run.pk}/").json()["type"] == "/problems/run-is-over"
