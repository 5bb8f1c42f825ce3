import pytest

from moulds.actions import parts
from moulds.models import Casting, MouldPartEvent, MouldSet
from tests import factories
from tests.moulds import yard

SETS = "/api/v1/studios/yard/mould-sets/"
PARTS = "/api/v1/studios/yard/mould-parts/"


class TestMouldSetList:
    def test_works(self, maker, tile_set, sent):
        body = {
            "label": "M02",
            "makes_id": str(tile_set.makes_id),
            "plaster_mm": "1 1/4 in",
            "inspect_at_presses": 100,
            "retire_at_presses": 200,
        }

        made = sent(maker[1], SETS, body)
        listed = maker[1].get(SETS)

        assert made.status_code == 201, made.data
        assert made.data["plaster_mm"] == 31.75  # 1.25 x 25.4
        assert made.data["owner"]["first_name"] == "Maud"
        assert [row["label"] for row in listed.data["results"]] == ["M01", "M02"]

    def test_shows_each_set_as_it_is(self, owner, shelves):
        rows = {row["label"]: row for row in owner[1].get(SETS).data["results"]}

        assert len(rows) == 14
        assert rows["M04"]["dryness"]["word"] == "rest"
        assert rows["M02"]["dryness"]["free_water_fraction"] == pytest.approx(0.1275, abs=1e-4)
        assert rows["M01"]["presses"] == 131
        assert rows["M07"]["casting"]["generation"] == 3
        assert rows["M12"]["parts"][0]["state"] == "out_of_use"
        assert rows["M12"]["parts"][0]["state_reason"] == "edge chipped"

    def test_asks_the_same_number_of_queries_however_many(
        self, owner, shelves, django_assert_max_num_queries
    ):
        with django_assert_max_num_queries(15):
            owner[1].get(SETS)

    def test_gives_the_studios_set_to_nobody(self, maker, tile_set, sent):
        body = {"label": "M02", "makes_id": str(tile_set.makes_id), "owner_id": None}

        assert sent(maker[1], SETS, body).data["owner"] is None

    def test_makes_none_for_somebody_else(self, maker, owner, tile_set, sent):
        body = {"label": "M02", "makes_id": str(tile_set.makes_id), "owner_id": str(owner[0].pk)}

        refused = sent(maker[1], SETS, body)

        assert refused.status_code == 403
        assert not MouldSet.objects.filter(label="M02").exists()

    def test_refuses_a_limit_before_the_look(self, maker, tile_set, sent):
        body = {
            "label": "M02",
            "makes_id": str(tile_set.makes_id),
            "inspect_at_presses": 200,
            "retire_at_presses": 100,
        }

        assert sent(maker[1], SETS, body).data["type"] == "/problems/no-such-mould-life"

    def test_is_closed_to_strangers(self, stranger, tile_set, sent):
        assert stranger[1].get(SETS).status_code == 404

    @pytest.mark.parametrize("query", ["?owner=me", "?design=7"])
    def test_names_a_filter_that_is_no_id(self, maker, query):
        assert maker[1].get(SETS + query).status_code == 400


class TestMouldSetOne:
    def test_works(self, maker, studio, tile_set):
        place = factories.place(studio, "Shelf P1", "shelf")
        path = f"{SETS}{tile_set.pk}/"

        changed = maker[1].patch(
            path, {"place_id": str(place.pk), "release_h": 3}, headers={"If-Match": '"1"'}
        )
        read = maker[1].get(path)

        assert changed.status_code == 200, changed.data
        assert read.data["place"]["name"] == "Shelf P1"
        assert read["ETag"] == '"2"'

    def test_is_not_somebody_elses_to_change(self, maker, owner, tile_set):
        MouldSet.objects.filter(pk=tile_set.pk).update(owner=owner[0])

        refused = maker[1].patch(f"{SETS}{tile_set.pk}/", {"release_h": 3})

        assert refused.status_code == 403

    def test_is_the_owners_of_the_studio_to_change(self, maker, owner, tile_set):
        MouldSet.objects.filter(pk=tile_set.pk).update(owner=maker[0])

        assert owner[1].patch(f"{SETS}{tile_set.pk}/", {"release_h": 3}).status_code == 200

    def test_is_not_a_helpers_to_change(self, helper, tile_set):
        assert helper[1].patch(f"{SETS}{tile_set.pk}/", {"release_h": 3}).status_code == 403


