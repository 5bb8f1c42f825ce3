"""Two stories of loads that wait for somebody, and those that were answered."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Final, cast
from uuid import UUID

from django.db.models import Exists, OuterRef

from firings.domain.load_clashes import Kind, Stories, clash_id, stories
from firings.models import Load, Placement
from studio.models import JournalEntry, Member, Studio

from .loads import listed
from .told import nows

SETTLED: Final = "settled_load_clash"
OVER: Final = (Load.State.UNLOADED, Load.State.CALLED_OFF)


@dataclass(frozen=True, slots=True)
class LoadClash:
    """Two acts about a load; of a piece in two kilns, the placements they made."""

    id: UUID
    kind: Kind
    load: Load
    told: Stories
    is_open: bool
    opened_at: datetime
    acts: tuple[JournalEntry, ...]
    placements: tuple[Placement, ...] = ()

    @property
    def asked(self) -> list[Member]:
        """Who is asked: the two who told it, and whoever watches the load."""
        watcher = [self.load.watcher] if self.load.watcher is not None else []
        people = [*(entry.member for entry in self.acts), *watcher]
        return list({one.pk: one for one in people if not one.is_clockwork}.values())


def open_ones(studio: Studio) -> list[LoadClash]:
    """Return what waits for an answer, newest first. Six queries."""
    found = [*_of_stories(studio), *_in_two_kilns(studio)]
    return sorted(found, key=lambda clash: (clash.opened_at, clash.id), reverse=True)


def answered(studio: Studio) -> list[LoadClash]:
    """Return what was answered, newest first. Four queries."""
    rows = JournalEntry.objects.filter(studio=studio, verb=SETTLED).order_by("-seq")
    entries = _entries(UUID(pk) for row in rows for pk in row.facts["acts"])
    loads = {load.pk: load for load in listed(studio)}
    found = []
    for row in rows:
        first, second, *on_top = [UUID(pk) for pk in row.facts["acts"]]
        acts = tuple(entries[pk] for pk in (first, second))
        found.append(
            LoadClash(
                id=UUID(row.facts["clash"]),
                kind=row.facts["kind"],
                load=loads[UUID(row.facts["load"])],
                told=Stories(first, second, tuple(on_top)),
                is_open=False,
                opened_at=max(act.written_at for act in acts),
                acts=acts,
            )
        )
    return found


def _of_stories(studio: Studio) -> Iterable[LoadClash]:
    loads = list(listed(studio).filter(is_in_doubt=True))
    by_load = {pk: stories(now.quarrels) for pk, now in nows(loads).items()}
    told = [one for found in by_load.values() for one in found]
    entries = _entries(pk for one in told for pk in (one.first, one.second))
    for load in loads:
        for one in by_load[load.pk]:
            acts = (entries[one.first], entries[one.second])
            at = max(act.written_at for act in acts)
            yield LoadClash(one.id, "two_load_stories", load, one, True, at, acts)


def _in_two_kilns(studio: Studio) -> Iterable[LoadClash]:
    """Return ware that is in a load again though it went into another one meanwhile.

    It is asked of ware that the other fire has let go by then, too.
    """
    rows: Any = Placement.objects.filter(studio=studio, removed_at=None, piece__isnull=False)
    rows = rows.exclude(load__state=Load.State.CALLED_OFF)
    still_in = rows.exclude(load__state__in=OVER).filter(
        piece=OuterRef("piece"), placed_at__lt=OuterRef("placed_at")
    )
    named = rows.select_related("load__kiln__place", "load__watcher", "piece__design")
    pairs = _pairs(named, list(named.filter(Exists(still_in))))
    entries = _entries(row.act_id for pair in pairs for row in pair)
    for first, second in pairs:
        acts = (entries[first.act_id], entries[second.act_id])
        told = Stories(first.act_id, second.act_id)
        yield LoadClash(
            # Of several pieces put on by the same acts each has a clash of its own.
            id=clash_id(first.pk, second.pk),
            kind="two_kilns",
            load=first.load,
            told=told,
            is_open=True,
            opened_at=max(act.written_at for act in acts),
            acts=acts,
            placements=(first, second),
        )


def _pairs(rows: Any, later: Sequence[Placement]) -> list[tuple[Placement, Placement]]:
    """Return each of the later placements with the one before it that is not over. One query."""
    before = rows.exclude(load__state__in=OVER).filter(piece__in=[row.piece_id for row in later])
    by_piece: defaultdict[UUID, list[Placement]] = defaultdict(list)
    for row in before.order_by("placed_at", "pk"):
        by_piece[row.piece_id].append(row)
    return [
        (first, second)
        for second in later
        for first in by_piece[cast(UUID, second.piece_id)]
        if first.placed_at < second.placed_at
    ]


def _entries(ids: Iterable[UUID]) -> dict[UUID, JournalEntry]:
    rows = JournalEntry.objects.filter(pk__in=list(ids)).select_related("member", "device")
    return {row.pk: row for row in rows.prefetch_related("notes")}


def find(clashes: Sequence[LoadClash], wanted: UUID) -> LoadClash | None:
    """Return the one with that id."""
    return next((clash for clash in clashes if clash.id == wanted), None)
