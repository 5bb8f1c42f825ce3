"""Putting ware on a load and taking it off: claims, won in the order they are heard."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from typing import Any, Final
from uuid import UUID, uuid5

from django.db import transaction

from firings.domain import load_rules
from firings.domain.cautions import Caution
from firings.models import Load, Placement
from firings.queries import loads as queries
from firings.queries import told
from firings.queries.gate import Gate
from pieces.models import Piece
from studio.actions import journal
from studio.domain.refusals import Conflict
from studio.models import Act, JournalHead

from . import folds, gating, moving

GRACE: Final = timedelta(minutes=5)
SHIFTABLE: Final = ("level", "x_mm", "y_mm", "rotation_deg")


class PastCutOff(Conflict):
    code = "past-cut-off"
    title = "The time for putting ware on that load is over."


class TakenOff(Conflict):
    code = "taken-off"
    title = "That was taken off the load already."


class LoadOver(Conflict):
    code = "load-over"
    title = "That load is over."


@dataclass(frozen=True, slots=True)
class PieceAsked:
    """A piece for a load, and where on its shelves it is meant to stand."""

    piece: Piece
    id: UUID | None = None
    where: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class ThingAsked:
    """So many of something that is no piece here: test bars, somebody's shelves."""

    what: str
    count: int = 1
    id: UUID | None = None
    size: Mapping[str, Any] = field(default_factory=dict)
    where: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Placed:
    """What was put on, and what to mind about it."""

    placements: list[Placement]
    warnings: list[Caution]


@transaction.atomic
def place(
    *,
    act: Act,
    load: Load,
    pieces: Sequence[PieceAsked] = (),
    things: Sequence[ThingAsked] = (),
    may_build: bool = False,
    may_override: bool = False,
    override_reason: str = "",
) -> Placed:
    """Put ware on an open load: all of it, or none with each exception named.

    `may_build` lets somebody place after the cut-off and beyond what fits, `may_override` without
    evidence of dryness; both only with a reason, which everybody can read. Who builds may also add
    ware while the kiln is being loaded: it goes in by the same act. Raises `LoadSettled`,
    `PastCutOff`, `MixedCones` and `NotPlaced`.
    """
    JournalHead.objects.select_for_update().get(studio=act.studio)
    load = folds.locked(load)
    is_late = may_build and load.state == Load.State.LOADING
    if not is_late:
        check_open(load)
    if act.written_at > load.cutoff_at + GRACE and not (may_build or load.is_unplanned):
        raise PastCutOff(
            "Ask a technician, or take the next one.",
            cutoff_at=load.cutoff_at.isoformat(),
            next_load=queries.named(queries.next_load(load)),
            ask="technician",
        )
    gate = Gate(load, [asked.piece for asked in pieces])
    rows = [*_pieces(act, load, pieces), *_things(act, load, things)]
    lifted = gating.lifted(override_reason, may_build=may_build, may_override=may_override)
    refused = gating.refused(load, gate)
    doubts = gate.check_cones() if not gating.left(refused, lifted) else []
    doubtful: list[Caution] = []
    if not gating.left(refused, lifted):
        refused, doubtful = gating.with_full(load, rows, refused)
    left = gating.left(refused, lifted)
    if left:
        raise gating.not_placed(load, gate, left)
    for row in rows:
        overridden = sorted({each.code for each in refused.get(row.piece_id or row.pk, ())})
        row.overrides = overridden
        row.override_reason = override_reason if overridden else ""
    late = [row for row in rows if row.piece_id is not None] if is_late else []
    goings = moving.going_in(act, load, late)
    entry = journal.write(
        act=act,
        verb="loaded_kiln" if is_late else "put_on_load",
        subjects=[("load", load.pk), *(("piece", asked.piece.pk) for asked in pieces)],
        facts=_facts(load, rows, goings),
    )
    Placement.objects.bulk_create(rows)
    moving.remember(goings)
    moving.go(act, entry, load, goings)
    return Placed(rows, [*gating.warnings(gate, doubts, refused), *doubtful])


