"""Readings of a kiln: which are believed, and a table of them line by line.

Every number is kept. One that cannot be the temperature of this kiln is asked about or left out of
sums, with its reason; one over the kiln's top is taken and sounded at once. The limits are common
practice, no source. A typed reading is a note of a look at the kiln: nothing here watches it.
"""

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Final, Literal, TypeVar
from zoneinfo import ZoneInfo

from studio.domain.climate_table import (
    MOST_ROWS,
    TIME_COLUMN,
    Fault,
    TooManyRows,
    UnreadableTable,
    instant_of,
    split_lines,
)
from studio.domain.refusals import Refusal
from studio.domain.text import fused
from studio.domain.units import TARGETS, Typed, convert, read

Verdict = Literal["taken", "over_top", "asked", "out_of_range"]
Value = TypeVar("Value")

LOWEST_C: Final = -30.0
"""A kiln shed in winter; common sense."""
FURTHEST_OVER_TOP_K: Final = 100.0
"""How far a kiln or its sensor may run over its top; beyond, it is a slip. No source."""

READING_COLUMNS: Final = ("reading_c", "reading_f")
SET_COLUMNS: Final = ("set_c", "set_f")
NOTE_COLUMN: Final = "note"


@dataclass(frozen=True, slots=True)
class Judged:
    """Whether a reading is believed, why not, in a sentence, and what it may have meant. [°C]"""

    verdict: Verdict
    code: str = ""
    detail: str = ""
    instead_c: float | None = None

    @property
    def is_used(self) -> bool:
        return self.verdict in ("taken", "over_top")


