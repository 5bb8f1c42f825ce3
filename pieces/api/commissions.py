"""Orders: a list, one with its lines, its history."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.http import HttpResponse
from django.utils import timezone
from drf_spectacular.types import OpenApiTypes
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from pieces.actions import commissions, order_rows
from pieces.models import Commission, Use
from pieces.queries import commission_history as history
from pieces.queries import commissions as queries
from studio.api.pages import keyset, paged
from studio.api.settings import with_etag
from studio.api.views import Given
from studio.models import Act
from studio.permissions import NotPermitted, P
from studio.queries import journal

from .commission_base import PROMISE, CommissionView, line_of
from .commission_given import CommissionChangeIn, CommissionIn, HistoryFilterIn
from .commission_history_shown import history_table, shown_history
from .commission_shapes import (
    CommissionActOut,
    CommissionListOut,
    CommissionOut,
    OrderToldOut,
)
from .commission_shown import (
    cautions_of,
    shown_report,
    shown_row,
    warnings_of,
)
from .shown import shown_words


class CommissionList(CommissionView):
    needs = {"GET": P.SEE_STUDIO, "POST": PROMISE}

    @extend_schema(operation_id="commissions_list", responses=CommissionListOut)
    def get(self, request: Request) -> Response:
        """List the orders: at risk first, then on course, then those closed last."""
        today, mine = self.today, self.mine
        found = queries.orders(self.studio, today=today)
        blocks = {"at_risk": found.at_risk, "on_course": found.on_course, "closed": found.closed}
        return Response(
            {
                "at": timezone.now(),
                "journal_seq": journal.highest_seq(self.studio),
                **{
                    name: [shown_row(order, mine=mine, today=today) for order in rows]
                    for name, rows in blocks.items()
                },
            }
        )

    @extend_schema(request=CommissionIn, responses={201: CommissionActOut})
    def post(self, request: Request) -> Response:
        """Take an order."""

        def work(given: Given, act: Act) -> Mapping[str, object]:
            self.may_make_for([given["maker"]], PROMISE)
            made = commissions.take(
                act=act,
                number=given["number"],
                client_name=given["client_name"],
                client_contact=given["client_contact"],
                what=given["what"],
                use=given["use"],
                maker=given["maker"] or self.member,
                promised_date=given["promised_date"],
                lines=[line_of(line, line["id"]) for line in given["lines"]],
            )
            return self.shown(made)

        return self.once(CommissionIn, work)


class CommissionOne(CommissionView):
    needs = {"GET": P.SEE_STUDIO, "PATCH": PROMISE}

    @extend_schema(operation_id="commissions_one", responses=CommissionOut)
    def get(self, request: Request, commission_id: UUID) -> Response:
        """Tell one order: its counts in sets, its pieces, what was reported; `ETag` for PATCH."""
        row = self.commission(commission_id)
        shown = self.shown(row)
        reports = list(queries.reports_of(row))
        answer = {
            "at": timezone.now(),
            "journal_seq": journal.highest_seq(self.studio),
            **shown,
            "reports": [shown_report(report) for report in reports],
            "cautions": shown_words(cautions_of(row, reports)),
            "warnings": shown_words(warnings_of(queries.lines_of([row])[row.pk])),
        }
        return Response(answer, headers={"ETag": f'"{row.revision}"'})

    @extend_schema(request=CommissionChangeIn, responses=CommissionActOut)
    def patch(self, request: Request, commission_id: UUID) -> Response:
        """Change an order; with `If-Match`, only where nobody else did meanwhile."""
        row = self.own_commission(commission_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            held = order_rows.locked(row)
            self.check_match(held.revision, self.shown(held)["commission"])
            changes: dict[str, Any] = {
                name: given[name] for name in commissions.EDITABLE if name in given
            }
            if "maker" in changes:
                self.may_make_for([changes["maker"]], PROMISE)
            self._check_use(held, changes.get("use"))
            return self.shown(commissions.change(act=act, commission=held, changes=changes))

        return with_etag(self.once(CommissionChangeIn, work, status=200), "commission")

    def _check_use(self, row: Commission, use: str | None) -> None:
        is_lifted = row.use == Use.DISPLAY and use == Use.FOOD
        if is_lifted and P.LIFT_DISPLAY_ONLY not in self.grants:
            raise NotPermitted(
                "Only the owner lifts that ware is for display only.",
                needed=str(P.LIFT_DISPLAY_ONLY),
            )


class CommissionHistory(CommissionView):
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(
        operation_id="commissions_history",
        parameters=[HistoryFilterIn],
        responses=paged(OrderToldOut),
    )
    def get(self, request: Request, commission_id: UUID) -> Response:
        """Tell the history of an order and its pieces from the journal, newest first."""
        row = self.commission(commission_id)
        wanted = self.given(HistoryFilterIn, request.query_params)["filter"]
        acts = history.acts_of(row, wanted)
        page = keyset(acts, request, fields=("-happened_at", "-seq"))
        rows = [shown_history(told) for told in history.told(row, page.rows)]
        return Response({"results": rows, "next": page.next})


class CommissionHistoryTable(CommissionView):
    for_shared_phone = False
    needs = {"GET": P.SEE_STUDIO}

    @extend_schema(
        operation_id="commissions_history_table",
        parameters=[HistoryFilterIn],
        responses={(200, "text/csv"): OpenApiTypes.STR},
    )
    def get(self, request: Request, commission_id: UUID) -> HttpResponse:
        """Give the whole history as a table; cells that look like sums are defused."""
        row = self.commission(commission_id)
        wanted = self.given(HistoryFilterIn, request.query_params)["filter"]
        text = history_table(history.told(row, list(history.acts_of(row, wanted))))
        answer = HttpResponse(text, content_type="text/csv; charset=utf-8")
        answer["Content-Disposition"] = f'attachment; filename="{row.number}-history.csv"'
        return answer
