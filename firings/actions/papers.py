"""The owner signs the papers of an order: from then on they are kept to the letter."""

from typing import Final

from django.db import transaction

from firings.domain.papers import OrderFacts, Signature, state_of, wanting, written
from firings.queries import papers as queries
from pieces.actions import order_rows
from pieces.models import Commission
from studio.actions import frozen
from studio.domain.refusals import Conflict
from studio.domain.sheets import drawn
from studio.models import Act, FrozenCopy
from studio.queries.frozen import digest_of

SIGNED: Final = "signed_papers"


class ReportMissing(Conflict):
    code = "report-missing"
    title = "A test report is missing."


class NothingForFood(Conflict):
    code = "nothing-for-food"
    title = "Nothing of that order is for food."


@transaction.atomic
def sign(*, act: Act, commission: Commission, declares: bool, people: str) -> FrozenCopy:
    """Keep the papers as they stand; `declares` says that reports speak for the ware as food.

    Raises `ReportMissing` where a piece for food has no report that speaks for it within the
    limits, and `NothingForFood` where all of it is for display.
    """
    order_rows.locked(commission)
    facts = queries.gathered(commission, people=people).facts
    day = queries.on_day(act.happened_at, commission)
    signature = Signature(act.member.full_name, day, declares)
    if declares:
        _check_declarable(facts)
    body = drawn(written(facts, on=day, signature=signature))
    told = {"sha256": digest_of(body), "declares": declares}
    entry = order_rows.write(act, SIGNED, commission, told)
    return frozen.freeze(
        act=act,
        entry=entry,
        kind=queries.KIND,
        subject=("commission", commission.pk),
        title=f"Papers of {commission.number}",
        body=body,
        media_type="application/pdf",
    )


def _check_declarable(facts: OrderFacts) -> None:
    if state_of(facts, None) == "display":
        raise NothingForFood("All of it is for display only.")
    missing = wanting(facts)
    if missing:
        raise ReportMissing(" ".join(missing), missing=missing)
