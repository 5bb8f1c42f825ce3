"""Whose meter speaks for the air of a place."""

from datetime import timedelta

import pytest

from pieces.domain.drying.climate import Reading, climate_from
from studio.actions import climate as actions
from studio.domain import climate
from studio.models import ClimateReading, Place
from studio.queries import air
from tests import factories

NOW = factories.NOW
DAY = timedelta(days=1)


@pytest.fixture
def read(maker, act):
    """Return a function that records one reading of a place."""

    def recorded(place, air_c=14.0, humidity=0.6, at=NOW):
        one = climate.Reading(at, air_c, humidity)
        return actions.record(act=act(maker[0], at), place=place, readings=[one]).rows[0]

    return recorded


@pytest.fixture
def room(studio):
    return factories.place(studio, "Drying room")


@pytest.fixture
def rack(studio, room):
    return factories.place(studio, "Rack A", kind="rack", parent=room)


def of(place):
    place.refresh_from_db()
    return air.of_place(place, NOW - DAY, NOW + DAY)


class TestOfPlace:
    def test_is_its_own_where_it_has_readings(self, rack, room, read):
        read(room, 20.0)
        read(rack, 14.0)

        found = of(rack)

        assert (found.source, found.source_name) == ("own", "Rack A")
        assert found.samples == ((NOW, 14.0, 0.6),)

    def test_is_that_of_the_nearest_thing_around(self, studio, rack, room, read):
        shelf = factories.place(studio, "Shelf 1", kind="shelf", parent=rack)
        read(room)

        found = of(shelf)

        assert (found.source, found.source_place_id) == ("around", room.pk)
        assert found.words == "Readings of Drying room, around Shelf 1."

    def test_is_taken_from_the_room_named(self, studio, room, read):
        bench_room = factories.place(studio, "Bench room", air_from=room)
        bench = factories.place(studio, "Bench 1", kind="bench", parent=bench_room)
        read(room)

        found = of(bench)

        assert (found.source, found.source_name) == ("air_from", "Drying room")
        assert found.words == "Bench 1 has no readings: its air is taken from Drying room."

    def test_is_assumed_where_nothing_is_known(self, room):
        found = of(room)

        assert found.is_assumed
        assert (found.assumed_air_c, found.assumed_humidity_fraction) == (15.0, 0.65)
        assert "assumed" in found.words

    def test_is_closed_in_a_cupboard_without_a_meter_only(self, studio, room, read):
        cupboard = factories.place(studio, "Damp cupboard 1", kind="cupboard", parent=room)
        read(room)

        borrowed = of(cupboard)
        read(cupboard, humidity=0.95)

        assert (borrowed.is_closed, borrowed.source) == (True, "around")
        assert not of(cupboard).is_closed

    def test_leaves_out_what_is_odd_or_taken_back_or_old(self, room, read, maker, act):
        read(room, 14.0, 1.04)
        read(room, at=NOW - 9 * DAY)
        slip = read(room, 13.0, at=NOW - timedelta(hours=1))
        factories.entry(maker[0], verb="took_back", corrects=slip.entry_id)

        assert of(room).is_assumed

    def test_survives_places_that_name_each_other(self, studio, room):
        shed = factories.place(studio, "Shed", air_from=room)
        Place.objects.filter(pk=room.pk).update(air_from=shed)

        assert of(shed).is_assumed

    def test_gives_what_the_drying_model_takes(self, room, read):
        read(room, -3.0)

        samples = of(room).samples
        start = NOW.timestamp()
        readings = [Reading(at.timestamp(), air_c, share) for at, air_c, share in samples]
        hourly = climate_from(readings, start, start + 7200)

        assert hourly.air_c.tolist() == [0.0, 0.0]

    def test_never_looks_into_another_studio(self, room, other_studio):
        assert of(room).is_assumed
        assert not air.Sky(other_studio, NOW - DAY, NOW).places


class TestSky:
    def test_reads_many_places_with_three_queries(self, studio, django_assert_num_queries):
        for number in range(20):
            factories.place(studio, f"Shelf {number}", kind="shelf")
        ids = list(Place.objects.values_list("pk", flat=True))

        with django_assert_num_queries(3):
            sky = air.Sky(studio, NOW - DAY, NOW)
            found = [sky.over(place_id) for place_id in ids]

        assert len(found) == 20
        assert sky.over(None).is_assumed

    def test_counts_no_reading_of_half_a_meter(self, room, read):
        read(room, 14.0, None)

        assert of(room).is_assumed
        assert ClimateReading.objects.get().use == "used"
