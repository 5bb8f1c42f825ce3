"""What windows ask of makers: told once, and taken back when somebody did it."""

from datetime import datetime, timedelta
from typing import Any

import pytest

from pieces.actions import forecasts, parts, reminding, stages
from pieces.actions.shapes import PieceGiven
from pieces.domain.window_store import stored
from pieces.models import Forecast, Part, Piece
from studio.actions import reminders
from studio.domain.ids import uuid7
from studio.models import Reminder
from tests.factories import NOW, act
from tests.pieces import kit as kits
from tests.pieces.domain.windows import HOUR_S, about, window, windows

EARLIER = NOW - timedelta(days=3)


def at(hours: float) -> datetime:
    return NOW + timedelta(hours=hours)


def reckoned(part: Part, *, known_since: datetime = EARLIER, **said: Any) -> Forecast:
    """Keep a forecast for a part; hours of `said` count from now."""
    moved = {name: _from_now(its) for name, its in said.items()}
    forecast, _ = Forecast.objects.update_or_create(
        part=part,
        defaults={
            "studio": part.studio,
            "piece": part.piece,
            "key": "of this test",
            "draws": 1,
            "windows": stored(windows(**moved)),
            "computed_at": NOW,
            "known_since": known_since,
        },
    )
    return forecast


def _from_now(its: Any) -> Any:
    begin = NOW.timestamp() / HOUR_S
    if hasattr(its, "opens"):
        return window(begin + its.opens.p50_s / HOUR_S, begin + its.closes.p50_s / HOUR_S)
    return about(begin + its.p50_s / HOUR_S)


@pytest.fixture
def tile(kit, maker) -> Piece:
    return kits.pressed_tile(kit, maker[0], mark="T07")


@pytest.fixture
def part(tile) -> Part:
    return kits.part_of(tile, "tile")


def tell(piece: Piece, hours: float = 0.0) -> list[Reminder]:
    reminding.tell_makers(studio=piece.studio, at=at(hours))
    return list(Reminder.objects.order_by("due_at"))


class TestDemould:
    def test_is_told_when_the_first_draws_say_that_it_lets_go(self, tile, part, maker) -> None:
        reckoned(part, demould=window(3, 10))  # p10 is an hour before

        assert tell(tile, 1.9) == []
        (told,) = tell(tile, 2.0)

        assert (told.cause, told.person, told.due_at) == (
            "demould_window_opens",
            maker[0],
            at(2),
        )
        assert (told.object_kind, told.object_id, told.object_mark) == ("part", part.pk, "T07")
        assert told.title == "T07, tile, is worth a look in M01."
        assert told.grade == "C"

    def test_is_told_once_however_often_it_is_swept(self, tile, part) -> None:
        reckoned(part, demould=window(3, 10))

        for hours in (2.0, 2.1, 2.2, 5.0):
            tell(tile, hours)

        assert Reminder.objects.count() == 1

    def test_is_told_once_though_the_window_moves(self, tile, part) -> None:
        reckoned(part, demould=window(3, 10))
        tell(tile, 2.0)
        reckoned(part, demould=window(2.5, 9))

        (told,) = tell(tile, 2.1)

        assert told.due_at == at(1.5)

    def test_is_not_told_of_what_was_past_when_it_was_heard(self, tile, part) -> None:
        reckoned(part, demould=window(-3, 10), known_since=NOW)

        assert tell(tile) == []

    def test_is_taken_back_when_the_part_is_out(self, tile, part, maker) -> None:
        reckoned(part, demould=window(0, 10))
        tell(tile)
        parts.record_event(act=act(maker[0]), part=part, kind="demoulded")

        assert [told.state for told in tell(tile, 0.1)] == ["withdrawn"]

    def test_is_taken_back_when_the_piece_is_lost(self, tile, part, maker) -> None:
        reckoned(part, demould=window(0, 10))
        tell(tile)
        stages.lose(act=act(maker[0]), pieces=[tile], state="scrapped", cause="dropped")
        forecasts.refresh(studio=tile.studio, at=at(0.1))

        assert [told.state for told in tell(tile, 0.1)] == ["withdrawn"]

    def test_leaves_what_was_answered_answered(self, tile, part, maker) -> None:
        reckoned(part, demould=window(0, 10))
        (told,) = tell(tile)
        reminders.answer(act=act(maker[0]), reminder=told, answer="done")

        assert [told.state for told in tell(tile, 0.5)] == ["done"]

    def test_is_told_to_nobody_for_a_piece_of_nobody(self, kit, maker) -> None:
        given = PieceGiven(uuid7(), kit.tile, is_nobodys=True)
        made = kits.press(act(maker[0]), kit.tile_mould, "tile", given).pieces[0]
        reckoned(kits.part_of(made, "tile"), demould=window(0, 10))

        assert tell(made) == []


