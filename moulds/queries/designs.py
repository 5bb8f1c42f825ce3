"""Designs: what stands between them and a first pressing."""

from collections.abc import Iterable
from typing import Literal
from uuid import UUID

from django.db.models import QuerySet

from moulds.models import Casting, Design, DesignPart, Master, MouldPart
from studio.models import Studio

Readiness = Literal["model", "mould", "pressing", "assembly"]

IN_MOULDS = (DesignPart.Method.PRESSED, DesignPart.Method.SPRIGGED)
ORDER: tuple[Readiness, ...] = ("model", "mould", "pressing")


def all_of(studio: Studio) -> "QuerySet[Design]":
    """Return the designs of a studio with their parts. Two queries when read."""
    return Design.objects.filter(studio=studio).select_related("body").prefetch_related("parts")


def readiness_of(design: Design) -> Readiness:
    """Return the stage at which a piece of the design begins: what it waits for, or pressing.

    `assembly` where nothing of it comes from a mould.
    """
    return readiness_of_many([design])[design.pk]


def readiness_of_many(designs: Iterable[Design]) -> dict[UUID, Readiness]:
    """Return `readiness_of` each design. Four queries, however many designs."""
    designs = list(designs)
    ids = [design.pk for design in designs]
    needed: dict[UUID, list[UUID]] = {}
    required = DesignPart.objects.filter(design__in=ids, is_required=True, method__in=IN_MOULDS)
    for part_id, design_id in required.values_list("pk", "design_id"):
        needed.setdefault(design_id, []).append(part_id)
    fit = _parts_with_fit_casting(ids)
    whole, of_part = _ready_masters(ids)
    found: dict[UUID, Readiness] = {}
    for design in designs:
        parts = needed.get(design.pk, [])
        if not design.uses_moulds or not parts:
            found[design.pk] = "assembly"
            continue
        mouldable = of_part | set(parts) if design.pk in whole else of_part
        stages = [_stage(part, fit=fit, mouldable=mouldable) for part in parts]
        found[design.pk] = min(stages, key=ORDER.index)
    return found


def _stage(part: UUID, *, fit: set[UUID], mouldable: set[UUID]) -> Readiness:
    if part in fit:
        return "pressing"
    return "mould" if part in mouldable else "model"


def _parts_with_fit_casting(designs: list[UUID]) -> set[UUID]:
    unfit = MouldPart.objects.filter(
        casting__mould_set__makes__design__in=designs,
        state__in=(MouldPart.State.OUT_OF_USE, MouldPart.State.MISSING),
    )
    castings = Casting.objects.filter(is_in_use=True, mould_set__makes__design__in=designs).exclude(
        pk__in=unfit.values("casting")
    )
    return set(castings.values_list("mould_set__makes", flat=True))


def _ready_masters(designs: list[UUID]) -> tuple[set[UUID], set[UUID]]:
    masters = Master.objects.filter(design__in=designs, is_ready=True)
    pairs = list(masters.values_list("design_id", "part"))
    whole = {design_id for design_id, part_id in pairs if part_id is None}
    return whole, {part_id for _, part_id in pairs if part_id is not None}
