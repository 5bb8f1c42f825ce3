"""The demo's ground: studio, people, places, clays, opening hours."""

from __future__ import annotations

from datetime import datetime, time

from django.contrib.auth import get_user_model
from django.contrib.auth.models import User

from studio.actions import materials, members, people, places, studios
from studio.actions import settings as studio_settings
from studio.models import (
    ClayBody,
    ColourBatch,
    Device,
    GlazeBatch,
    Member,
    Place,
    SlabBlock,
    Studio,
)
from studio.permissions import Role

from . import tables
from .tables import PersonRow
from .teller import Clock, Teller


def lay(*, clock: Clock, password: str, slug: str) -> Teller:
    """Found Sallowbeck Yard with its people and places, and return the teller of its story."""
    at = clock.at(tables.FOUNDED)
    first, *others = tables.PEOPLE
    studio = studios.found(
        slug=slug, name=tables.NAME, zone=tables.ZONE, owner=_person(first, password), at=at
    )
    owner = Member.objects.of(studio).get(user__username=first.username)
    cast = {first.username: owner}
    for row in others:
        cast[row.username] = people.enter(
            studio=studio, person=_person(row, password), roles=[Role(r) for r in row.roles]
        )
    teller = Teller(studio, clock, cast, _phones(studio, cast, at))
    for row in tables.PEOPLE:
        _settle(teller, row, at)
    _make_places(teller, at)
    _make_clays(teller, at)
    _open(teller, at)
    return teller


def _person(row: PersonRow, password: str) -> people.Person:
    user: User = get_user_model().objects.filter(username=row.username).first() or (
        get_user_model().objects.create_user(row.username, password=password)
    )
    return people.Person(
        user=user,
        first_name=row.first_name,
        full_name=row.full_name,
        initials=row.initials,
        email=f"{row.username}@sallowbeck.example",
    )


def _phones(studio: Studio, cast: dict[str, Member], at: datetime) -> dict[str, Device]:
    return {
        name: Device.objects.create(
            studio=studio, member=member, name=f"{member.first_name}’s phone", added_at=at
        )
        for name, member in cast.items()
    }


def _settle(teller: Teller, row: PersonRow, at: datetime) -> None:
    member = teller.members[row.username]
    if row.helps:
        helps = [teller.members[name] for name in row.helps]
        members.change(act=teller.act("odile", at), member=member, helps=helps)
    if row.choices:
        members.prefer(members=[member], choices=dict(row.choices))


def _make_places(teller: Teller, at: datetime) -> None:
    for order, row in enumerate(tables.PLACES):
        teller.places[row.name] = places.create(
            act=teller.act("odile", at),
            name=row.name,
            kind=Place.Kind(row.kind),
            parent=teller.places.get(row.parent),
            air_from=teller.places.get(row.air_from),
            order=order,
        )


def _make_clays(teller: Teller, at: datetime) -> None:
    bodies: dict[str, ClayBody] = {}
    for code, name, dry, total, caution in tables.BODIES:
        fields = {
            "code": code,
            "name": name,
            "drying_body": tables.DRYING_BODY,
            "dry_shrinkage_fraction": dry,
            "total_shrinkage_fraction": total,
            "caution": caution,
        }
        bodies[code] = materials.create(act=teller.act("odile", at), model=ClayBody, fields=fields)
    for label, code, stain_g, clay_g, mixed_on in tables.BATCHES:
        fields = {
            "label": label,
            "body": bodies[code],
            "stain_g": stain_g,
            "clay_g": clay_g,
            "mixed_on": teller.clock.day(mixed_on),
            "caution": bodies[code].caution,
        }
        materials.create(act=teller.act("odile", at), model=ColourBatch, fields=fields)
    _make_glazes(teller)
    for label, laid_on, codes in tables.BLOCKS:
        laid_at = teller.clock.at(f"{laid_on} 09:00")
        fields = {
            "label": label,
            "laid_on": teller.clock.day(laid_on),
            "bodies": [bodies[code] for code in codes],
        }
        materials.create(act=teller.act("odile", laid_at), model=SlabBlock, fields=fields)


def _make_glazes(teller: Teller) -> None:
    for label, name, mixed_on, by, density_g_per_l, cone, caution in tables.GLAZES:
        fields = {
            "label": label,
            "name": name,
            "mixed_on": teller.clock.day(mixed_on),
            "mixed_by": teller.members[by],
            "density_g_per_l": density_g_per_l,
            "cone": cone,
            "caution": caution,
        }
        act = teller.act(by, teller.clock.at(f"{mixed_on} 15:00"))
        materials.create(act=act, model=GlazeBatch, fields=fields)


def _open(teller: Teller, at: datetime) -> None:
    weekly = [
        {"weekday": day, "opens": time.fromisoformat(opens), "closes": time.fromisoformat(closes)}
        for day, opens, closes in tables.OPENING
    ]
    held = studio_settings.locked(teller.studio)
    held = studio_settings.change(act=teller.act("odile", at), held=held, changes=tables.TARIFF)
    studio_settings.open_at(act=teller.act("odile", at), held=held, weekly=weekly, closed_days=None)
