"""Kilns and their furniture: making and editing them, taking them out of use and back."""

from collections.abc import Mapping, Sequence
from typing import Any, Final
from uuid import UUID, uuid5

from django.db import transaction

from firings.models import Kiln, KilnEvent, Load, Post, Shelf
from firings.queries.loads import BUSY, COMING
from studio.actions import journal, places
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, Place

from . import folds

EDITABLE: Final[tuple[str, ...]] = (
    "number",
    "name",
    "kind",
    "chamber",
    "width_mm",
    "depth_mm",
    "diameter_mm",
    "height_mm",
    "top_c",
    "elements_changed_on",
    "firings_before",
    "hot_hours_before",
    "sensor_firings_before",
    "cooling_k_per_h",
    "remarks",
)
LENGTHS: Final = {"rect": ("width_mm", "depth_mm"), "round": ("diameter_mm",)}


class KilnTaken(Conflict):
    code = "kiln-taken"
    title = "There is a kiln of that number."


class NotAKilnPlace(Unworkable):
    code = "not-a-kiln-place"
    title = "That place is no kiln's."


class SizeWanted(Unworkable):
    code = "size-wanted"
    title = "Say how big it is inside."


@transaction.atomic
def make(
    *,
    act: Act,
    fields: Mapping[str, Any],
    shelves: Sequence[Mapping[str, Any]] = (),
    posts: Sequence[Mapping[str, Any]] = (),
    place: Place | None = None,
    parent: Place | None = None,
) -> Kiln:
    """Make a kiln, with a place of its own where none is given.

    Raises `KilnTaken`, `NotAKilnPlace`, `SizeWanted` and `PlaceNameTaken`.
    """
    journal.write(act=act, verb="made_kiln", subjects=[("kiln", act.id)])
    _check_number(act, str(fields["number"]), None)
    if place is None:
        name = f"{fields['number']} {fields['name']}"
        place = places.make(
            studio=act.studio,
            place_id=uuid5(act.id, "place"),
            name=name,
            kind=Place.Kind.KILN,
            parent=parent,
        )
    elif place.kind != Place.Kind.KILN or Kiln.objects.filter(place=place).exists():
        raise NotAKilnPlace("Give a place of the kind kiln that no other kiln has.")
    kiln = Kiln(id=act.id, studio=act.studio, place=place, **fields)
    _check_size(kiln.chamber, kiln, "")
    kiln.save(force_insert=True)
    _furnish(act, kiln, shelves, posts)
    return kiln


@transaction.atomic
def edit(
    *,
    act: Act,
    kiln: Kiln,
    changes: Mapping[str, Any],
    shelves: Sequence[Mapping[str, Any]] | None = None,
    posts: Sequence[Mapping[str, Any]] | None = None,
) -> Kiln:
    """Change a kiln; its shelves or posts, where given, stand for all it had.

    Raises `KilnTaken` and `SizeWanted`.
    """
    given = {"shelves": shelves, "posts": posts}
    furniture = [name for name, rows in given.items() if rows is not None]
    journal.write(
        act=act,
        verb="changed_kiln",
        subjects=[("kiln", kiln.pk)],
        facts={"changed": sorted([*changes, *furniture])},
    )
    kiln = Kiln.objects.select_for_update().get(pk=kiln.pk)
    if "number" in changes:
        _check_number(act, str(changes["number"]), kiln.pk)
    for name in EDITABLE:
        if name in changes:
            setattr(kiln, name, changes[name])
    _check_size(kiln.chamber, kiln, "")
    kiln.revision += 1
    kiln.save()
    if shelves is not None:
        kiln.shelves.all().delete()
    if posts is not None:
        kiln.posts.all().delete()
    _furnish(act, kiln, shelves or (), posts or ())
    return kiln


@transaction.atomic
def tell(*, act: Act, kiln: Kiln, kind: str, reason: str) -> list[Load]:
    """Take a kiln out of use or back into it; return the loads that want another kiln.

    Nothing that goes on in it is stopped, and whatever happens can still be written. Raises
    `ReasonWanted` as the events of loads do.
    """
    journal.write(
        act=act,
        verb="kiln_out_of_use" if kind == KilnEvent.Kind.OUT_OF_USE else "kiln_in_use",
        subjects=[("kiln", kiln.pk)],
        facts={"kiln": kiln.number, "reason": reason},
    )
    KilnEvent.objects.create(
        id=act.id,
        studio=act.studio,
        entry_id=act.id,
        happened_at=act.happened_at,
        kiln=kiln,
        kind=kind,
        reason=reason,
    )
    folds.refold_kiln(kiln)
    affected = Load.objects.filter(kiln=kiln, state__in=(*COMING, *BUSY[:1]))
    return list(affected.order_by("starts_at", "id"))


def _check_number(act: Act, number: str, own: UUID | None) -> None:
    same = Kiln.objects.of(act.studio).filter(number__iexact=number)
    if {row.pk for row in same} - {own}:
        raise KilnTaken(f"{number} is there already.", number=number)


def _check_size(shape: str, row: Kiln | Shelf, pointer: str) -> None:
    missing = [name for name in LENGTHS[shape] if getattr(row, name) is None]
    if missing:
        words = " and ".join(name.removesuffix("_mm") for name in missing)
        raise SizeWanted(
            f"A {'round' if shape == 'round' else 'square'} one needs its {words}.",
            errors=[
                {"pointer": f"#{pointer}/{name}", "code": "required", "detail": "Say this too."}
                for name in missing
            ],
        )


def _furnish(
    act: Act,
    kiln: Kiln,
    shelves: Sequence[Mapping[str, Any]],
    posts: Sequence[Mapping[str, Any]],
) -> None:
    for number, row in enumerate(shelves):
        shelf = Shelf(id=uuid5(act.id, f"shelf {number}"), studio=act.studio, kiln=kiln, **row)
        _check_size(shelf.shape, shelf, f"/shelves/{number}")
        shelf.save(force_insert=True)
    Post.objects.bulk_create(
        Post(id=uuid5(act.id, f"post {number}"), studio=act.studio, kiln=kiln, **row)
        for number, row in enumerate(posts)
    )
