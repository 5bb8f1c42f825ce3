"""Orders: taken, changed, promised for a day, closed. The journal learns no name and no contact."""

import re
from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any, Final

from django.db import transaction

from pieces.models import Commission
from studio.actions import numbers
from studio.domain.refusals import Conflict
from studio.models import Act, Member

from . import order_lines
from .order_lines import LineGiven
from .order_rows import closed, locked, open_one, write

SERIES: Final = "C"
EDITABLE: Final = ("client_name", "client_contact", "maker", "what", "use")
TOLD: Final = ("maker", "use")  # the only changed values the journal holds
_NUMBERED: Final = re.compile(r"C-([0-9]{1,7})")


class NumberTaken(Conflict):
    code = "commission-number-taken"
    title = "There is an order of that number."


class NotClosed(Conflict):
    code = "commission-not-closed"
    title = "That order is open."


@transaction.atomic
def take(
    *,
    act: Act,
    client_name: str,
    what: str,
    lines: Sequence[LineGiven],
    number: str | None = None,
    client_contact: str = "",
    use: str = "food",
    maker: Member | None = None,
    promised_date: date | None = None,
) -> Commission:
    """Take an order. Raises `NumberTaken`, `NotARecipe` and `LineExists`."""
    for line in lines:
        order_lines.check_recipe(line.recipe)
    commission = Commission.objects.create(
        id=act.id,
        studio=act.studio,
        number=_number(act, number),
        client_name=client_name,
        client_contact=client_contact,
        maker=maker or act.member,
        what=what,
        use=use,
        promised_date=promised_date,
        taken_at=act.happened_at,
    )
    made = [order_lines.make(commission, line, order) for order, line in enumerate(lines)]
    facts = {
        "number": commission.number,
        "use": use,
        "promised_date": promised_date and promised_date.isoformat(),
        "maker": commission.maker_id,
        "lines": [{"id": line.pk, "wanted_sets": line.wanted_sets} for line in made],
    }
    write(act, "took_commission", commission, facts)
    return commission


@transaction.atomic
def change(*, act: Act, commission: Commission, changes: Mapping[str, Any]) -> Commission:
    """Change what may be edited, and count the revision up. Raises `CommissionClosed`."""
    commission = open_one(commission)
    changed = sorted(
        name for name in EDITABLE if name in changes and changes[name] != getattr(commission, name)
    )
    told: dict[str, object] = {
        name: getattr(changes[name], "pk", changes[name]) for name in TOLD if name in changed
    }
    for name in changed:
        setattr(commission, name, changes[name])
    commission.revision += 1
    commission.save(update_fields=[*changed, "revision"])
    write(act, "changed_commission", commission, {"changed": changed, **told})
    return commission


@transaction.atomic
def promise(
    *, act: Act, commission: Commission, promised_date: date | None, reason: str = ""
) -> Commission:
    """Promise another day, or none. Raises `CommissionClosed`."""
    commission = open_one(commission)
    facts = {
        "was": commission.promised_date and commission.promised_date.isoformat(),
        "promised_date": promised_date and promised_date.isoformat(),
        "has_reason": bool(reason),
    }
    commission.promised_date = promised_date
    commission.revision += 1
    commission.save(update_fields=["promised_date", "revision"])
    write(act, "promised", commission, facts)
    return commission


@transaction.atomic
def close(*, act: Act, commission: Commission, is_cancelled: bool, reason: str = "") -> Commission:
    """Close an order that is done with, or cancel it; its pieces stay as they are.

    Raises `CommissionClosed`.
    """
    commission = open_one(commission)
    closed(commission, at=act.happened_at, is_cancelled=is_cancelled)
    verb = "cancelled_commission" if is_cancelled else "closed_commission"
    write(act, verb, commission, {"has_reason": bool(reason)})
    return commission


@transaction.atomic
def reopen(*, act: Act, commission: Commission) -> Commission:
    """Open an order again. Raises `NotClosed`."""
    commission = locked(commission)
    if commission.state == "open":
        raise NotClosed(f"{commission.number} was not closed.")
    commission.closed_at = commission.cancelled_at = None
    commission.revision += 1
    commission.save(update_fields=["closed_at", "cancelled_at", "revision"])
    write(act, "reopened_commission", commission, {})
    return commission


@transaction.atomic
def judge(
    *,
    commission: Commission,
    risk: str,
    words: str,
    likely_from: date | None,
    likely_until: date | None,
    at: datetime,
) -> None:
    """Keep what was last reckoned of a promise; it is no act, so the journal does not hold it."""
    Commission.objects.filter(pk=commission.pk).update(
        risk=risk,
        risk_words=words[:200],
        likely_from=likely_from,
        likely_until=likely_until,
        judged_at=at,
    )


def _number(act: Act, given: str | None) -> str:
    if given is None:
        return f"{SERIES}-{numbers.take(studio=act.studio, letters=SERIES)}"
    if Commission.objects.filter(studio=act.studio, number__iexact=given).exists():
        raise NumberTaken(f"{given} is taken; leave it out to get the next one.", number=given)
    found = _NUMBERED.fullmatch(given)
    if found is not None:
        numbers.pass_over(studio=act.studio, letters=SERIES, number=int(found[1]))
    return given
