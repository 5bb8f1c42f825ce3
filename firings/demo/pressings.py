"""The demo's pressings, demouldings and joinings, part by part."""

from __future__ import annotations

import csv
from collections import defaultdict
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from uuid import UUID

from moulds.models import Casting, Design
from pieces.actions import parts, pressing
from pieces.actions.shapes import PartGiven, PieceGiven
from pieces.models import CommissionLine, Part, Piece
from studio.domain.ids import uuid7
from studio.models import Act, SlabBlock

from . import tables
from .teller import Teller

TABLE = Path(__file__).with_name("pressed.csv")
Doing = Callable[[Act, list[Piece]], object]


@dataclass(frozen=True, slots=True)
class PressedRow:
    """One clay part: when it was pressed, came out and was joined (empty: not yet)."""

    piece: str
    role: str
    number: str
    mould_set: str
    pressed: str
    out: str
    joined: str
    fate: str

    @property
    def is_swapped_in(self) -> bool:
        return self.fate == "new"

    @property
    def cracked(self) -> str:
        return self.fate.removeprefix("cracked ") if self.fate.startswith("cracked") else ""


@dataclass(slots=True)
class Bench:
    """The pressed parts of every piece, and the ids they get."""

    teller: Teller
    designs: dict[str, Design]
    castings: dict[str, Casting]
    makers: dict[str, str]
    design_of: dict[str, str]
    order_of: dict[str, str]
    piece_ids: defaultdict[str, UUID] = field(default_factory=lambda: defaultdict(uuid7))
    part_ids: dict[PressedRow, UUID] = field(default_factory=dict)
    lines: dict[str, CommissionLine] = field(default_factory=dict)
    _together: dict[tuple[str, datetime, str], list[str]] = field(default_factory=dict)

    def queue(self) -> dict[str, list[PressedRow]]:
        """Queue all acts at the bench; return the parts of each piece."""
        found: defaultdict[str, list[PressedRow]] = defaultdict(list)
        for row in _rows():
            found[row.piece].append(row)
            self.part_ids[row] = uuid7()
        for mark, rows in found.items():
            for row in rows:
                self._queue_part(row, rows)
            self._queue_joinings(mark, rows)
        return found

    def _queue_part(self, row: PressedRow, rows: list[PressedRow]) -> None:
        at = self.teller.clock.at(row.pressed)
        self.teller.then(at, lambda: self._press(row, rows, at))
        if row.out:
            out = self.teller.clock.at(row.out)
            self.teller.then(out, lambda: self._tell([row], "demoulded", out))
        if row.cracked:
            cracked = self.teller.clock.at(row.cracked)
            self.teller.then(cracked, lambda: self._tell([row], "cracked", cracked))

    def _queue_joinings(self, mark: str, rows: list[PressedRow]) -> None:
        together: defaultdict[str, list[PressedRow]] = defaultdict(list)
        for row in rows:
            if row.joined:
                together[row.joined].append(row)
        for wall, joined in together.items():
            self._queue_joining(joined, self.teller.clock.at(wall))

    def _queue_joining(self, joined: list[PressedRow], at: datetime) -> None:
        self.teller.then(at, lambda: self._tell(joined, "joined", at))

    def _press(self, row: PressedRow, rows: list[PressedRow], at: datetime) -> None:
        casting = self.castings[row.mould_set]
        pressing.press(
            act=self.teller.act(self.makers[row.piece], at),
            casting=casting,
            mould_parts=list(casting.parts.all()),
            parts=[
                PartGiven(
                    id=self.part_ids[row],
                    role=row.role,
                    piece=self._piece(row.piece),
                    replaces=self._replaced(row, rows),
                )
            ],
            slab_block=self._block(row.piece),
        )

    def _replaced(self, row: PressedRow, rows: list[PressedRow]) -> UUID | None:
        if not row.is_swapped_in:
            return None
        return next(self.part_ids[old] for old in rows if old.cracked and old.role == row.role)

    def _piece(self, mark: str) -> PieceGiven:
        return PieceGiven(
            id=self.piece_ids[mark],
            design=self.designs[self.design_of[mark]],
            mark=mark,
            maker=self.teller.members[self.makers[mark]],
            use="display" if mark[0] in "TIB" else "food",
            line=self.lines.get(self.order_of[mark]),
        )

    def _block(self, mark: str) -> SlabBlock | None:
        label = tables.SLABS.get(mark)
        if label is None:
            return None
        return SlabBlock.objects.get(studio=self.teller.studio, label=label)

    def _tell(self, rows: Iterable[PressedRow], kind: str, at: datetime) -> None:
        rows = list(rows)
        told = list(Part.objects.filter(pk__in=[self.part_ids[row] for row in rows]))
        act = self.teller.act(self.makers[rows[0].piece], at)
        parts.record_events(act=act, parts=told, kind=kind)

    def together(self, who: str, at: datetime, what: str, mark: str, do: Doing) -> None:
        """Queue one act for all pieces to which one person does the same at the same time."""
        marks = self._together.setdefault((who, at, what), [])
        marks.append(mark)
        if len(marks) == 1:
            self.teller.then(
                at, lambda: do(self.teller.act(who, at), [self.piece(each) for each in marks])
            )

    def piece(self, mark: str) -> Piece:
        """Return a piece that has been begun."""
        return Piece.objects.get(pk=self.piece_ids[mark])


def _rows() -> list[PressedRow]:
    with TABLE.open(encoding="utf-8") as lines:
        return [
            PressedRow(
                piece=row["piece"],
                role=row["role"],
                number=row["number"],
                mould_set=row["mould_set"],
                pressed=row["pressed"],
                out=row["out"],
                joined=row["joined"],
                fate=row["fate"],
            )
            for row in csv.DictReader(lines)
        ]
