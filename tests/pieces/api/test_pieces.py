from datetime import timedelta

import pytest

from pieces.actions import parts, stages
from pieces.models import Piece
from studio.domain.ids import uuid7
from studio.models import JournalHead
from tests import factories
from tests.factories import NOW
from tests.pieces.kit import again, part_of, pressed_boat, pressed_tile

S = "/api/v1/studios/yard/"
HOUR = timedelta(hours=1)


def dried(kit, maker, act):
    piece = pressed_tile(kit, maker, at=NOW - 200 * HOUR)
    part = part_of(piece, "tile")
    parts.record_event(act=act(maker, NOW - 180 * HOUR), part=part, kind="demoulded")
    return piece


class TestPieceList:
    def test_works(self, kit, maker):
        pressed_tile(kit, maker[0], mark="T07")

        answer = maker[1].get(f"{S}pieces/")

        assert answer.status_code == 200
        assert answer.json()["journal_seq"] == JournalHead.objects.get(studio=maker[0].studio).seq
        row = answer.json()["results"][0]
        assert (row["mark"], row["state_words"], row["mine"]) == ("T07", "in mould", True)
        assert row["missing_roles"] == []

    def test_finds_by_stage_place_maker_and_words(self, kit, maker, owner, studio):
        room = factories.place(studio, "Drying room")
        rack = factories.place(studio, "Rack B2", kind="rack", parent=room)
        piece = pressed_tile(kit, maker[0])
        pressed_boat(kit, owner[0])
        body = {"place_id": str(rack.pk)}
        factories.sent(maker[1], f"{S}pieces/{piece.pk}/moves/", body)

        def marks(query: str) -> list[str]:
            return [row["mark"] for row in maker[1].get(f"{S}pieces/?{query}").json()["results"]]

        assert marks(f"place={room.pk}") == marks(f"maker={maker[0].pk}") == ["T01"]
        assert marks("q=BOAT") == marks("q=s0") == ["S01"]
        assert marks("stage=pressing&state=in_mould") == ["S01", "T01"]
        assert marks("stage=drying") == []

    @pytest.mark.parametrize("query", ["stage=firing", "place=here", "state=wet"])
    def test_names_a_filter_that_is_none(self, kit, maker, query):
        answer = maker[1].get(f"{S}pieces/?{query}")

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == f"#/{query.partition('=')[0]}"

    def test_costs_the_same_however_many(self, kit, maker, django_assert_max_num_queries):
        for _ in range(6):
            pressed_tile(kit, maker[0])
        maker[1].get(f"{S}pieces/")

        with django_assert_max_num_queries(9):
            maker[1].get(f"{S}pieces/")

    def test_plans_one_or_many(self, kit, maker):
        body = {"design_id": str(kit.tile.pk), "count": 3}

        answer = factories.sent(maker[1], f"{S}pieces/", body)

        assert answer.status_code == 201
        assert [piece["mark"] for piece in answer.json()["pieces"]] == ["T01", "T02", "T03"]
        assert {piece["state"] for piece in answer.json()["pieces"]} == {"to_press"}

    def test_plans_for_nobody_else(self, kit, maker, join, studio):
        other, _ = join(studio, ["maker"], "Jun")
        body = {"design_id": str(kit.tile.pk), "maker_id": str(other.pk)}

        assert factories.sent(maker[1], f"{S}pieces/", body).status_code == 403

    def test_names_a_mark_that_cannot_be_cut(self, kit, maker):
        pieces = [{"id": str(uuid7()), "mark": "\u200b\u200d"}]
        body = {"design_id": str(kit.tile.pk), "pieces": pieces}

        answer = factories.sent(maker[1], f"{S}pieces/", body)

        assert (answer.status_code, answer.json()["type"]) == (422, "/problems/not-a-mark")
        assert not Piece.objects.exists()


