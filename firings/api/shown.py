"""Loads as they are shown."""

from collections.abc import Iterable, Mapping, Sequence
from uuid import UUID

from firings.domain import cautions, load_rules
from firings.domain.cautions import Caution
from firings.domain.gate import DAMP
from firings.models import Load, Placement
from firings.queries.firing import LoadWhole, clock_change
from firings.queries.gate import Gate, warm_hold
from firings.queries.kilns import expected_end_at
from firings.queries.sizes import Size, Sizes, measured_for, thing_size
from pieces.api.bench_rows import shown_person, shown_piece, shown_place
from pieces.queries.pieces import makers_of
from studio.domain.hours import elapsed_h
from studio.models import Member, Place, StudioSettings
from studio.permissions import P, Permission

from .shown_kilns import (
    Shown,
    shown_kiln_name,
    shown_load_name,
    shown_opening,
    shown_programme,
    shown_slot,
    shown_words,
)
from .shown_log import shown_cone, shown_event, shown_reading, shown_stopped

TIMES = (
    "settled_at",
    "loaded_at",
    "started_at",
    "stopped_at",
    "resumed_at",
    "ended_at",
    "opened_at",
    "unloaded_at",
    "called_off_at",
)


def shown_briefs(
    loads: Iterable[Load], placements: Mapping[UUID, Sequence[Placement]]
) -> list[Shown]:
    """Return loads (from `queries.loads.listed`) as rows of a list. At most three queries."""
    loads = list(loads)
    inside = [row.piece for load in loads for row in placements.get(load.pk, ()) if row.piece]
    sizes = Sizes(inside)
    return [shown_brief(load, placements.get(load.pk, ()), sizes) for load in loads]


def shown_brief(load: Load, placements: Sequence[Placement], sizes: Sizes) -> Shown:
    """Return one load as a row of a list."""
    makers = _makers(load, placements, sizes)
    hours = None
    if load.started_at is not None and load.ended_at is not None:
        hours = elapsed_h(load.started_at, load.ended_at)
    return {
        "id": load.pk,
        "number": load.number,
        "kind": load.kind,
        "cone": load.cone,
        "state": load.state,
        "state_words": load_rules.STATE_WORDS[load.state],
        "outcome": load.outcome,
        "kiln": shown_kiln_name(load.kiln),
        "starts_at": load.starts_at,
        "cutoff_at": load.cutoff_at,
        "expected_end_at": expected_end_at(load),
        "watcher": shown_person(load.watcher),
        "is_unplanned": load.is_unplanned,
        "is_interrupted": load.is_interrupted,
        "is_in_doubt": load.is_in_doubt,
        "needs_kiln": load.kiln.is_out_of_use and load.state in ("open", "settled"),
        "pieces": sum(row.piece_id is not None for row in placements),
        "things": sum(row.count for row in placements if row.piece_id is None),
        "makers": makers,
        "litres": round(sum(row["litres"] for row in makers), 2),
        "times": {name: getattr(load, name) for name in TIMES},
        "firing_h": hours,
        "revision": load.revision,
    }


def shown_load(whole: LoadWhole, member: Member, grants: Iterable[Permission]) -> Shown:
    """Return a load with its ware and its log. At most fifteen queries."""
    load, held = whole.load, set(grants)
    pieces = [row.piece for row in whole.placements if row.piece is not None]
    gate = Gate(load, pieces)
    settings = StudioSettings.objects.get(studio=load.studio_id)
    changes = clock_change(load)
    worst = whole.worst_gap
    brief = shown_brief(load, whole.placements, gate.sizes)
    return {
        **brief,
        "firing_h": whole.firing_h,
        "programme": shown_programme(load.programme) if load.programme else None,
        "reading_every_min": load.reading_every_min,
        "expected_h": load.expected_h,
        "limit_c": settings.open_kiln_below_c,
        "may": _may(load, held),
        "nexts": [str(kind) for kind in load_rules.can_follow(load.state)],
        "placements": shown_placements(whole.placements, gate, member),
        "warnings": shown_words(_warnings(whole, gate)),
        "cautions": shown_words(_cautions(load)),
        "checklist": shown_words(_checklist(load, changes[1] if changes else "")),
        "events": [
            shown_event(told.row, is_taken_back=told.is_taken_back, is_misfit=told.is_misfit)
            for told in whole.events
        ],
        "readings": [shown_reading(row, load) for row in whole.readings],
        "worst_gap": {"reading_id": worst[0].pk, "gap_c": worst[1]} if worst else None,
        "planned_now_c": whole.planned_now_c,
        "curve": [{"elapsed_h": hours, "planned_c": c} for hours, c in whole.corners],
        "cones": [shown_cone(row) for row in whole.cones],
        "hot_h": load.hot_h,
        "gap_h": whole.gap_h,
        "opening": shown_opening(whole.opening),
        "stopped": shown_stopped(whole),
        "clock_change": {"at": changes[0], "words": changes[1]} if changes else None,
        "misfits": list(whole.now.misfits),
        "next_load": shown_load_name(whole.next_load),
        "next_slot": shown_slot(whole.next_slot),
    }


