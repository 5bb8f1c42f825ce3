"""Making and editing designs: the form of a piece before any piece exists."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import asdict, dataclass
from typing import Any
from uuid import UUID

from django.db import transaction

from moulds.domain.cautions import Caution, wall_over_limit
from moulds.domain.sections import Section, check_section
from moulds.models import Design, DesignPart
from studio.actions import journal
from studio.domain.ids import uuid7
from studio.domain.refusals import Conflict, Missing, Unworkable
from studio.models import Act, ClayBody

EDITABLE = (
    "name",
    "noun",
    "body",
    "uses_moulds",
    "footprint_x_mm",
    "footprint_y_mm",
    "height_mm",
    "is_round",
    "inside_depth_mm",
    "capacity_ml",
    "contact",
)
SIZES = ("footprint_x_mm", "footprint_y_mm", "height_mm", "inside_depth_mm", "capacity_ml")


class DesignTaken(Conflict):
    code = "design-taken"
    title = "There is a design of that name."


class RoleTwice(Unworkable):
    code = "role-twice"
    title = "Each part of a design has a role of its own."


class NoSuchPart(Missing):
    code = "no-such-design-part"
    title = "The design has no such part."


@dataclass(frozen=True, slots=True)
class PartGiven:
    """One clay part as somebody describes it; `id` names an existing part when editing."""

    role: str
    thickest_mm: float
    thinnest_mm: float
    shape: str = DesignPart.Shape.FLAT
    method: str = DesignPart.Method.PRESSED
    count: int = 1
    is_required: bool = True
    footprint_x_mm: float | None = None
    footprint_y_mm: float | None = None
    height_mm: float | None = None
    clay_g: float | None = None
    id: UUID | None = None


@transaction.atomic
def make(
    *,
    act: Act,
    name: str,
    noun: str,
    series: str,
    parts: Sequence[PartGiven],
    body: ClayBody | None = None,
    uses_moulds: bool = True,
    sizes: Mapping[str, float | None] | None = None,
    is_round: bool = False,
    contact: str = Design.Contact.TABLE,
    confirmed: Collection[str] = (),
) -> Design:
    """Make a design with its parts.

    `sizes` holds `footprint_x_mm`, `footprint_y_mm` and `height_mm` as pressed, `inside_depth_mm`
    and `capacity_ml` as finished; `confirmed`, the JSON pointers of walls that are meant, however
    thick. Raises `DesignTaken`, `RoleTwice` and `NoSuchSection`.
    """
    _check_parts(parts, confirmed=confirmed)
    _check_name(act, name)
    journal.write(
        act=act,
        verb="made_design",
        subjects=[("design", act.id)],
        facts={"confirmed": sorted(confirmed)} if confirmed else {},
    )
    design = Design.objects.create(
        id=act.id,
        studio=act.studio,
        name=name,
        noun=noun,
        series=series,
        body=body,
        uses_moulds=uses_moulds,
        is_round=is_round,
        contact=contact,
        **(sizes or {}),
    )
    for order, part in enumerate(parts):
        _add(design, part, order)
    return design


@transaction.atomic
def edit(
    *,
    act: Act,
    design: Design,
    changes: Mapping[str, Any],
    parts: Sequence[PartGiven] = (),
    confirmed: Collection[str] = (),
) -> Design:
    """Change a design; parts with an id are changed, those without are added, none is taken away.

    Raises `DesignTaken`, `RoleTwice`, `NoSuchPart` and `NoSuchSection`.
    """
    design = Design.objects.select_for_update().get(pk=design.pk)
    existing = {part.pk: part for part in design.parts.all()}
    _check_parts(parts, kept=existing, confirmed=confirmed)
    if changes.get("name", design.name) != design.name:
        _check_name(act, changes["name"])
    journal.write(
        act=act,
        verb="changed_design",
        subjects=[("design", design.pk)],
        facts={
            "changed": sorted([*changes, *(["parts"] if parts else [])]),
            **({"confirmed": sorted(confirmed)} if confirmed else {}),
        },
    )
    for name in EDITABLE:
        if name in changes:
            setattr(design, name, changes[name])
    design.revision += 1
    design.save()
    for order, part in enumerate(parts, start=len(existing)):
        if part.id in existing:
            _change(existing[part.id], part)
        else:
            _add(design, part, order)
    return design


def cautions(design: Design) -> list[Caution]:
    """Return the warnings about a design: walls above the studio's limit."""
    limit_mm = design.studio.settings.wall_limit_mm
    return [
        wall_over_limit(part.role, part.thickest_mm, limit_mm)
        for part in design.parts.order_by("order", "role")
        if part.thickest_mm > limit_mm
    ]


def _add(design: Design, part: PartGiven, order: int) -> None:
    fields = asdict(part)
    fields["id"] = part.id or uuid7()
    DesignPart.objects.create(studio=design.studio, design=design, order=order, **fields)


def _change(row: DesignPart, part: PartGiven) -> None:
    for name, value in asdict(part).items():
        if name != "id":
            setattr(row, name, value)
    row.save()


def _check_name(act: Act, name: str) -> None:
    if Design.objects.of(act.studio).filter(name=name).exists():
        raise DesignTaken(f"{name} is there already.", name=name)


def _check_parts(
    parts: Sequence[PartGiven],
    kept: Mapping[UUID, DesignPart] | None = None,
    confirmed: Collection[str] = (),
) -> None:
    given = {part.id for part in parts}
    if kept is not None:
        unknown = given - {None} - set(kept)
        if unknown:
            raise NoSuchPart("Read the design again.", parts=sorted(map(str, unknown)))
    roles = [part.role for part in parts]
    roles += [row.role for pk, row in (kept or {}).items() if pk not in given]
    if len(set(roles)) < len(roles):
        twice = sorted({role for role in roles if roles.count(role) > 1})
        raise RoleTwice(f"Twice here: {', '.join(twice)}.", roles=twice)
    for place, part in enumerate(parts):
        section = Section(part.role, part.thickest_mm, part.thinnest_mm)
        check_section(section, pointer=f"#/parts/{place}", confirmed=confirmed)
