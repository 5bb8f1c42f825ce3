"""Setting the rule of the queue aside for a piece, with a reason that all can read."""

from tests.firings.yard import tile

S = "/api/v1/studios/yard/"


def order_of(client):
    (group,) = client.get(f"{S}kiln-queue/?kind=bisque").json()["groups"]
    return [(row["piece"]["mark"], row["reason"]) for row in group["rows"]]


class TestTurn:
    def test_puts_a_piece_first_until_it_is_fired_or_taken_back(
        self, yard, maker, technician, sent
    ):
        tile(yard, maker[0], mark="T1", days=16)
        late = tile(yard, maker[0], mark="T2", days=2)
        path, body = f"{S}pieces/{late.pk}/queue-turns/", {"kind": "bisque", "reason": "the show"}

        answer = sent(technician[1], path, body)

        assert answer.status_code == 201
        name = technician[0].first_name
        assert order_of(maker[1])[0] == ("T2", f"Put first by {name}: the show.")
        back = {"corrects": answer.json()["turn"]["id"]}
        assert sent(technician[1], f"{S}retractions/", back).status_code == 201
        assert [mark for mark, _ in order_of(maker[1])] == ["T1", "T2"]

    def test_is_for_who_settles_loads_and_never_without_a_reason(
        self, yard, maker, technician, sent
    ):
        piece = tile(yard, maker[0])
        path = f"{S}pieces/{piece.pk}/queue-turns/"

        assert sent(maker[1], path, {"kind": "bisque", "reason": "mine"}).status_code == 403
        refused = sent(technician[1], path, {"kind": "bisque", "reason": " "})
        assert refused.json()["type"] == "/problems/load-reason-wanted"
