"""The demo's pieces and kiln loads, read from their tables."""

from __future__ import annotations

import csv
from dataclasses import dataclass
from pathlib import Path
from typing import Final

PIECES: Final = Path(__file__).with_name("pieces.csv")
LOADS: Final = Path(__file__).with_name("loads.csv")
BOOKED: Final = ("F-211", "F-212")
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
    start: str
    unloaded: str

    @property
    def is_bisque(self) -> bool:
        return self.kind == "bisque"


@dataclass(frozen=True, slots=True)
class PieceRow:
    """One piece of the tables, as it stands at the demo's now."""

    mark: str
    maker: str
    stage: str
    since: str
    place: str
    loads: tuple[LoadRow, ...]

    @property
    def begun_loads(self) -> tuple[LoadRow, ...]:
        """The loads it went into; the others are only booked."""
        return tuple(load for load in self.loads if load.name not in BOOKED)

    @property
    def design(self) -> str:
        return DESIGN_OF.get(self.mark) or DESIGN_OF[self.mark[0]]


def read_pieces() -> list[PieceRow]:
    """Return the sixty pieces."""
    loads = read_loads()
    with PIECES.open(encoding="utf-8") as lines:
        return [
            PieceRow(
                mark=row["piece"],
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
    with LOADS.open(encoding="utf-8") as lines:
        return {
            row["load"]: LoadRow(
                row["load"], row["kiln"], row["kind"], row["start"], row["unloaded"]
            )
            for row in csv.DictReader(lines)
        }
