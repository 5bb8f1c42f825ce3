"""The demo studio, told for some now and rolled back afterwards."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from django.db import transaction
from rest_framework.test import APIClient

from firings.actions import reminding_loads, reminding_orders, reminding_watch
from firings.demo.loader import load
from firings.demo.teller import Clock
from moulds.actions import reminding as reminding_moulds
from pieces.actions import forecasts, reminding, reminding_approvals, reminding_forgotten
from studio.models import Member, Studio
from tests import factories


@dataclass(frozen=True)
class Demo:
    """The loaded studio, and the clock it was loaded for."""

    studio: Studio
    now: datetime

    def member(self, username: str) -> Member:
        return Member.objects.get(studio=self.studio, user__username=username)

    def client(self, username: str) -> APIClient:
        client = APIClient()
        client.force_login(self.member(username).user)
        return client

    def get(self, path: str, username: str = "odile") -> Any:
        answer = self.client(username).get(f"/api/v1/studios/{self.studio.slug}/{path}")
        assert answer.status_code == 200, answer.content
        return answer.json()


def sweep(demo: Demo, at: datetime) -> None:
    """Set every reminder that is wanted at `at`, as the clock does."""
    reminding.tell_makers(studio=demo.studio, at=at)
    reminding_forgotten.tell_of_forgotten(studio=demo.studio, at=at)
    reminding_approvals.tell_of_approvals(studio=demo.studio, at=at)
    reminding_watch.tell_minders(studio=demo.studio, at=at)
    reminding_loads.tell_makers(studio=demo.studio, at=at)
    reminding_orders.judge_promises(studio=demo.studio, at=at)
    reminding_moulds.tell_owners(at=at)


@contextmanager
def told(now: datetime | None, slug: str) -> Iterator[Demo]:
    """Load the demo for `now` (None: unshifted) with its forecasts, and roll it back at the end."""
    with transaction.atomic():
        studio = load(clock=Clock(now), password=factories.PASSWORD, slug=slug)
        at = now or factories.NOW
        forecasts.refresh(studio=studio, at=at)
        yield Demo(studio, at)
        transaction.set_rollback(True)
