from datetime import timedelta

import pytest

from pieces.models import Piece
from studio.actions import climate
from studio.domain.climate import Reading
from studio.models import ClimateReading, Place
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits
from tests.pieces.drying_room import PRESSED


@pytest.fixture
def room(studio) -> Place:
    return factories.place(studio, "Drying room")


@pytest.fixture
def read(studio, maker, room):
    """Return a function that reads the meter of a room so many hours from now."""

    def taken(
        hours: float, air_c: float = 14.0, humidity: float = 0.65, place: Place = room
    ) -> ClimateReading:
        at = NOW + timedelta(hours=hours)
        told = climate.record(
            act=act(maker[0], max(at, NOW)),
            place=place,
            readings=[Reading(at, air_c, humidity)],
        )
        return told.rows[0]

    return taken


@pytest.fixture
def tile(kit, maker, room, read) -> Piece:
    """A tile sixteen hours in its mould, in a room that is looked at every eight hours."""
    for days in range(4):
        for hour in (-1, -9, -17):
            read(hour - 24 * days, air_c=14.0 + hour % 5, humidity=0.6 + hour % 3 / 50)
    given = kits.given(kit.tile, "T01")
    pressed = kits.press(act(maker[0], PRESSED), kit.tile_mould, "tile", given, place=room)
    return pressed.pieces[0]
