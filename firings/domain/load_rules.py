"""When a load says no: out of order, settled, too hot, or without a word why."""

from collections.abc import Mapping
from typing import Final

from firings.domain.loads import NEXT, Kind, Now, State, steps_left_out
from studio.domain.refusals import Conflict, Unworkable

WANT_REASON: Final = (Kind.REOPENED, Kind.CALLED_OFF)
STATE_WORDS: Final[Mapping[str, str]] = {
    "open": "open",
    "settled": "settled",
    "loading": "loading",
    "firing": "firing",
    "stopped": "stopped, decide",
    "cooling": "cooling",
    "opened": "opened",
    "unloaded": "unloaded",
    "called_off": "called off",
}


class LoadSettled(Conflict):
    code = "load-settled"
    title = "That load is settled."


class LoadOutOfOrder(Conflict):
    code = "load-out-of-order"
    title = "That cannot happen to a load from where it is."


class ReasonWanted(Unworkable):
    code = "load-reason-wanted"
    title = "Say why."


class NotCoolEnough(Unworkable):
    code = "not-cool-enough"
    title = "That kiln is hotter than the studio opens it."


def can_follow(state: str) -> tuple[Kind, ...]:
    """Return the kinds of event that may come next."""
    return tuple(NEXT[State(state)])


def check_event(now: Now, kind: str, *, is_catching_up: bool = False) -> None:
    """Refuse an event whose writer could see that it cannot come next.

    `is_catching_up` is True for a load written down afterwards: there the steps between may be
    missing. Raises `LoadOutOfOrder`.
    """
    if Kind(kind) in NEXT[now.state]:
        return
    if is_catching_up and steps_left_out(now.state, Kind(kind)) is not None:
        return
    follow = can_follow(now.state)
    said = f"It can be: {_listed(follow)}." if follow else "Nothing more can happen to it."
    raise LoadOutOfOrder(
        f"The load is {STATE_WORDS[now.state]}. {said}",
        state=str(now.state),
        can_follow=[str(kind) for kind in follow],
    )


def check_may_edit(now: Now, *, settled_by: str | None = None, next_load: object = None) -> None:
    """Refuse to change what is in a load that is no longer open: raises `LoadSettled`."""
    if now.may_be_edited:
        return
    raise LoadSettled(
        f"The load is {STATE_WORDS[now.state]}; its list is closed.",
        state=str(now.state),
        settled_at=None if now.settled_at is None else now.settled_at.isoformat(),
        settled_by=settled_by,
        next_load=next_load,
        ask="technician",
    )


def check_reason(kind: str, reason: str) -> None:
    """Refuse to reopen or call off a load without a word: raises `ReasonWanted`."""
    if Kind(kind) in WANT_REASON and not reason.strip():
        raise ReasonWanted("Everybody with ware in it will ask. Say why.", pointer="#/reason")


def check_opening(celsius: float | None, reason: str, *, limit_c: float) -> None:
    """Refuse to open a kiln that nobody measured, or a hot one, unless somebody says why.

    Raises `NotCoolEnough`. The limit is the studio's own; makers differ. [°C]
    """
    if reason.strip() or (celsius is not None and celsius <= limit_c):
        return
    read = "No temperature was read." if celsius is None else f"It reads {celsius:.0f} °C."
    raise NotCoolEnough(
        f"{read} This studio opens at {limit_c:.0f} °C. Hot air burns and cold air cracks ware.",
        pointer="#/celsius",
        limit_c=limit_c,
    )


def _listed(kinds: tuple[Kind, ...]) -> str:
    return ", ".join(kind.replace("_", " ") for kind in kinds)
