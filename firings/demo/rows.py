"""The demo's pieces, loads and firing logs, as their tables hold them."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Final

from .kiln_tables import SLOTS, Slot
from .teller import Clock

FOLDER: Final = Path(__file__).parent
BOOKED: Final = "booked"
CALLED_OFF: Final = "called off"
STOPPED: Final = "stopped"
LOADED_BEFORE: Final = timedelta(minutes=30)
SHELVES: Final = ("top", "middle", "bottom")
DESIGN_OF: Final = {
    "T": "barley-row hearth tile",
    "S": "ribbed sauce boat",
    "J": "pine-knop jar",
    "L": "pine-knop lid",
    "I": "inkstand with two pots",
    "B": "wall bracket",
    "P01": "footed dish",
    "P02": "small tray",
    "P03": "beaker",
}


@dataclass(frozen=True, slots=True)
class LoadRow:
    """One kiln load of the tables."""

    name: str
    kiln: str
    kind: str
    cone: str
    start: str
    unloaded: str
    state: str
    contents: str

    @property
    def slot(self) -> Slot:
        """The hours that the table leaves out."""
        return SLOTS[self.name]

    @property
    def is_bisque(self) -> bool:
        return self.kind == "bisque"

    @property
    def is_booked(self) -> bool:
        return self.state == BOOKED

    @property
    def counts(self) -> bool:
        """Whether it was fired to its end and unloaded."""
        return bool(self.unloaded) and not self.state.startswith(STOPPED)

    def loaded_at(self, clock: Clock) -> datetime:
        """Return when its ware went in."""
        slot = self.slot
        return clock.at(slot.loaded) if slot.loaded else clock.at(self.start) - LOADED_BEFORE


@dataclass(frozen=True, slots=True)
class PieceRow:
    """One piece of the tables, as it stands at the demo's now."""

    mark: str
    commission: str
    maker: str
    stage: str
    since: str
    place: str
    loads: tuple[LoadRow, ...]

    @property
    def begun_loads(self) -> tuple[LoadRow, ...]:
        """The loads it went into; the others are only booked."""
        return tuple(load for load in self.loads if not load.is_booked)

    @property
    def design(self) -> str:
        return DESIGN_OF.get(self.mark) or DESIGN_OF[self.mark[0]]

    @property
    def is_for_display(self) -> bool:
        return self.mark[0] in "TIB"


@dataclass(frozen=True, slots=True)
class ReadingRow:
    """What a kiln showed: wall clock, or UTC with a Z behind it. [°C]"""

    at: str
    set_c: float | None
    reading_c: float
    words: str


@dataclass(frozen=True, slots=True)
class ConesRow:
    """The cones of a load, and how the firing cone stood on each shelf."""

    guide: str
    firing: str
    guard: str
    hands: tuple[str, ...]
    words: str


def read_pieces() -> list[PieceRow]:
    """Return the sixty pieces."""
    loads = read_loads()
    with (FOLDER / "pieces.csv").open(encoding="utf-8") as lines:
        return [
            PieceRow(
                mark=row["piece"],
                commission="" if row["commission"] == "-" else row["commission"],
                maker=row["maker"].lower() if row["maker"] != "owner unknown" else "",
                stage=row["stage"],
                since=row["since"],
                place="" if row["place"] == "-" else row["place"],
                loads=tuple(loads[name] for name in row["loads"].split()),
            )
            for row in csv.DictReader(lines)
        ]


def read_loads() -> dict[str, LoadRow]:
    """Return the loads by their name."""
    with (FOLDER / "loads.csv").open(encoding="utf-8") as lines:
        return {
            row["load"]: LoadRow(
                name=row["load"],
                kiln=row["kiln"],
                kind=row["kind"],
                cone=row["target"].removeprefix("cone "),
                start=row["start"],
                unloaded=row["unloaded"],
                state=row["state"],
                contents=row["contents"],
            )
            for row in csv.DictReader(lines)
        }


def read_readings(load: LoadRow) -> list[ReadingRow]:
    """Return what was written down while a load fired, in order of time."""
    day = load.start.split()[0]
    found = []
    for row in _section(load.name):
        wall = row.get("time_utc") or (
            row["time"] if " " in row["time"] else f"{day} {row['time']}"
        )
        set_c = float(row["set"]) if row["set"] else None
        found.append(ReadingRow(wall, set_c, float(row["reading"]), row["note"] or ""))
    last = re.search(r"([\d.]+) C at (\d{4}-\d\d-\d\d \d\d:\d\d)", load.state)
    if last is not None:
        found.append(ReadingRow(last[2], None, float(last[1]), ""))
    return found


def read_cones() -> dict[str, ConesRow]:
    """Return the witness cones by load; a shelf that a kiln has not is left out."""
    return {
        row["load"]: ConesRow(
            guide=row["guide"],
            firing=row["firing"],
            guard=row["guard"],
            hands=tuple(row[shelf] for shelf in SHELVES if row[shelf] != "-"),
            words=row["comment"],
        )
        for row in _section("witness cones")
    }


def _section(title: str) -> Iterator[dict[str, str]]:
    """Yield the rows of the log's section whose title begins so."""
    text = (FOLDER / "firing-logs.csv").read_text(encoding="utf-8")
    for part in text.split("# ")[1:]:
        heading, _, table = part.partition("\n")
        if heading.startswith(title):
            yield from csv.DictReader(table.strip().splitlines())
