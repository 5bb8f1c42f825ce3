"""The words of an e-mail that tells a person what to do: plain text, the thing itself first."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

SUBJECT_MOST: Final = 120


@dataclass(frozen=True, slots=True)
class Item:
    """One thing to tell: `title` says what and where, `body` by when and the one act."""

    title: str
    body: str
    link: str


@dataclass(frozen=True, slots=True)
class Message:
    """A subject on one line and a text of short paragraphs."""

    subject: str
    text: str


def compose(items: Sequence[Item], *, studio_name: str, address: str, is_urgent: bool) -> Message:
    """Return the message about `items`, of which there is at least one.

    `address` is where the front end is, without a slash at the end; links are paths under it.
    """
    first = _one_line(items[0].title)
    subject = first if len(items) == 1 else f"{first}, and {len(items) - 1} more"
    if is_urgent:
        subject = f"Now: {subject}"
    paragraphs = [_paragraph(item, address) for item in items]
    foot = f"Natch, {_one_line(studio_name)}. Answer, put off or let go: {address}/"
    return Message(subject=_short(subject), text="\n\n".join([*paragraphs, f"-- \n{foot}"]) + "\n")


def _paragraph(item: Item, address: str) -> str:
    link = f"{address}{item.link}" if item.link else ""
    return "\n".join(line for line in (_one_line(item.title), item.body.strip(), link) if line)


def _one_line(text: str) -> str:
    return " ".join(text.split())


def _short(text: str) -> str:
    return text if len(text) <= SUBJECT_MOST else text[: SUBJECT_MOST - 1] + "…"
