"""Advice on covers, reckoned with the forecasts."""

from datetime import datetime, timedelta

import pytest

from pieces.actions import covers, forecasts, moves, parts
from pieces.models import Forecast, Piece
from pieces.queries.covering import covering_of
from studio.actions import climate
from studio.domain.climate import Reading
from studio.models import OpeningHours, Place
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits

PRESSED = NOW - timedelta(hours=10)
pytestmark = pytest.mark.usefixtures("short_forecasts")


@pytest.fixture
def room(studio, maker) -> Place:
    """A warm, dry room with a meter."""
    room = factories.place(studio, "Drying room")
    readings = [Reading(NOW - timedelta(hours=h), 21.0, 0.42) for h in range(1, 60, 8)]
    climate.record(act=act(maker[0], NOW), place=room, readings=readings)
    return room


def out(piece: Piece, maker, role: str, hours: float) -> None:
    part = kits.part_of(piece, role)
    parts.record_event(act=act(maker[0], NOW + timedelta(hours=hours)), part=part, kind="demoulded")


@pytest.fixture
def thick(kit, maker, room) -> Piece:
    """A tile of 20 mm that stands open in a dry room."""
    kit.tile.parts.update(thickest_mm=20.0)
    pressed = kits.press(
        act(maker[0], PRESSED), kit.tile_mould, "tile", kits.given(kit.tile, "T01"), place=room
    )
    tile = pressed.pieces[0]
    out(tile, maker, "tile", -6.0)
    return tile


def told(piece: Piece):
    forecasts.refresh(studio=piece.studio, at=NOW)
    return covering_of(list(Forecast.objects.filter(piece=piece).select_related("part")))


class TestPlan:
    def test_covers_a_thick_tile_loosely_before_it_cracks_and_opens_it_again(self, thick) -> None:
        found = told(thick)

        assert found.now is not None
        assert found.peak.value == "high"
        assert "uneven, 8 to 20 mm, open, in dry air" in found.reason
        assert found.steps[0].cover.value == "loose"
        assert found.steps[-1].cover.value == "open"

    def test_is_calm_once_it_is_covered(self, thick, maker) -> None:
        before = told(thick)
        covers.cover(act=act(maker[0], NOW - timedelta(hours=1)), pieces=[thick], state="tucked")

        found = told(thick)

        assert before.now is not None
        assert found.now is not None
        assert found.peak.value == "low"

    def test_changes_covers_only_while_somebody_is_in(self, thick, studio) -> None:
        for weekday in range(7):
            OpeningHours.objects.create(
                studio=studio, weekday=weekday, opens="08:00", closes="18:00"
            )

        found = told(thick)

        assert found.now is not None
        hours = [datetime.fromtimestamp(step.at_s, tz=NOW.tzinfo).hour for step in found.steps]
        assert hours
        assert all(8 <= hour < 18 for hour in hours)

    def test_reckons_each_part_by_its_own_cover(self, kit, maker, room) -> None:
        boat = kits.pressed_boat(kit, maker[0], at=PRESSED)
        out(boat, maker, "body", -5.0)
        out(boat, maker, "handle", -5.0)
        told(boat)
        before = {f.part.role: f.windows for f in Forecast.objects.filter(piece=boat)}
        handle = kits.part_of(boat, "handle")
        at = act(maker[0], NOW - timedelta(hours=4))
        covers.cover_parts(act=at, parts=[handle], state="tucked")

        told(boat)

        after = {f.part.role: f.windows for f in Forecast.objects.filter(piece=boat)}
        assert after["body"]["bisque"] == before["body"]["bisque"]
        late = [each["handle"]["join"]["closes"]["p50_s"] for each in (before, after)]
        assert late[1] is None or late[1] > late[0] + 3600

    def test_leaves_out_what_a_damp_cupboard_shuts_in(self, thick, maker, studio) -> None:
        cupboard = factories.place(studio, "Damp cupboard", kind="cupboard")
        moves.move(act=act(maker[0], NOW - timedelta(hours=1)), pieces=[thick], place=cupboard)

        assert told(thick).now is None

    def test_says_nothing_of_clay_in_its_mould(self, kit, maker, room) -> None:
        pressed = kits.press(
            act(maker[0], PRESSED), kit.tile_mould, "tile", kits.given(kit.tile, "T02"), place=room
        )

        found = told(pressed.pieces[0])

        assert found.now is None
        assert found.meeting is None


