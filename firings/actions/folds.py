"""Writing what is so now: only here are the folded columns of kilns, loads, placements written."""

from collections.abc import Iterable
from datetime import datetime
from typing import Any, Final

from django.db import transaction

from firings.domain.firing_times import hot_h
from firings.domain.loads import Now, State, result_of
from firings.models import Kiln, KilnEvent, Load, Placement
from firings.queries import told

TIMES: Final = (
    "settled_at",
    "loaded_at",
    "started_at",
    "stopped_at",
    "resumed_at",
    "ended_at",
    "opened_at",
    "opened_c",
    "unloaded_at",
    "called_off_at",
)
COLUMNS: Final = (*TIMES, "state", "outcome", "is_interrupted", "is_in_doubt", "hot_h")


def locked(load: Load) -> Load:
    """Lock a load and return it as it is now."""
    rows = Load.objects.select_for_update(of=("self",)).select_related("kiln__place", "programme")
    return rows.get(pk=load.pk)


@transaction.atomic
def refold(loads: Iterable[Load], *, at: datetime) -> None:
    """Fold what was told of the loads anew, and write what is so at the instant `at`."""
    ids = sorted({load.pk for load in loads})
    rows = list(Load.objects.filter(pk__in=ids).select_for_update(of=("self",)).order_by("pk"))
    nows, points = told.nows(rows), told.points_of(rows)
    for load in rows:
        now = nows[load.pk]
        for name in TIMES:
            setattr(load, name, getattr(now, name))
        load.state, load.outcome = str(now.state), now.outcome
        load.is_interrupted, load.is_in_doubt = now.is_interrupted, bool(now.misfits)
        load.hot_h = hot_h(now, points.get(load.pk, []), at)
        load.save(update_fields=COLUMNS)
        _write_placements(load, now)


@transaction.atomic
def refold_kiln(kiln: Kiln) -> None:
    """Write whether a kiln may be used: the last word counts."""
    told_of = KilnEvent.objects.filter(kiln=kiln).standing().order_by("happened_at", "id")
    last: Any = told_of.last()
    is_out = last is not None and last.kind == KilnEvent.Kind.OUT_OF_USE
    Kiln.objects.filter(pk=kiln.pk).update(
        is_out_of_use=is_out,
        out_of_use_reason=last.reason if last is not None and is_out else "",
        out_of_use_since=last.happened_at if last is not None and is_out else None,
    )


def _write_placements(load: Load, now: Now) -> None:
    is_over = now.state in (State.UNLOADED, State.CALLED_OFF)
    rows = list(Placement.objects.filter(load=load, removed_at=None).select_for_update())
    placed = {row.piece_id for row in rows if row.piece_id is not None and not row.is_live}
    elsewhere = set(
        Placement.objects.filter(piece__in=placed, is_live=True).values_list("piece_id", flat=True)
    )
    for row in rows:
        # Ware that went into another load meanwhile stays there when this one is open again.
        row.is_live = not is_over and (row.is_live or row.piece_id not in elsewhere)
        row.result = result_of(now, str(row.pk)) or ""
        if now.loaded_at is None:
            row.came_from = None
    Placement.objects.bulk_update(rows, ["is_live", "result", "came_from"])
