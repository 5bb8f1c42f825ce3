"""What may happen to a load and what may not; the order of states is the studio's own rule."""

from datetime import UTC, datetime
from uuid import UUID

import pytest

from firings.domain.load_rules import (
    LoadOutOfOrder,
    LoadSettled,
    NotCoolEnough,
    ReasonWanted,
    can_follow,
    check_event,
    check_may_edit,
    check_opening,
    check_reason,
)
from firings.domain.loads import NEXT, Event, Kind, Now, State, fold

START = datetime(2026, 10, 13, 15, tzinfo=UTC)
SETTLED = fold([Event(UUID(int=1), START, "settled")])


class TestCheckEvent:
    @pytest.mark.parametrize("state", list(State))
    def test_allows_just_what_can_follow(self, state):
        for kind in Kind:
            if kind in can_follow(state):
                check_event(Now(state=state), kind)
            else:
                with pytest.raises(LoadOutOfOrder) as refused:
                    check_event(Now(state=state), kind)
                assert refused.value.facts["can_follow"] == [str(k) for k in NEXT[state]]

    def test_lets_an_unplanned_firing_be_written_down_afterwards(self):
        check_event(Now(), "unloaded", is_catching_up=True)

        with pytest.raises(LoadOutOfOrder):
            check_event(Now(), "unloaded")

    def test_does_not_catch_up_backwards(self):
        with pytest.raises(LoadOutOfOrder):
            check_event(Now(state=State.COOLING), "loading", is_catching_up=True)


class TestRefusals:
    def test_a_settled_load_says_when_and_whom_to_ask(self):
        with pytest.raises(LoadSettled) as refused:
            check_may_edit(SETTLED, next_load="F-213")

        assert refused.value.facts["settled_at"] == START.isoformat()
        assert refused.value.facts["next_load"] == "F-213"
        assert refused.value.facts["ask"] == "technician"

    def test_an_open_load_takes_ware(self):
        check_may_edit(fold([]))

    @pytest.mark.parametrize("kind", ["reopened", "called_off"])
    def test_wants_a_reason(self, kind):
        check_reason(kind, "vent fan dead")
        with pytest.raises(ReasonWanted):
            check_reason(kind, "  ")

    def test_opens_at_the_limit_and_with_a_reason_only(self):
        check_opening(100.0, "", limit_c=100.0)
        check_opening(None, "spy hole cold to the hand", limit_c=100.0)
        for celsius in (None, 101.0):
            with pytest.raises(NotCoolEnough):
                check_opening(celsius, "", limit_c=100.0)
