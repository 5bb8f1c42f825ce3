"""A piece is dipped in one glaze batch, and says so."""

import pytest

from pieces.actions import stages
from pieces.actions.shapes import Visit
from pieces.models import StageEvent
from tests import factories
from tests.pieces.kit import pressed_tile

S = "/api/v1/studios/yard/"


class TestGlazing:
    @pytest.fixture
    def tile(self, kit, maker, act):
        piece = pressed_tile(kit, maker[0])
        visit = Visit("bisque", "bisqued", reason="catching_up")
        stages.advance(act=act(maker[0]), piece=piece, visit=visit)
        return piece

    def sent(self, client, piece, **body):
        return factories.sent(client, f"{S}pieces/{piece.pk}/stage-events/", body)

    def test_names_its_batch_in_the_row_and_in_the_story(self, tile, maker, studio):
        batch = factories.glaze_batch(studio, "GB-07")

        answer = self.sent(
            maker[1], tile, stage="glaze", state="glazed", glaze_batch_id=str(batch.pk)
        )

        assert answer.status_code == 201
        assert StageEvent.objects.get(state="glazed").glaze_batch == batch
        story = maker[1].get(f"{S}pieces/{tile.pk}/history/").json()["results"]
        assert story[0]["words"] == "glazed in GB-07"

    def test_names_it_for_many_at_once(self, tile, maker, studio):
        batch = factories.glaze_batch(studio, "GB-07")
        body = {"kind": "stage", "ids": [str(tile.pk)], "stage": "glaze", "state": "glazed"}

        answer = factories.sent(maker[1], f"{S}bulk/", {**body, "glaze_batch_id": str(batch.pk)})

        assert answer.status_code == 201
        assert StageEvent.objects.get(state="glazed").glaze_batch == batch

    def test_is_all_that_a_batch_is_named_for(self, tile, maker, studio):
        batch = factories.glaze_batch(studio, "GB-07")

        answer = self.sent(
            maker[1], tile, stage="finished", state="checked", glaze_batch_id=str(batch.pk)
        )

        assert answer.json()["type"] == "/problems/not-glazing"
        assert answer.json()["pointer"] == "#/glaze_batch_id"

    def test_refuses_the_batch_of_another_studio(self, tile, maker, other_studio):
        batch = factories.glaze_batch(other_studio, "GB-07")

        answer = self.sent(
            maker[1], tile, stage="glaze", state="glazed", glaze_batch_id=str(batch.pk)
        )

        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/glaze_batch_id"
