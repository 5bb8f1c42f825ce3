"""A studio with one of everything, and the API's document with the ids of those things in it."""

from collections.abc import Mapping
from copy import deepcopy
from datetime import timedelta
from typing import Any

from moulds.actions import bookings
from moulds.models import MouldPart
from pieces.actions import forecasts, planning
from pieces.models import Clash, Part
from studio.actions import climate, devices, invitations, runs, tokens
from studio.actions.reminders import About, set_for
from studio.domain.climate import Reading
from studio.domain.ids import uuid7
from studio.models import Away, Member, Studio, TestBar
from studio.permissions import Role, grants_of
from tests import factories, pictures
from tests.factories import NOW, act
from tests.pieces import kit as kits

Ids = Mapping[str, list[str]]

MOMENTS = [(NOW - timedelta(hours=hours)).isoformat() for hours in (0, 1, 12, 60)]
# Names in bodies that hold ids of something with another name.
ALIKE = {
    "air_from_id": "place_id",
    "batch_ids": "batch_id",
    "body_ids": "body_id",
    "buddy_id": "member_id",
    "helps": "member_id",
    "ids": "piece_id",
    "except_ids": "piece_id",
    "maker_id": "member_id",
    "mixed_by_id": "member_id",
    "mould_part_ids": "mould_part_id",
    "owner_id": "member_id",
    "parent_id": "place_id",
    "photo_ids": "photo_id",
    "replacement_id": "part_id",
    "replaces_id": "part_id",
    "said_by_id": "member_id",
    "corrects": "act_id",
}
# `part_id` and `row_id` of an address mean what the address is about.
ABOUT = {
    "mould-parts": "mould_part_id",
    "test-bars": "bar_id",
    "colour-batches": "batch_id",
    "glaze-batches": "glaze_batch_id",
    "slab-blocks": "slab_block_id",
    "clay-bodies": "body_id",
}


def crowd(studio: Studio, owner: Member) -> dict[str, list[str]]:
    """Fill the studio; return ids by the names they have in addresses and bodies."""
    maker = factories.member(studio, [Role.MAKER], "Maud")
    room, rack = factories.place(studio), factories.place(studio, kind="rack")
    its = kits.kit(studio)
    read = act(owner)
    told = climate.record(act=read, place=room, readings=[Reading(NOW, 61.2, 0.6)])
    given = kits.given(its.tile, "T01")
    pressed = act(owner, NOW - timedelta(hours=16))
    tile = kits.press(pressed, its.tile_mould, "tile", given, place=room).pieces[0]
    boat = kits.pressed_boat(its, maker)
    same = planning.plan(act=act(owner), pieces=[kits.given(its.tile, "t01")]).pieces[0]
    forecasts.refresh(studio=studio, at=NOW)
    body = factories.clay_body(studio)
    bar = TestBar.objects.create(
        studio=studio, body=body, made_by=owner, measured_at=NOW, wet_mm=100.0
    )
    mould_set = its.tile_mould.casting.mould_set
    week = timedelta(days=7)
    booking = bookings.book(
        act=act(maker), mould_set=mould_set, from_at=NOW + week, until_at=NOW + 2 * week
    )
    away = Away.objects.create(
        studio=studio, member=maker, from_date=NOW.date(), until_date=NOW.date()
    )
    about = About("window", "C", "piece", tile.pk, tile.mark, title="T01 is worth a look.")
    reminder = set_for(studio=studio, person=owner, about=about, due_at=NOW, at=NOW)
    assert reminder is not None
    asked = runs.ask(studio=studio, task="nothing", inputs={}, asked_by=owner, at=NOW)
    invitation, token = invitations.invite(
        act=act(owner), email="", roles=[Role.MAKER], valid_for=timedelta(days=7)
    )
    held = grants_of([Role.OWNER])
    key, _ = tokens.make(act=act(owner), name="script", grants=list(held)[:2], held=held)
    phone, _ = devices.share(act=act(owner), name="Shed phone")
    found: dict[str, list[Any]] = {
        "slug": [studio.slug],
        "place_id": [room.pk, rack.pk],
        "piece_id": [tile.pk, boat.pk, same.pk],
        "part_id": list(Part.objects.filter(piece__in=[tile, boat]).values_list("pk", flat=True)),
        "mould_part_id": list(MouldPart.objects.values_list("pk", flat=True)),
        "set_id": [mould_set.pk, its.handle_mould.casting.mould_set_id],
        "casting_id": [its.tile_mould.casting.pk, its.handle_mould.casting.pk],
        "design_id": [its.tile.pk, its.boat.pk],
        "makes_id": list(its.boat.parts.values_list("pk", flat=True)),
        "master_id": [its.tile_mould.casting.master_id],
        "booking_id": [booking.pk],
        "member_id": [owner.pk, maker.pk],
        "device_id": [phone.pk, devices.browser_of(member=owner, at=NOW).pk],
        "away_id": [away.pk],
        "reminder_id": [reminder.pk],
        "reading_id": [row.pk for row in told.rows],
        "run_id": [asked.pk],
        "clash_id": list(Clash.objects.values_list("pk", flat=True)),
        "invitation_id": [invitation.pk],
        "token": [token],
        "token_id": [key.pk],
        "body_id": [body.pk],
        "bar_id": [bar.pk],
        "batch_id": [factories.colour_batch(studio).pk],
        "glaze_batch_id": [factories.glaze_batch(studio).pk],
        "slab_block_id": [factories.slab_block(studio).pk],
        "photo_id": [pictures.kept_photo(act(owner)).pk],
        "act_id": [pressed.id, read.id],
    }
    return {name: [str(value) for value in values] for name, values in found.items()}


def with_ids(document: Mapping[str, Any], ids: Ids) -> dict[str, Any]:
    """Return the document in which whatever is asked for by its id is one of `ids`."""
    filled = deepcopy(dict(document))
    for path, operations in filled["paths"].items():
        for operation in operations.values():
            for parameter in operation.get("parameters", []):
                name = _meant(path, parameter["name"])
                if parameter["in"] == "path" and name in ids:
                    parameter["schema"] = {"type": "string", "enum": ids[name]}
    for title, component in filled["components"]["schemas"].items():
        if title.endswith("Request"):
            properties = component.get("properties", {})
            for name in properties:
                properties[name] = _filled(name, properties[name], ids)
    return filled


def _meant(path: str, name: str) -> str:
    if name not in ("part_id", "row_id"):
        return name
    return next((meant for word, meant in ABOUT.items() if f"/{word}/{{{name}}}" in path), name)


def _filled(name: str, wanted: dict[str, Any], ids: Ids) -> dict[str, Any]:
    known = ids.get(ALIKE.get(name, name))
    if wanted.get("format") == "date-time" or "date-time" in str(wanted.get("anyOf")):
        return {"type": "string", "enum": MOMENTS}
    if known is None or name == "id":
        return wanted
    if wanted.get("type") == "array":
        return {**wanted, "items": {"type": "string", "enum": known}}
    is_nullable = "null" in wanted.get("type", [])
    return {"enum": [*known, str(uuid7()), *([None] if is_nullable else [])]}
