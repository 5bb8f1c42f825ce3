from datetime import timedelta

from studio.models import JournalEntry
from studio.queries.journal import highest_seq
from tests import factories
from tests.factories import NOW
from tests.pieces.kit import again, part_of, pressed_boat, pressed_tile, spot

S = "/api/v1/studios/yard/"
HOUR = timedelta(hours=1)


def told(client, piece, what, body, **more):
    return factories.sent(client, f"{S}pieces/{piece.pk}/{what}/", {**body, **more})


def out(client, piece, role="tile", **more):
    path = f"{S}parts/{part_of(piece, role).pk}/events/"
    return factories.sent(client, path, {"kind": "demoulded", **more})


class TestBulk:
    def test_does_the_same_to_many_but_those_left_out(self, kit, maker, studio):
        pieces = [pressed_tile(kit, maker[0]) for _ in range(4)]
        shelf = factories.place(studio)
        ids = [str(piece.pk) for piece in pieces]
        body = {"kind": "move", "ids": ids, "except_ids": ids[3:], "place_id": str(shelf.pk)}

        answer = factories.sent(maker[1], f"{S}bulk/", body).json()

        assert answer["done_ids"] == ids[:3]
        assert answer["left_out_ids"] == ids[3:]
        assert [again(piece).place for piece in pieces] == [shelf] * 3 + [None]
        entry = JournalEntry.objects.get(pk=answer["id"])
        assert entry.subjects.filter(kind="piece").count() == 3

    def test_does_none_when_one_does_not_go_and_names_it(self, kit, maker):
        dry, wet = (pressed_tile(kit, maker[0]) for _ in range(2))
        out(maker[1], dry, happened_at=(NOW - HOUR).isoformat())
        ids = [str(dry.pk), str(wet.pk)]
        body = {"kind": "stage", "ids": ids, "stage": "bisque", "state": "in_bisque"}

        answer = factories.sent(maker[1], f"{S}bulk/", body)

        assert answer.status_code == 409
        assert [row["mark"] for row in answer.json()["refused"]] == [wet.mark]
        assert spot(dry) == ("drying", "drying")

    def test_demoulds_many_parts(self, kit, maker):
        pieces = [pressed_tile(kit, maker[0]) for _ in range(3)]
        ids = [str(part_of(piece, "tile").pk) for piece in pieces]

        factories.sent(maker[1], f"{S}bulk/", {"kind": "demoulded", "ids": ids})

        assert {spot(piece) for piece in pieces} == {("drying", "drying")}

    def test_asks_for_what_the_kind_needs(self, kit, maker):
        piece = pressed_tile(kit, maker[0])

        answer = factories.sent(maker[1], f"{S}bulk/", {"kind": "move", "ids": [str(piece.pk)]})

        assert answer.json()["errors"][0]["pointer"] == "#/place_id"

    def test_lets_nobody_scrap_a_strangers_ware(self, kit, maker, join, studio):
        piece = pressed_tile(kit, maker[0])
        _, other = join(studio, ["maker"], "Jun")
        body = {"kind": "lose", "ids": [str(piece.pk)], "state": "scrapped"}

        assert factories.sent(other, f"{S}bulk/", body).status_code == 403


class TestClashes:
    def two_stories(self, kit, maker, owner, studio):
        piece = pressed_tile(kit, maker[0])
        out(maker[1], piece, happened_at=(NOW - 5 * HOUR).isoformat())
        seen = highest_seq(studio)
        lost = {"stage": "lost", "state": "scrapped", "note": "edge broke"}
        three_ago = (NOW - 3 * HOUR).isoformat()
        told(owner[1], piece, "stage-events", lost, happened_at=three_ago)
        kiln = {"stage": "bisque", "state": "in_bisque", "based_on": seen}
        assert told(maker[1], piece, "stage-events", kiln).status_code == 201
        return piece

    def test_are_shown_with_both_stories(self, kit, maker, owner, studio, helper):
        piece = self.two_stories(kit, maker, owner, studio)

        row = maker[1].get(f"{S}clashes/?state=open").json()["results"][0]

        assert (row["kind"], row["subject"]["mark"]) == ("ended_or_moved", piece.mark)
        assert row["stands_meanwhile"]["state"] == "drying"
        assert [act["words"] for act in row["acts"]] == ["scrapped", "in the bisque kiln"]
        assert row["acts"][0]["detail"] == "edge broke"
        assert {person["first_name"] for person in row["asked"]} == {"Maud", "Orla"}
        assert row["may_answer"]
        whole = helper[1].get(f"{S}clashes/{row['id']}/").json()
        assert not whole["may_answer"]
        assert [choice["choice"] for choice in whole["choices"]] == ["first", "second", "both"]
        warnings = maker[1].get(f"{S}pieces/{piece.pk}/").json()["warnings"]
        assert warnings[0]["code"] == "two-stories"

    def test_are_settled_by_one_of_those_asked(self, kit, maker, owner, studio, helper):
        piece = self.two_stories(kit, maker, owner, studio)
        clash = maker[1].get(f"{S}clashes/").json()["results"][0]
        path = f"{S}clashes/{clash['id']}/answers/"
        assert factories.sent(helper[1], path, {"choice": "first"}).status_code == 403

        answer = factories.sent(maker[1], path, {"choice": "second"}).json()

        assert answer["clash"]["state"] == "answered"
        assert answer["piece"]["state"] == "in_bisque"
        late = factories.sent(owner[1], path, {"choice": "first"})
        assert (late.status_code, late.json()["type"]) == (409, "/problems/already-settled")
        assert again(piece).state == "in_bisque"


class TestRetractions:
    def test_take_back_what_i_told(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        act_id = out(maker[1], piece).json()["id"]

        answer = factories.sent(maker[1], f"{S}retractions/", {"corrects": act_id})

        assert answer.status_code == 201
        assert answer.json()["pieces"][0]["state"] == "in_mould"

    def test_take_back_what_others_told_only_for_the_owner(self, kit, maker, helper, owner):
        piece = pressed_tile(kit, maker[0])
        act_id = out(maker[1], piece).json()["id"]
        body = {"corrects": act_id}

        refused = factories.sent(helper[1], f"{S}retractions/", body)

        assert (refused.status_code, refused.json()["type"]) == (
            403,
            "/problems/somebody-elses-act",
        )
        assert factories.sent(owner[1], f"{S}retractions/", body).status_code == 201

    def test_know_nothing_of_other_studios(self, kit, maker, stranger):
        piece = pressed_tile(kit, maker[0])
        act_id = out(maker[1], piece).json()["id"]

        path = "/api/v1/studios/quay/retractions/"
        assert factories.sent(stranger[1], path, {"corrects": act_id}).status_code == 404

    def test_undo_a_boats_handle(self, kit, maker):
        boat = pressed_boat(kit, maker[0])
        act_id = out(maker[1], boat, "handle").json()["id"]

        factories.sent(maker[1], f"{S}retractions/", {"corrects": act_id})

        assert part_of(boat, "handle").state == "in_mould"
