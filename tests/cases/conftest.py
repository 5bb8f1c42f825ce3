"""The demo studio over the wire: people with their phones, and a clock that a test moves."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from rest_framework.response import Response

from firings.demo import tables
from moulds.models import Casting, MouldSet
from pieces.models import Piece
from studio.domain.ids import uuid7
from tests.conftest import Clock
from tests.firings.demo.telling import Demo, told

LONDON = ZoneInfo("Europe/London")


@dataclass
class Yard:
    """Sallowbeck Yard at nine on its Saturday, and what its people send and read."""

    demo: Demo
    clock: Clock

    def at(self, wall: str) -> datetime:
        """Move the clock to a time on the wall."""
        self.clock.now = datetime.fromisoformat(wall).replace(tzinfo=LONDON)
        return self.clock.now

    def get(self, path: str, who: str = "odile") -> Any:
        return self.demo.get(path, who)

    def send(self, who: str, path: str, **body: Any) -> Response:
        """Send an act that happens now, unless it says when."""
        act = {"id": str(uuid7()), "happened_at": self.clock.now.isoformat(), **body}
        client = self.demo.client(who)
        address = f"/api/v1/studios/{self.demo.studio.slug}/{path}"
        answer: Response = client.post(address, act, format="json")
        return answer

    def tell(self, who: str, path: str, **body: Any) -> Any:
        """Send an act that is taken, and return the answer."""
        answer = self.send(who, path, **body)
        assert answer.status_code == 201, answer.content
        return answer.json()

    def refused(self, who: str, path: str, **body: Any) -> Any:
        """Send an act that is not taken, and return the problem."""
        answer = self.send(who, path, **body)
        assert answer.status_code >= 400, answer.content
        return answer.json()

    def piece(self, mark: str) -> Piece:
        return Piece.objects.of(self.demo.studio).get(mark=mark)

    def whole(self, mark: str, who: str = "odile") -> Any:
        """Return all that is told of one piece."""
        return self.get(f"pieces/{self.piece(mark).pk}/", who)

    def mould(self, label: str) -> MouldSet:
        return MouldSet.objects.of(self.demo.studio).get(label=label)

    def presses(self, label: str) -> dict[str, int]:
        """Return how often each part of the mould in use was pressed."""
        shown = self.get(f"mould-sets/{self.mould(label).pk}/")
        return {part["name"]: part["presses"] for part in shown["parts"]}

    def casting(self, label: str) -> Casting:
        return Casting.objects.get(mould_set=self.mould(label), is_in_use=True)

    def load(self, number: str, who: str = "odile") -> Any:
        """Return a load as the screen shows it."""
        rows = self.get("loads/", who)["results"]
        pk = next(row["id"] for row in rows if row["number"] == number)
        return self.get(f"loads/{pk}/", who)["load"]

    def order(self, number: str, who: str = "odile") -> Any:
        """Return an order as the screen shows it."""
        lists = self.get("commissions/", who)
        rows = [*lists["at_risk"], *lists["on_course"], *lists["closed"]]
        pk = next(row["id"] for row in rows if row["number"] == number)
        return self.get(f"commissions/{pk}/", who)


@pytest.fixture(scope="package")
def loaded(django_db_setup: None, django_db_blocker: Any) -> Iterator[Demo]:
    with django_db_blocker.unblock(), told(None, tables.SLUG) as demo:
        yield demo


@pytest.fixture
def yard(loaded: Demo, db: None, clock: Clock) -> Yard:
    """The yard; what a test does to it is undone after the test."""
    return Yard(loaded, clock)
