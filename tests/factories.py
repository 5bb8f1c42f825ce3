"""One function per model: the smallest valid row, every column open to a keyword."""

from collections.abc import Iterable
from datetime import UTC, datetime, timedelta
from itertools import count
from typing import Any
from uuid import UUID

from django.contrib.auth import get_user_model
from rest_framework.response import Response
from rest_framework.test import APIClient

from firings.models import Kiln, Load, Placement, Programme
from moulds.models import Casting, Design, DesignPart, Master, MouldPart, MouldSet
from pieces.models import Part, Piece
from studio.actions import devices, journal, studios
from studio.actions.people import Person, enter
from studio.domain.finding import folded
from studio.domain.ids import uuid7
from studio.models import (
    Act,
    ClayBody,
    ColourBatch,
    Device,
    GlazeBatch,
    JournalEntry,
    Member,
    Place,
    SlabBlock,
    Studio,
)
from studio.permissions import Role

NOW = datetime(2026, 10, 31, 9, 0, tzinfo=UTC)
PASSWORD = "clay under the nails"
NO_ID = UUID(int=0)

_numbers = count(1)


def base36(number: int) -> str:
    figures = ""
    while number:
        number, figure = divmod(number, 36)
        figures = "0123456789abcdefghijklmnopqrstuvwxyz"[figure] + figures
    return figures


def user(username: str | None = None) -> Any:
    name = username or f"person-{next(_numbers)}"
    return get_user_model().objects.create_user(username=name, password=PASSWORD)


def person(first_name: str = "Maud", **fields: Any) -> Person:
    # Three figures of base 36 beside the letter: enough for a long run of tests.
    initials = fields.pop("initials", first_name[0] + base36(next(_numbers) % 36**3))
    account = fields.pop("user", None) or user(f"{first_name.lower()}-{next(_numbers)}")
    return Person(
        user=account,
        first_name=first_name,
        full_name=fields.pop("full_name", f"{first_name} Quarry"),
        initials=initials,
        **fields,
    )


def studio(
    slug: str = "yard", *, zone: str = "Europe/London", owner: Person | None = None
) -> Studio:
    return studios.found(
        slug=slug, name=slug.title(), zone=zone, owner=owner or person("Founder"), at=NOW
    )


def member(
    studio: Studio, roles: Iterable[Role] = (Role.MAKER,), first_name: str = "Maud", **fields: Any
) -> Member:
    made = enter(studio=studio, person=person(first_name), roles=roles)
    for name, value in fields.items():
        setattr(made, name, value)
    made.save()
    return made


def device(member: Member, **fields: Any) -> Device:
    given = {"name": "phone", "added_at": NOW, "member": member, **fields}
    return Device.objects.create(studio=member.studio, **given)


def act(member: Member, at: datetime = NOW, **fields: Any) -> Act:
    """Return the envelope of something the member did at `at`, heard twenty seconds later."""
    given: dict[str, Any] = {
        "id": uuid7(),
        "studio": member.studio,
        "member": member,
        "happened_at": at,
        "written_at": at + timedelta(seconds=20),
        **fields,
    }
    given.setdefault("device", devices.browser_of(member=member, at=given["written_at"]))
    return Act(**given)


def entry(
    member: Member, at: datetime = NOW, *, verb: str = "noted", **fields: Any
) -> JournalEntry:
    subjects = fields.pop("subjects", [("member", member.pk)])
    facts = fields.pop("facts", {})
    return journal.write(act=act(member, at, **fields), verb=verb, subjects=subjects, facts=facts)


def sent(
    client: APIClient, path: str, body: dict[str, Any] | None = None, **headers: str
) -> Response:
    """POST an act: the id and the time are added where the body says none."""
    full = {"id": str(uuid7()), "happened_at": NOW.isoformat(), **(body or {})}
    answer: Response = client.post(path, full, format="json", headers=headers or None)
    return answer


def place(studio: Studio, name: str | None = None, kind: str = "room", **fields: Any) -> Place:
    name = name or f"Room {next(_numbers)}"
    return Place.objects.create(studio=studio, name=name, kind=kind, **fields)


def clay_body(studio: Studio, code: str | None = None, **fields: Any) -> ClayBody:
    code = code or f"B{next(_numbers)}"
    given = {"name": "cream, base", "drying_body": "smooth_stoneware", **fields}
    return ClayBody.objects.create(studio=studio, code=code, **given)


def colour_batch(studio: Studio, label: str | None = None, **fields: Any) -> ColourBatch:
    fields.setdefault("body", None)
    body = fields.pop("body") or clay_body(studio)
    label = label or f"CB-{next(_numbers)}"
    return ColourBatch.objects.create(studio=studio, label=label, body=body, **fields)


