"""What the papers of an order tell: its pieces with moulds, clay and firings, as texts."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Any, Final
from uuid import UUID
from zoneinfo import ZoneInfo

from firings.domain.papers import OrderFacts, PieceFacts, ReportFacts, Signature
from firings.models import Load
from pieces.domain import stages
from pieces.domain.order_words import day
from pieces.models import Commission, Part, Piece, StageEvent, TestReport
from pieces.queries.commissions import pieces_of
from pieces.queries.frozen import later
from studio.domain.food_contact import UNITS, Figure, figure_words, limits_words
from studio.models import FrozenCopy, GlazeBatch, Member, SlabBlock
from studio.queries import materials
from studio.queries.frozen import copies_of

from .food import Eaten, eaten, verdict_of

KIND: Final = "papers"
OUT: Final = ("finished", "delivered")
FIRED: Final = (stages.BISQUED.state, stages.GLAZE_FIRED.state)
NAMED: Final[dict[str, Callable[[Member], str]]] = {
    "initials": lambda member: member.initials,
    "first_name": lambda member: member.first_name,
    "nobody": lambda member: "",
}


@dataclass(slots=True)
class _Way:
    """What a piece is made of and what happened to it, as lines."""

    pressed: list[datetime] = field(default_factory=list)
    moulds: list[str] = field(default_factory=list)
    blocks: dict[UUID, SlabBlock] = field(default_factory=dict)
    fired: list[str] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class Gathered:
    """The order as its papers tell it, what reports say, and the papers signed, newest first."""

    facts: OrderFacts
    eaten: Sequence[Eaten]
    kept: Sequence[FrozenCopy]

    @property
    def signature(self) -> Signature | None:
        """Return who signed last."""
        if not self.kept:
            return None
        copy = self.kept[0]
        is_declared = bool(copy.entry.facts.get("declares"))
        return Signature(copy.entry.member.full_name, copy.happened_at.date(), is_declared)


def gathered(commission: Commission, *, people: str = "initials") -> Gathered:
    """Return what the papers tell now: of what is finished, else of all that is under way."""
    zone = ZoneInfo(commission.studio.zone)
    pieces = _pieces(commission)
    ids = [piece.pk for piece in pieces]
    ways, told = _ways(ids, zone), eaten(commission.studio, pieces)
    kept = list(copies_of(commission.studio, commission.pk, kind=KIND))
    since = later(commission, kept[0]) if kept else []
    batches = _batches(told)
    blocks = {pk: block for way in ways.values() for pk, block in way.blocks.items()}
    facts = OrderFacts(
        studio=commission.studio.name,
        number=commission.number,
        what=commission.what,
        client=commission.client_name,
        taken_on=commission.taken_at.astimezone(zone).date(),
        promised_on=commission.promised_date,
        pieces=[_piece(row, ways[row.piece.pk], NAMED[people], zone) for row in told],
        are_finished=any(piece.stage in OUT for piece in pieces),
        reports=_reports(told),
        materials=[*_clays(blocks.values()), *_glazes(batches)],
        cautions=_cautions(blocks.values(), batches),
        later=_later(since, zone),
        is_delivered=any(piece.stage == stages.DELIVERED.stage for piece in pieces),
    )
    return Gathered(facts, told, kept)


def on_day(at: datetime, commission: Commission) -> date:
    """Return the day of an instant in the studio."""
    return at.astimezone(ZoneInfo(commission.studio.zone)).date()


def _pieces(commission: Commission) -> list[Piece]:
    own = [piece for piece in pieces_of([commission]) if piece.stage != "lost"]
    return [piece for piece in own if piece.stage in OUT] or own


def _ways(ids: Sequence[UUID], zone: ZoneInfo) -> dict[UUID, _Way]:
    found = {pk: _Way() for pk in ids}
    parts = Part.objects.filter(piece__in=ids).exclude(
        state__in=(Part.State.TO_PRESS, Part.State.SCRAPPED, Part.State.REPLACED)
    )
    parts = parts.select_related("pressing__casting__mould_set", "pressing__slab_block")
    parts = parts.prefetch_related("pressing__slab_block__bodies__batches__body")
    parts = parts.prefetch_related("pressing__slab_block__batches__body")
    for part in parts.order_by("design_part__order", "role", "number"):
        way, pressing = found[part.piece_id], part.pressing
        if part.pressed_at is not None:
            way.pressed.append(part.pressed_at)
        if pressing is None:
            way.moulds.append(f"{part.role}: no mould")
            continue
        casting = pressing.casting
        way.moulds.append(f"{part.role}: {casting.mould_set.label} g{casting.generation}")
        if pressing.slab_block is not None:
            way.blocks[pressing.slab_block.pk] = pressing.slab_block
    visits: Any = StageEvent.objects.filter(piece__in=ids, state__in=FIRED).agreed()
    visits = list(visits.order_by("happened_at", "id"))
    loads = Load.objects.filter(pk__in={visit.occasion_id for visit in visits} - {None})
    known = {load.pk: load for load in loads.select_related("kiln")}
    for visit in visits:
        load = known.get(visit.occasion_id)
        where = f"{load.number}, {load.kiln}, cone {load.cone}" if load else "no load written down"
        on = day(visit.happened_at.astimezone(zone).date())
        found[visit.piece_id].fired.append(f"{stages.WORDS[visit.state]} {on}: {where}")
    return found


def _piece(row: Eaten, way: _Way, named: Callable[[Member], str], zone: ZoneInfo) -> PieceFacts:
    piece = row.piece
    since = day(piece.since_at.astimezone(zone).date())
    batches = dict.fromkeys(batch.label for batch in row.dips if batch is not None)
    return PieceFacts(
        mark=piece.shown_mark,
        what=piece.design.name,
        maker=named(piece.maker) if piece.maker else "",
        made=day(min(way.pressed).astimezone(zone).date()) if way.pressed else "",
        moulds=way.moulds,
        clay=[_block(block) for block in way.blocks.values()],
        fired=way.fired,
        ended=f"{stages.WORDS[piece.state]} {since}",
        is_display=row.told.code == "display",
        limits=limits_words(row.limits) if row.limits else "not known: its depth is not recorded",
        glaze=list(batches),
        coverage=row.told.words,
        is_within=row.told.is_within,
    )


def _block(block: SlabBlock) -> str:
    bodies = ", ".join(sorted(body.name for body in block.bodies.all()))
    return f"{block.label}: {bodies}"


def _reports(told: Iterable[Eaten]) -> list[ReportFacts]:
    used = {pk for row in told for pk in row.told.reports}
    rows: Any = TestReport.objects.filter(pk__in=used).select_related("piece", "glaze_batch")
    return [_report(row) for row in rows.order_by("reported_on", "id")]


def _report(row: TestReport) -> ReportFacts:
    unit = UNITS[row.unit]  # type: ignore[index]
    lead = figure_words(Figure(row.lead_value, row.lead_is_below), unit)
    cadmium = figure_words(Figure(row.cadmium_value, row.cadmium_is_below), unit)
    results = [f"lead {lead}", f"cadmium {cadmium}"]
    if row.lid_lead_mg is not None and row.lid_cadmium_mg is not None:
        lid_lead = figure_words(Figure(row.lid_lead_mg, row.lid_lead_is_below), "mg")
        lid_cadmium = figure_words(Figure(row.lid_cadmium_mg, row.lid_cadmium_is_below), "mg")
        results += [f"lid: lead {lid_lead}", f"lid: cadmium {lid_cadmium}"]
    about = [row.piece.shown_mark if row.piece else "", row.occasion_name]
    about.append(row.glaze_batch.label if row.glaze_batch else row.glaze)
    return ReportFacts(
        reported_on=row.reported_on,
        laboratory=row.laboratory,
        about=" · ".join(text for text in about if text),
        results="\n".join(results),
        verdict=verdict_of(row).words,
    )


def _batches(told: Iterable[Eaten]) -> list[GlazeBatch]:
    ids = {batch.id for row in told for batch in row.dips if batch is not None}
    return list(GlazeBatch.objects.filter(pk__in=ids).order_by("label"))


def _clays(blocks: Iterable[SlabBlock]) -> list[tuple[str, str]]:
    found: dict[str, str] = {}
    for block in blocks:
        for body in block.bodies.all():
            found[f"Clay {body.code}, {body.name}"] = body.caution
        for batch in block.batches.all():
            found[f"Colour batch {batch.label}, {batch.body.name}"] = batch.caution
    return sorted((name, text or "nothing recorded") for name, text in found.items())


def _glazes(batches: Iterable[GlazeBatch]) -> list[tuple[str, str]]:
    return [
        (f"Glaze {batch.label}, {batch.name}", batch.caution or "nothing recorded")
        for batch in batches
    ]


def _cautions(blocks: Iterable[SlabBlock], batches: Iterable[GlazeBatch]) -> list[str]:
    """Return the usual cautions of what the ware is made of, each once, without their own."""
    told = [text for block in blocks for text in materials.cautions_of_block(block)]
    told += [text for batch in batches for text in materials.cautions_of_glaze(batch)]
    own = {body.caution for block in blocks for body in block.bodies.all()}
    own |= {batch.caution for batch in batches}
    return [text for text in dict.fromkeys(told) if text not in own]


def _later(acts: Iterable[dict[str, Any]], zone: ZoneInfo) -> list[tuple[str, str]]:
    """Return acts as lines, the oldest first; that the papers were signed is told on them."""
    found: list[tuple[str, str]] = []
    for act in acts:
        lines = [f"{line['words']} ({', '.join(line['marks'])})" for line in act["pieces"]]
        said = "; ".join(text for text in [act["words"], *lines] if text)
        back = ", taken back since" if act["is_taken_back"] else ""
        at = datetime.fromisoformat(act["happened_at"]).astimezone(zone)
        found.append((f"{day(at.date())} · {act['by']}", f"{said}{back}"))
    return found[::-1]
