"""Recording what a load costs each maker: an act, so that a later one corrects it and both stay."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from uuid import UUID

from django.db import transaction

from firings.models import Load, LoadFees
from firings.queries.fees import Bill, bill_of
from studio.actions import journal
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, Member


class NothingToPay(Conflict):
    code = "nothing-to-pay"
    title = "Nothing of that load was fired."


class NoTariff(Unworkable):
    code = "no-tariff"
    title = "The studio has no tariff for that firing."


class NotAmongPayers(Unworkable):
    code = "not-among-payers"
    title = "They have nothing in that load."


@dataclass(frozen=True, slots=True)
class Measured:
    """Litres that somebody said of a maker's ware in place of the reckoned ones, and why."""

    member: Member
    litres: float
    why: str = ""


@transaction.atomic
def record(
    *,
    act: Act,
    load: Load,
    cost_minor: int | None = None,
    measured: Sequence[Measured] = (),
    words: str = "",
) -> LoadFees:
    """Keep what each maker pays, with the litres reckoned and the litres said.

    Without `cost_minor` the tariff is asked. Raises `NothingToPay`, `NoTariff`, `NotAmongPayers`
    and `NothingToShare`.
    """
    said: dict[UUID | None, float] = {row.member.pk: row.litres for row in measured}
    bill = bill_of(load, cost_minor=cost_minor, said_l=said)
    if bill.stage == "nothing":
        raise NothingToPay(f"{load.number} came to nothing: there is nothing to pay.")
    if cost_minor is None and bill.per_litre_minor is None:
        raise NoTariff("Set one in the studio's settings, or say what the load cost.")
    for place, row in enumerate(measured):
        if row.member.pk not in bill.people:
            detail = f"{row.member.first_name} has nothing in {load.number}."
            raise NotAmongPayers(detail, pointer=f"#/litres/{place}/litres")
    entry = journal.write(
        act=act,
        verb="recorded_fees",
        subjects=[("load", load.pk)],
        facts={"load": load.number, "total_minor": bill.total_minor},
    )
    return LoadFees.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        load=load,
        basis="tariff" if cost_minor is None else "cost",
        currency=bill.settings.currency,
        cost_minor=cost_minor,
        per_litre_minor=bill.per_litre_minor if cost_minor is None else None,
        measured=bill.settings.fee_measured,
        shares=_shares(bill, {row.member.pk: row.why for row in measured}),
        words=words,
    )


def _shares(bill: Bill, why: Mapping[UUID, str]) -> list[dict[str, object]]:
    return [
        {
            "member": str(share.payer) if share.payer else None,
            "litres": share.litres,
            "said_l": share.said_l,
            "why": why.get(share.payer, "") if share.payer else "",
            "minor": share.minor,
        }
        for share in bill.shares
    ]
