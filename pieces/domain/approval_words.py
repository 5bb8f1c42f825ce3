"""What a client is asked and answered, in words; and until when the clay waits for the answer."""

from collections.abc import Sequence
from datetime import date
from typing import Final

from .order_words import day

ABOUT: Final = {
    "colour": "colour",
    "pattern": "pattern",
    "shape": "shape",
    "size": "size",
    "glaze": "glaze",
    "other": "something",
}
WAITS: Final = {
    "shaping": "before the clay is too stiff to change",
    "bisque": "before the first firing",
    "glazing": "before it is glazed",
    "delivery": "before it is handed over",
}
#: Whether the ware can wait where it is; damp clay cannot.
KEEPS: Final = {
    "bisque": "Dry ware keeps; the kiln's days may not.",
    "glazing": "Bisqued ware keeps; the kiln's days may not.",
    "delivery": "It keeps.",
}
ANSWERED: Final = {
    ("yes", "link"): "the client said yes",
    ("no", "link"): "the client said no",
    ("yes", "told"): "the client said yes, as told to us",
    ("no", "told"): "the client said no, as told to us",
    ("let_go", "told"): "no longer asked",
}
NO_CLOCK: Final = "No clay of this order is damp, so no clay decides the day."


def title(about: str) -> str:
    """Return what is to be approved, as a head: "Colour to approve"."""
    return f"{ABOUT[about].capitalize()} to approve"


def asked(about: str, due: str) -> str:
    """Return that an approval was asked, for the history; `due` is a date in ISO form."""
    return f"{ABOUT[about]}: the client is asked, by {day(date.fromisoformat(due))}"


def answered(about: str, answer: str, through: str) -> str:
    """Return what was answered, for the history."""
    return f"{ABOUT[about]}: {ANSWERED[answer, through]}"


def clock(waits: str, closes: Sequence[tuple[str, date]]) -> str:
    """Return how long the clay waits for an answer.

    Parameters
    ----------
    waits
        What does not go on without the answer.
    closes
        The marks of pieces that are damp, with the likely day on which each is too stiff.

    Returns
    -------
    As in "S04 is likely too stiff to change from 3 Nov 2026 on, a guess." For fired or dry ware,
    that it keeps.
    """
    if waits != "shaping":
        return KEEPS[waits]
    if not closes:
        return NO_CLOCK
    mark, first = min(closes, key=lambda close: (close[1], close[0]))
    return (
        f"{mark} is likely too stiff to change from {day(first)} on, a guess: clay does not wait."
    )


def message(number: str, about: str, due: date) -> str:
    """Return a text that the maker may send to the client by themselves; it names nobody."""
    return (
        f"Your order {number}: we need your yes or no about the {ABOUT[about]} by {day(due)}. "
        "Please answer on the page we sent you, or ring us. Until then that work waits."
    )


def to_client(answer: str, through: str) -> str:
    """Return what was answered, to the client themselves."""
    if answer == "let_go":
        return "No answer is needed any more."
    said = "yes" if answer == "yes" else "no"
    return f"You said {said}." if through == "link" else f"You said {said}, as you told us."
