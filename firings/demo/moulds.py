"""The demo's designs, masters and mould sets, and what happened to the plaster."""

from __future__ import annotations

from datetime import datetime

from moulds.actions import castings, designs, masters, parts, sets, weighings
from moulds.models import Casting, Design, DesignPart, Master, MouldPart
from studio.models import ClayBody

from . import tables
from .tables import DesignRow, MouldRow
from .teller import Teller

SIZES = ("footprint_x_mm", "footprint_y_mm", "height_mm")


def make_designs(teller: Teller) -> dict[str, Design]:
    """Make the designs as they stood when the studio was founded."""
    at = teller.clock.at(tables.FOUNDED)
    body = ClayBody.objects.get(studio=teller.studio, code="CR")
    return {row.name: _design(teller, row, body, at) for row in tables.DESIGNS}


def _design(teller: Teller, row: DesignRow, body: ClayBody, at: datetime) -> Design:
    given = [
        designs.PartGiven(
            role=part.role,
            thickest_mm=part.thickest_mm,
            thinnest_mm=part.thinnest_mm,
            shape=part.shape,
            method=part.method,
            count=part.number,
            is_required=part.is_required,
            clay_g=part.clay_g,
            footprint_x_mm=part.footprint[0] if part.footprint else None,
            footprint_y_mm=part.footprint[1] if part.footprint else None,
            height_mm=part.footprint[2] if part.footprint else None,
        )
        for part in row.parts
    ]
    return designs.make(
        act=teller.act("odile", at),
        name=row.name,
        noun=row.noun,
        series=row.series,
        parts=given,
        body=body,
        uses_moulds=row.uses_moulds,
        is_round=row.is_round,
        contact=row.contact,
        sizes={
            **dict(zip(SIZES, row.size, strict=True)),
            "inside_depth_mm": row.inside_depth_mm,
            "capacity_ml": row.capacity_ml,
        },
    )


def make_moulds(teller: Teller, made: dict[str, Design]) -> dict[str, Casting]:
    """Make the fourteen sets with the casting each has in use; queue what happened to them."""
    at = teller.clock.at(tables.FOUNDED)
    poured: dict[str, Casting] = {}
    for row in tables.MOULDS:
        makes = DesignPart.objects.get(design=made[row.design], role=row.role)
        poured[row.label] = _casting(teller, row, makes, at)
        _queue_weighings(teller, row, poured[row.label])
        if row.kept is not None:
            _queue_event(teller, row, poured[row.label])
    return poured


def _casting(teller: Teller, row: MouldRow, makes: DesignPart, at: datetime) -> Casting:
    mould_set = sets.make(
        act=teller.act("odile", at),
        label=row.label,
        makes=makes,
        owner=teller.members.get(row.owner),
        place=teller.place(row.place),
    )
    blocks = [
        castings.Block(name, row.presses_before, teller.members["odile"]) for name in row.blocks
    ]
    master = _master(teller, row, makes, at)
    poured_at = teller.clock.at(f"{row.poured} 10:00")
    return castings.pour(
        act=teller.act("odile", max(at, poured_at)),
        mould_set=mould_set,
        master=master,
        blocks=blocks,
        generation=row.generation,
        poured_at=poured_at,
    ).casting


def _master(teller: Teller, row: MouldRow, makes: DesignPart, at: datetime) -> Master:
    label = row.master or f"MS-{row.label[1:]}"
    known = Master.objects.filter(studio=teller.studio, label=label).first()
    return known or masters.make(
        act=teller.act("odile", at), label=label, design=makes.design, part=makes, is_ready=True
    )


def _queue_weighings(teller: Teller, row: MouldRow, casting: Casting) -> None:
    weights = [(row.dry_at, row.dry_g, True)]
    if row.now_g is not None:
        weights.append((row.now_at, row.now_g, False))
        labels, again_at = tables.WEIGHED_AGAIN
        if row.label in labels:
            weights.append((again_at, row.now_g, False))
    for wall, mass_g, is_dry in weights:
        at = teller.clock.at(wall)

        def weigh(at: datetime = at, mass_g: float = mass_g, is_dry: bool = is_dry) -> None:
            act = teller.act("nessa", at)
            weighings.weigh(act=act, casting=casting, mass_g=mass_g, is_dry=is_dry)

        teller.then(at, weigh)


def _queue_event(teller: Teller, row: MouldRow, casting: Casting) -> None:
    assert row.kept is not None  # asked before
    kind, wall, reason = row.kept
    at = teller.clock.at(wall)

    def tell() -> None:
        block = MouldPart.objects.filter(casting=casting).order_by("order")[0]
        act = teller.act(row.owner or "odile", at)
        parts.tell(act=act, mould_part=block, kind=kind, reason=reason)

    teller.then(at, tell)
