"""Masters: whether one can be poured from."""

from datetime import datetime
from typing import Any

from django.db.models import QuerySet

from moulds.models import Master, MasterEvent
from studio.models import Studio


def all_of(studio: Studio) -> "QuerySet[Master]":
    """Return the masters of a studio."""
    return Master.objects.filter(studio=studio)


def last_said(master: Master, *, until: datetime | None = None) -> MasterEvent | None:
    """Return what was last said of a master, up to `until`."""
    said: Any = MasterEvent.objects.standing().filter(master=master)
    if until is not None:
        said = said.filter(happened_at__lte=until)
    found: MasterEvent | None = said.order_by("happened_at", "id").last()
    return found


def was_ready(master: Master, at: datetime) -> bool:
    """Say whether a mould could be poured from the master at `at`.

    Before anything was recorded of it, what is so now is taken.
    """
    said = last_said(master, until=at)
    return master.is_ready if said is None else said.is_ready
