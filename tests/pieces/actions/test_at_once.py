"""Several phones tell of the same things at the same moment."""

from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta

from django.db import connection

from pieces.actions import parts
from pieces.models import Piece
from studio.actions import devices
from studio.models import JournalEntry
from studio.queries import chain
from tests import factories
from tests.factories import NOW
from tests.pieces import kit as kits


def at_once(work, given):
    def on_a_phone(one):
        try:
            return work(one)
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as phones:
        return list(phones.map(on_a_phone, given))


class TestAtOnce:
    def test_the_earliest_telling_stands_whoever_was_heard_first(self, unlocked_journal, clock):
        its = kits.kit(factories.studio("yard"))
        people = [factories.member(its.studio, first_name=name) for name in "ABCDEF"]
        piece = kits.pressed_tile(its, people[0])
        part = kits.part_of(piece, "tile")
        times = [NOW - timedelta(minutes=10 * (number + 1)) for number in range(len(people))]
        acts = [factories.act(who, at) for who, at in zip(people, times, strict=True)]

        at_once(lambda act: parts.record_event(act=act, part=part, kind="demoulded"), acts)

        assert kits.again(piece).since_at == min(times)
        assert JournalEntry.objects.filter(verb="demoulded").count() == len(people)
        assert chain.faults(its.studio) == []

    def test_no_number_is_given_twice(self, unlocked_journal, clock):
        its = kits.kit(factories.studio("yard"))
        people = [factories.member(its.studio, first_name=name) for name in "ABCDEF"]
        for who in people:
            devices.browser_of(member=who, at=NOW)

        at_once(lambda who: kits.pressed_tile(its, who), people)

        marks = set(Piece.objects.values_list("mark", flat=True))
        assert marks == {f"T0{number}" for number in range(1, 7)}
        its.tile_mould.parts[0].refresh_from_db()
        assert its.tile_mould.parts[0].presses == 6
