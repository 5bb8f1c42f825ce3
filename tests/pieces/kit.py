"""A tile in one mould and a sauce boat in two: what the tests of pieces stand on."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from moulds.models import Casting, Design, MouldPart
from pieces.actions import pressing
from pieces.actions.pressing import Pressed
from pieces.actions.shapes import PartGiven, PieceGiven
from pieces.models import Part, Piece
from studio.domain.ids import uuid7
from studio.models import Act, Member, Studio
from tests import factories
from tests.factories import NOW


@dataclass(frozen=True)
class Mould:
    """A casting in use and its parts."""

    casting: Casting
    parts: list[MouldPart]


@dataclass(frozen=True)
class Kit:
    """Two designs with their moulds."""

    studio: Studio
    tile: Design
    tile_mould: Mould
    boat: Design
    body_mould: Mould
    handle_mould: Mould


def kit(studio: Studio) -> Kit:
    body = factories.clay_body(studio)
    tile = factories.design(studio, "barley tile", series="T", body=body)
    boat = factories.design(studio, "sauce boat", noun="boat", series="S", body=body)
    return Kit(
        studio=studio,
        tile=tile,
        tile_mould=_mould(tile, "tile", "M01", clay_g=560.0),
        boat=boat,
        body_mould=_mould(boat, "body", "M03", clay_g=720.0),
        handle_mould=_mould(boat, "handle", "M04", clay_g=70.0, order=1),
    )


def _mould(design: Design, role: str, label: str, **fields: Any) -> Mould:
    part = factories.design_part(design, role, **fields)
    master = factories.master(design, f"MS-{label}", part=part)
    casting = factories.casting(factories.mould_set(part, label), master)
    names = ("front", "back")
    return Mould(casting, [factories.mould_part(casting, name) for name in names])


def given(design: Design, mark: str | None = None, **fields: Any) -> PieceGiven:
    return PieceGiven(uuid7(), design, mark=mark, **fields)


def press(
    act: Act,
    mould: Mould,
    role: str,
    *pieces: PieceGiven,
    replaces: Part | None = None,
    **more: Any,
) -> Pressed:
    """Press one part for each piece."""
    parts = [
        PartGiven(uuid7(), role, piece, replaces=replaces.pk if replaces else None)
        for piece in pieces
    ]
    return pressing.press(
        act=act, casting=mould.casting, mould_parts=mould.parts, parts=parts, **more
    )


def pressed_tile(
    its: Kit, maker: Member, *, at: datetime = NOW - timedelta(hours=16), mark: str | None = None
) -> Piece:
    act = factories.act(maker, at)
    return press(act, its.tile_mould, "tile", given(its.tile, mark)).pieces[0]


def pressed_boat(its: Kit, maker: Member, *, at: datetime = NOW - timedelta(hours=40)) -> Piece:
    """Return a boat whose body and handle are both in their moulds."""
    boat = given(its.boat)
    press(factories.act(maker, at), its.body_mould, "body", boat)
    later = at + timedelta(hours=1)
    return press(factories.act(maker, later), its.handle_mould, "handle", boat).pieces[0]


def again(piece: Piece) -> Piece:
    return Piece.objects.get(pk=piece.pk)


def part_of(piece: Piece, role: str, number: int = 1) -> Part:
    return Part.objects.select_related("piece__design").get(piece=piece, role=role, number=number)


def spot(piece: Piece) -> tuple[str, str]:
    row = again(piece)
    return row.stage, row.state
