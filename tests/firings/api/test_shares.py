"""What a link's holder is shown as JSON."""

from datetime import date

import pytest
from django.test import Client

from firings.actions import guesses, shares
from tests import factories
from tests.pieces.orders import S, jars

PROBLEM = "application/problem+json"


@pytest.fixture
def order(maker):
    order, _ = jars(maker[0], sets=1, wanted=1)
    return order


@pytest.fixture
def key(maker, order):
    act = factories.act(maker[0])
    shows = ("counts", "approvals")
    _, made = shares.make(act=act, commission=order, shows=shows, expires_on=date(2026, 11, 30))
    return made


def ask(maker, order):
    body = {"about": "size", "waits": "delivery", "due_date": "2026-11-06"}
    return factories.sent(maker[1], f"{S}commissions/{order.pk}/approvals/", body).json()["id"]


class TestShareShown:
    def test_works(self, key):
        answer = Client().get(f"/api/v1/shares/{key}/")

        assert answer.status_code == 200
        assert answer["Cache-Control"] == "no-store"
        assert answer["Referrer-Policy"] == "no-referrer"
        assert answer.json()["counts"] == ["jars with lids: 1 wanted, none finished, 1 being made"]

    def test_is_not_there_for_a_wrong_key_and_then_slow(self, db, clock):
        codes = [Client().get("/api/v1/shares/no/").status_code for _ in range(22)]
        last = Client().get("/api/v1/shares/no/")

        assert codes == [404] * guesses.MOST_OF_ONE + [429] * 2
        assert last["Content-Type"] == PROBLEM
        assert int(last["Retry-After"]) == guesses.WITHIN.total_seconds()


class TestShareApprovalList:
    def test_takes_the_first_answer_only(self, maker, order, key):
        body = {"approval_id": ask(maker, order), "answer": "no", "words": "Too wide."}
        path = f"/api/v1/shares/{key}/approvals/"

        taken = Client().post(path, body, content_type="application/json")
        again = Client().post(path, {**body, "answer": "yes"}, content_type="application/json")

        assert taken.status_code == 201
        assert again.status_code == 409
        assert again.json()["type"] == "/problems/approval-answered"
        shown = Client().get(f"/api/v1/shares/{key}/").json()["approvals"][0]
        assert (shown["answer"], shown["client_words"]) == ("You said no.", "Too wide.")

    def test_refuses_words_that_cannot_be_shown(self, maker, order, key):
        body = {"approval_id": ask(maker, order), "answer": "no", "words": "turn\u202eed"}

        answer = Client().post(
            f"/api/v1/shares/{key}/approvals/", body, content_type="application/json"
        )

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/words"
