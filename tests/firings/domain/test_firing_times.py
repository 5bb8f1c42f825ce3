"""Hours that really passed. Power cut: 868 °C at 21:10, 702 °C when it is back 95 min later."""

from datetime import UTC, datetime, timedelta
from uuid import UUID
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.firing_times import (
    ConeSeen,
    choices,
    firing_h,
    gap_h,
    highest,
    hot_h,
    hours_above,
    stopped_facts,
)
from firings.domain.loads import Event, fold

START = datetime(2026, 10, 13, 14, tzinfo=UTC)


def at(hour: int, minute: int = 0) -> datetime:
    return datetime(2026, 10, 13, hour, minute, tzinfo=UTC)


CUT = [
    Event(UUID(int=1), at(13), "loading"),
    Event(UUID(int=2), at(14), "started"),
    Event(UUID(int=3), at(20, 10), "stopped", celsius=868.0),
]
READINGS = [(at(20), 861.0), (at(19), 574.0), (at(20, 10), 868.0), (at(21, 45), 702.0)]


class TestFiringH:
    def test_counts_eleven_hours_over_the_night_the_clocks_go_back(self):
        # 19:00 BST to 05:00 GMT: ten hours by the clock, eleven in truth.
        zone = ZoneInfo("Europe/London")
        lit, off = (
            datetime(2026, 10, 24, 19, tzinfo=zone),
            datetime(2026, 10, 25, 5, tzinfo=zone),
        )
        now = fold([Event(UUID(int=1), lit, "started"), Event(UUID(int=2), off, "ended")])

        assert firing_h(now, off) == 11.0

    def test_is_nothing_for_a_kiln_that_was_never_lit(self):
        assert firing_h(fold(CUT[:1]), at(20)) is None


class TestHoursAbove:
    def test_goes_straight_between_readings(self):
        # 0 to 1000 °C in ten hours stands above 600 °C for four; arithmetic.
        points = [(START, 0.0), (START + timedelta(hours=10), 1000.0)]

        assert hours_above(points, 600.0) == pytest.approx(4.0)

    def test_counts_the_way_down_too(self):
        points = [(at(14), 500.0), (at(15), 700.0), (at(16), 500.0)]

        assert hours_above(points, 600.0) == pytest.approx(1.0)

    @pytest.mark.parametrize("points", [[], [(START, 900.0)]])
    def test_says_nothing_without_two_readings(self, points):
        assert hours_above(points, 600.0) == 0.0

    @settings(deadline=None)
    @given(
        celsius=st.lists(st.floats(0, 1300), min_size=2, max_size=12),
        above_c=st.floats(0, 1300),
        share=st.floats(0, 1),
    )
    def test_two_spans_add_up_to_the_whole(self, celsius, above_c, share):
        points = [(START + timedelta(hours=h), c) for h, c in enumerate(celsius)]
        end = points[-1][0]
        middle = START + share * (end - START)

        halves = hours_above(points, above_c, [(START, middle), (middle, end)])

        assert halves == pytest.approx(hours_above(points, above_c), abs=1e-6)
        assert 0.0 <= halves <= len(celsius) - 1 + 1e-6


class TestHotH:
    def test_leaves_the_gap_out(self):
        # From 574 °C at 19:00 to 861 °C at 20:00 it passes 600 °C after 26/287 h; arithmetic.
        now = fold([*CUT, Event(UUID(int=4), at(21, 45), "resumed")])

        driven = hot_h(now, READINGS, at(21, 45))

        assert driven == pytest.approx(1.0 - 26.0 / 287.0 + 10.0 / 60.0)
        assert hours_above(READINGS, 600.0) == pytest.approx(driven + 95.0 / 60.0)
        assert gap_h(now, at(22)) == pytest.approx(95.0 / 60.0)


class TestStopped:
    def test_shows_the_facts(self):
        facts = stopped_facts(fold(CUT), READINGS, at(21, 45))

        assert (facts.highest_c, facts.highest_at) == (868.0, at(20, 10))
        assert (facts.last_c, facts.last_at) == (702.0, at(21, 45))
        assert facts.gap_h == pytest.approx(95.0 / 60.0)
        assert facts.above_600_h == pytest.approx(1.0 - 26.0 / 287.0 + 105.0 / 60.0)

    def test_offers_three_ways_on_and_backs_none_but_the_cold_one_without_cones(self):
        facts = stopped_facts(fold(CUT), READINGS, at(21, 45))

        ways = choices(facts, "04")

        assert [(way.code, way.kind, way.is_backed) for way in ways] == [
            ("resume", "resumed", False),
            ("refire", "ended", True),
            ("accept_by_cone", "ended", False),
        ]
        assert "702 °C" in ways[0].words

    @pytest.mark.parametrize(
        ("hands", "is_backed"), [((6, 6, 5), True), ((6, 12, 6), False), ((0, 0), False)]
    )
    def test_backs_acceptance_only_by_cones_that_are_down(self, hands, is_backed):
        cones = [ConeSeen(level, "firing", "04", hand) for level, hand in enumerate(hands)]

        facts = stopped_facts(fold(CUT), READINGS, at(21, 45), cones)

        assert choices(facts, "04")[-1].is_backed is is_backed

    def test_goes_by_the_last_look_at_each_cone(self):
        looks = [ConeSeen(1, "firing", "04", hand) for hand in (12, 3, 6)]

        facts = stopped_facts(fold(CUT), READINGS, at(21, 45), looks)

        assert choices(facts, "04")[-1].is_backed

    def test_does_not_take_the_guide_cone_for_the_firing_cone(self):
        facts = stopped_facts(fold(CUT), READINGS, at(22), [ConeSeen(1, "guide", "05", 6)])

        assert not choices(facts, "04")[-1].is_backed


class TestHighest:
    def test_is_the_first_of_equals(self):
        assert highest([(at(20), 900.0), (at(19), 900.0)]) == (at(19), 900.0)
        assert highest([]) is None
