"""The gate of a load: which pieces do not go, what a reason lifts, what to mind of the rest."""

from collections.abc import Sequence
from uuid import UUID

from firings.domain import cautions
from firings.domain.cautions import Caution
from firings.domain.gate import DAMP, FULL, LIFTED_BY_REASON, Objection, objections
from firings.models import Load, Placement
from firings.queries import loads as queries
from firings.queries.fitting import TRIED_AT_THE_GATE, answer_to, problem_of
from firings.queries.gate import Gate, warm_hold
from firings.queries.sizes import Sizes
from studio.domain.refusals import Conflict


class NotPlaced(Conflict):
    code = "not-placed"
    title = "Nothing was put on the load."


Refused = dict[UUID, list[Objection]]


def refused(load: Load, gate: Gate) -> Refused:
    """Return what speaks against each piece."""
    found = {}
    for piece in gate.pieces:
        said = list(objections(load.kind, gate.asked(piece)))
        if said:
            found[piece.pk] = said
    return found


def lifted(reason: str, *, may_build: bool, may_override: bool) -> set[str]:
    """Return the objections that the person sets aside with a reason."""
    if not reason.strip():
        return set()
    allowed = {DAMP: may_override, FULL: may_build}
    return {code for code in LIFTED_BY_REASON if allowed[code]}


def left(refused: Refused, lifted: set[str]) -> Refused:
    """Return the objections that no reason lifts."""
    left = {pk: [o for o in said if o.code not in lifted] for pk, said in refused.items()}
    return {pk: said for pk, said in left.items() if said}


def with_full(
    load: Load, rows: Sequence[Placement], refused: Refused
) -> tuple[Refused, list[Caution]]:
    """Add who finds no room (whoever was heard before keeps their place), and say what is doubtful.

    `rows` are not yet written.
    """
    placed = queries.placements_of([load])[load.pk]
    sizes = Sizes([row.piece for row in [*placed, *rows] if row.piece is not None])
    problem = problem_of(load, [*placed, *rows], sizes=sizes)
    if problem is None:
        return refused, [cautions.NO_SHELVES]
    result = answer_to(problem, most_tried=TRIED_AT_THE_GATE)
    if result.verdict != "does_not_fit":
        doubts = [] if result.verdict == "fits" else [Caution("fit-doubtful", result.sentence)]
        return refused, doubts
    found = {pk: list(said) for pk, said in refused.items()}
    for row in rows:
        name = row.piece.shown_mark if row.piece is not None else row.what
        full = Objection(FULL, f"{name} finds no room. {result.sentence}")
        found.setdefault(row.piece_id or row.pk, []).append(full)
    return found, []


def not_placed(load: Load, gate: Gate, left: Refused) -> NotPlaced:
    """Return the refusal, each exception named."""
    marks = {piece.pk: piece.shown_mark for piece in gate.pieces}
    refused = [
        {"id": str(pk), "mark": marks.get(pk, ""), "code": each.code, "detail": each.detail}
        for pk, said in left.items()
        for each in said
    ]
    codes = {row["code"] for row in refused}
    steam = [_shown(cautions.STEAM)] if DAMP in codes else []
    return NotPlaced(
        str(refused[0]["detail"]),
        refused=refused,
        next_load=queries.named(queries.next_load(load)),
        cautions=steam,
        ask="technician" if codes <= set(LIFTED_BY_REASON) else None,
    )


def _shown(caution: Caution) -> dict[str, str]:
    return {"code": caution.code, "detail": caution.detail}


def warnings(
    gate: Gate, doubts: Sequence[tuple[UUID, str, str]], refused: Refused
) -> list[Caution]:
    """Return what to mind about what was put on."""
    said = [Caution(code, detail) for _, code, detail in doubts]
    for piece in gate.pieces:
        said += [Caution(code, detail) for code, detail in gate.warnings(piece)]
    if any(caution.code == "thick-wall" for caution in said):
        inside = queries.placements_of([gate.load])[gate.load.pk]
        hold = warm_hold(gate, [row.piece for row in inside if row.piece is not None])
        said += [hold] if hold is not None else []
    if any(each.code == DAMP for row in refused.values() for each in row):
        said.insert(0, cautions.STEAM)
    return said
