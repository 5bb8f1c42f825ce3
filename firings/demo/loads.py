"""The demo's kiln loads: listed, filled by their makers, settled, fired, read and unloaded."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from datetime import datetime, timedelta
from functools import partial
from typing import Any, Final
from uuid import UUID

from firings.actions import cones, events, loads, placing, readings
from firings.actions.cones import ConeGiven, TicketGiven
from firings.actions.events import Given, Result
from firings.actions.loads import LoadGiven
from firings.actions.placing import PieceAsked, ThingAsked
from firings.actions.readings import ReadingGiven
from firings.models import Kiln, Load, Placement, Programme
from studio.models import Place

from . import kiln_tables as tables
from .pressings import Bench
from .rows import (
    CALLED_OFF,
    STOPPED,
    ConesRow,
    LoadRow,
    PieceRow,
    ReadingRow,
    read_cones,
    read_loads,
    read_readings,
)
from .teller import Teller

KEEPER: Final = "piet"
LISTED_AHEAD: Final = timedelta(days=3)
PLACED_AHEAD: Final = timedelta(hours=5)
SETTLED_AHEAD: Final = timedelta(hours=2)
MINUTE: Final = timedelta(minutes=1)
FLAT: Final = 7  # the hand of a clock; 12 is upright
UPRIGHT: Final = 12


def queue_loads(
    teller: Teller,
    bench: Bench,
    rows: Sequence[PieceRow],
    made: tuple[dict[str, Kiln], dict[str, Programme]],
) -> None:
    """Queue everything the tables and logs say of the loads, and who waits for which cone."""
    stood = read_cones()
    for load in read_loads().values():
        inside = [row for row in rows if load in row.loads]
        story = LoadStory(teller, bench, load, inside, made)
        story.queue()
        if load.name in stood:
            story.queue_cones(stood[load.name])
    for mark, kind, cone, who, wall, fault, mended, words in tables.TICKETS:
        asked = TicketGiven(kind, cone, words, fault, mended)
        _queue_ticket(teller, bench, mark, asked, who, teller.clock.at(wall))


class LoadStory:
    """Queues the acts of one load."""

    def __init__(
        self,
        teller: Teller,
        bench: Bench,
        row: LoadRow,
        inside: Sequence[PieceRow],
        made: tuple[dict[str, Kiln], dict[str, Programme]],
    ) -> None:
        self.teller, self.bench, self.row, self.inside = teller, bench, row, inside
        kilns, programmes = made
        self.kiln, self.programme = kilns[row.kiln], programmes[row.kind]
        self.id: UUID | None = None

    def queue(self) -> None:
        """Queue what the table says, as far as it has come."""
        self._queue_list()
        self._queue_placing()
        if self.row.is_booked:
            return
        self._tell(self._at(self.row.slot.settled, SETTLED_AHEAD), "settled")
        self._tell(self.row.loaded_at(self.teller.clock), "loading")
        ended = self.teller.clock.at(self.row.slot.ended)
        if self.row.state.startswith(CALLED_OFF):
            self._tell(ended, "called_off", reason=tables.CALLED_OFF_WHY)
            return
        self._tell(self._start, "started")
        self._queue_log()
        self._tell(ended, "ended")
        if self.row.unloaded:
            self._queue_unloading()

    def queue_cones(self, stood: ConesRow) -> None:
        """Queue how its cones were found, written down as it was unloaded."""
        levels = range(len(stood.hands), 0, -1)
        found = [
            ConeGiven("firing", stood.firing, level, FLAT if hand == "flat" else int(hand))
            for level, hand in zip(levels, stood.hands, strict=True)
        ]
        found += [ConeGiven("guide", stood.guide), ConeGiven("guard", stood.guard)]
        self._queue_cones(self._shelved + 2 * MINUTE, found, stood.words)

    @property
    def _start(self) -> datetime:
        return self.teller.clock.at(self.row.start)

    @property
    def _shelved(self) -> datetime:
        """When its ware stood on the shelves again: some minutes after it was opened."""
        return self.teller.clock.at(self.row.unloaded) + self.row.slot.shelved_min * MINUTE

    def _at(self, wall: str, ahead: timedelta) -> datetime:
        return self.teller.clock.at(wall) if wall else self._start - ahead

    def _queue_list(self) -> None:
        at, closes = self._at(self.row.slot.listed, LISTED_AHEAD), self.row.slot.closes
        given = LoadGiven(
            kiln=self.kiln,
            kind=self.row.kind,
            cone=self.row.cone,
            starts_at=self._start,
            cutoff_at=self.teller.clock.at(closes) if closes else None,
            programme=self.programme,
            watcher=self.teller.members[KEEPER],
            number=self.row.name,
        )

        def open_it() -> None:
            self.id = loads.open_load(act=self.teller.act(KEEPER, at), given=given).pk

        self.teller.then(at, open_it)

    def _queue_placing(self) -> None:
        at = self._at(self.row.slot.placed, PLACED_AHEAD)
        by_maker: dict[str, list[PieceRow]] = defaultdict(list)
        for row in self.inside:
            by_maker[row.maker].append(row)
        for who, rows in by_maker.items():
            self.teller.then(at, partial(self._place, who, at, rows))
            at += MINUTE
        if self.row.name in tables.THINGS:
            self.teller.then(at, partial(self._place_things, at))

    def _place(self, who: str, at: datetime, rows: Sequence[PieceRow]) -> None:
        asked = [PieceAsked(self.bench.piece(row.mark)) for row in rows]
        placing.place(act=self.teller.act(who, at), load=self._load(), pieces=asked)

    def _place_things(self, at: datetime) -> None:
        what, count, who, size = tables.THINGS[self.row.name]
        asked = ThingAsked(what=what, count=count, size=size)
        placing.place(act=self.teller.act(who, at), load=self._load(), things=[asked])

    def _queue_log(self) -> None:
        for reading in read_readings(self.row):
            self.teller.then(self.teller.clock.at(reading.at), partial(self._read, reading))
        if self.row.state.startswith(STOPPED):
            stop = max(read_readings(self.row), key=lambda reading: reading.reading_c)
            celsius = stop.reading_c
            at = self.teller.clock.at(stop.at)
            self._tell(at, "stopped", reason=tables.STOPPED_WHY, celsius=celsius)
            # Small cones stood upright: none of it was fired.
            upright = [ConeGiven("guide", "05", level, UPRIGHT) for level in (3, 2, 1)]
            self._queue_cones(self._shelved + 2 * MINUTE, upright, "load held as not fired")

    def _read(self, row: ReadingRow) -> None:
        at = self.teller.clock.at(row.at)
        given = ReadingGiven(at, row.reading_c, row.set_c, row.words)
        readings.record(act=self.teller.act(KEEPER, at), load=self._load(), readings=[given])

    def _queue_cones(self, at: datetime, found: Sequence[ConeGiven], words: str) -> None:
        def record() -> None:
            act = self.teller.act(KEEPER, at, note=words)
            cones.record(act=act, load=self._load(), cones=found)

        self.teller.then(at, record)

    def _queue_unloading(self) -> None:
        opened = self.teller.clock.at(self.row.unloaded)
        self._tell(opened, "opened", celsius=self.row.slot.opened_c)

        def unload() -> None:
            outcome = "fired" if self.row.counts else "not_fired"
            results = self._results() if self.row.counts else ()
            given = Given("unloaded", outcome=outcome, results=results)
            events.tell(act=self.teller.act(KEEPER, self._shelved), load=self._load(), given=given)

        self.teller.then(self._shelved, unload)

    def _results(self) -> list[Result]:
        marks = {row.mark: row for row in self.inside}
        broken = tables.BROKEN.get(self.row.name, ())
        placed = Placement.objects.filter(load=self.id, piece__isnull=False)
        return [
            Result(row.pk, "broken" if mark in broken else "fired", self._put(marks[mark]))
            for row in placed.select_related("piece").order_by("placed_at", "id")
            if row.piece is not None and (mark := row.piece.mark)
        ]

    def _put(self, row: PieceRow) -> Place | None:
        """Return where a piece was put: where the table ends, or on Rack C1 till its next kiln."""
        is_last = self.row == row.begun_loads[-1]
        return self.teller.place(row.place if is_last else "Rack C1")

    def _tell(self, at: datetime, kind: str, **more: Any) -> None:
        def tell() -> None:
            events.tell(
                act=self.teller.act(KEEPER, at), load=self._load(), given=Given(kind, **more)
            )

        self.teller.then(at, tell)

    def _load(self) -> Load:
        assert self.id is not None  # listed before anything else happens to it
        return Load.objects.select_related("kiln__place", "studio").get(pk=self.id)


def _queue_ticket(
    teller: Teller, bench: Bench, mark: str, asked: TicketGiven, who: str, at: datetime
) -> None:
    def ask() -> None:
        cones.ask_for(act=teller.act(who, at), piece=bench.piece(mark), given=asked)

    teller.then(at, ask)
