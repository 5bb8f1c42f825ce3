from datetime import UTC, date, datetime, timedelta

import pytest

from pieces.actions import checks, covers, moves, parts, reminding_forgotten, weighings
from pieces.actions.reminding_forgotten import tell_of_forgotten
from studio.actions import settings
from studio.models import Away, Reminder
from tests import factories
from tests.pieces import kit as kits

# A tile covered on Sunday 25 October, the day on which the clocks went back.
COVERED_AT = datetime(2026, 10, 25, 15, 30, tzinfo=UTC)
SUNDAY = datetime(2026, 11, 1, 9, 0, tzinfo=UTC)
WEEK = timedelta(days=7)
MINUTE = timedelta(minutes=1)


def told(**which):
    rows = Reminder.objects.filter(cause=reminding_forgotten.CAUSE, **which).exclude(
        state="withdrawn"
    )
    return sorted((row.round, row.person.first_name, row.object_mark) for row in rows)


@pytest.fixture
def cupboard(studio):
    return factories.place(studio, "Damp cupboard 1", "cupboard")


@pytest.fixture
def cover(kit, cupboard):
    """Return a function that presses a tile, takes it out and puts it under plastic."""

    def covered(member, at=COVERED_AT, place=cupboard, **more):
        tile = kits.pressed_tile(kit, member, at=at - timedelta(hours=20))
        out = factories.act(member, at - timedelta(hours=1))
        parts.record_event(act=out, part=kits.part_of(tile, "tile"), kind="demoulded")
        covers.cover(act=factories.act(member, at - MINUTE), pieces=[tile], state="loose")
        moves.move(act=factories.act(member, at, **more), pieces=[tile], place=place)
        return kits.again(tile)

    return covered


class TestTellOfForgotten:
    def test_tells_maker_then_who_minds_their_things_then_the_owner(
        self, studio, maker, helper, owner, cover
    ):
        tile = cover(maker[0])

        assert tell_of_forgotten(studio=studio, at=SUNDAY - MINUTE) == 0
        tell_of_forgotten(studio=studio, at=SUNDAY)
        first = Reminder.objects.get()
        assert first.due_at == SUNDAY
        title = f"Under plastic and untouched for 7 days, Damp cupboard 1: {tile.mark}."
        assert first.title == title
        for week in range(3):
            tell_of_forgotten(studio=studio, at=SUNDAY + week * WEEK)
            tell_of_forgotten(studio=studio, at=SUNDAY + week * WEEK + MINUTE)

        owners = [(2, name, tile.mark) for name in ("Founder", "Orla")]
        assert told() == [(0, "Maud", tile.mark), (1, "Hal", tile.mark), *owners]

    def test_is_held_by_whoever_stands_in(self, studio, maker, helper, join, cover):
        cover(maker[0])
        buddy, _ = join(studio, ["maker"], "Bea")
        away = Away(
            studio=studio,
            member=maker[0],
            buddy=buddy,
            from_date=date(2026, 10, 30),
            until_date=date(2026, 11, 20),
        )
        settings.go_away(act=factories.act(maker[0]), away=away)

        tell_of_forgotten(studio=studio, at=SUNDAY + WEEK)

        assert [(turn, who) for turn, who, _ in told()] == [(0, "Bea"), (1, "Bea")]

    def test_is_one_message_however_many_pieces_a_cupboard_holds(self, studio, maker, join, cover):
        first, second = cover(maker[0]), cover(maker[0], COVERED_AT + timedelta(minutes=5))
        other, _ = join(studio, ["maker"], "Nell")
        theirs = cover(other, COVERED_AT + timedelta(minutes=9))

        tell_of_forgotten(studio=studio, at=SUNDAY)

        assert told() == sorted([(0, "Maud", first.mark), (0, "Nell", theirs.mark)])
        mine = Reminder.objects.get(person=maker[0])
        assert f"{first.mark}, {second.mark}." in mine.title
        assert mine.link == f"/racks/{first.place_id}"

    @pytest.mark.parametrize(
        "look",
        [
            lambda act, tile: checks.check(act=act, pieces=[tile], feel="fine"),
            lambda act, tile: weighings.weigh(act=act, piece=tile, mass_g=510.0),
        ],
        ids=["seen, fine", "weighed"],
    )
    def test_begins_anew_when_somebody_looks(self, studio, maker, cover, look):
        tile = cover(maker[0])
        before = kits.spot(tile)
        tell_of_forgotten(studio=studio, at=SUNDAY)

        look(factories.act(maker[0], SUNDAY + timedelta(hours=2)), tile)
        tell_of_forgotten(studio=studio, at=SUNDAY + timedelta(hours=3))

        assert kits.spot(tile) == before
        assert told() == []
        tell_of_forgotten(studio=studio, at=SUNDAY + WEEK)
        assert told() == [(0, "Maud", tile.mark)]

    def test_leaves_alone_what_is_open_or_dry(self, studio, maker, cover):
        dry, bare = cover(maker[0]), cover(maker[0])
        act = factories.act(maker[0], COVERED_AT + timedelta(minutes=30))
        covers.cover(act=act, pieces=[bare], state="open")
        checks.check(
            act=factories.act(maker[0], COVERED_AT + timedelta(hours=1)),
            pieces=[dry],
            feel="bone_dry",
        )

        assert tell_of_forgotten(studio=studio, at=SUNDAY) == 0

    def test_tells_nobody_of_a_day_that_was_over_when_it_was_heard(self, studio, maker, cover):
        tile = cover(maker[0], written_at=SUNDAY + timedelta(days=2))

        tell_of_forgotten(studio=studio, at=SUNDAY + timedelta(days=3))
        assert told() == []
        tell_of_forgotten(studio=studio, at=SUNDAY + WEEK)

        # Nobody helps her, so that the second turn goes to the owners.
        assert told() == [(1, "Founder", tile.mark)]
