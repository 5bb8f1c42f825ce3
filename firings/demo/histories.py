"""What became of each demo piece after the bench: dried, glazed, checked, packed, lost."""

from __future__ import annotations

from datetime import datetime, timedelta
from functools import partial
from typing import Final

from pieces.actions import checks, covers, moves, parts, stages
from pieces.actions.shapes import Visit
from pieces.domain.stages import (
    BONE_DRY,
    CHECKED,
    DELIVERED,
    GLAZED,
    PACKED,
    Spot,
)
from pieces.models import Piece
from studio.domain.ids import uuid7
from studio.models import Act, GlazeBatch, Place

from . import orders
from .order_tables import PLANNED_TOGETHER
from .pressings import Bench, Doing, PressedRow
from .rows import LoadRow, PieceRow
from .tables import GLAZES, SEEN
from .teller import Teller

DRY_BEFORE: Final = timedelta(hours=30)
GLAZED_BEFORE: Final = timedelta(hours=25)
BEGUN: Final = "2026-09-20 10:00"
NOBODYS_BEGUN: Final = "2026-10-12 09:55"  # when its record was made, as it was found
# The ware of a load that was called off waited glazed for the next one.
NOT_GLAZED_FOR: Final = ("F-209",)
# Words of the table, and where in the job they are.
ENDS: Final = {"checked": CHECKED, "packed": PACKED, "delivered": DELIVERED}
SCRAPS: Final = {
    "T27": ("corner crack", "none"),
    "S01": ("handle join opened", "mixed"),
    "B04": ("burst in the kiln", "none"),
}


