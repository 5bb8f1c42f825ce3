"""An order of jars with lids and one of tiles: what the tests of orders stand on."""

from collections.abc import Sequence
from datetime import date, datetime, timedelta
from typing import Any

from moulds.models import Design
from pieces.actions import commissions, matches, stages
from pieces.actions.order_lines import LineGiven, RoleGiven
from pieces.actions.shapes import Visit
from pieces.models import Commission, CommissionLine, Piece
from studio.models import Member, Studio
from tests import factories
from tests.factories import NOW

S = "/api/v1/studios/yard/"
SECRET = "01632 960 001, by the mill"
DAY = timedelta(days=1)


def form(studio: Studio, noun: str, series: str, **fields: Any) -> Design:
    """Return a one-part design that needs no mould, so that its pieces begin out of one."""
    made = factories.design(
        studio, f"{noun} {series}", noun=noun, series=series, uses_moulds=False, **fields
    )
    factories.design_part(made, noun, method="thrown")
    return made


def take(
    maker: Member,
    recipe: Sequence[RoleGiven] = (),
    *,
    wanted: int = 6,
    promised: date | None = date(2026, 12, 4),
    client: str = "Marrowfield Garden Society",
    at: datetime = NOW - 30 * DAY,
    **more: Any,
) -> Commission:
    return commissions.take(
        act=factories.act(maker, at),
        client_name=client,
        client_contact=SECRET,
        what="jars with knop lids",
        promised_date=promised,
        lines=[LineGiven("jars with lids", wanted, recipe)],
        **more,
    )


def jars(maker: Member, sets: int = 3, **more: Any) -> tuple[Commission, CommissionLine]:
    """Take an order of jars with lids, and plan some sets."""
    jar, lid = form(maker.studio, "jar", "J"), form(maker.studio, "lid", "L")
    recipe = [RoleGiven("jar", jar), RoleGiven("lid", lid)]
    order = take(maker, recipe, **more)
    line = order.lines.get()
    matches.plan_sets(act=factories.act(maker, NOW - 29 * DAY), line=line, count=sets)
    return order, line


def piece(mark: str) -> Piece:
    return Piece.objects.select_related("design", "maker").get(mark=mark)


def put(
    member: Member, mark: str, stage: str, state: str, at: datetime = NOW - DAY, **more: Any
) -> None:
    """Say that a piece is that far, told afterwards."""
    visit = Visit(stage, state, reason="catching_up", **more)
    stages.advance(act=factories.act(member, at), piece=piece(mark), visit=visit)


def lose(member: Member, mark: str, at: datetime = NOW - DAY, **more: Any) -> None:
    stages.lose(act=factories.act(member, at), pieces=[piece(mark)], **more)