class TestCastingList:
    def test_works(self, maker, tile_set, casting, sent):
        body = {
            "master_id": str(casting.master_id),
            "parts_water": 70,
            "parts": [{"name": "face"}, {"name": "back", "presses_before": 4}],
        }

        poured = sent(maker[1], f"{SETS}{tile_set.pk}/castings/", body)
        listed = maker[1].get(f"{SETS}{tile_set.pk}/castings/")

        assert poured.status_code == 201, poured.data
        assert poured.data["casting"]["generation"] == 2
        assert poured.data["casting"]["capacity_fraction"] == 0.43
        assert poured.data["laid_aside"]["id"] == str(casting.pk)
        assert [row["presses"] for row in poured.data["parts"]] == [0, 4]
        assert [row["is_in_use"] for row in listed.data["results"]] == [True, False]

    def test_refuses_a_mould_of_a_fired_piece_with_the_sum(self, maker, studio, tile_set, sent):
        design = tile_set.makes.design
        design.body = factories.clay_body(studio, total_shrinkage_fraction=0.116)
        design.save()

        refused = sent(
            maker[1],
            f"{SETS}{tile_set.pk}/castings/",
            {"made_from": "fired_piece", "fired_mm": 32},
        )

        assert refused.status_code == 422
        assert refused.data["type"] == "/problems/cast-from-fired-piece"
        # 32 x 0.884 and 32 / 0.884, by hand.
        assert (refused.data["would_become_mm"], refused.data["model_mm"]) == (28.3, 36.2)
        assert Casting.objects.count() == 0

    def test_asks_which_master(self, maker, tile_set, sent):
        refused = sent(maker[1], f"{SETS}{tile_set.pk}/castings/", {"parts": [{"name": "face"}]})

        assert refused.status_code == 400
        assert refused.data["errors"][0]["pointer"] == "#/master_id"


class TestMouldPartEventList:
    def path(self, part):
        return f"{PARTS}{part.pk}/events/"

    @pytest.mark.parametrize("role", ["owner", "maker", "helper", "technician"])
    def test_works(self, request, role, casting, sent):
        part = casting.parts.first()

        told = sent(
            request.getfixturevalue(role)[1],
            self.path(part),
            {"kind": "chipped", "reason": "rim"},
        )

        client = request.getfixturevalue(role)[1]
        listed = client.get(self.path(part)).data["results"]
        assert told.status_code == 201, told.data
        assert told.data["part"]["state"] == "chipped"
        assert [(row["state"], row["reason"]) for row in listed] == [("chipped", "rim")]

    @pytest.mark.parametrize(
        ("found_crisp_on", "listed"),
        [(20, [27, 26, 25, 24, 23, 22, 21]), (26, [27, 26, 25, 24, 23, 22])],
        ids=["since the last good look", "and six at least"],
    )
    def test_lists_the_presses_to_look_over(self, maker, casting, sent, found_crisp_on, listed):
        part = casting.parts.first()
        looked = factories.act(maker[0], factories.NOW.replace(day=found_crisp_on, hour=23))
        parts.inspect(act=looked, mould_part=part, finding="crisp")
        for day in (19, *range(21, 28)):
            yard.pressed(maker[0], casting, at=factories.NOW.replace(day=day))

        told = sent(maker[1], self.path(part), {"kind": "chipped"})

        days = [int(row["happened_at"][8:10]) for row in told.data["pressings_to_check"]]
        assert days == listed

    def test_wants_a_reason_for_taking_it_out_of_use(self, maker, casting, sent):
        refused = sent(maker[1], self.path(casting.parts.first()), {"kind": "out_of_use"})

        assert refused.status_code == 422
        assert refused.data["errors"][0]["pointer"] == "#/reason"

    @pytest.mark.parametrize("kind", ["out_of_use", "mended", "found"])
    def test_leaves_the_verdict_to_whose_it_is(self, owner, maker, helper, casting, sent, kind):
        MouldSet.objects.filter(pk=casting.mould_set_id).update(owner=owner[0])
        body = {"kind": kind, "reason": "edge"}
        path = self.path(casting.parts.first())

        assert sent(maker[1], path, body).status_code == 403
        assert sent(helper[1], path, body).status_code == 403
        assert sent(owner[1], path, body).status_code == 201

    def test_happens_once_when_it_is_sent_twice(self, maker, casting):
        body = {
            "id": "0199e1aa-0000-7000-8000-000000000001",
            "happened_at": "2026-10-31T08:00:00Z",
            "kind": "chipped",
        }
        path = self.path(casting.parts.first())

        answers = [maker[1].post(path, body) for _ in range(2)]

        assert answers[0].data == answers[1].data
        assert answers[1]["Idempotent-Replay"] == "true"
        assert MouldPartEvent.objects.count() == 1

    def test_is_closed_to_strangers(self, stranger, casting, sent):
        part = casting.parts.first()

        assert sent(stranger[1], self.path(part), {"kind": "chipped"}).status_code == 404
        quay = f"/api/v1/studios/quay/mould-parts/{part.pk}/events/"
        assert sent(stranger[1], quay, {"kind": "chipped"}).status_code == 404


class TestMouldPartOne:
    def test_works(self, maker, casting):
        part = casting.parts.first()

        assert maker[1].get(f"{PARTS}{part.pk}/").data["name"] == part.name