class History:
    """Queues the acts of one piece from the end of the bench on; its loads tell the rest."""

    def __init__(self, teller: Teller, bench: Bench, row: PieceRow, pressed: list[PressedRow]):
        self.teller, self.bench, self.row, self.pressed = teller, bench, row, pressed
        self.who = row.maker or "odile"
        self.place = teller.place(row.place)

    def queue(self) -> None:
        """Queue everything that the tables say of the piece."""
        if self.row.stage == "planned":
            self._queue_plan(self.row.since)
        elif not self.pressed:
            self._queue_thrown()
        if self.row.stage in ("planned", "in mould"):
            return
        if self.row.maker:
            self._queue_drying()
        else:
            self._visit(self.teller.clock.at(self.row.since), BONE_DRY)
        for load in self.row.begun_loads:
            if load.kind == "glaze" and load.name not in NOT_GLAZED_FOR:
                self._queue_glazing(load)
        self._queue_end()

    def _queue_plan(self, wall: str) -> None:
        at, pair = self.teller.clock.at(wall), PLANNED_TOGETHER.get(self.row.mark)
        if pair is not None:
            self.teller.then(
                at, lambda: orders.plan_pair(self.teller, self.bench, self.row, pair, at)
            )
        elif not any(self.row.mark in marks for marks in PLANNED_TOGETHER.values()):
            self.teller.then(at, lambda: orders.plan(self.teller, self.bench, self.row, at))

    def _queue_thrown(self) -> None:
        """Queue the making of a piece that no mould had a part in."""
        begun = self._begun
        self.teller.then(begun, lambda: orders.plan(self.teller, self.bench, self.row, begun))
        at = begun + timedelta(minutes=1)
        role = self.bench.designs[self.row.design].noun

        def make() -> None:
            act = self.teller.act(self.who, at)
            parts.make(act=act, piece=self.bench.piece(self.row.mark), id=uuid7(), role=role)

        self.teller.then(at, make)

    @property
    def _begun(self) -> datetime:
        return self.teller.clock.at(BEGUN if self.row.maker else NOBODYS_BEGUN)

    def _queue_drying(self) -> None:
        stage, since = self.row.stage, self.teller.clock.at(self.row.since)
        ready = self._off_the_bench()
        if stage == "joined":
            self._move(since + timedelta(minutes=1), self.place)
            return
        covered = since if stage == "drying covered" else ready + timedelta(minutes=5)
        if stage == "drying covered":
            self._cover(covered, "loose")
            self._move(covered + timedelta(minutes=1), self.place)
            self._queue_look()
            return
        self._cover(covered, "loose")
        shelf = self.place if stage in ("drying open", "bone dry") else self.teller.place("Rack A1")
        self._move(covered + timedelta(minutes=1), shelf)
        if stage == "drying open":
            self._cover(since, "open")
            return
        dry = self._dry_at()
        if dry is not None:
            self._cover(ready + (dry - ready) / 3, "open")
            self._visit(dry, BONE_DRY)

    def _queue_look(self) -> None:
        if self.row.mark in SEEN:
            who, wall = SEEN[self.row.mark]
            look = partial(checks.check, feel="fine")
            self.bench.together(
                who,
                self.teller.clock.at(wall),
                "seen",
                self.row.mark,
                lambda act, held: look(act=act, pieces=held),
            )

    def _off_the_bench(self) -> datetime:
        """Return when the last part was joined, or came out where nothing is joined."""
        walls = [row.joined or row.out for row in self.pressed if row.joined or row.out]
        thrown = self._begun + timedelta(hours=2)
        return max((self.teller.clock.at(wall) for wall in walls), default=thrown)

    def _dry_at(self) -> datetime | None:
        if self.row.stage == "bone dry":
            return self.teller.clock.at(self.row.since)
        first = next((load for load in self.row.loads if load.is_bisque), None)
        return self.teller.clock.at(first.start) - DRY_BEFORE if first else None

    def _queue_glazing(self, load: LoadRow) -> None:
        again = any(
            other.kind == "glaze" and other.start < load.start and other.counts
            for other in self.row.loads
        )
        glazed = load.loaded_at(self.teller.clock) - GLAZED_BEFORE
        self._visit(glazed, GLAZED, reason="second_glaze_firing" if again else "")

    def _queue_end(self) -> None:
        since, stage = self.teller.clock.at(self.row.since), self.row.stage
        if stage == "glazed":
            self._visit(since, GLAZED, place=self.place)
        elif stage == "scrapped":
            cause, reclaim = SCRAPS[self.row.mark]
            lost = partial(stages.lose, cause=cause, reclaim=reclaim)
            self._then(since, lambda act, held: lost(act=act, pieces=held), cause)
        elif stage in ENDS:
            self._queue_finish(ENDS[stage], since)

    def _queue_finish(self, end: Spot, since: datetime) -> None:
        if end is CHECKED:
            self._visit(since, CHECKED, place=self.place, grade="first")
            return
        last = self.teller.clock.at(self.row.begun_loads[-1].unloaded)
        self._visit(last + timedelta(hours=26), CHECKED, grade="first")
        if end is DELIVERED:
            self._visit(since - timedelta(hours=2), PACKED)
        self._visit(since, end, place=self.place)

    def _visit(
        self,
        at: datetime,
        spot: Spot,
        *,
        place: Place | None = None,
        reason: str = "",
        grade: str = "",
    ) -> None:
        visit = Visit(*spot, reason=reason, place=place, grade=grade, glaze_batch=self._glaze(spot))

        def advance(act: Act, pieces: list[Piece]) -> None:
            stages.advance_all(act=act, visits=[(piece, visit) for piece in pieces])

        self._then(at, advance, f"{visit}")

    def _glaze(self, spot: Spot) -> GlazeBatch | None:
        if spot != GLAZED:
            return None
        return GlazeBatch.objects.of(self.teller.studio).get(label=GLAZES[-1][0])

    def _cover(self, at: datetime, state: str) -> None:
        self._then(at, lambda act, held: covers.cover(act=act, pieces=held, state=state), state)

    def _move(self, at: datetime, place: Place | None) -> None:
        if place is not None:
            put = partial(moves.move, place=place)
            self._then(at, lambda act, held: put(act=act, pieces=held), place.name)

    def _then(self, at: datetime, do: Doing, what: str) -> None:
        self.bench.together(self.who, at, what, self.row.mark, do)
