"""What reports say of ware for food: a fixed number of queries, however many pieces."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Final
from uuid import UUID

from firings.domain.food import Batch, Coverage, Firing, Glazed, Report, coverage
from firings.models import FiringKind, Load, Placement
from moulds.models import Design
from pieces.domain import stages
from pieces.models import Piece, StageEvent, TestReport, Use
from pieces.queries.commissions import reports_in
from pieces.queries.sets import matches_of
from studio.domain.food_contact import (
    Figure,
    Limits,
    Released,
    Verdict,
    Ware,
    judged,
    limits_of,
    with_lid,
)
from studio.models import Studio

COATS: Final = (stages.GLAZED.state, stages.IN_GLAZE.state, stages.GLAZE_FIRED.state)


@dataclass(frozen=True, slots=True)
class Eaten:
    """A piece with the limits it falls under, its dips and firing, and what reports say of it."""

    piece: Piece
    limits: Limits | None
    dips: Sequence[Batch | None]
    fired: Firing | None
    told: Coverage


@dataclass(slots=True)
class _Coats:
    """What was told of the glazing of one piece; out of a kiln unfired it is as it was dipped."""

    dips: list[Batch | None] = field(default_factory=list)
    occasion: UUID | None = None
    is_in_kiln: bool = False


def eaten(studio: Studio, pieces: Iterable[Piece]) -> list[Eaten]:
    """Return what reports say of each piece. Six queries; designs come along where selected."""
    rows = list(pieces)
    ids = [piece.pk for piece in rows]
    coats, booked = _coats_of(ids), _booked(ids)
    partners = _partners(ids)
    reports = list(reports_in(studio).filter(glaze_batch__isnull=False))
    loads = _loads([coat.occasion for coat in coats.values()], reports)
    heard = [_report(row, loads) for row in reports]
    found = []
    for piece in rows:
        coat, standing = coats[piece.pk], partners[piece.pk]
        is_lid = piece.design.contact == Design.Contact.LID
        vessel = _vessel(piece, standing)
        limits = limits_of(ware_of(vessel)) if vessel is not None else None
        glazed = Glazed(
            is_display=piece.use == Use.DISPLAY,
            limits=limits,
            dips=coat.dips,
            fired=loads.get(coat.occasion),
            booked=booked.get(piece.pk, ""),
            is_lid=is_lid,
            has_vessel=vessel is not None,
            has_lid=any(other.contact == Design.Contact.LID for other in standing),
        )
        found.append(Eaten(piece, limits, coat.dips, glazed.fired, coverage(glazed, heard)))
    return found


def ware_of(design: Design) -> Ware:
    """Return a design as the limits ask for it; a lid has none of its own."""
    contact: Any = design.contact
    return Ware(design.inside_depth_mm, design.capacity_ml, contact)


def verdict_of(row: TestReport) -> Verdict:
    """Return what a report says of the very ware that was tested, its lid added where tested."""
    limits = limits_of(Ware(row.depth_mm, row.volume_ml, _contact(row.contact)))
    unit: Any = row.unit
    released = Released(
        Figure(row.lead_value, row.lead_is_below), Figure(row.cadmium_value, row.cadmium_is_below)
    )
    lid_mg = _lid_of(row)
    size = row.area_dm2 if unit == TestReport.Unit.PER_AREA else (row.volume_ml or 0.0) / 1000
    if lid_mg is not None and limits is not None and size:
        released = with_lid(released, lid_mg, limits=limits, size=size)
    return judged(limits, released, unit=unit)


def _lid_of(row: TestReport) -> Released | None:
    if row.lid_lead_mg is None or row.lid_cadmium_mg is None:
        return None
    return Released(
        Figure(row.lid_lead_mg, row.lid_lead_is_below),
        Figure(row.lid_cadmium_mg, row.lid_cadmium_is_below),
    )


def _contact(text: str) -> Any:
    return Design.Contact.TABLE if text == Design.Contact.LID else text


def _report(row: TestReport, loads: Mapping[UUID | None, Firing]) -> Report:
    return Report(
        id=row.pk,
        batch=row.glaze_batch_id,
        firing=loads.get(row.occasion_id),
        verdict=verdict_of(row),
        has_lid=row.is_lid_tested,
        reported_on=row.reported_on,
    )


def _coats_of(ids: list[UUID]) -> dict[UUID, _Coats]:
    found: dict[UUID, _Coats] = {pk: _Coats() for pk in ids}
    rows: Any = StageEvent.objects.filter(piece__in=ids, state__in=COATS).agreed()
    for row in rows.select_related("glaze_batch").order_by("happened_at", "id"):
        coat, batch = found[row.piece_id], row.glaze_batch
        if row.state == stages.GLAZE_FIRED.state:
            coat.occasion = row.occasion_id
        elif row.state == stages.GLAZED.state and not (coat.is_in_kiln and batch is None):
            coat.dips.append(Batch(batch.pk, batch.label) if batch else None)
        coat.is_in_kiln = row.state == stages.IN_GLAZE.state
    return found


def _booked(ids: list[UUID]) -> dict[UUID, str]:
    rows = Placement.objects.filter(piece__in=ids, is_live=True, load__kind=FiringKind.GLAZE)
    return {pk: number for pk, number in rows.values_list("piece_id", "load__number") if pk}


def _loads(
    occasions: Iterable[UUID | None], reports: Iterable[TestReport]
) -> dict[UUID | None, Firing]:
    named = [*occasions, *(row.occasion_id for row in reports)]
    ids = {pk for pk in named if pk is not None}
    loads = Load.objects.filter(pk__in=ids).select_related("kiln")
    return {load.pk: Firing(load.number, str(load.kiln), load.cone) for load in loads}


def _partners(ids: list[UUID]) -> dict[UUID, list[Design]]:
    """Return the designs that each piece stands with by the matches that hold."""
    pairs = list(matches_of(ids))
    others = Piece.objects.filter(pk__in={pk for pair in pairs for pk in pair})
    designs = {piece.pk: piece.design for piece in others.select_related("design")}
    found: defaultdict[UUID, list[Design]] = defaultdict(list)
    for first, second in pairs:
        found[first].append(designs[second])
        found[second].append(designs[first])
    return found


def _vessel(piece: Piece, standing: Sequence[Design]) -> Design | None:
    """Return the design whose limits hold: a lid's are those of the vessel it closes."""
    if piece.design.contact != Design.Contact.LID:
        return piece.design
    return next((other for other in standing if other.contact != Design.Contact.LID), None)
