"""What a load costs each maker, from what was in it and how it came out."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, cast
from uuid import UUID

from firings.domain.bills import NOT_CHARGED, Line, Share, bill
from firings.models import Load, LoadFees, Placement
from studio.models import Member, StudioSettings

from .loads import placements_of
from .refires import times_fired
from .sizes import Measured, Size, Sizes, thing_size


@dataclass(frozen=True, slots=True)
class Item:
    """One placement with its size as the tariff measures it, and the how manieth firing it is."""

    placement: Placement
    payer: Member | None
    size: Size | None
    litres: float
    times: int
    is_charged: bool


@dataclass(frozen=True, slots=True)
class Bill:
    """The fees of a load. `stage` is an estimate until it is unloaded, or nothing to pay."""

    load: Load
    stage: str
    settings: StudioSettings
    per_litre_minor: int | None
    cost_minor: int | None
    items: tuple[Item, ...]
    shares: tuple[Share, ...]
    people: Mapping[UUID, Member]
    recorded: LoadFees | None

    @property
    def total_minor(self) -> int | None:
        amounts = [share.minor for share in self.shares]
        known = [minor for minor in amounts if minor is not None]
        return sum(known) if len(known) == len(amounts) else None


def bill_of(
    load: Load,
    *,
    cost_minor: int | None = None,
    said_l: Mapping[UUID | None, float] | None = None,
) -> Bill:
    """Return what each maker owes for a load. At most nine queries.

    `cost_minor` shares that cost in place of the tariff. Raises `NothingToShare`.
    """
    settings = StudioSettings.objects.get(studio=load.studio_id)
    items = tuple(_items(load, settings.fee_measured))
    tariff = {
        "bisque": settings.bisque_fee_minor_per_l,
        "glaze": settings.glaze_fee_minor_per_l,
    }.get(load.kind)
    stage = _stage(load)
    lines = [
        Line(
            id=item.placement.pk,
            payer=item.payer.pk if item.payer is not None else None,
            litres=item.litres,
            is_charged=item.is_charged,
        )
        for item in items
    ]
    is_due = stage != "nothing"
    return Bill(
        load=load,
        stage=stage,
        settings=settings,
        per_litre_minor=tariff,
        cost_minor=cost_minor,
        items=items,
        shares=bill(lines, said_l=said_l, cost_minor=cost_minor, per_litre_minor=tariff)
        if is_due
        else (),
        people={item.payer.pk: item.payer for item in items if item.payer is not None},
        recorded=recorded(load),
    )


def recorded(load: Load) -> LoadFees | None:
    """Return the last record of a load's fees that stands. One query."""
    rows: Any = LoadFees.objects.filter(load=load).standing().select_related("entry__member")
    return cast("LoadFees | None", rows.order_by("entry__seq").last())


def _items(load: Load, measured: str) -> Iterable[Item]:
    placed = placements_of([load]).get(load.pk, [])
    pieces = [row.piece for row in placed if row.piece is not None]
    sizes, times = Sizes(pieces), times_fired(pieces, load)
    for row in placed:
        size = sizes.of(row.piece, cast("Measured", measured)) if row.piece else thing_size(row)
        litres = round(size.litres * row.count, 2) if size is not None else 0.0
        yield Item(
            placement=row,
            payer=row.piece.maker if row.piece is not None else row.asked_by,
            size=size,
            litres=litres,
            times=times.get(row.piece_id, 1) if row.piece_id is not None else 1,
            is_charged=row.result not in NOT_CHARGED,
        )


def _stage(load: Load) -> str:
    if load.state == Load.State.CALLED_OFF:
        return "nothing"
    if load.state == Load.State.UNLOADED:
        charged = Placement.objects.filter(load=load, removed_at=None).exclude(
            result__in=NOT_CHARGED
        )
        return "due" if charged.exists() else "nothing"
    return "estimate"
