"""The bench as phones read it."""

from datetime import timedelta
from typing import Any

import pytest

from pieces.actions import forecasts, parts
from tests.factories import NOW, act
from tests.pieces import kit as kits

pytestmark = pytest.mark.usefixtures("short_forecasts")

PATH = "/api/v1/studios/yard/bench/"


def got(client) -> dict[str, Any]:
    answer = client.get(PATH)
    assert answer.status_code == 200, answer.content
    return answer.json()


class TestBenchList:
    def test_works(self, studio, kit, maker) -> None:
        tile = kits.pressed_tile(kit, maker[0], mark="T07")
        forecasts.refresh(studio=studio, at=NOW)

        bench = got(maker[1])

        assert bench["at"] == bench["forecast_at"] == "2026-10-31T09:00:00Z"
        assert bench["journal_seq"] > 0
        assert bench["confidence"] == {"basis": "guess", "checks": 0}
        (row,) = bench["look_now"]
        assert row["piece"] == {
            "id": str(tile.pk),
            "mark": "T07",
            "noun": "tile",
            "design_name": "barley tile",
            "stage": "pressing",
            "state": "in_mould",
            "state_words": "in mould",
        }
        assert row["part"]["role"] == "tile"
        assert row["mould"]["label"] == "M01"
        assert row["since_at"] == "2026-10-30T17:00:00Z"
        assert row["maker"]["first_name"] == "Maud"
        assert row["mine"] is True
        assert set(row["window"]) == {"opens", "closes"}
        assert set(row["window"]["opens"]) == {"p10", "p50", "p90", "p_never"}
        assert row["ready_at"] is None  # in its mould it is not asked when it is dry

    def test_is_empty_in_an_empty_studio(self, studio, maker) -> None:
        bench = got(maker[1])

        assert bench["forecast_at"] is None
        blocks = [name for name, rows in bench.items() if isinstance(rows, list)]
        assert {name: bench[name] for name in blocks} == {name: [] for name in blocks}
        assert set(blocks) == {
            "look_now",
            "later_today",
            "later",
            "join_today",
            "press_next",
            "drying",
            "ready_for_bisque",
        }

    def test_says_of_a_join_what_its_parts_say_together(self, studio, kit, maker) -> None:
        boat = kits.pressed_boat(kit, maker[0], at=NOW - timedelta(hours=7))
        both = [kits.part_of(boat, role) for role in ("body", "handle")]
        told = act(maker[0], NOW - timedelta(hours=1))
        parts.record_events(act=told, parts=both, kind="demoulded")
        forecasts.refresh(studio=studio, at=NOW)

        (row,) = got(maker[1])["join_today"]

        assert row["verdict"] == "now"
        assert row["reason"] == "all parts likely leather-hard together"
        assert [part["role"] for part in row["parts"]] == ["body", "handle"]
        assert row["until"] == row["window"]["closes"]["p50"]

    def test_leaves_a_mould_with_clay_in_it_out_of_what_to_press(self, kit, maker) -> None:
        labels = {row["set"]["label"] for row in got(maker[1])["press_next"]}
        kits.pressed_tile(kit, maker[0])

        left = {row["set"]["label"] for row in got(maker[1])["press_next"]}

        assert labels == {"M01", "M03", "M04"}
        assert left == {"M03", "M04"}

    def test_says_of_what_dries_when_it_is_perhaps_dry(self, studio, kit, maker) -> None:
        tile = kits.pressed_tile(kit, maker[0])
        told = act(maker[0], NOW - timedelta(hours=1))
        parts.record_event(act=told, part=kits.part_of(tile, "tile"), kind="demoulded")
        forecasts.refresh(studio=studio, at=NOW)

        (row,) = got(maker[1])["drying"]

        assert (row["verdict"], row["part"], row["mould"]) == ("drying", None, None)
        assert row["ready_at"]["p50"] > "2026-11-01"

    @pytest.mark.parametrize("role", ["helper", "technician", "owner"])
    def test_is_for_everybody_of_the_studio(self, request, kit, maker, role) -> None:
        kits.pressed_tile(kit, maker[0])
        client = request.getfixturevalue(role)[1]

        assert len(got(client)["look_now"]) == 1

    def test_is_not_for_strangers(self, kit, stranger) -> None:
        assert stranger[1].get(PATH).status_code == 404
