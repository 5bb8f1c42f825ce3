"""What a studio learns from its own looks, and that it can be told again from the facts."""

from datetime import timedelta

import numpy as np
import pytest

from pieces.actions import checks, forecasts, learning, parts, retractions, weighings
from pieces.domain.learning import FIRST, StudioBelief
from pieces.models import Forecast, Learned, Lesson, Part, Piece
from studio.actions import climate
from studio.domain.climate import Reading
from studio.models import Place
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits

pytestmark = pytest.mark.usefixtures("short_forecasts")

PRESSED = NOW - timedelta(hours=40)
LATER = NOW + timedelta(hours=1)


@pytest.fixture
def room(studio, maker) -> Place:
    """A room that is looked at every eight hours."""
    room = factories.place(studio, "Drying room")
    readings = [
        Reading(NOW - timedelta(hours=h), 14.0 + h % 5, 0.6 + h % 3 / 50) for h in range(1, 97, 8)
    ]
    climate.record(act=act(maker[0], NOW), place=room, readings=readings)
    return room


@pytest.fixture
def tiles(kit, maker, room) -> list[Piece]:
    """Three tiles, out of their moulds for a day."""
    found = []
    for number in range(3):
        at = PRESSED + timedelta(minutes=number)
        given = kits.given(kit.tile, f"T0{number + 1}")
        tile = kits.press(act(maker[0], at), kit.tile_mould, "tile", given, place=room).pieces[0]
        part = Part.objects.get(piece=tile)
        parts.record_event(
            act=act(maker[0], NOW - timedelta(hours=24)), part=part, kind="demoulded"
        )
        found.append(tile)
    return found


def feel(piece: Piece, maker, hours: float, word: str):
    at = NOW + timedelta(hours=hours)
    return checks.check(act=act(maker[0], at), pieces=[piece], feel=word)[0]


def put_on_scale(piece: Piece, maker, hours: float, mass_g: float) -> None:
    weighings.weigh(act=act(maker[0], NOW + timedelta(hours=hours)), piece=piece, mass_g=mass_g)


def learned(studio) -> StudioBelief:
    return learning.relearn(studio=studio, at=LATER).belief


def exchange(belief: StudioBelief) -> float:
    (at,) = (i for i, name in enumerate(belief.names) if name.startswith("exchange:"))
    return float(belief.mean[at])


class TestRelearn:
    def test_believes_what_it_did_at_first_while_nobody_looks(self, studio, tiles) -> None:
        assert learned(studio).digest() == FIRST.digest()
        assert not Lesson.objects.exists()

    def test_finds_a_room_brisk_where_clay_is_too_stiff_early(self, studio, tiles, maker) -> None:
        for tile in tiles:
            feel(tile, maker, -18.0, "too_stiff")

        belief = learned(studio)

        assert exchange(belief) > 0.1
        assert belief.pieces == 3

    def test_finds_a_room_slow_where_clay_stays_leather_hard(self, studio, tiles, maker) -> None:
        for tile in tiles:
            feel(tile, maker, -1.5, "leather_hard")

        assert exchange(learned(studio)) < -0.1

    def test_does_not_ask_again_while_nothing_was_written(
        self, studio, tiles, maker, django_assert_num_queries
    ) -> None:
        feel(tiles[0], maker, -18.0, "too_stiff")
        learned(studio)

        with django_assert_num_queries(2):
            learned(studio)

    def test_forgets_a_look_that_is_taken_back(self, studio, tiles, maker) -> None:
        check = feel(tiles[0], maker, -18.0, "too_stiff")
        learned(studio)

        retractions.retract(act=act(maker[0], NOW, corrects=check.entry_id), may_any=True)

        assert learned(studio).digest() == FIRST.digest()

    def test_takes_one_weighing_alone_for_nothing(self, studio, tiles, maker) -> None:
        put_on_scale(tiles[0], maker, -20.0, 560.0)

        assert learned(studio).digest() == FIRST.digest()

    def test_counts_the_looks_at_each_clay(self, studio, tiles, maker) -> None:
        put_on_scale(tiles[0], maker, -20.0, 560.0)
        put_on_scale(tiles[0], maker, -10.0, 530.0)
        feel(tiles[1], maker, -10.0, "leather_hard")

        lore = learning.relearn(studio=studio, at=LATER)

        assert list(lore.checks.values()) == [2]


