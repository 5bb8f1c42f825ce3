"""The bench of a small studio: what stands on it, whose it is, and what is left out."""

from datetime import datetime, timedelta

import pytest

from pieces.actions import covers, forecasts, parts, planning, retractions, stages
from pieces.actions.shapes import Visit
from pieces.models import Part, Piece
from pieces.queries.bench import Bench, bench
from studio.models import Member
from tests.factories import NOW, act
from tests.pieces import kit as kits

pytestmark = pytest.mark.usefixtures("short_forecasts")

CLOSING = NOW + timedelta(hours=9)


@pytest.fixture
def look(studio, maker):
    """Return a function that reckons what is out of date and looks at the bench."""

    def looked(at: datetime = NOW, member: Member = maker[0]) -> Bench:
        forecasts.refresh(studio=studio, at=at)
        return bench(studio, member=member, at=at, closing_at=CLOSING)

    return looked


def out(member: Member, *rows: Part, hours: float = 0.0) -> None:
    told = act(member, NOW + timedelta(hours=hours))
    parts.record_events(act=told, parts=list(rows), kind="demoulded")


def marks(rows) -> list[str]:
    return [row.piece.mark for row in rows]


class TestBench:
    def test_holds_a_part_in_its_mould_with_its_window(self, kit, maker, look) -> None:
        tile = kits.pressed_tile(kit, maker[0])

        found = look()

        (row,) = found.look_now
        assert (row.piece, row.part) == (tile, Part.objects.get(piece=tile))
        assert row.is_mine
        assert row.windows is not None
        assert found.forecast_at == NOW
        assert found.busy_castings == {kit.tile_mould.casting.pk}

    def test_asks_for_a_look_at_what_is_not_reckoned_yet(self, studio, kit, maker) -> None:
        kits.pressed_tile(kit, maker[0])

        found = bench(studio, member=maker[0], at=NOW, closing_at=CLOSING)

        assert [row.verdict for row in found.look_now] == ["asked"]
        assert found.forecast_at is None

    def test_waits_as_long_as_somebody_who_felt_it_said(self, kit, maker, look) -> None:
        tile = kits.pressed_tile(kit, maker[0])
        part = kits.part_of(tile, "tile")
        parts.record_event(act=act(maker[0]), part=part, kind="not_yet")

        found = look()

        again = Part.objects.get(piece=tile).look_again_at
        assert again is not None
        assert again > NOW
        assert found.look_now == ()
        assert marks([*found.later_today, *found.later]) == [tile.mark]

    def test_counts_as_mine_what_my_maker_made(self, kit, maker, helper, technician, look) -> None:
        kits.pressed_tile(kit, maker[0])

        mine = [look(member=who[0]).look_now[0].is_mine for who in (maker, helper, technician)]

        assert mine == [True, True, False]

    def test_wears_the_mark_of_two_stories(self, kit, maker, look) -> None:
        tile = kits.pressed_tile(kit, maker[0], mark="T07")
        planning.plan(act=act(maker[0]), pieces=[kits.given(kit.tile, "t07")])

        (row,) = look().look_now

        planned = Piece.objects.exclude(pk=tile.pk).get()
        assert row.clash_id is None
        assert planned.has_clash

    @pytest.mark.parametrize("end", ["scrapped", "missing"])
    def test_leaves_out_what_is_lost(self, kit, maker, look, end) -> None:
        tile = kits.pressed_tile(kit, maker[0])
        stages.lose(act=act(maker[0]), pieces=[tile], state=end, cause="dropped")

        found = look()

        assert (found.look_now, found.drying) == ((), ())

    def test_leaves_out_what_was_taken_back(self, kit, maker, look) -> None:
        pressed = act(maker[0], NOW - timedelta(hours=16))
        kits.press(pressed, kit.tile_mould, "tile", kits.given(kit.tile))
        retractions.retract(act=act(maker[0], corrects=pressed.id), may_any=False)

        found = look()

        assert found.look_now == ()
        assert found.busy_castings == frozenset()

    def test_leaves_out_what_is_only_planned(self, kit, maker, look) -> None:
        planning.plan(act=act(maker[0]), pieces=[kits.given(kit.tile)])

        found = look()

        assert (found.look_now, found.drying, found.later) == ((), (), ())

    def test_keeps_to_its_own_studio(self, kit, maker, stranger, look) -> None:
        kits.pressed_tile(kit, maker[0])
        look()

        there = bench(stranger[0].studio, member=stranger[0], at=NOW, closing_at=CLOSING)

        assert there.look_now == ()

    def test_asks_as_often_for_many_pieces_as_for_few(
        self, kit, maker, studio, look, django_assert_max_num_queries
    ) -> None:
        kits.pressed_tile(kit, maker[0], mark="T01")
        look()
        with django_assert_max_num_queries(9) as few:
            bench(studio, member=maker[0], at=NOW, closing_at=CLOSING)
        for number in range(2, 9):
            at = NOW - timedelta(hours=16, minutes=number)
            kits.pressed_tile(kit, maker[0], at=at, mark=f"T0{number}")
        kits.pressed_boat(kit, maker[0])
        look()

        with django_assert_max_num_queries(len(few)):
            found = bench(studio, member=maker[0], at=NOW, closing_at=CLOSING)

        assert len(found.look_now) == 10


