"""Orders and their lines as they are shown. Never money; contacts to few."""

from collections import Counter
from collections.abc import Sequence
from datetime import date
from typing import Any, Final

from pieces.domain import cautions
from pieces.domain import stages as job
from pieces.domain.cautions import Caution
from pieces.domain.order_words import stands_with, time_left
from pieces.domain.stages import Spot
from pieces.models import Commission, Match, Piece, TestReport, Use
from pieces.queries.commissions import OrderNow
from pieces.queries.sets import LineNow
from studio.models import Member

from .bench_rows import shown_person, shown_piece
from .shown import shown_briefs, shown_spot

Shown = dict[str, Any]

COUNTED: Final = (
    "wanted",
    "delivered",
    "finished",
    "alive",
    "planned",
    "in_doubt",
    "pieces",
    "lost_pieces",
    "damaged_pieces",
    "outside_pieces",
)


def shown_row(order: OrderNow, *, mine: set[Any], today: date) -> Shown:
    """Return an order as a row of a list."""
    row = order.commission
    promised = row.promised_date
    return {
        "id": row.pk,
        "number": row.number,
        "client_name": row.client_name,
        "what": row.what,
        "use": row.use,
        "maker": shown_person(row.maker),
        "mine": row.maker_id in mine,
        "promised_date": promised,
        "days_left": (promised - today).days if promised and row.state == "open" else None,
        "promise_words": time_left(promised, today),
        "state": row.state,
        "counts": _totals(order),
        "words": "; ".join(line.sentence for line in order.lines),
        "is_at_risk": order.is_at_risk(today),
        "risk_words": row.risk_words,
        "likely_from": row.likely_from,
        "likely_until": row.likely_until,
        "judged_at": row.judged_at,
    }


def shown_order(
    order: OrderNow, *, mine: set[Any], today: date, may: Shown, with_contact: bool
) -> Shown:
    """Return all that the row of an order holds."""
    row = order.commission
    contact = {"client_contact": row.client_contact} if with_contact else {}
    return {
        **shown_row(order, mine=mine, today=today),
        **contact,
        "taken_at": row.taken_at,
        "closed_at": row.closed_at,
        "cancelled_at": row.cancelled_at,
        "revision": row.revision,
        "may": may,
    }


def shown_lines(lines: Sequence[LineNow], member: Member) -> list[Shown]:
    """Return lines with their pieces. Four queries, however many."""
    pieces = [piece for line in lines for piece in line.pieces]
    briefs = shown_briefs(pieces, member)
    by_id = {piece.pk: brief for piece, brief in zip(pieces, briefs, strict=True)}
    return [_line(line, by_id) for line in lines]


def shown_promise(now: LineNow | None) -> Shown | None:
    """Return which order a piece is promised to; the client is not named."""
    if now is None:
        return None
    row = now.line.commission
    return {
        "commission_id": row.pk,
        "number": row.number,
        "line_id": now.line.pk,
        "what": now.line.what,
        "promised_date": row.promised_date,
    }


def shown_partners(now: LineNow, piece: Piece) -> list[Shown]:
    """Return the pieces that a piece stands with, and the gap of the seat."""
    return [
        {"id": other.pk, "mark": other.shown_mark, "seat_gap_mm": gap}
        for other, gap in now.partners_of(piece)
    ]


def named_partners(now: LineNow | None, piece: Piece) -> list[Shown]:
    """Return the same with all that names a piece, for the screen of one."""
    partners = now.partners_of(piece) if now is not None else []
    return [{**shown_piece(other), "seat_gap_mm": gap} for other, gap in partners]


def shown_report(row: TestReport) -> Shown:
    """Return what a laboratory wrote."""
    piece, batch = row.piece, row.glaze_batch
    return {
        "id": row.pk,
        "happened_at": row.happened_at,
        "commission_id": row.commission_id,
        "piece": {"id": piece.pk, "mark": piece.shown_mark} if piece else None,
        "glaze_batch": {"id": batch.pk, "label": batch.label} if batch else None,
        "occasion_id": row.occasion_id,
        "occasion_name": row.occasion_name,
        "glaze": row.glaze,
        "laboratory": row.laboratory,
        "reported_on": row.reported_on,
        "lead_value": row.lead_value,
        "lead_is_below": row.lead_is_below,
        "cadmium_value": row.cadmium_value,
        "cadmium_is_below": row.cadmium_is_below,
        "unit": row.unit,
        "depth_mm": row.depth_mm,
        "volume_ml": row.volume_ml,
        "area_dm2": row.area_dm2,
        "contact": row.contact,
        "is_lid_tested": row.is_lid_tested,
        "lid_lead_mg": row.lid_lead_mg,
        "lid_lead_is_below": row.lid_lead_is_below,
        "lid_cadmium_mg": row.lid_cadmium_mg,
        "lid_cadmium_is_below": row.lid_cadmium_is_below,
        "member": shown_person(row.entry.member),
    }


