import pytest

from moulds.models import Design, Master
from studio.models import JournalEntry
from tests import factories

DESIGNS = "/api/v1/studios/yard/designs/"
MASTERS = "/api/v1/studios/yard/masters/"

BOAT = {
    "name": "sauce boat",
    "noun": "sauce boat",
    "series": "S",
    "height_mm": "3 3/4 in",
    "parts": [
        {"role": "body", "thickest_mm": 11, "thinnest_mm": 7, "clay_g": 720},
        {"role": "handle", "shape": "rod", "thickest_mm": "12 mm", "thinnest_mm": 9},
    ],
}


def boat(**changes):
    return {**BOAT, **changes}


class TestDesignList:
    def test_works(self, maker, sent):
        made = sent(maker[1], DESIGNS, BOAT)
        listed = maker[1].get(DESIGNS)

        assert made.status_code == 201, made.data
        assert made.data["height_mm"] == 95.25  # 3.75 x 25.4
        assert [part["role"] for part in listed.data["results"][0]["parts"]] == ["body", "handle"]
        assert made.data["warnings"] == []

    def test_warns_of_a_wall_above_the_studios_limit(self, maker, sent):
        parts = [{"role": "back", "thickest_mm": 14, "thinnest_mm": 8}]

        made = sent(maker[1], DESIGNS, boat(parts=parts))

        assert made.status_code == 201
        assert [warning["code"] for warning in made.data["warnings"]] == ["wall-over-limit"]

    @pytest.mark.parametrize(
        ("wall", "status"),
        [(90, 422), (0.5, 422), (-3, 400), ("NaN", 400), (1e9, 400), ("", 400), ("12 °C", 400)],
    )
    def test_refuses_nonsense_and_names_the_field(self, maker, sent, wall, status):
        parts = [BOAT["parts"][0], {"role": "rim", "thickest_mm": wall, "thinnest_mm": 8}]

        refused = sent(maker[1], DESIGNS, boat(parts=parts))

        assert refused.status_code == status
        assert refused.data["errors"][0]["pointer"] == "#/parts/1/thickest_mm"
        assert Design.objects.count() == 0

    def test_takes_a_thick_wall_once_it_is_confirmed(self, maker, sent):
        parts = [BOAT["parts"][0], {"role": "foot", "thickest_mm": 90, "thinnest_mm": 8}]
        asked = sent(maker[1], DESIGNS, boat(parts=parts))

        made = sent(maker[1], DESIGNS, boat(parts=parts, confirmed=["#/parts/1/thickest_mm"]))

        assert asked.data["detail"].endswith("Did you mean 9? If not, confirm it.")
        assert made.status_code == 201, made.data
        assert made.data["parts"][1]["thickest_mm"] == 90
        facts = JournalEntry.objects.get(pk=made.data["id"]).facts
        assert facts == {"confirmed": ["#/parts/1/thickest_mm"]}

    def test_refuses_a_name_that_is_there(self, maker, sent):
        sent(maker[1], DESIGNS, BOAT)

        refused = sent(maker[1], DESIGNS, BOAT)

        assert refused.status_code == 409
        assert refused.data["type"] == "/problems/design-taken"

    def test_refuses_the_same_role_twice(self, maker, sent):
        refused = sent(maker[1], DESIGNS, boat(parts=[BOAT["parts"][0]] * 2))

        assert refused.status_code == 422
        assert refused.data["type"] == "/problems/role-twice"

    @pytest.mark.parametrize("role", ["helper", "technician"])
    def test_is_for_makers(self, request, sent, role):
        assert sent(request.getfixturevalue(role)[1], DESIGNS, BOAT).status_code == 403

    def test_is_closed_to_strangers(self, maker, stranger, sent):
        sent(maker[1], DESIGNS, BOAT)

        assert stranger[1].get(DESIGNS).status_code == 404
        assert sent(stranger[1], DESIGNS, boat(name="other")).status_code == 404

    def test_takes_no_clay_of_another_studio(self, maker, other_studio, sent):
        theirs = factories.clay_body(other_studio)

        refused = sent(maker[1], DESIGNS, boat(body_id=str(theirs.pk)))

        assert refused.status_code == 400
        assert refused.data["errors"][0]["pointer"] == "#/body_id"

    def test_asks_the_same_number_of_queries_however_many(
        self, maker, shelves, django_assert_max_num_queries
    ):
        with django_assert_max_num_queries(8):
            assert len(maker[1].get(DESIGNS).data["results"]) == 6


class TestDesignOne:
    @pytest.fixture
    def made(self, maker, sent):
        return sent(maker[1], DESIGNS, BOAT).data

    def test_works(self, maker, made):
        path = f"{DESIGNS}{made['id']}/"
        read = maker[1].get(path)

        handle = {**made["parts"][1], "thickest_mm": 10}
        changed = maker[1].patch(
            path,
            {"noun": "boat", "parts": [handle, {**BOAT["parts"][0], "role": "lip"}]},
            headers={"If-Match": read["ETag"]},
        )

        assert changed.status_code == 200, changed.data
        assert changed.data["noun"] == "boat"
        assert {part["role"]: part["thickest_mm"] for part in changed.data["parts"]} == {
            "body": 11.0,
            "handle": 10.0,
            "lip": 11.0,
        }
        assert changed["ETag"] == '"2"'

    def test_refuses_a_change_of_what_has_changed(self, maker, made):
        path = f"{DESIGNS}{made['id']}/"
        maker[1].patch(path, {"noun": "boat"}, headers={"If-Match": '"1"'})

        refused = maker[1].patch(path, {"noun": "jug"}, headers={"If-Match": '"1"'})

        assert refused.status_code == 412
        assert refused.data["current"]["noun"] == "boat"

    def test_refuses_a_part_it_does_not_have(self, maker, made, studio):
        elsewhere = factories.design_part(factories.design(studio))

        refused = maker[1].patch(
            f"{DESIGNS}{made['id']}/",
            {"parts": [{**BOAT["parts"][0], "id": str(elsewhere.pk)}]},
        )

        assert refused.status_code == 404
        assert refused.data["type"] == "/problems/no-such-design-part"


class TestMasterList:
    def test_works(self, maker, studio, sent):
        design = factories.design(studio)

        made = sent(
            maker[1], MASTERS, {"label": "MS-9", "design_id": str(design.pk), "is_ready": True}
        )
        listed = maker[1].get(MASTERS)

        assert made.status_code == 201, made.data
        assert [row["label"] for row in listed.data["results"]] == ["MS-9"]
        assert listed.data["results"][0]["is_ready"] is True

    def test_takes_no_design_of_another_studio(self, maker, other_studio, sent):
        design = factories.design(other_studio)

        refused = sent(maker[1], MASTERS, {"label": "MS-9", "design_id": str(design.pk)})

        assert refused.status_code == 400
        assert Master.objects.count() == 0


class TestMasterEventList:
    def test_works(self, maker, studio, sent):
        design = factories.design(studio)
        made = sent(maker[1], MASTERS, {"label": "MS-9", "design_id": str(design.pk)}).data
        path = f"{MASTERS}{made['id']}/events/"

        states = [
            sent(maker[1], path, {"kind": kind, "happened_at": at}).data["is_ready"]
            for kind, at in (("ready", "2026-10-30T09:00Z"), ("lost", "2026-10-31T08:00Z"))
        ]
        backdated = sent(maker[1], path, {"kind": "ready", "happened_at": "2026-10-29T09:00Z"})

        assert states == [True, False]
        assert backdated.data["is_ready"] is False
