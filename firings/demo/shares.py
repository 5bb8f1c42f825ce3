"""The demo's links and what its clients are asked, told in time like everything else."""

from __future__ import annotations

from firings.actions import shares
from firings.models import Share
from pieces.actions import approvals
from pieces.models import Commission

from .share_tables import APPROVALS, LINKS, ApprovalRow, LinkRow
from .teller import Teller


def queue_shares(teller: Teller) -> None:
    """Queue the making and revoking of links, and the asking of approvals."""
    for link in LINKS:
        _queue_link(teller, link)
    for asked in APPROVALS:
        _queue_approval(teller, asked)


def _queue_link(teller: Teller, row: LinkRow) -> None:
    made_at = teller.clock.at(row.made)
    made: list[Share] = []

    def make() -> None:
        share, _ = shares.make(
            act=teller.act(row.who, made_at),
            commission=_order(teller, row.number),
            shows=row.shows,
            expires_on=teller.clock.day(row.last_day),
        )
        made.append(share)

    teller.then(made_at, make)
    if row.revoked:
        at = teller.clock.at(row.revoked)
        teller.then(at, lambda: shares.revoke(act=teller.act(row.who, at), share=made[0]))


def _queue_approval(teller: Teller, row: ApprovalRow) -> None:
    at = teller.clock.at(row.asked)

    def ask() -> None:
        approvals.ask(
            act=teller.act(row.who, at),
            commission=_order(teller, row.number),
            about=row.about,
            waits=row.waits,
            due_date=teller.clock.day(row.due),
            question=row.question,
        )

    teller.then(at, ask)


def _order(teller: Teller, number: str) -> Commission:
    orders = Commission.objects.select_related("studio", "maker")
    return orders.get(studio=teller.studio, number=number)
