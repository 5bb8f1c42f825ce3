"""Clays and what their bars say; glaze batches."""

from collections.abc import Iterable
from dataclasses import dataclass
from statistics import fmean

from django.db.models import Prefetch, QuerySet

from studio.domain import bars, cautions
from studio.models import ClayBody, ColourBatch, GlazeBatch, SlabBlock, Studio, TestBar


@dataclass(frozen=True, slots=True)
class Measured:
    """What the bars of a body say together; fractions of the wet length, None without a bar."""

    bars: int
    drying_fraction: float | None
    total_fraction: float | None
    total_least_fraction: float | None
    total_most_fraction: float | None


def bodies(studio: Studio) -> "QuerySet[ClayBody]":
    return (
        ClayBody.objects.filter(studio=studio)
        .order_by("code")
        .prefetch_related(Prefetch("bars", TestBar.objects.order_by("measured_at")), "batches")
    )


def batches(studio: Studio) -> "QuerySet[ColourBatch]":
    return ColourBatch.objects.filter(studio=studio).select_related("body").order_by("label")


def glaze_batches(studio: Studio) -> "QuerySet[GlazeBatch]":
    return GlazeBatch.objects.filter(studio=studio).select_related("mixed_by").order_by("label")


def blocks(studio: Studio) -> "QuerySet[SlabBlock]":
    return (
        SlabBlock.objects.filter(studio=studio)
        .order_by("label")
        .prefetch_related("bodies__batches", "batches__body")
    )


def measured(rows: Iterable[TestBar]) -> Measured:
    """Return what bars say together; each was checked when it was recorded."""
    told = [
        bars.shrinkages(
            wet_mm=bar.wet_mm, dry_mm=bar.dry_mm, bisque_mm=bar.bisque_mm, fired_mm=bar.fired_mm
        )
        for bar in rows
    ]
    drying = [each.drying_fraction for each in told if each.drying_fraction is not None]
    total = [each.total_fraction for each in told if each.total_fraction is not None]
    return Measured(
        bars=len(told),
        drying_fraction=fmean(drying) if drying else None,
        total_fraction=fmean(total) if total else None,
        total_least_fraction=min(total, default=None),
        total_most_fraction=max(total, default=None),
    )


def cautions_of_body(body: ClayBody) -> list[str]:
    return cautions.of_clay(own=body.caution, is_coloured=bool(body.batches.all()))


def cautions_of_batch(batch: ColourBatch) -> list[str]:
    own = " ".join(text for text in (batch.caution, batch.body.caution) if text)
    return cautions.of_clay(own=own, is_coloured=True)


def cautions_of_glaze(batch: GlazeBatch) -> list[str]:
    return cautions.of_glaze(own=batch.caution)


def cautions_of_block(block: SlabBlock) -> list[str]:
    """Return the cautions of every clay in the block, each once."""
    return cautions.joined(
        [cautions_of_batch(batch) for batch in block.batches.all()]
        + [cautions_of_body(body) for body in block.bodies.all()]
    )
