"""The hourly air of a room: exact means, marked gaps, its own day carried on."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studio.domain import moist_air
from studio.domain.room_air import Climate, Reading, climate_from, constant_climate

HOUR_S = 3600


def day_and_night(days: int, every_h: int = 4) -> list[Reading]:
    """Return readings of a room that is 4 K warmer at 15:00 than at 03:00, always half moist."""
    return [
        Reading(h * HOUR_S, 15.0 + 2.0 * np.sin(2 * np.pi * (h - 9) / 24), 0.5)
        for h in range(0, 24 * days + 1, every_h)
    ]


class TestReading:
    @pytest.mark.parametrize(
        ("air_c", "humidity", "field"),
        [
            (61.2, 0.65, "air_c"),
            (-1.0, 0.5, "air_c"),
            (float("nan"), 0.5, "air_c"),
            (15.0, 1.04, "humidity_fraction"),
            (15.0, 0.0, "humidity_fraction"),
            (15.0, 55.0, "humidity_fraction"),
        ],
    )
    def test_refuses_what_no_room_shows(self, air_c: float, humidity: float, field: str) -> None:
        with pytest.raises(ValueError, match=field):
            Reading(0.0, air_c, humidity)


class TestClimateFrom:
    def test_integrates_the_line_between_readings_exactly(self) -> None:
        readings = [Reading(0, 10.0, 0.5), Reading(1.5 * HOUR_S, 13.0, 0.5)]

        climate = climate_from(readings, 0, 3 * HOUR_S)

        # a line of 2 K per hour: means at 0:30 and, half of the hour level, 12.75 for the second
        assert climate.air_c == pytest.approx([11.0, 12.75, 13.0], abs=1e-12)

    def test_joins_vapour_not_relative_humidity(self) -> None:
        readings = [Reading(0, 10.0, 0.9), Reading(2 * HOUR_S, 20.0, 0.45)]

        climate = climate_from(readings, 0, 2 * HOUR_S)

        ends = moist_air.vapour_density_kg_m3([10.0, 20.0], [0.9, 0.45])
        assert climate.vapour_kg_m3.mean() == pytest.approx(ends.mean(), rel=1e-12)

    @settings(max_examples=25, deadline=None, derandomize=True)
    @given(
        offset_s=st.floats(0.0, 3599.0),
        air=st.lists(st.floats(8.0, 25.0), min_size=3, max_size=12),
    )
    def test_keeps_the_integral_of_temperature(self, offset_s: float, air: list[float]) -> None:
        readings = [Reading(offset_s + 3 * HOUR_S * i, c, 0.5) for i, c in enumerate(air)]
        end_s = readings[-1].at_s

        climate = climate_from(readings, 0, end_s + 2 * HOUR_S)

        at = np.array([0.0, *(r.at_s for r in readings)])
        values = np.array([air[0], *air])
        line = float(np.trapezoid(values, at))
        whole = int(end_s // HOUR_S)
        rest = end_s - whole * HOUR_S
        partial = np.interp(whole * HOUR_S, at, values) + air[-1]
        reckoned = climate.air_c[:whole].sum() * HOUR_S + 0.5 * rest * partial
        assert reckoned == pytest.approx(line, rel=1e-9)

    def test_marks_gaps_of_more_than_12_hours(self) -> None:
        readings = [Reading(h * HOUR_S, 15.0, 0.6) for h in (0, 12, 25, 30)]

        climate = climate_from(readings, 0, 30 * HOUR_S)

        assert not climate.assumed[:12].any()
        assert climate.assumed[12:25].all()
        assert not climate.assumed[25:].any()

    def test_assumes_a_plain_room_where_there_is_no_meter(self) -> None:
        climate = climate_from([], 0, 5 * HOUR_S)

        assert climate.air_c == pytest.approx([15.0] * 5)
        assert climate.humidity_between(0, 5 * HOUR_S) == pytest.approx(0.65)
        assert climate.assumed.all()
        assert climate.measured_to_s is None

    def test_carries_the_rooms_own_day_on(self) -> None:
        readings = day_and_night(5)

        climate = climate_from(readings, 0, 8 * 24 * HOUR_S)

        last_day, coming = climate.air_c[96:120], climate.air_c[120:144]
        assert coming == pytest.approx(last_day, abs=0.15)
        assert np.ptp(coming) > 3.0

    def test_shifts_that_day_to_meet_the_last_reading(self) -> None:
        readings = day_and_night(5)
        cold = Reading(readings[-1].at_s + 4 * HOUR_S, readings[1].air_c - 3.0, 0.5)

        climate = climate_from([*readings, cold], 0, 7 * 24 * HOUR_S)

        first = round(cold.at_s / HOUR_S)
        before = climate_from(readings, 0, 7 * 24 * HOUR_S)
        assert climate.air_c[first] == pytest.approx(cold.air_c, abs=0.6)
        fallen = before.air_c[first : first + 24] - climate.air_c[first : first + 24]
        assert fallen == pytest.approx(3.0, abs=0.6)

    def test_holds_the_last_reading_where_no_day_is_known(self) -> None:
        climate = climate_from([Reading(0, 12.0, 0.7)], 0, 10 * HOUR_S)

        assert climate.air_c == pytest.approx([12.0] * 10)

    def test_takes_readings_in_any_order_and_once(self) -> None:
        readings = day_and_night(2)

        shuffled = climate_from([*reversed(readings), readings[3]], 0, 48 * HOUR_S)

        straight = climate_from(readings, 0, 48 * HOUR_S)
        assert np.array_equal(shuffled.air_c, straight.air_c)

    def test_never_forecasts_air_beyond_saturation(self) -> None:
        readings = [
            Reading(h * HOUR_S, 20.0 - 0.4 * h, min(1.0, 0.6 + 0.02 * h)) for h in range(26)
        ]

        climate = climate_from(readings, 0, 72 * HOUR_S)

        assert np.all(moist_air.humidity_fraction(climate.air_c, climate.vapour_kg_m3) <= 1 + 1e-12)

    def test_refuses_an_end_before_its_start(self) -> None:
        with pytest.raises(ValueError, match="until_s"):
            climate_from([], 10 * HOUR_S, 10 * HOUR_S)


class TestClimate:
    def test_tells_its_mean_humidity(self) -> None:
        climate = constant_climate(0, 10 * HOUR_S, 18.0, 0.55)

        assert climate.humidity_between(2 * HOUR_S, 5 * HOUR_S) == pytest.approx(0.55)
        with pytest.raises(ValueError, match="no hour"):
            climate.humidity_between(20 * HOUR_S, 30 * HOUR_S)

    def test_refuses_arrays_that_do_not_fit(self) -> None:
        with pytest.raises(ValueError, match="one shape"):
            Climate(0, np.ones(3), np.ones(2), np.zeros(3, bool), None)
        with pytest.raises(ValueError, match="whole hour"):
            Climate(10, np.ones(3), np.ones(3), np.zeros(3, bool), None)
