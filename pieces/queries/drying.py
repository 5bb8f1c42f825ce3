"""What the drying model must be told of the parts that are still wet."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Final
from uuid import UUID

from django.db.models import QuerySet

from moulds.models import MouldWeighing
from pieces.domain.drying import (
    BODIES,
    Belief,
    Climate,
    FaceEvent,
    Plaster,
    Problem,
    Section,
    Shape,
    exchange_in,
)
from pieces.domain.drying import Cover as CoverWord
from pieces.domain.drying.sections import BOARD_FACTOR, HOLLOW_FACTOR
from pieces.domain.schedule import Standing, face_events
from pieces.models import Cover, Part
from pieces.queries.stood import WET_STAGES, air_m_s, stood_of, with_places
from pieces.queries.supposed import Supposed
from studio.models import Place, Studio

WET_PARTS: Final = (Part.State.IN_MOULD, Part.State.OUT, Part.State.JOINED)
UNWEIGHED_FRACTION: Final = 0.10  # a mould nobody weighed: common practice, no source
DEFAULT_BODY: Final = "red_earthenware"
FLAT_FORM_MM: Final = 25.0  # lower than this a form lies on its board and has no hollow


@dataclass(frozen=True, slots=True)
class WetPart:
    """One part, and all that happened to it; `clay` tells its body from the studio's others."""

    part_id: UUID
    piece_id: UUID
    body: str
    clay: str
    section: Section
    events: tuple[FaceEvent, ...]
    stays: tuple[tuple[datetime, UUID | None], ...]
    begun_at: datetime
    cover: CoverWord = CoverWord.OPEN
    is_shut_in: bool = False
    air_m_s: float = 0.0
    thinnest_m: float | None = None
    assumed: tuple[str, ...] = field(default=())

    def problem(self, climate: Climate, belief: Belief) -> Problem:
        """Return what the drying model is asked of it, in that air and drawn from that belief."""
        return Problem(
            BODIES[self.body],
            self.section,
            self.events,
            climate,
            exchange_in(self.air_m_s),
            belief,
        )

    @property
    def may_be_covered(self) -> bool:
        """Whether its cover is what lets it dry: it is out, and in no damp cupboard."""
        return self.is_out and not self.is_shut_in

    @property
    def is_out(self) -> bool:
        """Whether it stands in the air by now."""
        return self.events[-1].outer.plaster is None


def wet_parts(
    studio: Studio, *, piece_id: UUID | None = None, supposed: Supposed | None = None
) -> list[WetPart]:
    """Return every part of the studio that is still wet (six queries, however many parts)."""
    return _told(studio, list(_parts(studio, piece_id)), supposed)


def parts_told(studio: Studio, part_ids: Collection[UUID]) -> list[WetPart]:
    """Return what happened to these parts, wet or not (six queries, however many)."""
    return _told(studio, list(_all_of(studio).filter(pk__in=part_ids)))


def _told(studio: Studio, parts: list[Part], supposed: Supposed | None = None) -> list[WetPart]:
    pieces = {part.piece_id for part in parts}
    standings, stood = _standings(pieces), stood_of(pieces)
    if supposed is not None:
        standings = {piece: supposed.covered(standings[piece]) for piece in pieces}
        stood = {piece: supposed.stood(stood[piece]) for piece in pieces}
    saturation = _saturation_when_pressed(parts)
    places = {place.pk: place for place in Place.objects.of(studio)}
    return [
        _wet_part(
            part,
            standings=with_places(
                _of_part(standings[part.piece_id], part.pk), stood[part.piece_id], places
            ),
            stays=[(at, place) for at, place, _ in stood[part.piece_id]],
            air_m_s=air_m_s(stood[part.piece_id], places),
            saturation=saturation.get(part.pk),
            section=_section(part, supposed),
        )
        for part in parts
    ]


def _parts(studio: Studio, piece_id: UUID | None) -> QuerySet[Part]:
    found = (
        _all_of(studio)
        .filter(state__in=WET_PARTS, piece__stage__in=WET_STAGES)
        .exclude(piece__state="bone_dry")
    )
    return found if piece_id is None else found.filter(piece_id=piece_id)