def shown_match(row: Match) -> Shown:
    """Return what was said of two pieces."""
    return {
        "id": row.pk,
        "kind": row.kind,
        "piece_ids": [row.first_id, row.second_id],
        "marks": [row.first.shown_mark, row.second.shown_mark],
        "seat_gap_mm": row.seat_gap_mm,
        "happened_at": row.happened_at,
        "member": shown_person(row.entry.member),
    }


def cautions_of(commission: Commission, reports: Sequence[TestReport]) -> list[Caution]:
    """Return what to mind about the use of what was ordered."""
    if commission.use == Use.DISPLAY:
        return [cautions.DISPLAY_ONLY]
    return [cautions.REPORT_KEPT if reports else cautions.FOOD_USE]


def warnings_of(lines: Sequence[LineNow]) -> list[Caution]:
    """Return what asks for somebody's decision."""
    pieces = [piece for line in lines for piece in line.pieces if piece.stage != "lost"]
    said = [
        (cautions.TWO_STORIES, [piece for piece in pieces if piece.has_clash]),
        (cautions.DAMAGED, [piece for piece in pieces if piece.is_damaged]),
    ]
    told = [
        Caution(caution.code, f"{_marks(about)}: {caution.detail}")
        for caution, about in said
        if about
    ]
    is_for_food = any(line.line.commission.use == Use.FOOD for line in lines)
    shown = [piece for piece in pieces if piece.use == Use.DISPLAY] if is_for_food else []
    if shown:
        detail = f"{_marks(shown)}: for display only, and the order is for food."
        told.append(Caution("display-piece-in-food-order", detail))
    return told


def _line(now: LineNow, briefs: dict[Any, Shown]) -> Shown:
    spots = Counter(Spot(piece.stage, piece.state) for piece in now.pieces)
    return {
        "id": now.line.pk,
        "what": now.line.what,
        "wanted_sets": now.line.wanted_sets,
        "order": now.line.order,
        "counts": _counts(now),
        "sentence": now.sentence,
        "recipe": [
            {
                "role": row.role,
                "design_id": row.design_id,
                "design_name": row.design.name,
                "noun": row.design.noun,
                "count": row.count,
            }
            for row in now.recipe
        ],
        "stages": [{**shown_spot(spot), "count": spots[spot]} for spot in job.SPOTS if spots[spot]],
        "pieces": [_piece(now, piece, briefs[piece.pk]) for piece in now.pieces],
    }


def _piece(now: LineNow, piece: Piece, brief: Shown) -> Shown:
    partners = now.partners_of(piece)
    role = now.role_of(piece)
    return {
        **brief,
        "use": piece.use,
        "grade": piece.grade,
        "role": role,
        "set": now.set_of.get(piece.pk),
        "partners": shown_partners(now, piece),
        "words": stands_with(role, [other.shown_mark for other, _ in partners]),
    }


def _counts(now: LineNow) -> Shown:
    counts = now.counts
    return {
        "wanted": now.line.wanted_sets,
        "delivered": counts.delivered,
        "finished": counts.finished,
        "alive": counts.made,
        "planned": counts.planned,
        "in_doubt": counts.in_doubt,
        "pieces": counts.pieces,
        "lost_pieces": counts.lost_pieces,
        "damaged_pieces": now.damaged,
        "outside_pieces": counts.outside_pieces,
    }


def _totals(order: OrderNow) -> Shown:
    counted = [_counts(line) for line in order.lines]
    return {name: sum(row[name] for row in counted) for name in COUNTED}


def _marks(pieces: Sequence[Piece]) -> str:
    return ", ".join(piece.shown_mark for piece in pieces)