def shown_placements(rows: Sequence[Placement], gate: Gate, member: Member) -> list[Shown]:
    """Return what is in a load. Two queries."""
    mine = makers_of(member)
    kept = {row.came_from["place"] for row in rows if row.came_from} - {None}
    places = {str(place.pk): place for place in Place.objects.filter(pk__in=kept)}
    return [_placement(row, gate, mine, places) for row in rows]


def _placement(row: Placement, gate: Gate, mine: set[UUID], places: Mapping[str, Place]) -> Shown:
    piece = row.piece
    size = gate.sizes.of(piece, measured_for(gate.load.kind)) if piece else thing_size(row)
    said = [Caution(*words) for words in gate.warnings(piece)] if piece else []
    came_from = row.came_from
    return {
        "id": row.pk,
        "piece": shown_piece(piece) if piece else None,
        "what": row.what,
        "count": row.count,
        "maker": shown_person(piece.maker) if piece else None,
        "mine": (piece.maker_id if piece else row.asked_by_id) in mine,
        "asked_by": shown_person(row.asked_by),
        "placed_at": row.placed_at,
        "level": row.level,
        "x_mm": row.x_mm,
        "y_mm": row.y_mm,
        "rotation_deg": row.rotation_deg,
        "size": shown_size(size),
        "litres": round(size.litres * row.count, 2) if size else None,
        "override_reason": row.override_reason,
        "overrides": row.overrides,
        "is_held": piece.has_clash if piece else False,
        "warnings": shown_words(said),
        "came_from": {
            "stage": came_from["stage"],
            "state": came_from["state"],
            "place": shown_place(places.get(came_from["place"] or "")),
        }
        if came_from
        else None,
        "result": row.result,
    }


def shown_size(size: Size | None) -> Shown | None:
    """Return a size to a tenth of a millimetre."""
    if size is None:
        return None
    return {
        "x_mm": round(size.x_mm, 1),
        "y_mm": round(size.y_mm, 1),
        "height_mm": round(size.height_mm, 1),
        "is_round": size.is_round,
        "measured": size.measured,
        "is_assumed": size.is_assumed,
    }


def _makers(load: Load, placements: Sequence[Placement], sizes: Sizes) -> list[Shown]:
    rows: dict[UUID | None, Shown] = {}
    for row in placements:
        if row.piece is None:
            continue
        size = sizes.of(row.piece, measured_for(load.kind))
        maker = row.piece.maker
        shown = rows.setdefault(
            row.piece.maker_id, {"person": shown_person(maker), "pieces": 0, "litres": 0.0}
        )
        shown["pieces"] += 1
        shown["litres"] = round(shown["litres"] + (size.litres if size else 0.0), 2)
    return list(rows.values())


def _may(load: Load, held: set[Permission]) -> Shown:
    is_open = load.state == Load.State.OPEN
    is_settled = load.state == Load.State.SETTLED
    is_early = is_open or is_settled
    return {
        "add": is_open and bool({P.PUT_ON_LOAD, P.BUILD_LOADS} & held),
        "settle": is_open and P.SETTLE_LOADS in held,
        "reopen": is_settled and P.SETTLE_LOADS in held,
        "record": P.RECORD_FIRINGS in held,
        "call_off": (is_early or load.state == Load.State.LOADING) and P.SETTLE_LOADS in held,
        "change": is_early and P.BUILD_LOADS in held,
        "override": P.OVERRIDE_DRYNESS in held,
    }


def _warnings(whole: LoadWhole, gate: Gate) -> list[Caution]:
    load, said = whole.load, []
    if load.kiln.is_out_of_use and not load.is_over:
        detail = f"{load.kiln.number} is out of use: {load.kiln.out_of_use_reason}."
        said.append(Caution("kiln-out-of-use", detail))
    if load.is_in_doubt:
        detail = "Two people told of it what cannot both be so. Take one of the two back."
        said.append(Caution("two-stories", detail))
    held = [piece.shown_mark for piece in gate.pieces if piece.has_clash]
    if held:
        detail = f"Two stories are told of {', '.join(held)}: settle them first."
        said.append(Caution("ware-held", detail))
    if _is_before_fire(load) and any(DAMP in row.overrides for row in whole.placements):
        said.append(cautions.WARM_HOLD)
    hold = warm_hold(gate, gate.pieces) if _is_before_fire(load) else None
    return [*said, hold] if hold is not None else said


def _is_before_fire(load: Load) -> bool:
    """Return whether it may still be lit."""
    return load.state in (Load.State.OPEN, Load.State.SETTLED, Load.State.LOADING)


def _cautions(load: Load) -> Sequence[Caution]:
    nexts = load_rules.can_follow(load.state)
    return cautions.AT[str(nexts[0])] if nexts else ()


def _checklist(load: Load, clocks: str) -> Sequence[Caution]:
    is_before = _is_before_fire(load)
    return cautions.checklist(load.kind, clocks_change=clocks) if is_before else ()