class TestJoin:
    @pytest.fixture
    def boat(self, kit, maker) -> Piece:
        return kits.pressed_boat(kit, maker[0])

    @pytest.fixture
    def both(self, boat, maker) -> list[Part]:
        """Body and handle, both out of their moulds."""
        rows = [kits.part_of(boat, role) for role in ("body", "handle")]
        told = act(maker[0], at(-1))
        parts.record_events(act=told, parts=rows, kind="demoulded")
        return rows

    def test_is_told_two_hours_before_the_first_part_is_too_stiff(self, boat, both) -> None:
        body, handle = both
        reckoned(body, join=window(1, 8))
        reckoned(handle, join=window(-1, 5))

        assert tell(boat, 2.9) == []
        (told,) = tell(boat, 3.0)

        assert (told.cause, told.due_at) == ("joining_window_closes", at(3))
        assert told.title == f"Join {boat.mark}, boat, within about two hours."

    def test_waits_for_the_other_part(self, kit, boat, maker) -> None:
        body = kits.part_of(boat, "body")
        parts.record_event(act=act(maker[0], at(-1)), part=body, kind="demoulded")
        reckoned(body, join=window(-4, 1))
        reckoned(kits.part_of(boat, "handle"), demould=window(40, 50))

        assert tell(boat) == []

    def test_is_taken_back_when_they_are_joined(self, boat, both, maker) -> None:
        for part in both:
            reckoned(part, join=window(-1, 1))
        tell(boat)
        parts.record_events(act=act(maker[0]), parts=both, kind="joined")

        assert [told.state for told in tell(boat, 0.1)] == ["withdrawn"]


class TestDry:
    @pytest.fixture
    def drying(self, tile, part, maker) -> Piece:
        parts.record_event(act=act(maker[0], at(-1)), part=part, kind="demoulded")
        Piece.objects.filter(pk=tile.pk).update(stage="drying", state="drying")
        return kits.again(tile)

    def test_is_told_as_perhaps_and_sends_to_touch_and_scale(self, drying, part) -> None:
        reckoned(part, bisque=about(0))

        (told,) = tell(drying)

        assert told.cause == "perhaps_dry_enough"
        assert told.title == "T07, tile, is perhaps dry enough to fire."
        assert "Feel its thickest part, or weigh it twice." in told.body
        assert "Damp ware bursts in the kiln." in told.body

    def test_is_not_told_where_the_room_cannot_dry_it(self, drying, part) -> None:
        kept = reckoned(part)
        kept.windows["bisque"] = dict.fromkeys(("p10_s", "p50_s", "p90_s")) | {"p_never": 1.0}
        kept.save()

        assert tell(drying, 1000) == []


class TestTellMakers:
    def test_keeps_to_its_own_studio(self, tile, part, other_studio) -> None:
        reckoned(part, demould=window(0, 10))

        assert reminding.tell_makers(studio=other_studio, at=NOW) == 0
        assert not Reminder.objects.exists()

    def test_leaves_reminders_of_other_causes_alone(self, tile, part, maker) -> None:
        about = reminders.About("mould_worn", "D", "mould_set", uuid7(), "M01", title="Worn.")
        reminders.set_for(studio=tile.studio, person=maker[0], about=about, due_at=NOW, at=NOW)

        (told,) = tell(tile)

        assert told.state == "due"

    def test_tells_of_a_press_that_was_told_before_it_opened(self, kit, maker) -> None:
        """From the press to the reminder by nothing but sweeps."""
        tile = kits.pressed_tile(kit, maker[0], at=at(0))
        hours = [0.01, 1, 2, 3, 4, 5, 6, 8, 10, 12]

        for hour in hours:
            forecasts.refresh(studio=tile.studio, at=at(hour))
            reminding.tell_makers(studio=tile.studio, at=at(hour))

        (told,) = Reminder.objects.all()
        opens = Forecast.objects.get(piece=tile).windows["demould"]["opens"]["p10_s"]
        assert abs(told.due_at.timestamp() - opens) < 1800
        assert NOW < told.due_at < at(12)
