"""Orders as lists and one by one."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any
from uuid import UUID

from django.db.models import Q, QuerySet

from pieces.models import Commission, CommissionLine, Piece, TestReport
from studio.models import Studio

from .pieces import listed
from .sets import LineNow, lines_now

CLOSED_SHOWN = 50


@dataclass(frozen=True, slots=True)
class OrderNow:
    """An order with its lines as they are now."""

    commission: Commission
    lines: list[LineNow]

    @property
    def wants_more(self) -> bool:
        """Say whether some line has fewer finished sets than were wanted."""
        return any(line.counts.finished < line.line.wanted_sets for line in self.lines)

    def is_at_risk(self, today: date) -> bool:
        """Say whether the promise is in danger: judged so, or its day came and sets are missing."""
        commission = self.commission
        if commission.state != "open" or commission.promised_date is None:
            return False
        is_past = commission.promised_date < today and self.wants_more
        return is_past or commission.risk == Commission.Risk.AT_RISK


@dataclass(frozen=True, slots=True)
class OrderList:
    """The orders of a studio in the order in which they want looking at."""

    at_risk: list[OrderNow]
    on_course: list[OrderNow]
    closed: list[OrderNow]


def all_of(studio: Studio) -> "QuerySet[Commission]":
    """Return the orders of a studio with their makers."""
    return Commission.objects.of(studio).select_related("maker")


def orders(studio: Studio, *, today: date) -> OrderList:
    """Return every open order and the orders closed last. Six queries."""
    is_open = Q(closed_at=None, cancelled_at=None)
    still = list(all_of(studio).filter(is_open).order_by("promised_date", "number"))
    ended = list(all_of(studio).exclude(is_open).order_by("-taken_at")[:CLOSED_SHOWN])
    now = orders_now([*still, *ended])
    ahead = sorted(now[: len(still)], key=_by_day)
    return OrderList(
        at_risk=[order for order in ahead if order.is_at_risk(today)],
        on_course=[order for order in ahead if not order.is_at_risk(today)],
        closed=now[len(still) :],
    )


def orders_now(commissions: Iterable[Commission]) -> list[OrderNow]:
    """Return orders with their lines. Four queries."""
    commissions = list(commissions)
    lines = lines_of(commissions)
    return [OrderNow(row, lines[row.pk]) for row in commissions]


def lines_of(commissions: Iterable[Commission]) -> dict[UUID, list[LineNow]]:
    """Return the lines of each order. Four queries."""
    found: dict[UUID, list[LineNow]] = defaultdict(list)
    ids = [commission.pk for commission in commissions]
    for row in lines_now(CommissionLine.objects.filter(commission__in=ids)):
        found[row.line.commission_id].append(row)
    return found


def pieces_of(commissions: Iterable[Commission]) -> "QuerySet[Piece]":
    """Return the pieces that are promised to some orders."""
    ids = [commission.pk for commission in commissions]
    rows = Piece.objects.filter(line__commission__in=ids, is_undone=False)
    return rows.select_related("design", "place", "maker").order_by("mark_key", "suffix")


def reports_of(commission: Commission) -> "QuerySet[TestReport]":
    """Return what laboratories wrote for an order, newest first."""
    return reports_in(commission.studio).filter(commission=commission)


def reports_in(studio: Studio) -> "QuerySet[TestReport]":
    """Return what laboratories wrote and nobody put right since, newest first."""
    rows: Any = TestReport.objects.of(studio).standing()
    told: QuerySet[TestReport] = rows.select_related("piece", "glaze_batch", "entry__member")
    return told.order_by("-reported_on", "-happened_at")


def promises_of(pieces: Iterable[UUID]) -> dict[UUID, tuple[UUID, str, date | None]]:
    """Return for each promised piece its order: id, number, promised day. One query."""
    rows = Piece.objects.filter(pk__in=list(pieces), line__isnull=False)
    found = rows.values_list(
        "pk", "line__commission", "line__commission__number", "line__commission__promised_date"
    )
    return {pk: (commission, number, day) for pk, commission, number, day in found}


def piece_named(studio: Studio, ids: Iterable[UUID]) -> list[Piece]:
    """Return pieces of a studio with their orders, in the order of their marks."""
    rows = listed(studio).filter(pk__in=list(ids)).select_related("line__commission__maker")
    return list(rows.order_by("mark_key", "suffix"))


def _by_day(order: OrderNow) -> tuple[date, datetime]:
    return order.commission.promised_date or date.max, order.commission.taken_at
