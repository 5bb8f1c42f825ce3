"""Whose ware goes first when two want the same layer: the studio's rule, in words and as an order.

A promise inside fourteen days goes first, the earliest before the others; then who has waited
longest; then the maker who has fired fewest litres this month. The rule is the studio's own; an
owner may set it aside with a reason that all can read.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final
from uuid import UUID

PROMISE_DAYS: Final = 14
RULE: Final = (
    "A promise inside 14 days first, then whoever has waited longest, then the maker with the "
    "fewest litres fired this month."
)
ROUNDING_L: Final = 1e-9


@dataclass(frozen=True, slots=True)
class Ask:
    """Ware that waits for a firing. Days are those of the studio; volumes in litres.

    `put_first` says who set the rule aside for it, and why; "" where nobody did.
    """

    id: UUID
    maker: str
    due_date: date | None
    waiting_since: date
    litres: float
    maker_litres_this_month: float = 0.0
    put_first: str = ""


@dataclass(frozen=True, slots=True)
class Ranked:
    """Where an ask stands, from 1, and the sentence that says why."""

    ask: Ask
    place: int
    reason: str


@dataclass(frozen=True, slots=True)
class PutOff:
    """An ask that this layer does not take, and why."""

    ask: Ask
    reason: str


@dataclass(frozen=True, slots=True)
class Shared:
    """What a layer takes, what of it is left [l], and what is put off."""

    taken: tuple[Ranked, ...]
    left_l: float
    put_off: tuple[PutOff, ...]
    offer: str


def order(asks: Sequence[Ask], today: date) -> tuple[Ranked, ...]:
    """Return the asks by the studio's rule, each with why it stands there.

    Of asks equal in everything the ids decide, so that two phones show the same order.
    """
    ordered = sorted(asks, key=lambda ask: _key(ask, today))
    return tuple(
        Ranked(ask, place, _reason(ask, ordered[place - 2] if place > 1 else None, today))
        for place, ask in enumerate(ordered, start=1)
    )


def share(ranked: Sequence[Ranked], room_l: float) -> Shared:
    """Return who gets a layer of `room_l` litres, in order; what is left goes to ware that fits it.

    Raises `ValueError` when the room or an ask is not above 0 l.
    """
    if room_l <= 0.0 or any(row.ask.litres <= 0.0 for row in ranked):
        raise ValueError("Volumes are above 0 l.")
    left_l, taken, put_off = room_l, [], []
    for row in ranked:
        if row.ask.litres <= left_l + ROUNDING_L:
            left_l = max(0.0, left_l - row.ask.litres)
            taken.append(row)
        else:
            put_off.append(PutOff(row.ask, _why_put_off(row.ask, taken, left_l)))
    offer = f"{_litres(left_l)} left over for small ware." if left_l > ROUNDING_L else ""
    return Shared(tuple(taken), left_l, tuple(put_off), offer)


def waits_days(ask: Ask, today: date) -> int:
    """Return for how many days it has waited, 0 or more."""
    return max(0, (today - ask.waiting_since).days)


def is_promised_soon(ask: Ask, today: date) -> bool:
    """Return whether its promise falls inside fourteen days, or has passed."""
    return ask.due_date is not None and (ask.due_date - today).days <= PROMISE_DAYS


def _key(ask: Ask, today: date) -> tuple[bool, bool, date, date, float, UUID]:
    is_soon = is_promised_soon(ask, today)
    due = ask.due_date if is_soon and ask.due_date is not None else date.max
    rule = (not is_soon, due, ask.waiting_since, ask.maker_litres_this_month, ask.id)
    return not ask.put_first, *rule


def _reason(ask: Ask, before: Ask | None, today: date) -> str:
    if ask.put_first:
        return f"Put first by {ask.put_first}"
    days = waits_days(ask, today)
    if is_promised_soon(ask, today):
        assert ask.due_date is not None  # or it were not promised soon
        return f"{_due(ask.due_date, today)} Promises inside {PROMISE_DAYS} days go first."
    waited = "Came today." if days == 0 else f"Has waited {days} day{'s' * (days != 1)}."
    if before is None:
        return f"{waited} Nothing here is promised inside {PROMISE_DAYS} days."
    if before.put_first:
        return f"{waited} After what was put first."
    if is_promised_soon(before, today):
        return f"{waited} After what is promised inside {PROMISE_DAYS} days."
    if before.maker == ask.maker:
        longer = "as long" if before.waiting_since == ask.waiting_since else "longer"
        return f"{waited} Another of {ask.maker}'s has waited {longer}."
    if before.waiting_since == ask.waiting_since:
        return (
            f"{waited} As long as {before.maker}'s; {ask.maker} has fired "
            f"{_litres(ask.maker_litres_this_month)} this month, {before.maker} "
            f"{_litres(before.maker_litres_this_month)}."
        )
    return f"{waited} {before.maker}'s has waited longer."


def _why_put_off(ask: Ask, taken: Sequence[Ranked], left_l: float) -> str:
    needs = f"needs {_litres(ask.litres)}, {_litres(left_l)} left"
    if not taken:
        return f"Too much for this layer: {needs}."
    first = taken[-1]
    whose = "another of " if first.ask.maker == ask.maker else ""
    return f"After {whose}{first.ask.maker}'s ({first.reason.removesuffix('.')}): {needs}."


def _due(due: date, today: date) -> str:
    days = (due - today).days
    shown = f"{due.day} {due:%B}"
    if days < 0:
        return f"Was promised for {shown}."
    return f"Promised for {shown}, in {days} day{'s' * (days != 1)}."


def _litres(litres: float) -> str:
    return f"{litres:.1f}".removesuffix(".0") + " l"