class TestJoinToday:
    @pytest.fixture
    def boat(self, kit, maker) -> Piece:
        return kits.pressed_boat(kit, maker[0], at=NOW - timedelta(hours=7))

    def test_waits_for_every_part_to_be_out(self, boat, maker, look) -> None:
        out(maker[0], kits.part_of(boat, "body"), hours=-1)

        assert look().join_today == ()

    def test_holds_parts_that_are_leather_hard_together(self, boat, maker, look) -> None:
        out(maker[0], kits.part_of(boat, "body"), kits.part_of(boat, "handle"), hours=-1)

        (row,) = look().join_today

        assert [part.role for part in row.parts] == ["body", "handle"]
        assert (row.verdict, row.is_mine) == ("now", True)
        opens = [w.demould.opens.p50_s for w in (row.windows,)]
        assert row.windows.join.opens.p50_s > opens[0]

    def test_says_when_one_is_too_stiff(self, boat, maker, look) -> None:
        out(maker[0], kits.part_of(boat, "body"), kits.part_of(boat, "handle"), hours=-1)

        (row,) = look(NOW + timedelta(hours=60)).join_today

        assert row.verdict == "too_stiff"

    def test_forgets_what_is_joined(self, boat, maker, look) -> None:
        both = [kits.part_of(boat, "body"), kits.part_of(boat, "handle")]
        out(maker[0], *both, hours=-1)
        parts.record_events(act=act(maker[0]), parts=both, kind="joined")

        found = look()

        assert found.join_today == ()
        assert marks(found.drying) == [boat.mark]

    def test_counts_the_part_that_stands_for_a_cracked_one(self, kit, boat, maker, look) -> None:
        body, handle = kits.part_of(boat, "body"), kits.part_of(boat, "handle")
        out(maker[0], body, handle, hours=-2)
        given = kits.given(kit.boat)
        again = kits.press(
            act(maker[0], NOW - timedelta(hours=1.5)),
            kit.handle_mould,
            "handle",
            type(given)(boat.pk, kit.boat),
            replaces=handle,
        ).parts[0]

        found = look()

        assert found.join_today == ()
        assert [row.part.pk for row in (*found.look_now, *found.later_today)] == [again.pk]


class TestDrying:
    @pytest.fixture
    def tile(self, kit, maker) -> Piece:
        tile = kits.pressed_tile(kit, maker[0], at=NOW - timedelta(days=6))
        out(maker[0], kits.part_of(tile, "tile"), hours=-24 * 5.5)
        return tile

    def test_sends_somebody_to_touch_what_is_perhaps_dry(self, tile, look) -> None:
        # assumed air of 15 °C and 65 %: ten millimetres standing open for five days
        (row,) = look().drying

        assert (row.piece, row.verdict, row.part) == (tile, "worth_a_touch", None)

    def test_puts_what_dries_first_first(self, kit, tile, maker, look) -> None:
        late = kits.pressed_tile(kit, maker[0], at=NOW - timedelta(days=5), mark="A1")
        out(maker[0], kits.part_of(late, "tile"), hours=-100)
        covers.cover(act=act(maker[0], NOW - timedelta(hours=99)), pieces=[late], state="loose")

        assert marks(look().drying) == [tile.mark, late.mark]

    def test_calls_ready_what_a_person_called_dry(self, tile, maker, look) -> None:
        covers.cover(act=act(maker[0], NOW - timedelta(hours=9)), pieces=[tile], state="open")
        visit = Visit("drying", "bone_dry")
        stages.advance(act=act(maker[0]), piece=kits.again(tile), visit=visit)

        found = look()

        assert (marks(found.drying), marks(found.ready_for_bisque)) == ([], [tile.mark])

    def test_gives_no_date_in_a_room_that_is_too_damp(self, studio, kit, maker, look) -> None:
        studio.settings.assumed_humidity_fraction = 0.95
        studio.settings.save()
        tile = kits.pressed_tile(kit, maker[0], at=NOW - timedelta(days=6))
        out(maker[0], kits.part_of(tile, "tile"), hours=-24 * 5.5)

        (row,) = look().drying

        assert row.verdict == "not_in_this_room"
        assert row.windows is not None
        assert not row.windows.bisque.is_reached
