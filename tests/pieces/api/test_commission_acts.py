from pieces.models import Use
from studio.domain.ids import uuid7
from tests import factories
from tests.pieces.orders import S, form, jars, piece, put, take


def sent(client, order, what, body=None, **more):
    return factories.sent(client, f"{S}commissions/{order.pk}/{what}/", {**(body or {}), **more})


def seen(client, order):
    return client.get(f"{S}commissions/{order.pk}/").json()


class TestPlanning:
    def test_sets_are_matched_and_known_to_their_order(self, maker):
        order, line = jars(maker[0], sets=1)
        named = [{"id": str(uuid7()), "role": "lid", "mark": "L42"}]

        body = {"sets": 2, "pieces": named}
        answer = factories.sent(maker[1], f"{S}lines/{line.pk}/plannings/", body)

        assert answer.status_code == 201
        assert answer.json()["matches"] == 2
        marks = [row["mark"] for row in answer.json()["pieces"]]
        assert "L42" in marks
        assert len(marks) == 4
        assert seen(maker[1], order)["lines"][0]["counts"]["pieces"] == 6
        told = maker[1].get(f"{S}pieces/{piece('L42').pk}/").json()
        assert told["order"]["number"] == order.number

    def test_pieces_planned_together_for_one_recipe_are_matched(self, maker, studio):
        bracket = form(studio, "bracket", "B")
        order = take(maker[0])
        line = order.lines.get()
        recipe = {"recipe": [{"role": "bracket", "design_id": str(bracket.pk), "count": 2}]}
        assert factories.sent(maker[1], f"{S}lines/{line.pk}/recipe/", recipe).status_code == 201

        body = {"design_id": str(bracket.pk), "count": 2, "line_id": str(line.pk)}
        answer = factories.sent(maker[1], f"{S}pieces/", body)

        assert answer.status_code == 201
        rows = seen(maker[1], order)["lines"][0]["pieces"]
        assert {row["words"] for row in rows} == {"bracket for B01", "bracket for B02"}

    def test_a_piece_takes_its_use_from_the_order(self, maker, studio):
        order = take(maker[0], use="display")
        body = {
            "design_id": str(form(studio, "tray", "Y").pk),
            "line_id": str(order.lines.get().pk),
        }

        factories.sent(maker[1], f"{S}pieces/", body)

        assert piece("Y01").use == Use.DISPLAY

    def test_is_for_the_orders_own_maker(self, maker, studio, join):
        _, line = jars(maker[0], sets=1)
        _, other = join(studio, ["maker"], "Mo")

        assert (
            factories.sent(other, f"{S}lines/{line.pk}/plannings/", {"sets": 1}).status_code == 403
        )


class TestHandingOver:
    def test_gives_what_is_finished_and_closes_when_no_more_is_wanted(self, maker):
        order, _ = jars(maker[0], sets=2, wanted=1)
        for mark in ("J01", "L01"):
            put(maker[0], mark, "finished", "packed")

        answer = sent(maker[1], order, "deliveries")

        assert answer.status_code == 201
        assert [row["state"] for row in answer.json()["pieces"]] == ["delivered", "delivered"]
        assert answer.json()["commission"]["state"] == "closed"
        assert answer.json()["lines"][0]["counts"]["delivered"] == 1
        assert answer.json()["cautions"][0]["code"] == "food-use-not-declared"

    def test_stays_open_while_more_is_wanted(self, maker):
        order, _ = jars(maker[0], sets=2, wanted=2)
        put(maker[0], "J01", "finished", "packed")

        answer = sent(maker[1], order, "deliveries", {"piece_ids": [str(piece("J01").pk)]})

        assert answer.json()["commission"]["state"] == "open"

    def test_refuses_nothing_and_strange_pieces(self, maker, studio):
        order, _ = jars(maker[0], sets=1)
        strange = factories.piece(form(studio, "tray", "Y"), maker[0])

        nothing = sent(maker[1], order, "deliveries")
        other = sent(maker[1], order, "deliveries", {"piece_ids": [str(strange.pk)]})

        assert nothing.json()["type"] == "/problems/nothing-to-hand-over"
        assert other.json()["type"] == "/problems/not-of-this-order"
        assert other.status_code == 409


class TestClosing:
    def test_a_closed_order_stays_as_it_is_until_opened(self, maker):
        order = take(maker[0])
        assert sent(maker[1], order, "closings", {"kind": "cancelled"}).status_code == 201

        refused = sent(maker[1], order, "promises", {"promised_date": "2026-12-24"})
        sent(maker[1], order, "closings", {"kind": "reopened"})
        now = sent(maker[1], order, "promises", {"promised_date": "2026-12-24"})

        assert (refused.status_code, refused.json()["type"]) == (
            409,
            "/problems/commission-closed",
        )
        assert now.json()["commission"]["promised_date"] == "2026-12-24"
