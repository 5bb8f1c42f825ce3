import pytest

from studio.domain.ids import uuid7
from tests import factories
from tests.pieces.orders import S, take

ASK = {"about": "colour", "waits": "glazing", "due_date": "2026-11-06"}


@pytest.fixture
def order(maker):
    return take(maker[0])


def ask(client, order, **more):
    return factories.sent(client, f"{S}commissions/{order.pk}/approvals/", {**ASK, **more})


def answer(client, approval, said="yes", **more):
    return factories.sent(client, f"{S}approvals/{approval}/answers/", {"answer": said, **more})


def listed(client, order):
    return client.get(f"{S}commissions/{order.pk}/approvals/").json()["results"]


class TestAsking:
    def test_works(self, maker, order):
        told = ask(maker[1], order, question="Is it brown enough?")

        assert told.status_code == 201
        (row,) = listed(maker[1], order)
        assert (row["title"], row["due_date"]) == ("Colour to approve", "2026-11-06")
        assert row["question"] == "Is it brown enough?"
        assert row["clay_words"].startswith("Bisqued ware keeps")
        assert row["answer"] is None
        assert "6 Nov 2026" in row["message"]

    def test_anew_takes_the_place_of_the_earlier_asking(self, maker, order):
        first = ask(maker[1], order).json()["id"]

        again = ask(maker[1], order, due_date="2026-11-09", corrects=first)

        assert again.status_code == 201
        assert [row["due_date"] for row in listed(maker[1], order)] == ["2026-11-09"]
        late = answer(maker[1], first)
        assert late.status_code == 409
        assert late.json()["type"] == "/problems/approval-replaced"

    def test_of_something_else_wants_its_question(self, maker, order):
        problem = ask(maker[1], order, about="other")

        assert problem.status_code == 422
        assert problem.json()["pointer"] == "#/question"

    def test_is_refused_to_who_does_not_share(self, helper, technician, maker, order):
        for _, client in (helper, technician):
            assert ask(client, order).status_code == 403
        assert len(listed(helper[1], order)) == 0

    def test_is_in_the_history_among_what_concerns_the_client(self, maker, order):
        approval = ask(maker[1], order).json()["id"]
        answer(maker[1], approval)

        rows = maker[1].get(f"{S}commissions/{order.pk}/history/?filter=clients").json()["results"]

        assert [row["words"] for row in rows[:2]] == [
            "colour: the client said yes, as told to us",
            "colour: the client is asked, by 6 Nov 2026",
        ]


class TestAnswering:
    def test_is_written_down_with_who_was_told(self, maker, order):
        approval = ask(maker[1], order).json()["id"]

        told = answer(maker[1], approval, note="on the phone")

        assert told.status_code == 201
        said = listed(maker[1], order)[0]["answer"]
        assert (said["answer"], said["through"]) == ("yes", "told")
        assert said["member"]["first_name"] == "Maud"
        assert said["client_words"] == ""

    def test_stands_and_is_corrected_by_name_only(self, maker, order):
        approval = ask(maker[1], order).json()["id"]
        first = answer(maker[1], approval).json()["id"]

        second = answer(maker[1], approval, "no")
        corrected = answer(maker[1], approval, "no", corrects=first)

        assert second.status_code == 409
        assert second.json()["answer"] == "yes"
        assert corrected.status_code == 201
        assert listed(maker[1], order)[0]["answer"]["answer"] == "no"

    def test_corrects_no_answer_to_something_else(self, maker, order):
        one, other = (ask(maker[1], order, about=about).json()["id"] for about in ("size", "shape"))
        said = answer(maker[1], one).json()["id"]

        problem = answer(maker[1], other, corrects=said)

        assert problem.status_code == 422
        assert listed(maker[1], order)[0]["answer"]["answer"] == "yes"

    def test_of_nothing_asked_is_not_found(self, maker, order):
        assert answer(maker[1], uuid7()).status_code == 404