@transaction.atomic
def take_off(*, act: Act, placement: Placement, reason: str = "") -> Placement:
    """Take something off an open load. Raises `LoadSettled` and `TakenOff`."""
    JournalHead.objects.select_for_update().get(studio=act.studio)
    load = folds.locked(placement.load)
    check_open(load)
    row = Placement.objects.select_for_update().get(pk=placement.pk)
    if row.removed_at is not None:
        raise TakenOff("Read the load again.", placement=str(row.pk))
    about = [("piece", row.piece_id)] if row.piece_id is not None else []
    journal.write(
        act=act,
        verb="took_off_load",
        subjects=[("load", load.pk), *about],
        facts={"load": load.number, "occasion_name": load.number, "placement": row.pk},
    )
    remove([row], act=act, reason=reason)
    return row


@transaction.atomic
def shift(*, act: Act, placement: Placement, changes: Mapping[str, Any]) -> Placement:
    """Write on which shelf, and where on it, something stands. Raises `TakenOff`, `LoadOver`."""
    JournalHead.objects.select_for_update().get(studio=act.studio)
    load = folds.locked(placement.load)
    row = Placement.objects.select_for_update().get(pk=placement.pk)
    if row.removed_at is not None:
        raise TakenOff("Read the load again.", placement=str(row.pk))
    if load.is_over:
        raise LoadOver(f"{load.number} is {load_rules.STATE_WORDS[load.state]}.", state=load.state)
    facts = {name: changes[name] for name in SHIFTABLE if name in changes}
    for name, value in facts.items():
        setattr(row, name, value)
    row.save(update_fields=[*facts])
    about = [("piece", row.piece_id)] if row.piece_id is not None else []
    journal.write(
        act=act,
        verb="shifted_in_load",
        subjects=[("load", load.pk), *about],
        facts={"placement": row.pk, **facts},
    )
    return row


def remove(rows: Sequence[Placement], *, act: Act, reason: str) -> None:
    """Write that some placements are no longer; the caller journals it."""
    for row in rows:
        row.removed_at, row.removed_because, row.is_live = act.written_at, reason, False
    Placement.objects.bulk_update(rows, ["removed_at", "removed_because", "is_live"])


def check_open(load: Load) -> None:
    """Refuse to change what is in a load that is not open: raises `LoadSettled`."""
    now = told.nows([load])[load.pk]
    if not now.may_be_edited:
        load_rules.check_may_edit(
            now,
            settled_by=queries.settled_by(load),
            next_load=queries.named(queries.next_load(load)),
        )


def _facts(
    load: Load, rows: Sequence[Placement], goings: Sequence[moving.Going]
) -> dict[str, object]:
    overridden = {code for row in rows for code in row.overrides}
    return {
        "load": load.number,
        "occasion_name": load.number,
        "placements": [row.pk for row in rows],
        "things": sum(row.count for row in rows if row.piece_id is None),
        **({"overrides": sorted(overridden)} if overridden else {}),
        **({"visits": [going.as_facts(load) for going in goings]} if goings else {}),
    }


def _pieces(act: Act, load: Load, asked: Sequence[PieceAsked]) -> list[Placement]:
    return [
        Placement(
            id=each.id or act.row_id(each.piece.pk),
            piece=each.piece,
            **_common(act, load),
            **each.where,
        )
        for each in asked
    ]


def _things(act: Act, load: Load, asked: Sequence[ThingAsked]) -> list[Placement]:
    return [
        Placement(
            id=each.id or uuid5(act.id, f"thing {number}"),
            what=each.what,
            count=each.count,
            **_common(act, load),
            **each.size,
            **each.where,
        )
        for number, each in enumerate(asked)
    ]


def _common(act: Act, load: Load) -> dict[str, Any]:
    return {
        "studio": act.studio,
        "load": load,
        "asked_by": act.member,
        "act_id": act.id,
        "placed_at": act.written_at,
    }
