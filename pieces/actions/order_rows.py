"""What every act about an order does: hold it, see that it is open, tell the journal of it."""

from collections.abc import Mapping
from datetime import datetime

from django.db.models import F

from pieces.models import Commission
from studio.actions import journal
from studio.domain.refusals import Conflict
from studio.models import Act, JournalEntry, JournalHead


class CommissionClosed(Conflict):
    code = "commission-closed"
    title = "That order is closed."


def open_one(commission: Commission) -> Commission:
    """Return the order as it is now, locked. Raises `CommissionClosed`."""
    commission = locked(commission)
    if commission.state != "open":
        raise CommissionClosed(
            f"{commission.number} is {commission.state}.", state=commission.state
        )
    return commission


def locked(commission: Commission) -> Commission:
    """Return the order as it is now, held until the transaction ends."""
    # The journal's head is the first lock of every writer, so that no two wait for each other.
    JournalHead.objects.select_for_update().get(studio=commission.studio_id)
    return Commission.objects.select_for_update().get(pk=commission.pk)


def closed(commission: Commission, *, at: datetime, is_cancelled: bool = False) -> None:
    """Write that an order is closed, by the act that the caller journals."""
    commission.closed_at = None if is_cancelled else at
    commission.cancelled_at = at if is_cancelled else None
    commission.revision = F("revision") + 1
    commission.save(update_fields=["closed_at", "cancelled_at", "revision"])
    commission.refresh_from_db(fields=["revision"])


def write(act: Act, verb: str, commission: Commission, facts: Mapping[str, object]) -> JournalEntry:
    """Append what was done with an order to the journal."""
    subjects = [("commission", commission.pk)]
    return journal.write(act=act, verb=verb, subjects=subjects, facts=facts)
