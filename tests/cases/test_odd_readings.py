"""Each odd reading, by hand, by a meter's token and in a table: kept, marked, asked about."""

from datetime import timedelta

import pytest
from rest_framework.test import APIClient

from studio.models import ClimateReading
from tests import factories
from tests.factories import NOW, sent

S = "/api/v1/studios/yard/"
# name: (air, humidity as a fraction, what becomes of it, why)
ODD = {
    "above all": (14.0, 1.04, "left_out", "humidity-above-all"),
    "half as much again": (14.0, 1.5, "left_out", "humidity-above-all"),
    "none": (14.0, 0.0, "left_out", "humidity-too-low"),
    "too cold for a room": (-40.0, 0.6, "left_out", "air-out-of-range"),
    "too hot for a room": (300.0, 0.6, "left_out", "air-out-of-range"),
    "Fahrenheit for certain": (61.2, 0.6, "left_out", "air-in-fahrenheit"),
    "Fahrenheit by the look of it": (57.0, 0.66, "left_out", "air-in-fahrenheit"),
    "a percentage": (14.0, 55.0, "asked", "humidity-in-percent"),
}
WAYS = ("hand", "token", "table")


@pytest.fixture
def room(studio):
    return factories.place(studio, "Drying room")


def readings(room):
    """Return what the room was read at; the demo studio may stand beside it."""
    return ClimateReading.objects.filter(place=room)


@pytest.fixture
def give(room, maker):
    """Return a function that gives one reading in one of the three ways."""
    path = f"{S}places/{room.pk}/readings/"
    key = sent(maker[1], f"{S}tokens/", {"name": "meter", "grants": ["record_climate"]}).json()[
        "key"
    ]

    def given(way, air_c, humidity, at=NOW):
        if way == "table":
            text = f"taken_at,air_c,humidity_fraction\n{at.isoformat()},{air_c},{humidity}\n"
            return maker[1].post(path, text, content_type="text/csv")
        client = maker[1]
        if way == "token":
            client = APIClient()
            client.credentials(HTTP_AUTHORIZATION=f"Token {key}")
        body = {"air_c": air_c, "humidity_fraction": humidity, "happened_at": at.isoformat()}
        return sent(client, path, body)

    return given


@pytest.mark.parametrize("way", WAYS)
class TestOddReading:
    @pytest.mark.parametrize("name", ODD)
    def test_is_kept_as_given_and_marked(self, give, room, way, name):
        air_c, humidity, use, why = ODD[name]

        answer = give(way, air_c, humidity)

        assert answer.status_code == 201, answer.json()
        warning = answer.json()["warnings"][0]
        assert (warning["use"], warning["code"]) == (use, why)
        assert len(warning["detail"]) > 20
        kept = readings(room).get()
        assert (kept.air_c, kept.humidity_fraction, kept.use) == (air_c, humidity, use)
        assert kept.why

    @pytest.mark.parametrize("typed", ["NaN", "inf", "damp"])
    def test_without_a_number_is_refused_with_its_field(self, give, room, way, typed):
        answer = give(way, 14.0, typed)

        assert answer.status_code == 400
        pointer = "#/line 2/humidity_fraction" if way == "table" else "#/humidity_fraction"
        assert answer.json()["errors"][0]["pointer"] == pointer
        assert not readings(room).exists()

    def test_from_the_future_is_refused_with_its_field(self, give, room, way):
        answer = give(way, 14.0, 0.66, at=NOW + timedelta(hours=1))

        assert answer.status_code == 400
        pointer = "#/line 2/taken_at" if way == "table" else "#/happened_at"
        assert answer.json()["errors"][0]["pointer"] == pointer
        assert not readings(room).exists()

    def test_at_one_time_with_another_is_kept_and_left_out(self, give, room, way):
        give(way, 14.0, 0.66)

        answer = give(way, 14.5, 0.66)

        assert answer.json()["warnings"][0]["code"] == "second-at-that-time"
        assert readings(room).filter(use="used").count() == 1
        assert readings(room).count() == 2

    def test_that_jumps_up_and_back_is_kept_and_left_out(self, give, room, way):
        # At 20 °C a full room holds 17.3 g/m³, so half to 0.95 and back is 7.8 g/m³ each way.
        shares = {3: 0.50, 1: 0.50, 2: 0.95}

        for hours, share in shares.items():
            answer = give(way, 20.0, share, at=NOW - timedelta(hours=hours))

        assert answer.json()["warnings"][0]["code"] == "spike"
        assert readings(room).get(humidity_fraction=0.95).use == "left_out"
        assert readings(room).filter(use="used").count() == 2

    def test_is_asked_about_where_it_may_be_in_fahrenheit(self, give, way):
        give(way, 1.0, 0.66, at=NOW - timedelta(hours=1))

        answer = give(way, 35.6, 0.66)  # 2.0 °C

        assert answer.json()["warnings"][0]["use"] == "asked"
        assert answer.json()["warnings"][0]["did_you_mean_c"] == pytest.approx(2.0)