class TestPieceOne:
    def test_works(self, kit, maker):
        boat = pressed_boat(kit, maker[0])

        answer = maker[1].get(f"{S}pieces/{boat.pk}/").json()

        assert answer["piece"]["mark"] == "S01"
        assert [part["role"] for part in answer["parts"]] == ["body", "handle"]
        assert answer["parts"][0]["mould"] == {
            "set_id": str(kit.body_mould.casting.mould_set_id),
            "label": "M03",
            "generation": 1,
        }
        assert answer["waits_for"] == "the clay to let go of its mould"
        assert [spot["state"] for spot in answer["nexts"]] == ["out"]
        assert answer["history_count"] == len(answer["story"]) == 2
        assert answer["journal_seq"] > 0

    def test_says_what_to_mind(self, kit, maker, act, studio):
        studio.settings.wall_limit_mm = 9.0
        studio.settings.save()
        piece = dried(kit, maker[0], act)
        cracked = act(maker[0])
        parts.record_event(act=cracked, part=part_of(piece, "tile"), kind="cracked")

        answer = maker[1].get(f"{S}pieces/{piece.pk}/").json()

        codes = {word["code"] for word in answer["warnings"]}
        assert codes == {"damaged", "thick-wall", "food-use-not-declared"}
        assert "not-called-bone-dry" in {word["code"] for word in answer["cautions"]}
        assert "safe" not in str(answer).casefold()

    def test_counts_firings_by_visits(self, kit, maker, act):
        piece = dried(kit, maker[0], act)
        way = [
            ("drying", "bone_dry", ""),
            ("bisque", "in_bisque", ""),
            ("bisque", "bisqued", ""),
            ("glaze", "glazed", ""),
            ("glaze", "in_glaze", ""),
            ("glaze", "glaze_fired", ""),
            ("glaze", "glazed", "ground, glazed thick"),
            ("glaze", "in_glaze", ""),
            ("glaze", "glaze_fired", ""),
        ]
        for number, (stage, state, reason) in enumerate(way):
            told = act(maker[0], NOW - (20 - number) * HOUR)
            visit = stages.Visit(stage, state, reason=reason)
            stages.advance(act=told, piece=piece, visit=visit)

        answer = maker[1].get(f"{S}pieces/{piece.pk}/").json()

        assert answer["firings"] == {"bisque": 1, "glaze": 2}
        assert [v["reason"] for v in answer["visits"] if v["state"] == "glazed"] == [
            "",
            "ground, glazed thick",
        ]

    def test_costs_the_same_with_a_long_story(self, kit, maker, act, django_assert_max_num_queries):
        piece = pressed_tile(kit, maker[0])
        for minute in range(20):
            told = act(maker[0], NOW - HOUR + timedelta(minutes=minute))
            parts.record_event(act=told, part=part_of(piece, "tile"), kind="not_yet")

        with django_assert_max_num_queries(41):
            maker[1].get(f"{S}pieces/{piece.pk}/")


class TestChangingThePiece:
    def change(self, client, piece, use, **headers):
        path = f"{S}pieces/{piece.pk}/"
        return client.patch(path, {"use": use}, format="json", headers=headers or None)

    def test_sets_display_only_and_lets_only_an_owner_lift_it(self, kit, maker, owner, helper):
        piece = pressed_tile(kit, maker[0])
        assert self.change(helper[1], piece, "display").status_code == 403
        assert self.change(maker[1], piece, "display").json()["piece"]["use"] == "display"

        refused = self.change(maker[1], piece, "food")

        assert (refused.status_code, refused.json()["type"]) == (403, "/problems/display-only")
        assert self.change(owner[1], piece, "food").status_code == 200

    def test_gives_way_to_whoever_was_faster(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        tag = maker[1].get(f"{S}pieces/{piece.pk}/")["ETag"]
        self.change(maker[1], piece, "display", **{"If-Match": tag})

        assert self.change(maker[1], piece, "display", **{"If-Match": tag}).status_code == 412


class TestPieceHistory:
    def test_strikes_through_and_keeps(self, kit, maker):
        piece = pressed_tile(kit, maker[0])
        path = f"{S}parts/{part_of(piece, 'tile').pk}/events/"
        out = factories.sent(maker[1], path, {"kind": "demoulded"}).json()
        factories.sent(maker[1], f"{S}retractions/", {"corrects": out["id"]})

        rows = maker[1].get(f"{S}pieces/{piece.pk}/history/").json()["results"]

        assert [row["words"] for row in rows] == [
            "taken back: demoulded",
            "tile out of its mould",
            "tile pressed in M01 g1",
        ]
        assert rows[1]["is_taken_back"]
        assert rows[1]["taken_back_by"]["first_name"] == "Maud"
        assert rows[0]["corrects"] == out["id"]

    def test_shows_late_acts_with_both_times_and_what_was_also_said(self, kit, maker, owner):
        piece = pressed_tile(kit, maker[0])
        path = f"{S}parts/{part_of(piece, 'tile').pk}/events/"
        late = {"kind": "demoulded", "happened_at": (NOW - 3 * HOUR).isoformat()}
        factories.sent(maker[1], path, late)
        factories.sent(owner[1], path, {"kind": "not_yet", "note": "<b>cool</b> still"})

        rows = maker[1].get(f"{S}pieces/{piece.pk}/history/").json()["results"]

        assert (rows[0]["is_also_said"], rows[0]["note"]) == (True, "<b>cool</b> still")
        assert (rows[1]["is_late"], rows[1]["happened_at"]) == (True, "2026-10-31T06:00:00Z")
        assert rows[1]["written_at"] == "2026-10-31T09:00:00Z"

    def test_is_hidden_from_strangers(self, kit, maker, stranger):
        piece = pressed_tile(kit, maker[0])

        assert stranger[1].get(f"{S}pieces/{piece.pk}/history/").status_code == 404
        assert again(piece)
