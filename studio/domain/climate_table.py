"""Climate readings from a table: which columns it has, its rows, and what is wrong with it.

The header decides: `rh_percent` holds percentages, `humidity_fraction` fractions, and a column
named only `humidity` whatever its numbers look like, so that those above 1 are asked about.
Temperatures stand in `air_c` or `air_f`, times in `taken_at`.
"""

import csv
import io
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Final, TypeVar
from zoneinfo import ZoneInfo

from studio.domain.climate import Reading
from studio.domain.hours import exact_instant
from studio.domain.refusals import Refusal, Unworkable
from studio.domain.text import fused
from studio.domain.units import Typed, convert, read

MOST_ROWS: Final = 20_000
TIME_COLUMN: Final = "taken_at"
PLACE_COLUMN: Final = "place"
AIR_COLUMNS: Final = ("air_c", "air_f")
UNNAMED_HUMIDITY: Final = "humidity"
HUMIDITY_COLUMNS: Final = ("rh_percent", "humidity_fraction", UNNAMED_HUMIDITY)

Value = TypeVar("Value")


class UnreadableTable(Unworkable):
    code = "unreadable-table"
    title = "That table cannot be read."


class NotAnInstant(Unworkable):
    code = "not-an-instant"
    title = "That is not a date and time."


class TooManyRows(Unworkable):
    code = "too-many-rows"
    title = "That table is too long."


@dataclass(frozen=True, slots=True)
class Row:
    """One line that could be read; `place` is a name to look up, None where none is given."""

    line: int
    place: str | None
    reading: Reading
    as_typed: dict[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Fault:
    """What is wrong in one cell, by line (the header is line 1) and column name."""

    line: int
    column: str
    code: str
    detail: str


@dataclass(frozen=True, slots=True)
class Table:
    """Rows that could be read, faults of the others, and the names of columns passed over."""

    rows: list[Row]
    faults: list[Fault]
    passed_over: list[str]


@dataclass(frozen=True, slots=True)
class _Columns:
    """Where each column stands, and how its numbers are named."""

    names: list[str]
    air: str | None
    humidity: str | None

    def cell(self, cells: list[str], name: str) -> str:
        place = self.names.index(name) if name in self.names else len(cells)
        return cells[place].strip() if place < len(cells) else ""


def read_table(text: str, zone: ZoneInfo, *, most_rows: int = MOST_ROWS) -> Table:
    """Return the readings in a comma, semicolon or tab separated text with a header.

    Parameters
    ----------
    text
        The table; a byte order mark is passed over.
    zone
        Zone of times without an offset.
    most_rows
        Longest table taken.

    Raises
    ------
    UnreadableTable
        When the header lacks `taken_at` or any value, names one twice, or quotes do not close.
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
        row = _row(line, cells, columns, zone, faults)
        if row is not None:
            rows.append(row)
    known = {TIME_COLUMN, PLACE_COLUMN, *AIR_COLUMNS, *HUMIDITY_COLUMNS}
    return Table(rows, faults, [name for name in columns.names if name not in known])


def split_lines(text: str) -> list[tuple[int, list[str]]]:
    """Return the cells of every line that has any, each with its number, from 1."""
    head = text.partition("\n")[0]
    separator = max(",;\t", key=head.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    lines = []
    try:
        for cells in reader:
            if any(cell.strip() for cell in cells):
                lines.append((reader.line_num, cells))
    except csv.Error as error:
        raise UnreadableTable(f"Line {reader.line_num}: {error}.", line=reader.line_num) from None
    return lines


def _columns(cells: list[str]) -> _Columns:
    names = [cell.strip().casefold() for cell in cells]
    twice = sorted({name for name in names if name and names.count(name) > 1})
    if twice:
        raise UnreadableTable(f"The column {twice[0]} stands there twice.", columns=twice)
    if TIME_COLUMN not in names:
        raise UnreadableTable(f"The header has no column {TIME_COLUMN}.", columns=names)
    air = _only(names, AIR_COLUMNS)
    humidity = _only(names, HUMIDITY_COLUMNS)
    if air is None and humidity is None:
        raise UnreadableTable(
            "The header names no temperature (air_c, air_f) and no humidity "
            "(rh_percent, humidity_fraction, humidity).",
            columns=names,
        )
    return _Columns(names, air, humidity)


def _only(names: list[str], choices: tuple[str, ...]) -> str | None:
    present = [name for name in choices if name in names]
    if len(present) > 1:
        raise UnreadableTable(f"Keep one of {' and '.join(present)}.", columns=present)
    return present[0] if present else None


def _row(
    line: int, cells: list[str], columns: _Columns, zone: ZoneInfo, faults: list[Fault]
) -> Row | None:
    faults_before = len(faults)
    typed: dict[str, str] = {}
    named = columns.humidity != UNNAMED_HUMIDITY or "%" in columns.cell(cells, UNNAMED_HUMIDITY)

    def value(name: str | None, reads: Callable[[str], Value]) -> Value | None:
        text = "" if name is None else columns.cell(cells, name)
        if name is None or not text:
            return None
        try:
            return reads(text)
        except Refusal as refused:
            faults.append(Fault(line, name, refused.code, refused.detail))
            return None

    taken_at = value(TIME_COLUMN, lambda text: instant_of(text, zone))
    air_c = value(columns.air, lambda text: _air_c(text, columns.air, typed))
    humidity = value(columns.humidity, lambda text: _humidity(text, columns.humidity, typed))
    if len(faults) == faults_before:
        if taken_at is None:
            faults.append(Fault(line, TIME_COLUMN, "no-time", "There is no time in this row."))
        elif air_c is None and humidity is None:
            column = columns.air or columns.humidity or ""
            faults.append(Fault(line, column, "no-value", "There is no value in this row."))
    if len(faults) > faults_before or taken_at is None:
        return None
    reading = Reading(taken_at, air_c, humidity, humidity_is_named=named)
    return Row(line, fused(columns.cell(cells, PLACE_COLUMN)) or None, reading, typed)


def instant_of(text: str, zone: ZoneInfo) -> datetime:
    """Return the instant a cell names; `zone` is that of a time without an offset."""
    try:
        given = datetime.fromisoformat(text)
    except ValueError:
        given = None
    if given is None or ":" not in text:
        raise NotAnInstant(f"{text[:40]} is not a date and time such as 2026-10-31 08:00.")
    return exact_instant(given, zone) if given.tzinfo is None else given.astimezone(UTC)


def _air_c(text: str, column: str | None, typed: dict[str, str]) -> float:
    if column != "air_f":
        return _kept(read(text, into="c"), "air_c", typed)
    found = read(text, into="f")
    typed["air_c"] = found.as_typed or f"{text} °F"
    return convert(found.value, "f", "c")


def _humidity(text: str, column: str | None, typed: dict[str, str]) -> float:
    if column == "rh_percent":
        return _kept(read(text, into="percent"), "humidity_fraction", typed) / 100.0
    return _kept(read(text, into="fraction"), "humidity_fraction", typed)


def _kept(found: Typed, name: str, typed: dict[str, str]) -> float:
    if found.as_typed is not None:
        typed[name] = found.as_typed
    return found.value
