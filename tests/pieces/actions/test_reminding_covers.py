"""Reminders about covers, and rooms whose air has changed since."""

import re
from datetime import timedelta

import pytest

from pieces.actions import covers, forecasts, parts, reminding_covers, stages
from pieces.actions.shapes import Visit
from pieces.models import Piece
from studio.actions import climate
from studio.domain.climate import Reading
from studio.models import Place, Reminder
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits

pytestmark = pytest.mark.usefixtures("short_forecasts")

PRESSED = NOW - timedelta(hours=10)


@pytest.fixture
def room(studio) -> Place:
    return factories.place(studio, "Drying room")


def read(room: Place, maker, hours: float, air_c: float, humidity: float) -> None:
    told = act(maker[0], max(NOW, NOW + timedelta(hours=hours)))
    reading = Reading(NOW + timedelta(hours=hours), air_c, humidity)
    climate.record(act=told, place=room, readings=[reading])


def out(kit, maker, room, thickest_mm: float) -> Piece:
    """Return a tile out of its mould since four hours, set to dry."""
    kit.tile.parts.update(thickest_mm=thickest_mm)
    pressed = kits.press(
        act(maker[0], PRESSED), kit.tile_mould, "tile", kits.given(kit.tile, "T01"), place=room
    )
    tile = pressed.pieces[0]
    told = act(maker[0], NOW - timedelta(hours=4))
    parts.record_event(act=told, part=kits.part_of(tile, "tile"), kind="demoulded")
    return tile


def told(studio, hours: float) -> list[Reminder]:
    at = NOW + timedelta(hours=hours)
    forecasts.refresh(studio=studio, at=at)
    reminding_covers.tell_of_covers(studio=studio, at=at)
    return list(Reminder.objects.filter(studio=studio).exclude(state="withdrawn"))


class TestCoverChanges:
    def dry_room(self, room, maker) -> None:
        for hours in range(-49, 0, 8):
            read(room, maker, hours, 21.0, 0.42)

    def test_tells_the_maker_once_when_a_thick_tile_is_to_be_covered(
        self, studio, kit, maker, room
    ) -> None:
        self.dry_room(room, maker)
        tile = out(kit, maker, room, 20.0)

        found = [reminder for hours in (1, 12, 20, 21, 22) for reminder in told(studio, hours)]

        assert {reminder.object_id for reminder in found} == {tile.pk}
        assert len({reminder.pk for reminder in found}) <= 2  # one a day at most
        titles = re.compile(r".*over loosely, from \d\d:00: T01, tile, Drying room\.")
        assert titles.fullmatch(found[0].title)

    def test_takes_it_back_when_somebody_covers(self, studio, kit, maker, room) -> None:
        self.dry_room(room, maker)
        tile = out(kit, maker, room, 20.0)
        due = [reminder for hours in range(1, 23, 3) for reminder in told(studio, hours)]
        assert any("loosely" in reminder.title for reminder in due)
        covered = act(maker[0], NOW + timedelta(hours=22.5))
        covers.cover(act=covered, pieces=[tile], state="loose")

        left = told(studio, 23)

        assert [r for r in left if "loosely" in r.title and r.state == "due"] == []

    def test_says_nothing_of_a_thin_one(self, studio, kit, maker, room) -> None:
        self.dry_room(room, maker)
        out(kit, maker, room, 4.0)

        assert told(studio, 12) == []


class TestRoomChanged:
    def covered(self, kit, maker, room) -> Piece:
        for hours in range(-49, 0, 8):
            read(room, maker, hours, 14.0, 0.70)
        tile = out(kit, maker, room, 8.0)
        since = NOW - timedelta(hours=3)
        set_to_dry = Visit("drying", "drying", place=room)
        stages.advance(act=act(maker[0], since), piece=tile, visit=set_to_dry)
        covers.cover(act=act(maker[0], since), pieces=[tile], state="tucked")
        return kits.again(tile)

    @pytest.mark.parametrize(
        ("air_c", "humidity", "is_told"),
        [(14.0, 0.54, True), (20.5, 0.70, True), (15.0, 0.60, False), (12.0, 0.80, False)],
    )
    def test_is_told_when_the_air_is_not_what_it_was_covered_for(
        self, studio, kit, maker, room, air_c: float, humidity: float, is_told: bool
    ) -> None:
        self.covered(kit, maker, room)
        read(room, maker, 2.0, air_c, humidity)

        found = [r for r in told(studio, 2.5) if r.cause == reminding_covers.ROOM]

        assert [r.object_mark for r in found] == ([room.name] if is_told else [])
        assert all("T01" in r.body for r in found)
