"""Clays and glazes: bodies, their test bars, batches, and the blocks laid from them."""

from collections.abc import Mapping
from typing import Any, Final

from django.db import transaction

from studio.actions import journal
from studio.domain import bars
from studio.domain.refusals import Conflict
from studio.models import Act, ClayBody, ColourBatch, GlazeBatch, SlabBlock, TestBar

Material = ClayBody | ColourBatch | GlazeBatch | SlabBlock

KINDS: Final[dict[type[Any], str]] = {
    ClayBody: "body",
    ColourBatch: "batch",
    GlazeBatch: "glaze_batch",
    SlabBlock: "block",
}
LABELS: Final[dict[type[Any], str]] = {
    ClayBody: "code",
    ColourBatch: "label",
    GlazeBatch: "label",
    SlabBlock: "label",
}
SETS: Final = frozenset({"bodies", "batches"})
LENGTHS: Final = ("wet_mm", "dry_mm", "bisque_mm", "fired_mm")
NUMBERS: Final = frozenset(
    {
        "dry_shrinkage_fraction",
        "total_shrinkage_fraction",
        "stain_g",
        "clay_g",
        "used_up_at",
        "density_g_per_l",
    }
)


class LabelTaken(Conflict):
    code = "label-taken"
    title = "That label is taken."


@transaction.atomic
def create(*, act: Act, model: type[Any], fields: Mapping[str, Any]) -> Any:
    """Make a body, a batch or a block. Raises `LabelTaken` and `ImpossibleShrinkage`."""
    row = model(id=act.id, studio=act.studio)
    _set(row, fields)
    row.save(force_insert=True)
    _set_many(row, fields)
    _note(act, "made", row, fields)
    return row


@transaction.atomic
def change(*, act: Act, row: Material, changes: Mapping[str, Any]) -> Material:
    """Change what is given in `changes`. Raises `LabelTaken` and `ImpossibleShrinkage`."""
    _set(row, changes)
    row.save()
    _set_many(row, changes)
    _note(act, "changed", row, changes)
    return row


@transaction.atomic
def measure_bar(*, act: Act, body: ClayBody, lengths: Mapping[str, float | None]) -> TestBar:
    """Record the lengths of a new bar of the body. Raises `ImpossibleLength`."""
    bar = TestBar(
        id=act.id,
        studio=act.studio,
        body=body,
        made_by=act.member,
        measured_at=act.happened_at,
        **lengths,
    )
    return _keep_bar(act, bar, "measured_bar", lengths)


@transaction.atomic
def measure_again(*, act: Act, bar: TestBar, lengths: Mapping[str, float | None]) -> TestBar:
    """Add the lengths of a later stage to a bar. Raises `ImpossibleLength`."""
    for name, length in lengths.items():
        setattr(bar, name, length)
    bar.measured_at = act.happened_at
    return _keep_bar(act, bar, "measured_bar_again", lengths)


def shrinkages(bar: TestBar) -> bars.Shrinkages:
    """Return what the bar tells. Raises `ImpossibleLength`."""
    return bars.shrinkages(
        wet_mm=bar.wet_mm, dry_mm=bar.dry_mm, bisque_mm=bar.bisque_mm, fired_mm=bar.fired_mm
    )


def _keep_bar(act: Act, bar: TestBar, verb: str, lengths: Mapping[str, float | None]) -> TestBar:
    shrinkages(bar)
    bar.save()
    facts = {"bar": bar.pk, **lengths}
    journal.write(act=act, verb=verb, subjects=[("body", bar.body_id)], facts=facts)
    return bar


def _set(row: Material, fields: Mapping[str, Any]) -> None:
    for name, value in fields.items():
        if name.endswith("shrinkage_fraction") and value is not None:
            bars.check_fraction(value, field=name)
        if name not in SETS:
            setattr(row, name, value)
    label = LABELS[type(row)]
    value = getattr(row, label)
    if (
        type(row)
        .objects.filter(studio=row.studio, **{f"{label}__iexact": value})
        .exclude(pk=row.pk)
        .exists()
    ):
        raise LabelTaken(f"{value} is there already.", pointer=f"#/{label}")


def _set_many(row: Material, fields: Mapping[str, Any]) -> None:
    for name in SETS & fields.keys():
        getattr(row, name).set(fields[name])


def _note(act: Act, did: str, row: Material, fields: Mapping[str, Any]) -> None:
    kind = KINDS[type(row)]
    facts: dict[str, object] = {"changed": sorted(fields)}
    facts |= {name: fields[name] for name in NUMBERS & fields.keys()}
    facts |= {name: [each.pk for each in fields[name]] for name in SETS & fields.keys()}
    journal.write(act=act, verb=f"{did}_{kind}", subjects=[(kind, row.pk)], facts=facts)