@dataclass(frozen=True, slots=True)
class Row:
    """One line that could be read. [°C]"""

    line: int
    happened_at: datetime
    reading_c: float
    set_c: float | None
    words: str
    judged: Judged
    as_typed: dict[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Table:
    """Rows that could be read, faults of the others, and the names of columns passed over."""

    rows: list[Row]
    faults: list[Fault]
    passed_over: list[str]


def gate(reading_c: float, top_c: float) -> Judged:
    """Return whether a reading can be the temperature of a kiln with this top. [°C]

    Raises `ValueError` when one is not finite.
    """
    if not (math.isfinite(reading_c) and math.isfinite(top_c)):
        raise ValueError("Temperatures are finite.")
    if LOWEST_C <= reading_c <= top_c:
        return Judged("taken")
    meant = convert(reading_c, "f", "c")
    if top_c < reading_c <= top_c + FURTHEST_OVER_TOP_K:
        return Judged(
            "over_top",
            "over-top",
            f"{reading_c:.0f} °C is over the top of this kiln, {top_c:.0f} °C. Go and look at it.",
        )
    if reading_c > top_c and meant <= top_c + FURTHEST_OVER_TOP_K:
        return Judged(
            "asked",
            "reading-in-fahrenheit",
            f"{reading_c:g} °C is over the top of this kiln, {top_c:.0f} °C: was it "
            f"{reading_c:g} °F, which is {meant:.0f} °C? Kept, and left out until you say.",
            instead_c=round(meant, 1),
        )
    return Judged(
        "out_of_range",
        "reading-out-of-range",
        f"{reading_c:g} °C is no temperature of this kiln. Kept, and left out.",
    )


def read_celsius(given: object, unit: str = "c") -> Typed:
    """Return a typed temperature in °C, and what was typed where that was not a plain °C number.

    `unit` is "c" or "f", what a bare number means. Refuses what `units.read` refuses: no number,
    not finite, another unit, `12 mm`.
    """
    # A number in °F may stand under °C: it is read, for the gate to ask about.
    found = read(given, into=unit, most=TARGETS["f"].most)
    if unit == "c":
        return found
    typed = found.as_typed or f"{found.value:g} °F"
    return Typed(convert(found.value, "f", "c"), typed)


def read_table(text: str, zone: ZoneInfo, top_c: float, *, most_rows: int = MOST_ROWS) -> Table:
    """Return the readings in a comma, semicolon or tab separated text with a header.

    Parameters
    ----------
    text
        The table: `taken_at`, `reading_c` or `reading_f`, and if there is one `set_c` or `set_f`
        and `note`.
    zone
        Zone of times without an offset.
    top_c
        Top of the kiln. [°C]
    most_rows
        Longest table taken.

    Raises
    ------
    UnreadableTable
        When the header lacks a column, names one twice, or quotes do not close.
    TooManyRows
        When there are more rows than `most_rows`.
    """
    lines = split_lines(text.removeprefix("\ufeff"))
    if not lines:
        raise UnreadableTable("The table is empty.")
    columns = _columns(lines[0][1])
    if len(lines) - 1 > most_rows:
        raise TooManyRows(f"At most {most_rows} rows at a time; this has {len(lines) - 1}.")
    rows: list[Row] = []
    faults: list[Fault] = []
    for line, cells in lines[1:]:
        row = _row(line, dict(zip(columns, cells, strict=False)), zone, top_c, faults)
        if row is not None:
            rows.append(row)
    faults += _said_twice(rows)
    known = {TIME_COLUMN, NOTE_COLUMN, *READING_COLUMNS, *SET_COLUMNS}
    rows.sort(key=lambda row: (row.happened_at, row.line))
    return Table(rows, faults, [name for name in columns if name not in known])


def _columns(cells: Sequence[str]) -> list[str]:
    names = [cell.strip().casefold() for cell in cells]
    twice = sorted({name for name in names if name and names.count(name) > 1})
    if twice:
        raise UnreadableTable(f"The column {twice[0]} stands there twice.", columns=twice)
    if TIME_COLUMN not in names:
        raise UnreadableTable(f"The header has no column {TIME_COLUMN}.", columns=names)
    for choices, is_needed in ((READING_COLUMNS, True), (SET_COLUMNS, False)):
        present = [name for name in choices if name in names]
        if len(present) > 1:
            raise UnreadableTable(f"Keep one of {' and '.join(present)}.", columns=present)
        if is_needed and not present:
            raise UnreadableTable(
                f"The header has no column {' or '.join(choices)}.", columns=names
            )
    return names


def _row(
    line: int, cells: dict[str, str], zone: ZoneInfo, top_c: float, faults: list[Fault]
) -> Row | None:
    faults_before = len(faults)
    typed: dict[str, str] = {}

    def value(choices: Sequence[str], reads: Callable[[str, str], Value]) -> Value | None:
        name = next((name for name in choices if name in cells), choices[0])
        text = cells.get(name, "").strip()
        if not text:
            return None
        try:
            return reads(text, name)
        except Refusal as refused:
            faults.append(Fault(line, name, refused.code, refused.detail))
            return None

    def celsius(text: str, name: str) -> float:
        found = read_celsius(text, name[-1])
        if found.as_typed is not None:
            typed[f"{name[:-2]}_c"] = found.as_typed
        return found.value

    at = value((TIME_COLUMN,), lambda text, _: instant_of(text, zone))
    reading_c = value(READING_COLUMNS, celsius)
    set_c = value(SET_COLUMNS, celsius)
    if len(faults) == faults_before and at is None:
        faults.append(Fault(line, TIME_COLUMN, "no-time", "There is no time in this row."))
    elif len(faults) == faults_before and reading_c is None:
        name = next(name for name in READING_COLUMNS if name in cells or name == "reading_f")
        faults.append(Fault(line, name, "no-value", "There is no reading in this row."))
    if len(faults) > faults_before or at is None or reading_c is None:
        return None
    words = fused(cells.get(NOTE_COLUMN, "").strip())
    return Row(line, at, reading_c, set_c, words, gate(reading_c, top_c), typed)


def _said_twice(rows: list[Row]) -> list[Fault]:
    """Return faults of rows at the instant of another with another value; those rows are taken out.

    The same line twice is one reading said twice, and stays once.
    """
    faults: list[Fault] = []
    first: dict[datetime, Row] = {}
    for row in list(rows):
        before = first.setdefault(row.happened_at, row)
        if before is row:
            continue
        rows.remove(row)
        if before.reading_c != row.reading_c:
            detail = f"Line {before.line} has another reading for that time."
            faults.append(Fault(row.line, TIME_COLUMN, "second-at-that-time", detail))
    return faults
