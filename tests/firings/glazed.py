"""Ware that was dipped and fired, and a report: what the tests of food contact stand on."""

from typing import Any

from rest_framework.test import APIClient

from firings.models import Load
from pieces.models import Piece
from studio.domain.ids import uuid7
from studio.models import GlazeBatch, Member
from tests import factories
from tests.factories import NOW
from tests.firings.yard import DAY
from tests.pieces.orders import S, put

# What a laboratory might write of a clear glaze. The figures are invented.
RESULTS: dict[str, Any] = {
    "laboratory": "Assay Office",
    "reported_on": "2026-10-30",
    "lead_value": 0.1,
    "lead_is_below": True,
    "cadmium_value": 0.01,
    "cadmium_is_below": True,
    "unit": "mg_per_l",
}


def fire(maker: Member, marks: list[str], batch: GlazeBatch | None, on: Load) -> None:
    """Say afterwards that pieces were dipped in the batch and came out of the load."""
    for mark in marks:
        put(maker, mark, "glaze", "glazed", NOW - DAY * 3, glaze_batch=batch)
        put(
            maker,
            mark,
            "glaze",
            "glaze_fired",
            NOW - DAY * 2,
            occasion_id=on.pk,
            occasion_name=on.number,
        )


def send_report(client: APIClient, **more: Any) -> Any:
    body = {name: value for name, value in {**RESULTS, **more}.items() if value is not None}
    return factories.sent(client, f"{S}test-reports/", {"id": str(uuid7()), **body})


def told_of(client: APIClient, piece: Piece) -> Any:
    return client.get(f"{S}pieces/{piece.pk}/food-contact/").json()
