"""Whom something about a load concerns, and what of theirs: a fixed number of queries."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, Final
from uuid import UUID

from firings.models import Load, LoadEvent
from pieces.models import Piece
from studio.models import JournalEntry, JournalSubject, Member, Studio

from .loads import COMING, listed, placements_of
from .queue import Waiting, groups

RECENT: Final = timedelta(hours=24)
"""What was heard longer ago is told to nobody any more; common sense, no source."""


@dataclass(frozen=True, slots=True)
class Heard:
    """Something told of a load a short while ago."""

    load: Load
    entry: JournalEntry
    reason: str = ""


def recent_events(studio: Studio, kinds: Iterable[str], at: datetime) -> list[Heard]:
    """Return what stands of such events that were heard in the last day. Two queries."""
    rows: Any = LoadEvent.objects.filter(
        studio=studio,
        kind__in=list(kinds),
        entry__written_at__gt=at - RECENT,
        happened_at__gt=at - 2 * RECENT,
    ).standing()
    rows = list(rows.select_related("entry").order_by("happened_at", "id"))
    loads = {load.pk: load for load in listed(studio).filter(pk__in={row.load_id for row in rows})}
    return [Heard(loads[row.load_id], row.entry, row.reason) for row in rows]


def recently_moved(studio: Studio, at: datetime) -> list[Heard]:
    """Return loads whose slot or kiln was changed in the last day. Two queries."""
    return _recent(studio, "moved_load", at)


def recently_unplanned(studio: Studio, at: datetime) -> list[Heard]:
    """Return loads that were written down in the last day, fired without a slot. Two queries."""
    return [one for one in _recent(studio, "opened_load", at) if one.load.is_unplanned]


def next_in_kiln(loads: Iterable[Load]) -> dict[UUID, Load]:
    """Return the next coming load of the kiln of each load, by its id. One query for each."""
    found = {}
    for load in loads:
        rows = listed(load.studio).filter(
            kiln=load.kiln_id, state__in=COMING, starts_at__gte=load.starts_at
        )
        following = rows.exclude(pk=load.pk).order_by("starts_at", "id").first()
        if following is not None:
            found[load.pk] = following
    return found


def _recent(studio: Studio, verb: str, at: datetime) -> list[Heard]:
    rows = JournalSubject.objects.filter(
        entry__studio=studio,
        entry__verb=verb,
        entry__written_at__gt=at - RECENT,
        kind="load",
    )
    found = list(rows.select_related("entry").order_by("entry__seq"))
    loads = listed(studio).filter(pk__in={row.subject_id for row in found})
    by_id = {load.pk: load for load in loads}
    return [Heard(by_id[row.subject_id], row.entry) for row in found]


def makers_inside(loads: Iterable[Load]) -> dict[UUID, dict[Member, list[Piece]]]:
    """Return for each load whose ware is in it, and which. One query."""
    found: dict[UUID, dict[Member, list[Piece]]] = {}
    for load_id, rows in placements_of(loads).items():
        by_maker: defaultdict[Member, list[Piece]] = defaultdict(list)
        for row in rows:
            if row.piece is not None and row.piece.maker is not None:
                by_maker[row.piece.maker].append(row.piece)
        found[load_id] = dict(by_maker)
    return found


def left_waiting(load: Load, *, at: datetime) -> dict[Member, list[Waiting]]:
    """Return what waits for a firing like this one and is in no load, by maker."""
    found: defaultdict[Member, list[Waiting]] = defaultdict(list)
    for group in groups(load.studio, at=at, kind=load.kind, cone=load.cone):
        for row in group.rows:
            if row.piece.maker is not None:
                found[row.piece.maker].append(row)
    return found


def marks(pieces: Sequence[Piece], most: int = 12) -> str:
    """Return the marks of pieces, as many as fit a message."""
    shown = [piece.shown_mark for piece in pieces[:most]]
    more = len(pieces) - len(shown)
    return ", ".join(shown) + (f" and {more} more" if more > 0 else "")