class TestMeeting:
    def test_brings_a_quick_handle_to_meet_its_body(self, kit, maker, room) -> None:
        boat = kits.pressed_boat(kit, maker[0], at=PRESSED)
        kit.boat.parts.filter(role="handle").update(shape="rod", thickest_mm=14.0)
        kit.boat.parts.filter(role="body").update(thickest_mm=12.0)
        Piece.objects.filter(pk=boat.pk).update(place=room)
        out(boat, maker, "body", -2.0)
        out(boat, maker, "handle", -9.0)

        found = told(boat)

        assert found.meeting is not None
        assert found.meeting.opens_s is not None
        assert found.meeting.closes_s is None or found.meeting.closes_s > found.meeting.opens_s


class TestAhead:
    """A boat whose body is 12 mm and whose handle is a rod of 9 mm, joined and left open."""

    @pytest.fixture
    def boat(self, kit, maker, room) -> Piece:
        boat = kits.pressed_boat(kit, maker[0], at=PRESSED)
        kit.boat.parts.filter(role="handle").update(shape="rod", thickest_mm=9.0, thinnest_mm=9.0)
        kit.boat.parts.filter(role="body").update(thickest_mm=12.0, thinnest_mm=12.0)
        Piece.objects.filter(pk=boat.pk).update(place=room)
        out(boat, maker, "body", -5.0)
        out(boat, maker, "handle", -5.0)
        joined = act(maker[0], NOW - timedelta(hours=4))
        parts.record_event(act=joined, part=kits.part_of(boat, "handle"), kind="joined")
        return boat

    def test_covers_the_handle_alone_and_lets_it_stand_like_the_body_later(
        self, boat, maker
    ) -> None:
        handle = kits.part_of(boat, "handle")

        open_all_over = told(boat)
        told_to = act(maker[0], NOW - timedelta(hours=1))
        covers.cover_parts(act=told_to, parts=[handle], state="loose")
        covered = told(boat)

        assert "The handle, 9 mm, dries ahead of the body." in open_all_over.reason
        assert open_all_over.peak is not None
        assert open_all_over.peak.value != "low"
        first = open_all_over.steps[0]
        assert (first.words, first.parts) == (
            "cover the handle loosely",
            ((handle.pk, "handle"),),
        )
        assert "handle" not in covered.reason
        assert all(step.words != first.words for step in covered.steps)


class TestThin:
    def test_stiffens_before_the_thickest_section_of_an_uneven_part(self, thick) -> None:
        thick.design.parts.update(thinnest_mm=8.0)

        found = told(thick)

        assert found.thin is not None
        thinnest_mm, closes_s = found.thin
        whole = Forecast.objects.get(piece=thick).windows["join"]["closes"]["p50_s"]
        assert thinnest_mm == 8.0
        assert closes_s < whole

    def test_is_not_told_of_a_part_that_is_even(self, thick) -> None:
        thick.design.parts.update(thinnest_mm=19.0)

        assert told(thick).thin is None


class TestAirThatMoves:
    def test_dries_a_piece_sooner_and_is_told(self, thick, room) -> None:
        told(thick)
        still = Forecast.objects.get(piece=thick)
        Place.objects.filter(pk=room.pk).update(air_m_s=1.0)

        told(thick)

        moving = Forecast.objects.get(piece=thick)
        assert moving.inputs["air_m_s"] == 1.0
        closes = [row.windows["join"]["closes"]["p50_s"] for row in (still, moving)]
        assert closes[1] < closes[0]
