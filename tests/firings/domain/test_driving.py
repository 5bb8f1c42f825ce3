"""What a programme means in time."""

import pytest

from firings.domain.driving import Leg, curve, lasts_h, planned_c

LEGS = [Leg(120.0, 50.0, hold_min=60), Leg(1020.0, 150.0), Leg(20.0, 100.0)]


def test_hours_are_degrees_by_rate_and_holds():
    # (120 - 20) / 50 = 2 h, 1 h, 900 / 150 = 6 h, 1000 / 100 = 10 h.
    assert lasts_h(LEGS) == pytest.approx(19.0)
    assert [hours for hours, _ in curve(LEGS)] == pytest.approx([0.0, 2.0, 3.0, 9.0, 19.0])


@pytest.mark.parametrize(
    ("after_h", "celsius"),
    [(0.0, 20.0), (1.0, 70.0), (2.5, 120.0), (6.0, 570.0), (9.0, 1020.0), (19.0, 20.0)],
)
def test_temperature_follows_the_legs(after_h, celsius):
    assert planned_c(LEGS, after_h) == pytest.approx(celsius)


@pytest.mark.parametrize("after_h", [-0.1, 19.1])
def test_nothing_is_planned_before_and_after(after_h):
    assert planned_c(LEGS, after_h) is None


def test_no_legs_take_no_time_that_anybody_knows():
    assert lasts_h([]) is None
    assert planned_c([], 1.0) is None


def test_a_leg_without_a_rate_takes_some_time():
    assert 0.0 < (lasts_h([Leg(1000.0, None)]) or 0.0) < lasts_h([Leg(1000.0, 100.0)])


def test_a_hold_alone_keeps_the_temperature():
    legs = [Leg(20.0, 50.0, hold_min=30)]

    assert planned_c(legs, 0.25) == 20.0
