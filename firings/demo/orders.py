"""The demo's orders, what stands together, and the beaker that nobody knows."""

from __future__ import annotations

from datetime import datetime, timedelta

from moulds.models import Design
from pieces.actions import commissions, found, matches, moves, planning
from pieces.actions.order_lines import LineGiven, RoleGiven
from pieces.actions.shapes import PieceGiven
from pieces.models import CommissionLine

from .order_tables import (
    BRACKETS,
    FOUND,
    JARS_WITH_LIDS,
    ORDERS,
    PAIRED_AFTER_MIN,
    FoundRow,
    OrderRow,
)
from .pressings import Bench, PressedRow
from .rows import PieceRow
from .teller import Teller


def queue_orders(teller: Teller, bench: Bench, designs: dict[str, Design]) -> None:
    """Queue the taking of each order; its line is known to the bench from then on."""
    for row in ORDERS:
        _queue_order(teller, bench, row, designs)


def queue_pairs(teller: Teller, bench: Bench, pressed: dict[str, list[PressedRow]]) -> None:
    """Queue which jar stands with which lid, and which brackets make the pair."""
    for jar, lid in JARS_WITH_LIDS:
        begun = [min(teller.clock.at(row.pressed) for row in pressed[mark]) for mark in (jar, lid)]
        _queue_match(teller, bench, jar, lid, "jun", max(begun) + _minutes(PAIRED_AFTER_MIN))
    for first, second, who, wall in BRACKETS:
        _queue_match(teller, bench, first, second, who, teller.clock.at(wall))


def queue_found(teller: Teller, bench: Bench) -> None:
    """Queue the finding of what has no name, and its way to the unclaimed shelf."""
    for row in FOUND:
        _queue_found(teller, bench, row)


def plan(teller: Teller, bench: Bench, row: PieceRow, at: datetime) -> None:
    """Plan one piece at once, for its order if it has one."""
    given = PieceGiven(
        id=bench.piece_ids[row.mark],
        design=bench.designs[row.design],
        mark=row.mark,
        maker=teller.members.get(row.maker),
        use="display" if row.is_for_display else "food",
        line=bench.lines.get(row.commission),
        is_nobodys=not row.maker,
    )
    who = "odile" if row.maker in ("nessa", "") else row.maker
    planning.plan(act=teller.act(who, at), pieces=[given])


def plan_pair(
    teller: Teller, bench: Bench, row: PieceRow, marks: tuple[str, str], at: datetime
) -> None:
    """Plan a jar with its lid at once, as one set of the order."""
    named = [
        (bench.piece_ids[mark], role, mark)
        for mark, role in zip(marks, ("jar", "lid"), strict=True)
    ]
    matches.plan_sets(
        act=teller.act(row.maker, at),
        line=bench.lines[row.commission],
        count=1,
        named=named,
        maker=teller.members[row.maker],
    )


def _queue_order(teller: Teller, bench: Bench, row: OrderRow, designs: dict[str, Design]) -> None:
    at = teller.clock.at(row.taken)
    recipe = [RoleGiven(each.role, designs[each.design], each.in_set) for each in row.recipe]

    def take() -> None:
        commission = commissions.take(
            act=teller.act(row.maker, at, note=row.note),
            client_name=row.client,
            client_contact=row.contact,
            what=row.what,
            lines=[LineGiven(row.line, row.wanted_sets, recipe)],
            number=row.number,
            use=row.use,
            promised_date=teller.clock.day(row.promised),
        )
        lines = CommissionLine.objects.select_related("commission")
        bench.lines[row.number] = lines.get(commission=commission)

    teller.then(at, take)


def _queue_match(
    teller: Teller, bench: Bench, first: str, second: str, who: str, at: datetime
) -> None:
    def match() -> None:
        matches.match(act=teller.act(who, at), first=bench.piece(first), second=bench.piece(second))

    teller.then(at, match)


def _queue_found(teller: Teller, bench: Bench, row: FoundRow) -> None:
    at = teller.clock.at(row.at)
    put_at = at + _minutes(3)
    x_mm, y_mm, height_mm = row.size_mm

    def find() -> None:
        given = {
            "what": row.what,
            "place": teller.place(row.found_in),
            "piece": bench.piece(row.mark),
            "looks": row.looks,
            "x_mm": x_mm,
            "y_mm": y_mm,
            "height_mm": height_mm,
        }
        found.find(act=teller.act(row.by, at), given=given)

    def put() -> None:
        place = teller.places["Unclaimed shelf"]
        moves.move(act=teller.act(row.by, put_at), pieces=[bench.piece(row.mark)], place=place)

    teller.then(at, find)
    teller.then(put_at, put)


def _minutes(number: int) -> timedelta:
    return timedelta(minutes=number)
