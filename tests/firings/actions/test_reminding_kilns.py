"""What technicians hear of kilns on Mondays."""

from datetime import UTC, datetime, timedelta

import pytest

from firings.actions import reminding_kilns, service
from firings.actions.service import ServiceGiven
from studio.models import Reminder
from tests import factories
from tests.factories import NOW

# Nine in the morning of the Monday after the Saturday on which the tests stand.
MONDAY = datetime(2026, 11, 2, 9, 0, tzinfo=UTC)
WEEK = timedelta(days=7)


def sweep(studio, at):
    return reminding_kilns.tell_technicians(studio=studio, at=at)


def told():
    return [(row.person.first_name, row.object_mark) for row in Reminder.objects.order_by("id")]


@pytest.fixture
def worn(yard):
    given = ServiceGiven("ohms", over_new_fraction=0.11)
    service.record(act=factories.act(yard.keeper, NOW), kiln=yard.finch, given=given)
    return yard.finch


class TestTellTechnicians:
    def test_tells_once_on_a_monday(self, studio, worn):
        sweep(studio, MONDAY)
        sweep(studio, MONDAY + timedelta(minutes=5))

        assert told() == [("Tess", "K2")]
        assert "+11 %" in Reminder.objects.get().body

    @pytest.mark.parametrize("at", [MONDAY - timedelta(minutes=1), MONDAY + timedelta(days=1)])
    def test_holds_its_tongue_on_other_days(self, studio, worn, at):
        assert sweep(studio, at) == 0
        assert told() == []

    def test_says_nothing_of_kilns_that_want_nothing(self, studio, yard):
        assert sweep(studio, MONDAY) == 0

    def test_tells_the_owner_of_what_nobody_answered_for_a_fortnight(self, studio, worn, owner):
        sweep(studio, MONDAY)
        Reminder.objects.update(state=Reminder.State.SENT)
        sweep(studio, MONDAY + WEEK)
        assert {name for name, _ in told()} == {"Tess"}

        sweep(studio, MONDAY + 2 * WEEK)

        assert {name for name, _ in told()} >= {"Tess", "Orla"}

    def test_takes_back_what_was_seen_to(self, studio, yard, worn):
        sweep(studio, MONDAY)
        seen_to = factories.act(yard.keeper, MONDAY + timedelta(hours=1))
        service.record(act=seen_to, kiln=worn, given=ServiceGiven("elements"))

        sweep(studio, MONDAY + timedelta(hours=2))

        assert Reminder.objects.get().state == Reminder.State.WITHDRAWN