def _all_of(studio: Studio) -> QuerySet[Part]:
    return (
        Part.objects.filter(studio=studio)
        .select_related(
            "piece__body", "piece__design__body", "design_part", "pressing__casting__mould_set"
        )
        .order_by("pk")
    )


def _wet_part(
    part: Part,
    *,
    standings: list[Standing],
    stays: list[tuple[datetime, UUID | None]],
    saturation: float | None,
    air_m_s: float,
    section: Section,
) -> WetPart:
    assumed: list[str] = []
    body = part.piece.body or part.piece.design.body
    if body is None:
        assumed.append("body")
    begun_at = part.pressed_at or part.piece.begun_at
    plaster = None
    if part.pressing is not None:
        if saturation is None:
            assumed.append("mould_water")
        plaster = Plaster(
            UNWEIGHED_FRACTION if saturation is None else saturation,
            thickness_m=part.pressing.casting.mould_set.plaster_mm / 1000.0,
        )
    return WetPart(
        part_id=part.pk,
        piece_id=part.piece_id,
        body=body.drying_body if body is not None else DEFAULT_BODY,
        clay=str(body.pk) if body is not None else DEFAULT_BODY,
        section=section,
        events=face_events(
            section,
            begun_at_s=begun_at.timestamp(),
            plaster=plaster,
            out_at_s=part.out_at.timestamp() if part.out_at else None,
            standings=standings,
        ),
        stays=tuple(stays),
        begun_at=begun_at,
        cover=standings[-1].factor_cover if standings else CoverWord.OPEN,
        is_shut_in=bool(standings) and standings[-1].is_in_cupboard,
        air_m_s=air_m_s,
        thinnest_m=part.design_part.thinnest_mm / 1000.0,
        assumed=tuple(assumed),
    )


def _section(part: Part, supposed: Supposed | None) -> Section:
    drawn = part.design_part
    thickest_mm = drawn.thickest_mm
    if supposed is not None:
        thickest_mm = supposed.thickest_mm(part.pk, thickest_mm)
    is_low = drawn.height_mm is not None and drawn.height_mm < FLAT_FORM_MM
    return Section(
        Shape(drawn.shape),
        thickest_m=thickest_mm / 1000.0,
        inside_factor=BOARD_FACTOR if is_low else HOLLOW_FACTOR,
    )


def _standings(pieces: Iterable[UUID]) -> Mapping[UUID, list[tuple[UUID | None, Standing]]]:
    """Return how each piece stood, and its parts where they were covered otherwise, as the fold
    takes it: by `(happened_at, act)`.
    """
    found: defaultdict[UUID, list[tuple[UUID | None, Standing]]] = defaultdict(list)
    covers = Cover.objects.filter(piece_id__in=pieces).standing().order_by("happened_at", "entry")
    for piece, part, at, state in covers.values_list("piece_id", "part_id", "happened_at", "state"):
        found[piece].append((part, Standing(at.timestamp(), CoverWord(state))))
    return found


def _of_part(told: Iterable[tuple[UUID | None, Standing]], part: UUID) -> list[Standing]:
    """Return how one part stood: by its own covers and those of the whole piece, the last rules."""
    return [standing for whose, standing in told if whose in (None, part)]


def _saturation_when_pressed(parts: list[Part]) -> dict[UUID, float]:
    """Return the free water of each part's mould by its last weighing before the pressing."""
    castings = {part.pressing.casting_id for part in parts if part.pressing is not None}
    weighed: defaultdict[UUID, list[tuple[datetime, float]]] = defaultdict(list)
    rows = MouldWeighing.objects.filter(casting_id__in=castings).standing()
    for casting_id, at, mass_g in rows.order_by("happened_at").values_list(
        "casting_id", "happened_at", "mass_g"
    ):
        weighed[casting_id].append((at, mass_g))
    found: dict[UUID, float] = {}
    for part in parts:
        if part.pressing is None:
            continue
        casting = part.pressing.casting
        if casting.dry_g is None:
            continue
        before = [mass for at, mass in weighed[casting.pk] if at <= part.pressing.happened_at]
        if before:
            capacity_g = casting.capacity_fraction * casting.dry_g
            found[part.pk] = min(1.0, max(0.0, (before[-1] - casting.dry_g) / capacity_g))
    return found
