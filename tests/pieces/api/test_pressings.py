from pieces.models import Piece
from studio.domain.ids import uuid7
from tests import factories

S = "/api/v1/studios/yard/"


class TestPressings:
    def body(self, kit, marks=("T29",), **more):
        parts = [
            {"id": str(uuid7()), "role": "tile", "piece": {"id": str(uuid7()), "mark": mark}}
            for mark in marks
        ]
        mould = kit.tile_mould
        ids = [str(part.pk) for part in mould.parts]
        return {"casting_id": str(mould.casting.pk), "mould_part_ids": ids, "parts": parts, **more}

    def path(self, kit):
        return f"{S}mould-sets/{kit.tile_mould.casting.mould_set_id}/pressings/"

    def test_works(self, kit, maker):
        answer = factories.sent(maker[1], self.path(kit), self.body(kit))

        assert answer.status_code == 201
        told = answer.json()
        assert (told["pressing"]["count"], told["press_since_dry"]) == (1, 1)
        assert told["parts"][0]["mould"]["label"] == "M01"
        assert told["pieces"][0]["mark"] == "T29"
        listed = maker[1].get(self.path(kit)).json()["results"]
        assert [row["id"] for row in listed] == [told["id"]]

    def test_makes_twelve_of_twelve_sent_three_times(self, kit, maker):
        body = self.body(kit, [f"T{number}" for number in range(30, 42)], id=str(uuid7()))

        for _ in range(3):
            assert factories.sent(maker[1], self.path(kit), body).status_code == 201

        assert Piece.objects.count() == 12
        kit.tile_mould.parts[0].refresh_from_db()
        assert kit.tile_mould.parts[0].presses == 12

    def test_makes_a_helpers_pieces_the_makers(self, kit, helper, maker):
        factories.sent(helper[1], self.path(kit), self.body(kit))

        assert Piece.objects.get().maker == maker[0]

    def test_refuses_a_technician(self, kit, technician):
        assert factories.sent(technician[1], self.path(kit), self.body(kit)).status_code == 403

    def test_names_a_mould_part_of_nowhere(self, kit, maker):
        body = self.body(kit, mould_part_ids=[str(uuid7())])

        answer = factories.sent(maker[1], self.path(kit), body)

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/mould_part_ids"

    def test_makes_nothing_in_another_studio(self, kit, stranger, maker):
        assert factories.sent(stranger[1], self.path(kit), self.body(kit)).status_code == 404
