from studio.domain.ids import uuid7
from tests import factories
from tests.factories import NOW
from tests.pieces.orders import DAY, S, jars, lose, piece, put


def lives(client, order):
    answer = client.get(f"{S}commissions/{order.pk}/lives/")
    assert answer.status_code == 200
    return {life["mark"]: life for life in answer.json()["pieces"]}


class TestLives:
    def test_tell_where_each_piece_stood_and_since_when(self, maker):
        order, _ = jars(maker[0], sets=1)
        put(maker[0], "J01", "drying", "drying", at=NOW - 9 * DAY)
        put(maker[0], "J01", "bisque", "bisqued", at=NOW - 2 * DAY)

        spans = lives(maker[1], order)["J01"]["spans"]

        assert [span["state"] for span in spans][-2:] == ["drying", "bisqued"]
        assert spans[-2]["until_at"] == spans[-1]["from_at"]
        assert spans[-1]["until_at"] is None

    def test_have_the_lost_pieces_too(self, maker):
        order, line = jars(maker[0], sets=1)
        put(maker[0], "L01", "drying", "drying", at=NOW - 9 * DAY)
        lose(maker[0], "L01", cause="crack")

        found = lives(maker[1], order)

        assert set(found) == {"J01", "L01"}
        assert found["L01"]["spans"][-1]["stage"] == "lost"
        assert found["L01"]["line_id"] == str(line.pk)

    def test_take_the_same_queries_for_many_pieces(self, maker, django_assert_max_num_queries):
        order, _ = jars(maker[0], sets=5)

        with django_assert_max_num_queries(20):
            lives(maker[1], order)

    def test_are_not_told_of_an_order_elsewhere(self, maker, stranger):
        order, _ = jars(maker[0], sets=1)

        assert maker[1].get(f"{S}commissions/{uuid7()}/lives/").status_code == 404
        assert stranger[1].get(f"{S}commissions/{order.pk}/lives/").status_code in (403, 404)

    def test_change_when_a_piece_leaves_the_order(self, maker):
        order, _ = jars(maker[0], sets=1)
        body = {"piece_ids": [str(piece("L01").pk)], "line_id": None}
        assert factories.sent(maker[1], f"{S}assignments/", body).status_code == 201

        assert set(lives(maker[1], order)) == {"J01"}
