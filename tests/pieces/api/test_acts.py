from datetime import timedelta

import pytest

from pieces.actions import forecasts
from pieces.models import Cover, PieceWeighing, StageEvent, TouchCheck
from studio.domain.ids import uuid7
from studio.models import JournalEntry
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

    def test_covers_one_part_otherwise_than_the_rest(self, kit, maker):
        boat = pressed_boat(kit, maker[0])
        other = pressed_tile(kit, maker[0])
        for role in ("body", "handle"):
            out(maker[1], boat, role)
        handle = part_of(boat, "handle")
        loose = {"state": "loose", "part_ids": [str(handle.pk)]}

        covered = told(maker[1], boat, "covers", loose)

        assert covered.status_code == 201, covered.json()
        assert Cover.objects.get(piece=boat).part == handle
        told_again = maker[1].get(f"{S}pieces/{boat.pk}/").json()
        assert {part["role"]: part["cover"] for part in told_again["parts"]} == {
            "body": "",
            "handle": "loose",
        }
        (first, *_) = maker[1].get(f"{S}pieces/{boat.pk}/history/").json()["results"]
        assert first["words"] == "handle loosely covered"
        assert told(maker[1], other, "covers", loose).status_code == 404
        told(maker[1], boat, "covers", {"state": "open"})
        assert part_of(boat, "handle").cover == part_of(boat, "body").cover == ""

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


class TestBadLooks:
    """What a slip of the scale, the clock or the thumb comes to; 560 g when first weighed."""

    @pytest.fixture
    def tile(self, kit, maker):
        tile = pressed_tile(kit, maker[0], at=NOW - 6 * HOUR)
        out(maker[1], tile, happened_at=(NOW - 5 * HOUR).isoformat())
        weighed = {"mass_g": 560, "happened_at": (NOW - 4 * HOUR).isoformat()}
        assert told(maker[1], tile, "weighings", weighed).status_code == 201
        return tile

    @pytest.mark.parametrize(
        ("typed", "status", "code", "meant_g"),
        [
            (0, 400, "min-value", None),
            (-540, 400, None, None),
            ("NaN", 400, None, None),
            (0.54, 422, "too-light", 540.0),  # kilograms
            (19.05, 422, "too-light", 540.1),  # ounces
            (610, 422, "heavier-than-pressed", None),  # 9 % up: a slip of a figure
            (572, 422, "heavier-than-pressed", None),  # 2.1 % up
        ],
    )
    def test_refuses_a_mass_that_cannot_be(self, tile, maker, typed, status, code, meant_g):
        answer = told(maker[1], tile, "weighings", {"mass_g": typed})

        error = answer.json()["errors"][0]
        assert (answer.status_code, error["pointer"]) == (status, "#/mass_g")
        assert code in (None, error["code"])
        assert answer.json().get("did_you_mean_g") == meant_g
        assert PieceWeighing.objects.count() == 1

    def test_asks_to_weigh_again_what_rose_a_little(self, tile, maker):
        answer = told(maker[1], tile, "weighings", {"mass_g": 567})  # 1.3 % up

        assert answer.status_code == 201
        assert answer.json()["warnings"][0]["code"] == "mass-rose"
        assert "weigh it again" in answer.json()["warnings"][0]["detail"]

    def test_asks_to_weigh_again_what_fell_too_little(self, studio, tile, maker, short_forecasts):
        forecasts.refresh(studio=studio, at=NOW)

        flat = told(maker[1], tile, "weighings", {"mass_g": 564})  # less than 1 % up
        fell = told(maker[1], tile, "weighings", {"mass_g": 545})

        assert flat.status_code == 201
        assert [warning["code"] for warning in flat.json()["warnings"]] == ["mass-above-trend"]
        assert fell.json()["warnings"] == []

    @pytest.mark.parametrize(
        ("at", "status"),
        [
            (NOW - 12 * HOUR, 422),  # a clock half a day back: before the pressing
            (NOW + timedelta(minutes=6), 400),
            (NOW + timedelta(minutes=4), 201),
        ],
    )
    def test_refuses_a_time_that_cannot_be(self, tile, maker, at, status):
        answer = told(maker[1], tile, "weighings", {"mass_g": 540, "happened_at": at.isoformat()})

        assert answer.status_code == status, answer.json()
        if status != 201:
            assert answer.json()["errors"][0]["pointer"] == "#/happened_at"

    def test_warns_of_bone_dry_at_five_hours_and_keeps_it(
        self, studio, tile, maker, short_forecasts
    ):
        forecasts.refresh(studio=studio, at=NOW)

        answer = told(maker[1], tile, "checks", {"feel": "bone_dry"})
        other = told(maker[1], tile, "checks", {"feel": "leather_hard"})

        assert answer.status_code == 201
        assert [warning["code"] for warning in answer.json()["warnings"]] == ["early-for-dry"]
        assert TouchCheck.objects.filter(feel="bone_dry").count() == 1
        assert other.json()["warnings"] == []

    def test_says_nothing_of_bone_dry_where_nothing_was_reckoned(self, tile, maker):
        answer = told(maker[1], tile, "checks", {"feel": "bone_dry"})

        assert answer.json()["warnings"] == []
