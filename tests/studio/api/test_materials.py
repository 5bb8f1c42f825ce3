"""Clays over the wire."""

import pytest

from pieces.domain.drying import bodies
from studio.domain import drying_bodies
from tests import factories
from tests.factories import sent

S = "/api/v1/studios/yard/"
BODY = {"code": "CR", "name": "cream, base", "drying_body": "red_earthenware"}


class TestBodyList:
    def test_works(self, maker, helper):
        made = sent(maker[1], f"{S}clay-bodies/", {**BODY, "total_shrinkage_fraction": "11.6 %"})

        listed = helper[1].get(f"{S}clay-bodies/").json()["results"]

        assert made.status_code == 201
        assert listed[0]["total_shrinkage_fraction"] == pytest.approx(0.116)
        assert listed[0]["measured"]["bars"] == 0
        assert sent(helper[1], f"{S}clay-bodies/", {**BODY, "code": "X"}).status_code == 403

    def test_asks_what_was_meant_by_112(self, maker):
        answer = sent(maker[1], f"{S}clay-bodies/", {**BODY, "total_shrinkage_fraction": 112})

        assert answer.status_code == 422
        assert answer.json()["did_you_mean"] == pytest.approx(0.12)
        assert answer.json()["pointer"] == "#/total_shrinkage_fraction"

    def test_knows_only_the_bodies_of_the_drying_model(self, maker):
        answer = sent(maker[1], f"{S}clay-bodies/", {**BODY, "drying_body": "moon dust"})

        assert answer.json()["errors"][0]["pointer"] == "#/drying_body"
        assert tuple(bodies.BODIES) == drying_bodies.NAMES

    def test_lists_with_a_fixed_number_of_queries(self, maker, django_assert_max_num_queries):
        for _ in range(8):
            factories.colour_batch(maker[0].studio)

        with django_assert_max_num_queries(8):
            maker[1].get(f"{S}clay-bodies/")


class TestBodyOne:
    def test_changes_only_what_is_said(self, maker):
        made = sent(maker[1], f"{S}clay-bodies/", BODY).json()
        address = f"{S}clay-bodies/{made['id']}/"
        tag = maker[1].get(address)["ETag"]

        answer = maker[1].patch(address, {"caution": "Cobalt."}, headers={"If-Match": tag})

        assert (answer.json()["caution"], answer.json()["name"]) == ("Cobalt.", "cream, base")
        assert "Cobalt." in answer.json()["cautions"]
        stale = maker[1].patch(address, {"name": "white"}, headers={"If-Match": tag})
        assert stale.status_code == 412


class TestBars:
    def test_works(self, maker):
        body = factories.clay_body(maker[0].studio)
        bar = sent(
            maker[1], f"{S}clay-bodies/{body.pk}/test-bars/", {"wet_mm": "100", "dry_mm": 94}
        )

        later = maker[1].patch(
            f"{S}test-bars/{bar.json()['id']}/", {"bisque_mm": "93,2", "fired_mm": 88.4}
        )

        assert bar.json()["shrinkages"]["drying_fraction"] == pytest.approx(0.06)
        assert later.json()["shrinkages"]["total_fraction"] == pytest.approx(0.116)
        listed = maker[1].get(f"{S}clay-bodies/{body.pk}/").json()
        assert listed["measured"]["total_fraction"] == pytest.approx(0.116)

    def test_refuses_a_length_that_cannot_be_and_keeps_the_bar(self, maker):
        body = factories.clay_body(maker[0].studio)
        bar = sent(maker[1], f"{S}clay-bodies/{body.pk}/test-bars/", {"wet_mm": 100}).json()

        answer = maker[1].patch(f"{S}test-bars/{bar['id']}/", {"dry_mm": 194})

        assert answer.status_code == 422
        assert answer.json()["pointer"] == "#/dry_mm"
        assert maker[1].get(f"{S}test-bars/{bar['id']}/").json()["dry_mm"] is None


class TestBlocks:
    def test_carry_the_cautions_of_their_clays(self, maker):
        studio = maker[0].studio
        cream = factories.clay_body(studio, "CR")
        blue = factories.colour_batch(studio, "CB-32", body=cream, caution="Cobalt stain.")

        body = {"label": "BK-15", "body_ids": [str(cream.pk)], "batch_ids": [str(blue.pk)]}
        made = sent(maker[1], f"{S}slab-blocks/", body).json()

        assert made["cautions"][0] == "Cobalt stain."
        assert len(made["cautions"]) == len(set(made["cautions"])) == 3
        assert made["batches"] == [{"id": str(blue.pk), "label": "CB-32"}]

    def test_can_be_used_up(self, maker):
        block = factories.slab_block(maker[0].studio)

        body = {"used_up_at": "2026-10-30T12:00:00Z"}
        answer = maker[1].patch(f"{S}slab-blocks/{block.pk}/", body)

        assert answer.json()["used_up_at"] == "2026-10-30T12:00:00Z"


class TestBatches:
    def test_refuses_a_label_twice_and_less_than_nothing(self, maker):
        body = factories.clay_body(maker[0].studio)
        batch = {"label": "CB-31", "body_id": str(body.pk), "stain_g": 474, "clay_g": "10 kg"}

        made = sent(maker[1], f"{S}colour-batches/", batch)
        twice = sent(maker[1], f"{S}colour-batches/", batch)
        less = sent(maker[1], f"{S}colour-batches/", {**batch, "label": "X", "stain_g": -3})

        assert made.json()["clay_g"] == 10_000
        assert twice.json()["type"] == "/problems/label-taken"
        assert less.json()["errors"][0]["pointer"] == "#/stain_g"


class TestGlazeBatches:
    BATCH = {"label": "GB-07", "name": "clear", "cone": "6", "density_g_per_l": 1450}

    def test_say_who_mixed_them_and_what_to_mind(self, maker):
        body = {**self.BATCH, "mixed_by_id": str(maker[0].pk), "caution": "Holds manganese."}

        made = sent(maker[1], f"{S}glaze-batches/", body).json()

        assert (made["mixed_by"], made["density_g_per_l"]) == ("Maud", 1450)
        assert made["cautions"][0] == "Holds manganese."
        assert "mask" in made["cautions"][1]

    def test_can_be_put_right_and_are_not_named_twice(self, maker):
        made = sent(maker[1], f"{S}glaze-batches/", self.BATCH).json()

        twice = sent(maker[1], f"{S}glaze-batches/", self.BATCH)
        right = maker[1].patch(f"{S}glaze-batches/{made['id']}/", {"density_g_per_l": 1470})

        assert twice.json()["type"] == "/problems/label-taken"
        assert right.json()["density_g_per_l"] == 1470

    @pytest.mark.parametrize("density", ["nan", 900, 2600])
    def test_name_a_density_that_no_glaze_has(self, maker, density):
        answer = sent(maker[1], f"{S}glaze-batches/", {**self.BATCH, "density_g_per_l": density})

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/density_g_per_l"
