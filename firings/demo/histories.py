"""What became of each demo piece after the bench: dried, fired, checked, packed, lost."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, timedelta
from functools import partial
from typing import Final
from uuid import UUID, uuid5

from pieces.actions import covers, moves, parts, planning, stages
from pieces.actions.shapes import PieceGiven, Visit
from pieces.domain.stages import (
    BISQUED,
    BONE_DRY,
    CHECKED,
    DELIVERED,
    GLAZE_FIRED,
    GLAZED,
    IN_BISQUE,
    IN_GLAZE,
    PACKED,
    Spot,
)
from pieces.models import Piece
from studio.domain.ids import uuid7
from studio.models import Place

from .pressings import Bench, PressedRow
from .rows import LoadRow, PieceRow
from .teller import Teller

LOADED_BEFORE: Final = timedelta(minutes=30)
DRY_BEFORE: Final = timedelta(hours=30)

# Loads that ended otherwise than fired: when the ware went back to where it was.
WENT_BACK: Final = {"F-203": "2026-10-14 14:30", "F-208": "2026-10-23 17:05"}
LOADED_AT: Final = {"F-208": "2026-10-23 16:40", "F-210": "2026-10-30 16:30"}
# Words of the table, and where in the job they are.
ENDS: Final = {"checked": CHECKED, "packed": PACKED, "delivered": DELIVERED}
SCRAPS: Final = {
    "T27": ("corner_crack", "none"),
    "S01": ("join_opened", "mixed"),
    "B04": ("burst_in_kiln", "none"),
}


class History:
    """Queues the acts of one piece from the end of the bench on."""

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
        self._queue_drying()
        for load in self.row.begun_loads:
            self._queue_load(load)
        self._queue_end()

    def _queue_plan(self, wall: str) -> None:
        at = self.teller.clock.at(wall)
        given = PieceGiven(
            id=self.bench.piece_ids[self.row.mark],
            design=self.bench.designs[self.row.design],
            mark=self.row.mark,
            maker=self.teller.members.get(self.row.maker),
            is_nobodys=not self.row.maker,
        )
        who = "odile" if self.who == "nessa" else self.who
        self.teller.then(at, lambda: planning.plan(act=self.teller.act(who, at), pieces=[given]))

    def _queue_thrown(self) -> None:
        """Queue the making of a piece that no mould had a part in."""
        begun = "2026-10-01 10:00" if self.row.mark == "P03" else "2026-09-20 10:00"
        self._queue_plan(begun)
        at = self.teller.clock.at(begun) + timedelta(minutes=1)
        role = self.bench.designs[self.row.design].noun

        def make() -> None:
            act = self.teller.act(self.who, at)
            parts.make(act=act, piece=self._piece(), id=uuid7(), role=role)

        self.teller.then(at, make)

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

    def _off_the_bench(self) -> datetime:
        """Return when the last part was joined, or came out where nothing is joined."""
        walls = [row.joined or row.out for row in self.pressed if row.joined or row.out]
        begun = self.teller.clock.at(
            "2026-10-01 12:00" if self.row.mark == "P03" else "2026-09-20 12:00"
        )
        return max((self.teller.clock.at(wall) for wall in walls), default=begun)

    def _dry_at(self) -> datetime | None:
        if self.row.stage == "bone dry":
            return self.teller.clock.at(self.row.since)
        first = next((load for load in self.row.loads if load.is_bisque), None)
        return self.teller.clock.at(first.start) - DRY_BEFORE if first else None

    def _queue_load(self, load: LoadRow) -> None:
        inside, fired = (IN_BISQUE, BISQUED) if load.is_bisque else (IN_GLAZE, GLAZE_FIRED)
        start = self.teller.clock.at(load.start)
        loaded = start - LOADED_BEFORE
        if load.name in LOADED_AT:
            loaded = self.teller.clock.at(LOADED_AT[load.name])
        if not load.is_bisque and load.name != "F-209":
            self._queue_glazing(load, loaded)
        self._visit(loaded, inside, load=load, place=self.teller.place(load.kiln))
        if load.name in WENT_BACK:
            came_from = BONE_DRY if load.is_bisque else GLAZED
            back = self.teller.clock.at(WENT_BACK[load.name])
            self._visit(back, came_from, load=load, place=self.teller.place("Rack A1"))
        elif load.unloaded and not (self.row.mark == "B04" and load.is_bisque):
            self._visit(self._on_its_shelf(load), fired, load=load, place=self._fired_to(load))

    def _queue_glazing(self, load: LoadRow, loaded: datetime) -> None:
        again = any(
            other.kind == "glaze" and other.start < load.start and other.name not in WENT_BACK
            for other in self.row.loads
        )
        glazed = loaded - timedelta(hours=25)
        self._visit(glazed, GLAZED, reason="second_glaze_firing" if again else "")

    def _on_its_shelf(self, load: LoadRow) -> datetime:
        """Return when it came out: as the table says of its last load, else soon after opening."""
        is_last = load is self.row.begun_loads[-1]
        if is_last and self.row.stage in ("bisqued", "glaze fired"):
            return self.teller.clock.at(self.row.since)
        return self.teller.clock.at(load.unloaded) + timedelta(minutes=10)

    def _fired_to(self, load: LoadRow) -> Place | None:
        return self.place if load is self.row.begun_loads[-1] else self.teller.place("Rack C1")

    def _queue_end(self) -> None:
        since, stage = self.teller.clock.at(self.row.since), self.row.stage
        if stage == "glazed":
            self._visit(since, GLAZED, place=self.place)
        elif stage == "scrapped":
            cause, reclaim = SCRAPS[self.row.mark]
            lost = partial(stages.lose, cause=cause, reclaim=reclaim)
            self._then(since, lambda act, piece: lost(act=act, pieces=[piece]))
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
        load: LoadRow | None = None,
        place: Place | None = None,
        reason: str = "",
        grade: str = "",
    ) -> None:
        visit = Visit(
            stage=spot.stage,
            state=spot.state,
            reason=reason,
            place=place,
            occasion_id=_occasion(self.teller, load) if load else None,
            occasion_name=load.name if load else "",
            grade=grade,
        )
        who = "piet" if load else self.who
        self._then(at, lambda act, piece: stages.advance(act=act, piece=piece, visit=visit), who)

    def _cover(self, at: datetime, state: str) -> None:
        self._then(at, lambda act, piece: covers.cover(act=act, pieces=[piece], state=state))

    def _move(self, at: datetime, place: Place | None) -> None:
        if place is not None:
            self._then(at, lambda act, piece: moves.move(act=act, pieces=[piece], place=place))

    def _then(self, at: datetime, do: Callable[..., object], who: str = "") -> None:
        self.teller.then(at, lambda: do(self.teller.act(who or self.who, at), self._piece()))

    def _piece(self) -> Piece:
        return self.bench.piece(self.row.mark)


def _occasion(teller: Teller, load: LoadRow) -> UUID:
    return uuid5(teller.studio.pk, load.name)
