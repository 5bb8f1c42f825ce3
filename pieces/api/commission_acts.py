"""What is done about an order: lines, sets, promises, hand-over."""

from collections.abc import Mapping
from uuid import UUID

from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions import commissions, handing_over, matches, order_lines
from pieces.queries import commissions as queries
from studio.api.views import Given
from studio.models import Act

from .commission_base import (
    PLAN_SETS,
    PROMISE,
    CommissionView,
    line_of,
    recipe_of,
)
from .commission_given import (
    ClosingIn,
    DeliveryIn,
    OrderLineChangeIn,
    OrderLineIn,
    PromiseIn,
    RecipeIn,
    SetsPlanIn,
)
from .commission_shapes import (
    CommissionActOut,
    DeliveryOut,
    OrderLineActOut,
    SetsPlannedOut,
)
from .commission_shown import cautions_of
from .shown import shown_words


class OrderLineList(CommissionView):
    needs = {"POST": PROMISE}

    @extend_schema(request=OrderLineIn, responses={201: OrderLineActOut})
    def post(self, request: Request, commission_id: UUID) -> Response:
        """Add a line to an order."""
        row = self.own_commission(commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            line = line_of(given, given["line_id"] or act.id)
            return self.shown_line(order_lines.add_line(act=act, commission=row, line=line))

        return self.once(OrderLineIn, work)


class OrderLineOne(CommissionView):
    needs = {"PATCH": PROMISE}

    @extend_schema(request=OrderLineChangeIn, responses=OrderLineActOut)
    def patch(self, request: Request, line_id: UUID) -> Response:
        """Change what a line says or how many sets it wants."""
        line = self.own_line(line_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            changed = order_lines.change_line(
                act=act,
                line=line,
                what=given.get("what"),
                wanted_sets=given.get("wanted_sets"),
            )
            return self.shown_line(changed)

        return self.once(OrderLineChangeIn, work, status=200)


class RecipeOne(CommissionView):
    needs = {"POST": PROMISE}

    @extend_schema(request=RecipeIn, responses={201: OrderLineActOut})
    def post(self, request: Request, line_id: UUID) -> Response:
        """Say anew what makes a set of a line."""
        line = self.own_line(line_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            recipe = recipe_of(given["recipe"])
            return self.shown_line(order_lines.set_recipe(act=act, line=line, recipe=recipe))

        return self.once(RecipeIn, work)


class SetsPlanningList(CommissionView):
    needs = {"POST": PLAN_SETS}

    @extend_schema(request=SetsPlanIn, responses={201: SetsPlannedOut})
    def post(self, request: Request, line_id: UUID) -> Response:
        """Plan whole sets of a line; the pieces of one set are matched with each other."""
        line = self.own_line(line_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self.may_make_for([given["maker"]], PLAN_SETS)
            planned, matched = matches.plan_sets(
                act=act,
                line=line,
                count=given["sets"],
                named=[(row["id"], row["role"], row["mark"]) for row in given["pieces"]],
                maker=given["maker"],
                body=given["body"],
                place=given["place"],
            )
            return {
                "pieces": self.briefs(planned.pieces),
                "matches": matched,
                "warnings": shown_words(planned.warnings),
            }

        return self.once(SetsPlanIn, work)


class PromiseList(CommissionView):
    needs = {"POST": PROMISE}

    @extend_schema(request=PromiseIn, responses={201: CommissionActOut})
    def post(self, request: Request, commission_id: UUID) -> Response:
        """Promise another day; the history shows every one there was."""
        row = self.own_commission(commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            promised = commissions.promise(
                act=act,
                commission=row,
                promised_date=given["promised_date"],
                reason=given["reason"],
            )
            return self.shown(promised)

        return self.once(PromiseIn, work)


class ClosingList(CommissionView):
    needs = {"POST": PROMISE}

    @extend_schema(request=ClosingIn, responses={201: CommissionActOut})
    def post(self, request: Request, commission_id: UUID) -> Response:
        """Close an order, cancel it, or open it again; its pieces stay as they are."""
        row = self.own_commission(commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            if given["kind"] == "reopened":
                return self.shown(commissions.reopen(act=act, commission=row))
            is_cancelled = given["kind"] == "cancelled"
            closed = commissions.close(
                act=act, commission=row, is_cancelled=is_cancelled, reason=given["reason"]
            )
            return self.shown(closed)

        return self.once(ClosingIn, work)


class DeliveryList(CommissionView):
    needs = {"POST": PROMISE}

    @extend_schema(request=DeliveryIn, responses={201: DeliveryOut})
    def post(self, request: Request, commission_id: UUID) -> Response:
        """Hand pieces over to the client; the order closes when no more is wanted."""
        row = self.own_commission(commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            named = given["piece_ids"]
            _, gone = handing_over.hand_over(
                act=act,
                commission=row,
                pieces=self.named_pieces(named) if named is not None else None,
                closes=given["closes"],
            )
            reports = list(queries.reports_of(row))
            return {
                **self.shown(row),
                "pieces": self.briefs(gone),
                "cautions": shown_words(cautions_of(row, reports)),
            }

        return self.once(DeliveryIn, work)
