"""What the endpoints of orders share: who may do what, and how an order is answered."""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any
from uuid import UUID
from zoneinfo import ZoneInfo

from django.utils import timezone

from pieces.actions.order_lines import LineGiven, RoleGiven
from pieces.models import Commission, CommissionLine, Piece
from pieces.queries import commissions as queries
from pieces.queries import pieces as piece_queries
from studio.api.views import Given, UnknownThing
from studio.permissions import P, Scoped

from .base import PieceView
from .commission_shown import Shown, shown_lines, shown_order

PROMISE = Scoped(own=P.PROMISE_OWN)
PLAN_SETS = Scoped(own=P.PLAN_PIECES)
PAIR = Scoped(own=P.CHECK_OWN)


class CommissionView(PieceView):
    """An endpoint about orders."""

    @property
    def today(self) -> date:
        """Return the day it is in the studio."""
        return timezone.now().astimezone(ZoneInfo(self.studio.zone)).date()

    @property
    def mine(self) -> set[UUID]:
        """Return whose orders count as the member's own."""
        return piece_queries.makers_of(self.member)

    def commission(self, commission_id: UUID) -> Commission:
        """Return an order. Raises `UnknownThing`."""
        row = queries.all_of(self.studio).filter(pk=commission_id).first()
        if row is None:
            raise UnknownThing("No such order here.")
        return row

    def own_commission(self, commission_id: UUID) -> Commission:
        """Return an order that the member may do this to."""
        row = self.commission(commission_id)
        self.check_reach(row)
        return row

    def own_line(self, line_id: UUID) -> CommissionLine:
        """Return a line of an order that the member may do this to."""
        rows = CommissionLine.objects.of(self.studio).select_related("commission__maker")
        row: CommissionLine | None = rows.filter(pk=line_id).first()
        if row is None:
            raise UnknownThing("No such line here.")
        self.check_reach(row)
        return row

    def named_pieces(self, ids: Sequence[UUID]) -> list[Piece]:
        """Return the pieces of these ids, all of them. Raises `UnknownThing`."""
        rows = queries.piece_named(self.studio, ids)
        if len(rows) < len(set(ids)):
            raise UnknownThing("One of these pieces is not known here.")
        return rows

    def may_do(self, row: Commission) -> Shown:
        """Return what the member may do to an order."""
        reaches = self._reaches(row)
        return {
            "change": P.PROMISE_OWN in self.grants and reaches,
            "plan": P.PLAN_PIECES in self.grants and reaches,
            "lift_display": P.LIFT_DISPLAY_ONLY in self.grants,
        }

    def shown(self, row: Commission) -> dict[str, Any]:
        """Return an order and its lines as they are now."""
        order = queries.orders_now([self.commission(row.pk)])[0]
        return {
            "commission": shown_order(
                order,
                mine=self.mine,
                today=self.today,
                may=self.may_do(row),
                with_contact=P.PROMISE_OWN in self.grants and self._reaches(row),
            ),
            "lines": shown_lines(order.lines, self.member),
        }

    def shown_line(self, line: CommissionLine) -> Mapping[str, Any]:
        """Return one line as it is now."""
        rows = queries.lines_of([line.commission])[line.commission_id]
        return {
            "line": shown_lines([row for row in rows if row.line.pk == line.pk], self.member)[0]
        }

    def _reaches(self, row: Commission) -> bool:
        return self.standing.reaches_any(PROMISE) or row.belongs_to(self.member)


def recipe_of(given: Sequence[Given]) -> list[RoleGiven]:
    """Return what makes a set, as it was given."""
    return [RoleGiven(row["role"], row["design"], row["count"]) for row in given]


def line_of(given: Given, line_id: UUID | None) -> LineGiven:
    """Return a line as it was given."""
    return LineGiven(given["what"], given["wanted_sets"], recipe_of(given["recipe"]), id=line_id)
