"""What a sheet is made of; plain values, so that a paper can be compared and tested as text."""

from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Heading:
    text: str


@dataclass(frozen=True, slots=True)
class Text:
    """A paragraph; a strong one is a verdict or a caution."""

    text: str
    is_strong: bool = False


@dataclass(frozen=True, slots=True)
class Facts:
    """Names and what they are, two columns."""

    rows: Sequence[tuple[str, str]]


@dataclass(frozen=True, slots=True)
class Table:
    """Columns with a head; `shares` are their parts of the width."""

    head: Sequence[str]
    rows: Sequence[Sequence[str]]
    shares: Sequence[float]


Block = Heading | Text | Facts | Table


@dataclass(frozen=True, slots=True)
class Sheet:
    """What begins on a page of its own."""

    title: str
    blocks: Sequence[Block]


@dataclass(frozen=True, slots=True)
class Paper:
    """Sheets that are given out together; the foot stands on every page."""

    title: str
    sheets: Sequence[Sheet]
    foot: str