class TestToldAgain:
    def looked_at(self, tiles, maker) -> None:
        feel(tiles[0], maker, -18.0, "leather_hard")
        put_on_scale(tiles[1], maker, -20.0, 560.0)
        feel(tiles[0], maker, -5.0, "too_stiff")
        put_on_scale(tiles[1], maker, -6.0, 520.0)
        feel(tiles[2], maker, -12.0, "soft")

    def test_comes_to_the_same_belief_from_the_facts_alone(self, studio, tiles, maker) -> None:
        self.looked_at(tiles, maker)
        forecasts.refresh(studio=studio, at=NOW)
        kept = learned(studio)

        again = learning.told_again(studio=studio, at=LATER)

        assert again.names == kept.names
        np.testing.assert_allclose(again.mean, kept.mean, rtol=1e-12, atol=1e-15)
        np.testing.assert_allclose(again.covariance, kept.covariance, rtol=1e-12, atol=1e-18)

    def test_does_not_know_in_which_order_it_was_told(self, studio, tiles, maker) -> None:
        feel(tiles[2], maker, -12.0, "soft")
        learned(studio)
        feel(tiles[0], maker, -18.0, "leather_hard")
        kept = learned(studio)

        again = learning.told_again(studio=studio, at=LATER)

        assert again.digest() == kept.digest()

    def test_takes_in_a_reading_that_came_late(self, studio, tiles, maker, room) -> None:
        self.looked_at(tiles, maker)
        before = learned(studio)
        late = Reading(NOW - timedelta(hours=13), 25.0, 0.35)
        climate.record(act=act(maker[0], NOW), place=room, readings=[late])

        kept = learned(studio)

        assert kept.digest() != before.digest()
        assert learning.told_again(studio=studio, at=LATER).digest() == kept.digest()

    def test_takes_in_a_reading_after_a_look_that_was_foreseen(
        self, studio, tiles, maker, room
    ) -> None:
        feel(tiles[0], maker, -0.2, "leather_hard")  # the last reading is an hour old
        learned(studio)
        reading = Reading(NOW + timedelta(hours=3), 24.0, 0.4)
        climate.record(act=act(maker[0], NOW + timedelta(hours=3)), place=room, readings=[reading])

        kept = learning.relearn(studio=studio, at=NOW + timedelta(hours=4)).belief

        again = learning.told_again(studio=studio, at=NOW + timedelta(hours=4))
        assert again.digest() == kept.digest()


class TestForecasts:
    def spread_s(self, piece: Piece) -> float:
        window = Forecast.objects.get(piece=piece).windows["bisque"]
        spread: float = window["p90_s"] - window["p10_s"]
        return spread

    def test_narrow_with_a_pieces_own_weighings(self, studio, tiles, maker) -> None:
        forecasts.refresh(studio=studio, at=NOW)
        before = self.spread_s(tiles[0])
        put_on_scale(tiles[0], maker, -20.0, 560.0)
        put_on_scale(tiles[0], maker, -2.0, 534.0)

        forecasts.refresh(studio=studio, at=NOW)

        assert self.spread_s(tiles[0]) < 0.75 * before

    def test_follow_what_other_pieces_taught_after_half_an_hour(self, studio, tiles, maker) -> None:
        forecasts.refresh(studio=studio, at=NOW)
        before = Forecast.objects.get(piece=tiles[2]).windows["bisque"]["p50_s"]
        for tile in tiles[:2]:
            feel(tile, maker, -18.0, "too_stiff")
        forecasts.refresh(studio=studio, at=NOW + timedelta(minutes=5))
        at_once = Forecast.objects.get(piece=tiles[2]).windows["bisque"]["p50_s"]

        forecasts.refresh(studio=studio, at=NOW + timedelta(minutes=40))

        after = Forecast.objects.get(piece=tiles[2])
        assert at_once == before
        assert after.windows["bisque"]["p50_s"] < before
        assert after.lore_key == Learned.objects.get(studio=studio).digest
        assert after.inputs["checks"] == 2
