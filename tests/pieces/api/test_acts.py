from datetime import timedelta

import pytest

from pieces.models import Piece, PieceWeighing, StageEvent
from studio.domain.ids import uuid7
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


class TestPartEvents:
    def test_works(self, kit, maker):
        piece = pressed_tile(kit, maker[0])

        answer = out(maker[1], piece)

        assert answer.status_code == 201
        body = answer.json()
        assert (body["piece"]["state"], body["part"]["state"]) == ("drying", "out")
        assert body["journal_seq"] == JournalEntry.objects.get(pk=body["id"]).seq
        assert len(maker[1].get(f"{S}parts/{body['part']['id']}/events/").json()["results"]) == 2

    def test_happens_once_however_often_it_is_sent(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        act_id = str(uuid7())

        answers = [out(maker[1], piece, id=act_id) for _ in range(3)]

        assert len({answer.json()["journal_seq"] for answer in answers}) == 1
        assert answers[2].headers["Idempotent-Replay"] == "true"
        assert JournalEntry.objects.filter(verb="demoulded").count() == 1

    def test_asks_for_a_rest_when_a_part_stuck_and_sets_nothing(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        path = f"{S}parts/{part_of(piece, 'tile').pk}/events/"

        answer = factories.sent(maker[1], path, {"kind": "stuck", "stuck_how": "wet_mould"})

        asks = answer.json()["asks"]
        assert asks[0]["code"] == "rest-mould"
        assert asks[0]["mould_set_id"] == str(kit.tile_mould.casting.mould_set_id)
        assert spot(piece) == ("pressing", "in_mould")

    def test_lets_anybody_report_a_crack(self, kit, maker, technician):
        piece = pressed_tile(kit, maker[0])
        path = f"{S}parts/{part_of(piece, 'tile').pk}/events/"

        assert factories.sent(technician[1], path, {"kind": "cracked"}).status_code == 201
        assert again(piece).is_damaged
        assert factories.sent(technician[1], path, {"kind": "demoulded"}).status_code == 403


class TestStageEvents:
    def test_goes_on_back_and_is_lost(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        out(maker[1], piece, happened_at=(NOW - 3 * HOUR).isoformat())
        dry = {"stage": "drying", "state": "bone_dry"}
        two_ago = (NOW - 2 * HOUR).isoformat()
        assert told(maker[1], piece, "stage-events", dry, happened_at=two_ago).status_code == 201

        back = {"stage": "drying", "state": "drying"}
        refused = told(maker[1], piece, "stage-events", back)
        assert (refused.status_code, refused.json()["type"]) == (
            409,
            "/problems/stage-out-of-order",
        )
        assert refused.json()["state"] == "bone_dry"

        back |= {"reason": "damp inside", "happened_at": (NOW - HOUR).isoformat()}
        assert told(maker[1], piece, "stage-events", back).status_code == 201

        lost = {"stage": "lost", "state": "scrapped", "cause": "dropped", "cause_is_guess": True}
        answer = told(maker[1], piece, "stage-events", lost)
        assert answer.json()["piece"]["state_words"] == "scrapped"
        assert StageEvent.objects.get(stage="lost").cause_is_guess

    def test_cautions_when_nobody_called_it_dry(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        out(maker[1], piece, happened_at=(NOW - HOUR).isoformat())

        answer = told(maker[1], piece, "stage-events", {"stage": "bisque", "state": "in_bisque"})

        assert [word["code"] for word in answer.json()["cautions"]] == ["not-called-bone-dry"]

    def test_stops_a_helper_at_bone_dry(self, kit, maker, helper):
        piece = pressed_tile(kit, maker[0])
        out(helper[1], piece, happened_at=(NOW - 3 * HOUR).isoformat())
        dry = {"stage": "drying", "state": "bone_dry"}
        two_ago = (NOW - 2 * HOUR).isoformat()
        assert told(helper[1], piece, "stage-events", dry, happened_at=two_ago).status_code == 201

        kiln = {"stage": "bisque", "state": "in_bisque"}
        scrap = {"stage": "lost", "state": "scrapped"}
        assert told(helper[1], piece, "stage-events", kiln).status_code == 403
        refused = told(helper[1], piece, "stage-events", scrap)
        assert (refused.status_code, refused.json()["needed"]) == (403, "scrap_own")

    def test_leaves_other_peoples_pieces(self, kit, maker, join, studio, owner):
        piece = pressed_tile(kit, maker[0])
        _, other = join(studio, ["maker"], "Jun")
        lost = {"stage": "lost", "state": "missing"}

        assert told(other, piece, "stage-events", lost).status_code == 403
        assert told(owner[1], piece, "stage-events", lost).status_code == 201

    def test_finds_what_was_missing(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        hour_ago = (NOW - HOUR).isoformat()
        lost = {"stage": "lost", "state": "missing", "happened_at": hour_ago}
        told(maker[1], piece, "stage-events", lost)
        nexts = maker[1].get(f"{S}pieces/{piece.pk}/").json()["nexts"]
        assert [(spot["stage"], spot["state"]) for spot in nexts] == [("pressing", "in_mould")]

        found = {"stage": "pressing", "state": "in_mould", "reason": "found"}
        answer = told(maker[1], piece, "stage-events", found)

        assert answer.json()["piece"]["state"] == "in_mould"

    def test_names_a_state_of_another_stage(self, kit, maker):
        piece = pressed_tile(kit, maker[0])

        answer = told(maker[1], piece, "stage-events", {"stage": "glaze", "state": "bone_dry"})

        assert (answer.status_code, answer.json()["type"]) == (422, "/problems/no-such-spot")


class TestSmallActs:
    def test_cover_check_and_move(self, kit, maker, studio):
        piece = pressed_tile(kit, maker[0])
        out(maker[1], piece, happened_at=(NOW - 3 * HOUR).isoformat())
        shelf = factories.place(studio, "Rack A1", kind="rack")

        covered = told(maker[1], piece, "covers", {"state": "tucked"})
        told(maker[1], piece, "moves", {"place_id": str(shelf.pk)})
        felt = told(maker[1], piece, "checks", {"feel": "bone_dry"})

        assert covered.json()["piece"]["state_words"] == "drying, tucked in"
        assert felt.json()["piece"]["state"] == "bone_dry"
        assert felt.json()["piece"]["place"]["name"] == "Rack A1"
        for what in ("covers", "moves", "checks", "weighings", "stage-events", "parts"):
            assert maker[1].get(f"{S}pieces/{piece.pk}/{what}/").status_code == 200

    def test_moves_anybodys_ware(self, kit, maker, technician, studio):
        piece = pressed_tile(kit, maker[0])
        shelf = factories.place(studio)

        answer = told(technician[1], piece, "moves", {"place_id": str(shelf.pk)})

        assert answer.status_code == 201

    @pytest.mark.parametrize(
        ("typed", "status"),
        [("1 lb 3 oz", 201), ("538,6 g", 201), (0.52, 422), (-3, 400), ("NaN", 400), (1e9, 400)],
    )
    def test_reads_weights_as_people_type_them(self, kit, maker, typed, status):
        piece = pressed_tile(kit, maker[0])

        answer = told(maker[1], piece, "weighings", {"mass_g": typed})

        assert answer.status_code == status, answer.json()
        if status == 201:
            # 1 lb 3 oz = 19 x 28.349523125 g (international avoirdupois ounce, exact).
            assert PieceWeighing.objects.get().mass_g == pytest.approx(538.6, abs=0.1)
        else:
            assert answer.json()["errors"][0]["pointer"] == "#/mass_g"
            assert not PieceWeighing.objects.exists()

    def test_makes_a_thrown_part(self, kit, maker, studio):
        bowl = factories.design(studio, "bowl", noun="bowl", series="B", uses_moulds=False)
        factories.design_part(bowl, "bowl", method="thrown")
        plan = {"design_id": str(bowl.pk)}
        planned = factories.sent(maker[1], f"{S}pieces/", plan).json()["pieces"][0]
        assert planned["state"] == "out"

        made = {"part_id": str(uuid7()), "role": "bowl"}
        answer = factories.sent(maker[1], f"{S}pieces/{planned['id']}/parts/", made)

        assert answer.json()["part"]["state"] == "out"


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