def glaze_batch(studio: Studio, label: str = "GB-01", **fields: Any) -> GlazeBatch:
    return GlazeBatch.objects.create(
        studio=studio, label=label, name=fields.pop("name", "clear"), **fields
    )


def slab_block(studio: Studio, label: str | None = None, **fields: Any) -> SlabBlock:
    label = label or f"BK-{next(_numbers)}"
    return SlabBlock.objects.create(studio=studio, label=label, **fields)


def design(studio: Studio, name: str | None = None, **fields: Any) -> Design:
    """Return a design without parts; see `design_part`."""
    given = {"name": name or f"tile {next(_numbers)}", "noun": "tile", "series": "T", **fields}
    return Design.objects.create(studio=studio, **given)


def design_part(design: Design, role: str = "tile", **fields: Any) -> DesignPart:
    given = {"thickest_mm": 10.0, "thinnest_mm": 8.0, **fields}
    return DesignPart.objects.create(studio=design.studio, design=design, role=role, **given)


def master(design: Design, label: str | None = None, **fields: Any) -> Master:
    label = label or f"MS-{next(_numbers)}"
    given = {"is_ready": True, **fields}
    return Master.objects.create(studio=design.studio, design=design, label=label, **given)


def mould_set(makes: DesignPart, label: str | None = None, **fields: Any) -> MouldSet:
    label = label or f"M{next(_numbers)}"
    return MouldSet.objects.create(studio=makes.studio, makes=makes, label=label, **fields)


def casting(mould_set: MouldSet, master: Master | None = None, **fields: Any) -> Casting:
    """Return a casting without parts; see `mould_part`."""
    from_master = master or globals()["master"](mould_set.makes.design)
    given = {"generation": 1, **fields}
    return Casting.objects.create(
        studio=mould_set.studio, mould_set=mould_set, master=from_master, **given
    )


def mould_part(casting: Casting, name: str = "front", **fields: Any) -> MouldPart:
    return MouldPart.objects.create(studio=casting.studio, casting=casting, name=name, **fields)


def piece(design: Design, maker: Member | None = None, **fields: Any) -> Piece:
    """Return a piece without parts; see `part`."""
    mark = fields.pop("mark", f"T{next(_numbers)}")
    given = {"begun_at": NOW, "since_at": NOW, "touched_at": NOW, **fields}
    return Piece.objects.create(
        studio=design.studio,
        design=design,
        maker=maker,
        mark=mark,
        mark_key=mark.casefold(),
        find_key=folded(mark),
        **given,
    )


def part(piece: Piece, design_part: DesignPart | None = None, **fields: Any) -> Part:
    made_as = design_part or piece.design.parts.first() or globals()["design_part"](piece.design)
    given = {"role": made_as.role, **fields}
    return Part.objects.create(studio=piece.studio, piece=piece, design_part=made_as, **given)


def kiln(studio: Studio, number: str | None = None, **fields: Any) -> Kiln:
    """Return a kiln without furniture."""
    number = number or f"K{next(_numbers)}"
    given = {"name": "Ox", "kind": "front", "chamber": "rect", "height_mm": 800.0, **fields}
    given = {"width_mm": 600.0, "depth_mm": 600.0, "top_c": 1280.0, **given}
    given.setdefault("place", place(studio, f"{number} kiln", "kiln"))
    return Kiln.objects.create(studio=studio, number=number, **given)


def programme(studio: Studio, name: str | None = None, **fields: Any) -> Programme:
    """Return a programme without segments."""
    given = {"kind": "bisque", "cone": "04", "top_c": 1060.0, **fields}
    name = name or f"slow {next(_numbers)}"
    return Programme.objects.create(studio=studio, name=name, **given)


def load(kiln: Kiln, number: str | None = None, **fields: Any) -> Load:
    """Return an open load of the next day."""
    starts_at = fields.pop("starts_at", NOW + timedelta(days=1))
    given = {"kind": "bisque", "cone": "04", "made_at": NOW, **fields}
    given.setdefault("cutoff_at", starts_at - timedelta(hours=2))
    number = number or f"F-{next(_numbers)}"
    return Load.objects.create(
        studio=kiln.studio, kiln=kiln, number=number, starts_at=starts_at, **given
    )


def placement(load: Load, asked_by: Member, **fields: Any) -> Placement:
    """Return test bars in a load."""
    given = {"what": "test bars", "count": 3, "act_id": uuid7(), "placed_at": NOW, **fields}
    return Placement.objects.create(studio=load.studio, load=load, asked_by=asked_by, **given)
