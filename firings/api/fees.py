"""What a load costs each maker: shown only to who may see prices, never on a shared phone."""

from collections.abc import Mapping
from typing import Any
from uuid import UUID

from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework.request import Request
from rest_framework.response import Response

from firings.actions import fees
from firings.domain.bills import Share, which
from firings.models import Load, LoadFees
from firings.queries.fees import Bill, Item, bill_of
from pieces.api.bench_rows import shown_person
from pieces.queries.pieces import makers_of
from studio.api.views import Given
from studio.models import Act, Member
from studio.permissions import P
from studio.queries import journal

from .base import LoadView
from .fee_shapes import FeeFilterIn, FeesActOut, FeesIn, FeesOut
from .shown_kilns import Shown, shown_load_name

WORDS = {
    "estimate": "As it is loaded now. It is due once it is unloaded.",
    "due": "What was fired, by the box of each piece.",
    "nothing": "Nothing of it was fired: there is nothing to pay.",
}


class LoadFeeList(LoadView):
    """Makers see their own share, who sees all prices sees them all; an owner records."""

    for_shared_phone = False
    needs = {"GET": P.SEE_OWN_PRICES, "POST": P.SET_FEES}

    @extend_schema(operation_id="loads_fees", parameters=[FeeFilterIn], responses=FeesOut)
    def get(self, request: Request, load_id: UUID) -> Response:
        """Show each maker's litres and fee: by the tariff, or a cost shared to the penny."""
        wanted = self.given(FeeFilterIn, request.query_params)
        return Response(self._fees(self.load(load_id), wanted.get("cost_minor")))

    @extend_schema(request=FeesIn, responses={201: FeesActOut})
    def post(self, request: Request, load_id: UUID) -> Response:
        """Record what each maker pays; what was recorded before stays in the book."""
        load = self.load(load_id)

        def work(given: Given, act: Act) -> Mapping[str, object]:
            fees.record(
                act=act,
                load=load,
                cost_minor=given["cost_minor"],
                measured=[fees.Measured(**row) for row in given["litres"]],
                words=given["words"],
            )
            return {"fees": self._fees(load, given["cost_minor"])}

        return self.once(FeesIn, work)

    def _fees(self, load: Load, cost_minor: int | None) -> Shown:
        bill, mine = bill_of(load, cost_minor=cost_minor), makers_of(self.member)
        sees_all = P.SEE_ALL_PRICES in self.grants
        items = {item.placement.pk: item for item in bill.items}
        return {
            "at": timezone.now(),
            "journal_seq": journal.highest_seq(self.studio),
            "load": shown_load_name(load),
            "stage": bill.stage,
            "words": WORDS[bill.stage],
            "currency": bill.settings.currency,
            "measured": bill.settings.fee_measured,
            "per_litre_minor": bill.per_litre_minor,
            "cost_minor": bill.cost_minor,
            "shares": [
                _share(bill, share, items, mine)
                for share in bill.shares
                if sees_all or share.payer in mine
            ],
            "total_minor": bill.total_minor if sees_all else None,
            "recorded": _recorded(bill.recorded, bill.people, mine, sees_all=sees_all),
            "may_record": P.SET_FEES in self.grants,
        }


def _share(bill: Bill, share: Share, items: Mapping[UUID, Item], mine: set[UUID]) -> Shown:
    own = [
        item
        for item in items.values()
        if (item.payer.pk if item.payer is not None else None) == share.payer
    ]
    return {
        "person": shown_person(bill.people.get(share.payer) if share.payer else None),
        "mine": share.payer in mine,
        "litres": share.litres,
        "minor": share.minor,
        "lines": [_line(bill, share, item) for item in own],
    }


def _line(bill: Bill, share: Share, item: Item) -> Shown:
    row, size = item.placement, item.size
    box = {"x_mm": size.x_mm, "y_mm": size.y_mm, "height_mm": size.height_mm} if size else None
    return {
        "placement_id": row.pk,
        "mark": row.piece.shown_mark if row.piece is not None else row.what,
        "count": row.count,
        "box": {name: round(mm, 1) for name, mm in box.items()} if box else None,
        "litres": item.litres,
        "which": which(bill.load.kind, item.times),
        "is_charged": item.is_charged,
        "minor": share.lines.get(row.pk),
    }


def _recorded(
    row: LoadFees | None, people: Mapping[UUID, Member], mine: set[UUID], *, sees_all: bool
) -> Shown | None:
    if row is None:
        return None
    shares: list[dict[str, Any]] = row.shares
    ids = [UUID(share["member"]) if share["member"] else None for share in shares]
    return {
        "id": row.pk,
        "happened_at": row.happened_at,
        "member": shown_person(row.entry.member),
        "basis": row.basis,
        "cost_minor": row.cost_minor if sees_all else None,
        "words": row.words,
        "shares": [
            {
                **share,
                "person": shown_person(people.get(payer) if payer else None),
                "mine": payer in mine,
            }
            for share, payer in zip(shares, ids, strict=True)
            if sees_all or payer in mine
        ],
    }
