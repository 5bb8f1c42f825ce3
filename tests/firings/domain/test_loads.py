"""The story of a load; the order of states is the studio's own rule."""

from datetime import UTC, datetime, timedelta
from uuid import UUID

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.load_rules import LoadOutOfOrder, check_event
from firings.domain.loads import Event, Kind, Now, State, fold, result_of

START = datetime(2026, 10, 13, 15, tzinfo=UTC)


def told(*kinds: str, **of_last) -> list[Event]:
    events = [
        Event(UUID(int=place + 1), START + timedelta(hours=place), kind)
        for place, kind in enumerate(kinds)
    ]
    last = events.pop()
    return [*events, Event(last.id, last.happened_at, last.kind, **of_last)]


WHOLE = ("settled", "loading", "started", "ended", "opened", "unloaded")


class TestFold:
    def test_goes_the_whole_road(self):
        now = fold(told(*WHOLE, outcome="fired"))

        assert now.state == State.UNLOADED
        assert now.counts_as_firing
        assert (now.skipped, now.misfits, now.stops) == ((), (), ())
        assert now.started_at == START + timedelta(hours=2)

    def test_is_open_before_anything_is_told(self):
        assert fold([]) == Now()
        assert fold([]).may_be_edited

    def test_opens_again_when_reopened(self):
        now = fold(told("settled", "reopened"))

        assert now.state == State.OPEN
        assert now.settled_at is None

    def test_keeps_each_stop_with_its_gap(self):
        now = fold(told("settled", "loading", "started", "stopped", "resumed", "stopped"))

        assert now.state == State.STOPPED
        assert [stop.resumed_at for stop in now.stops] == [START + timedelta(hours=4), None]
        assert now.is_interrupted

    def test_called_off_counts_as_no_firing(self):
        now = fold(told("settled", "loading", "called_off"))

        assert now.is_over
        assert not now.counts_as_firing

    def test_infers_the_steps_that_nobody_wrote_down(self):
        now = fold(told("loading", "ended", outcome="fired"))

        assert now.state == State.COOLING
        assert now.skipped == (Kind.SETTLED, Kind.STARTED)
        assert now.started_at is None

    def test_names_what_cannot_follow_and_goes_on(self):
        events = told("settled", "called_off", "started")

        now = fold(events)

        assert now.state == State.CALLED_OFF
        assert now.misfits == (events[-1].id,)

    def test_passes_over_a_settling_that_came_after_the_loading(self):
        now = fold(told("loading", "settled"))

        assert now.state == State.LOADING
        assert now.misfits == ()

    def test_keeps_what_was_measured_at_the_opening(self):
        now = fold(told("settled", "loading", "started", "ended", "opened", celsius=94.0))

        assert now.opened_c == 94.0

    def test_refuses_an_outcome_that_is_none(self):
        with pytest.raises(ValueError, match="no such outcome"):
            fold(told("settled", "loading", "started", "ended", outcome="well"))

    def test_sorts_by_real_time_when_clocks_go_back(self):
        # Europe/London, 25 October 2026: 01:30 comes twice (IANA time zone database).
        from zoneinfo import ZoneInfo

        wall = datetime(2026, 10, 25, 1, 30, tzinfo=ZoneInfo("Europe/London"))
        events = [
            Event(UUID(int=1), wall.replace(fold=1), "ended"),
            Event(UUID(int=2), wall.replace(minute=50, fold=0), "started"),
            Event(UUID(int=3), wall.replace(hour=0), "loading"),
        ]

        assert fold(events).state == State.COOLING
        assert fold(events).misfits == ()

    @settings(deadline=None)
    @given(
        kinds=st.lists(st.sampled_from(list(Kind)), max_size=12),
        hours=st.lists(st.integers(0, 5), min_size=12, max_size=12),
        random=st.randoms(use_true_random=False),
    )
    def test_does_not_depend_on_the_order_of_arrival(self, kinds, hours, random):
        events = [
            Event(UUID(int=place), START + timedelta(hours=hours[place]), kind)
            for place, kind in enumerate(kinds)
        ]
        heard = list(events)
        random.shuffle(heard)

        assert fold(heard) == fold(events)

    @settings(deadline=None)
    @given(kinds=st.lists(st.sampled_from(list(Kind)), max_size=12))
    def test_what_is_checked_first_never_misfits(self, kinds):
        events: list[Event] = []
        for place, kind in enumerate(kinds):
            try:
                check_event(fold(events), kind, is_catching_up=bool(place % 2))
            except LoadOutOfOrder:
                continue
            events.append(Event(UUID(int=place), START + timedelta(hours=place), kind))

        assert fold(events).misfits == ()


class TestResultOf:
    def test_is_the_loads_outcome_where_nothing_else_was_said(self):
        now = fold(told(*WHOLE, outcome="fired", results={"t12": "broken"}))

        assert result_of(now, "t12") == "broken"
        assert result_of(now, "t13") == "fired"

    def test_is_unsure_when_nobody_said(self):
        assert result_of(fold(told(*WHOLE)), "t12") == "unsure"

    def test_is_nothing_before_unloading(self):
        assert result_of(fold(told(*WHOLE[:-1], outcome="fired")), "t12") is None
