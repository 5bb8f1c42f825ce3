"""Rooms and shelves: making them, and changing what they are called and what they stand in."""

from typing import Any, Final
from uuid import UUID

from django.db import transaction

from studio.actions import journal
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, Place, Studio

CHANGES: Final = frozenset({"name", "kind", "parent", "air_from", "order", "air_m_s"})


class PlaceNameTaken(Conflict):
    code = "place-name-taken"
    title = "There is a place of that name already."


class PlaceInItself(Unworkable):
    code = "place-in-itself"
    title = "A place cannot stand in itself."


class AirFromItself(Unworkable):
    code = "air-from-itself"
    title = "A place cannot take its air from itself."


@transaction.atomic
def create(*, act: Act, **fields: Any) -> Place:
    """Make a place by an act of its own. Raises what `make` raises."""
    place = make(studio=act.studio, place_id=act.id, **fields)
    journal.write(act=act, verb="made_place", subjects=[("place", place.pk)], facts=_facts(place))
    return place


def make(
    *,
    studio: Studio,
    place_id: UUID,
    name: str,
    kind: str,
    parent: Place | None = None,
    air_from: Place | None = None,
    order: int = 0,
    air_m_s: float | None = None,
) -> Place:
    """Make a place as part of a greater act, which the caller journals. Raises `PlaceNameTaken`."""
    _check_name(studio, name, place_id)
    return Place.objects.create(
        id=place_id,
        studio=studio,
        name=name,
        kind=kind,
        parent=parent,
        air_from=air_from,
        order=order,
        air_m_s=air_m_s,
    )


@transaction.atomic
def change(*, act: Act, place: Place, changes: dict[str, Any]) -> Place:
    """Change what a place is called, is, stands in or takes its air from.

    Raises `PlaceNameTaken`, `PlaceInItself` and `AirFromItself`.
    """
    # One writer of the tree at a time, else two moves at once could close a circle.
    list(Place.objects.of(act.studio).select_for_update().values_list("pk"))
    for name in CHANGES & changes.keys():
        setattr(place, name, changes[name])
    _check_name(act.studio, place.name, place.pk)
    if place.pk in _above(place.parent, "parent_id"):
        raise PlaceInItself(f"{place.name} cannot stand in something that stands in it.")
    if place.pk in _above(place.air_from, "air_from_id"):
        raise AirFromItself(f"Where {place.name} would take its air from takes it from here.")
    place.save()
    facts = {"changed": sorted(CHANGES & changes.keys()), **_facts(place)}
    journal.write(act=act, verb="changed_place", subjects=[("place", place.pk)], facts=facts)
    return place


def _above(place: Place | None, link: str) -> set[UUID]:
    """Return the places reached from `place` by following the link, itself included."""
    if place is None:
        return set()
    links = dict(Place.objects.filter(studio_id=place.studio_id).values_list("pk", link))
    seen: set[UUID] = set()
    step: UUID | None = place.pk
    while step is not None and step not in seen:
        seen.add(step)
        step = links.get(step)
    return seen


def _check_name(studio: Studio, name: str, place_id: UUID) -> None:
    if Place.objects.of(studio).filter(name__iexact=name).exclude(pk=place_id).exists():
        raise PlaceNameTaken(f"Another place is called {name}.", name=name)


def _facts(place: Place) -> dict[str, object]:
    return {
        "kind": place.kind,
        "parent": place.parent_id,
        "air_from": place.air_from_id,
        "order": place.order,
        "air_m_s": place.air_m_s,
    }
