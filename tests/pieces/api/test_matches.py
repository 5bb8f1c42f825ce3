from pieces.actions import handing_over
from pieces.models import Use
from tests import factories
from tests.factories import NOW
from tests.pieces.orders import DAY, S, form, jars, piece, put, take


def sent(client, order, what, body=None, **more):
    return factories.sent(client, f"{S}commissions/{order.pk}/{what}/", {**(body or {}), **more})


def seen(client, order):
    return client.get(f"{S}commissions/{order.pk}/").json()


class TestParting:
    def test_refuses_what_was_not_matched(self, maker):
        jars(maker[0], sets=2)
        body = {"kind": "parted", "piece_ids": [str(piece("L02").pk), str(piece("J01").pk)]}

        answer = factories.sent(maker[1], f"{S}matches/", body)

        assert (answer.status_code, answer.json()["type"]) == (409, "/problems/not-matched")

    def test_a_piece_does_not_stand_with_itself(self, maker):
        jars(maker[0], sets=1)
        pk = str(piece("J01").pk)

        answer = factories.sent(
            maker[1], f"{S}matches/", {"kind": "matched", "piece_ids": [pk, pk]}
        )

        assert (answer.status_code, answer.json()["type"]) == (422, "/problems/with-itself")


class TestAssigning:
    def test_moves_a_piece_with_its_maker_asked_in_both_orders(self, maker, studio, join, owner):
        _, line = jars(maker[0], sets=2)
        other, client = join(studio, ["maker"], "Mo")
        mine = take(other, client="Larkspur Inn")
        body = {"piece_ids": [str(piece("J01").pk)], "line_id": str(mine.lines.get().pk)}

        refused = factories.sent(client, f"{S}assignments/", body)
        moved = factories.sent(owner[1], f"{S}assignments/", body)

        assert refused.status_code == 403
        assert moved.status_code == 201
        assert piece("J01").line_id == mine.lines.get().pk
        assert line.pieces.count() == 3

    def test_warns_of_another_design_and_of_display(self, maker, studio):
        _, line = jars(maker[0], sets=1)
        tray = factories.piece(form(studio, "tray", "Y"), maker[0], use="display", mark="Y09")

        body = {"piece_ids": [str(tray.pk)], "line_id": str(line.pk)}
        answer = factories.sent(maker[1], f"{S}assignments/", body)

        assert [row["code"] for row in answer.json()["warnings"]] == [
            "not-in-recipe",
            "display-only",
        ]

    def test_a_piece_with_the_client_stays_there(self, maker):
        order, _ = jars(maker[0], sets=1)
        put(maker[0], "J01", "finished", "packed", at=NOW - 2 * DAY)
        handing_over.hand_over(act=factories.act(maker[0], NOW - DAY), commission=order)

        body = {"piece_ids": [str(piece("J01").pk)], "line_id": None}
        answer = factories.sent(maker[1], f"{S}assignments/", body)

        assert answer.json()["type"] == "/problems/handed-over-already"

    def test_is_refused_to_the_helper_and_the_technician(self, maker, helper, technician):
        jars(maker[0], sets=1)
        body = {"piece_ids": [str(piece("J01").pk)], "line_id": None}

        for client in (helper[1], technician[1]):
            assert factories.sent(client, f"{S}assignments/", body).status_code == 403


class TestUse:
    def test_of_a_piece_is_lifted_by_the_owner_only_and_never_by_taking_it_back(self, maker, owner):
        jars(maker[0], sets=1)
        path = f"{S}pieces/{piece('J01').pk}/"

        def use(client, use):
            return client.patch(path, {"use": use}, format="json")

        restricted = use(maker[1], "display")
        refused = use(maker[1], "food")
        back = {"corrects": restricted.json()["id"]}
        taken_back = factories.sent(maker[1], f"{S}retractions/", back)

        assert (restricted.status_code, refused.status_code) == (200, 403)
        assert taken_back.json()["type"] == "/problems/undone-otherwise"
        assert piece("J01").use == Use.DISPLAY
        assert use(owner[1], "food").status_code == 200
        assert piece("J01").use == Use.FOOD
