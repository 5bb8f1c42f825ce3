"""Loads with what is in them, for a fixed number of queries."""

from collections import defaultdict
from collections.abc import Iterable
from datetime import datetime
from typing import Any
from uuid import UUID

from django.db.models import Q, QuerySet

from firings.models import Load, LoadEvent, Placement, Programme
from studio.models import Studio

BUSY = (
    Load.State.LOADING,
    Load.State.FIRING,
    Load.State.STOPPED,
    Load.State.COOLING,
    Load.State.OPENED,
)
COMING = (Load.State.OPEN, Load.State.SETTLED)


def listed(studio: Studio) -> "QuerySet[Load]":
    """Return the loads of a studio with what a row of them shows. One query when read."""
    rows = Load.objects.filter(studio=studio)
    return rows.select_related("kiln__place", "watcher", "programme")


def found(
    studio: Studio,
    *,
    states: Iterable[str] = (),
    kiln: UUID | None = None,
    piece: UUID | None = None,
    from_at: datetime | None = None,
    until_at: datetime | None = None,
) -> "QuerySet[Load]":
    """Return the loads that fit: those that begin, or go on, between the two instants."""
    rows = listed(studio)
    wanted = list(states)
    if wanted:
        rows = rows.filter(state__in=wanted)
    if kiln is not None:
        rows = rows.filter(kiln=kiln)
    if piece is not None:
        placed = Placement.objects.filter(studio=studio, piece=piece, removed_at=None)
        rows = rows.filter(pk__in=placed.values("load_id"))
    if from_at is not None:
        rows = rows.filter(Q(starts_at__gte=from_at) | Q(state__in=BUSY))
    if until_at is not None:
        rows = rows.filter(starts_at__lt=until_at)
    return rows


def placements_of(loads: Iterable[Load]) -> dict[UUID, list[Placement]]:
    """Return what is in each load, in the order it was placed. One query."""
    found: defaultdict[UUID, list[Placement]] = defaultdict(list)
    rows = Placement.objects.filter(load__in=[load.pk for load in loads], removed_at=None)
    rows = rows.select_related("piece__design", "piece__maker", "piece__body", "asked_by")
    for row in rows.order_by("placed_at", "piece__mark_key", "id"):
        found[row.load_id].append(row)
    return found


def next_load(load: Load) -> Load | None:
    """Return the next open load of the same kind and cone that begins no sooner. One query."""
    rows = listed(load.studio).filter(
        kind=load.kind,
        cone=load.cone,
        state=Load.State.OPEN,
        starts_at__gte=load.starts_at,
        kiln__is_out_of_use=False,
    )
    return rows.exclude(pk=load.pk).order_by("starts_at", "id").first()


def settled_by(load: Load) -> str | None:
    """Return who settled a load last, None where that was never written down. One query."""
    rows: Any = LoadEvent.objects.filter(load=load, kind=LoadEvent.Kind.SETTLED).standing()
    row = rows.select_related("entry__member").order_by("happened_at", "id").last()
    return row.entry.member.full_name if row is not None else None


def named(load: Load | None) -> dict[str, object] | None:
    """Return a load as a refusal or a row names it."""
    if load is None:
        return None
    return {"id": str(load.pk), "number": load.number, "starts_at": load.starts_at.isoformat()}


def usual_cone(studio: Studio, kind: str) -> str:
    """Return the cone that the studio last planned for a kind of firing, "" if it never did."""
    last = Load.objects.filter(studio=studio, kind=kind).order_by("-starts_at", "-id").first()
    if last is not None:
        return last.cone
    programme = Programme.objects.filter(studio=studio, kind=kind).order_by("name").first()
    return programme.cone if programme is not None else ""
