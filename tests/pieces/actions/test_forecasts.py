"""Forecasts: kept, carried on while the past stays what it was, reckoned anew when it does not."""

from datetime import timedelta
from typing import Any

import numpy as np
import pytest

from pieces.actions import (
    covers,
    forecast_questions,
    forecast_runs,
    forecasts,
    moves,
    retractions,
    weighings,
)
from pieces.domain.drying import Ensemble
from pieces.models import Forecast, Piece
from studio.actions import climate
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits
from tests.pieces.drying_room import PRESSED, demould, refreshed

pytestmark = pytest.mark.usefixtures("short_forecasts")


@pytest.fixture
def fresh(monkeypatch) -> list[str]:
    """The parts that were begun anew, by their section's key, since this was asked for."""
    begun: list[str] = []
    plain = forecast_runs.ensemble

    def noted(problem: Any, draws: int) -> Ensemble:
        begun.append(problem.key())
        return plain(problem, draws)

    monkeypatch.setattr(forecast_runs, "ensemble", noted)
    return begun


def anew(piece: Piece, hours: float) -> Forecast:
    Forecast.objects.filter(piece=piece).delete()
    return refreshed(piece, hours)


def figures(forecast: Forecast) -> np.ndarray:
    """Return the numbers of the stored state: theta, weights, moisture, saturation, crossings."""
    assert forecast.states is not None
    body = bytes(forecast.states).partition(b"\n")[2]
    return np.frombuffer(body, dtype="<f8")


def assert_same(found: Forecast, wanted: Forecast) -> None:
    assert found.advanced_to == wanted.advanced_to
    np.testing.assert_allclose(figures(found), figures(wanted), rtol=1e-12, atol=1e-15)


class TestRefresh:
    def test_carries_a_stored_state_to_where_one_unbroken_run_comes(
        self, tile, read, fresh
    ) -> None:
        first = refreshed(tile)
        for hours in (5.0, 12.5, 20.0):
            read(hours)
            refreshed(tile, hours + 0.6)
        assert len(fresh) == 1

        wanted = anew(tile, 20.6)

        found = Forecast.objects.get(piece=tile)
        assert first.advanced_to == NOW - timedelta(hours=1)
        assert found.advanced_to == NOW + timedelta(hours=20)
        assert found.windows == wanted.windows

    def test_equals_the_unbroken_run_in_every_figure(self, tile, read) -> None:
        refreshed(tile)
        for hours in (5.0, 12.5, 20.0):
            read(hours)
            found = refreshed(tile, hours + 0.6)

        assert_same(found, anew(tile, 20.6))

    def test_goes_on_only_through_measured_air(self, tile, read) -> None:
        found = refreshed(tile, 3.0)

        assert found.advanced_to == NOW - timedelta(hours=1)
        assert found.curve["past"][-1][0] <= found.advanced_to.timestamp()
        assert found.curve["ahead"][0][0] == found.advanced_to.timestamp()

    def test_takes_few_draws_until_somebody_looks(self, tile, maker, fresh) -> None:
        before = refreshed(tile)
        weighings.weigh(act=act(maker[0]), piece=tile, mass_g=600.0)

        found = refreshed(tile, 0.2)

        assert (before.draws, found.draws) == (
            forecast_questions.DRAWS_UNSEEN,
            forecast_questions.DRAWS,
        )
        assert found.inputs["draws"] == forecast_questions.DRAWS
        assert refreshed(tile, 0.4).computed_at == found.computed_at
        assert len(fresh) == 2

    def test_takes_many_draws_at_once_on_a_bigger_machine(self, tile, settings) -> None:
        settings.IS_EMBEDDED = False

        assert refreshed(tile).draws == forecast_questions.DRAWS

    def test_reckons_anew_when_a_reading_comes_late(self, tile, read, fresh) -> None:
        before = refreshed(tile)
        read(-6.0, air_c=24.0, humidity=0.35)

        found = refreshed(tile, 0.2)

        assert len(fresh) == 2
        assert np.any(figures(found) != figures(before))
        assert_same(found, anew(tile, 0.2))

    def test_reckons_anew_when_an_odd_reading_is_answered(self, tile, read, maker, fresh) -> None:
        odd = read(-6.0, air_c=61.2, humidity=0.6)
        refreshed(tile)
        climate.answer(act=act(maker[0]), reading=odd, answer="fahrenheit")

        found = refreshed(tile, 0.2)

        assert len(fresh) == 2
        assert_same(found, anew(tile, 0.2))

    def test_reckons_anew_when_a_reading_is_taken_back(self, tile, read, maker, fresh) -> None:
        wrong = read(-6.0, air_c=24.0, humidity=0.35)
        refreshed(tile)
        undo = act(maker[0], corrects=wrong.entry_id)
        retractions.retract(act=undo, may_any=False)

        found = refreshed(tile, 0.2)

        assert len(fresh) == 2
        assert_same(found, anew(tile, 0.2))

    def test_reckons_anew_when_it_turns_out_to_have_stood_elsewhere(
        self, tile, read, studio, maker, fresh
    ) -> None:
        shed = factories.place(studio, "Kiln shed")
        for hours in (-20, -10, -2):
            read(hours, air_c=5.0, humidity=0.9, place=shed)
        refreshed(tile)
        moved = act(maker[0], NOW - timedelta(hours=12))
        moves.move(act=moved, pieces=[tile], place=shed)

        found = refreshed(tile, 0.2)

        assert len(fresh) == 2
        assert "Readings of Kiln shed." in found.inputs["air"]
        assert_same(found, anew(tile, 0.2))

    def test_goes_on_in_the_air_of_where_it_is_moved(
        self, tile, read, studio, maker, fresh
    ) -> None:
        demould(tile, maker[0], -2.0)
        cellar = factories.place(studio, "Cellar")
        for hours in (-30.0, -20.0, -2.0):
            read(hours, air_c=10.0, humidity=0.9, place=cellar)
        before = refreshed(tile)
        moves.move(act=act(maker[0]), pieces=[tile], place=cellar)

        found = refreshed(tile, 0.1)

        assert len(fresh) == 1
        assert found.computed_at > before.computed_at
        late = [row.windows["shrinkage_ended"]["p50_s"] for row in (before, found)]
        assert late[1] > late[0]

    def test_goes_on_from_its_state_when_it_is_covered_later(
        self, tile, read, maker, fresh
    ) -> None:
        demould(tile, maker[0], -2.0)
        before = refreshed(tile)
        covers.cover(act=act(maker[0]), pieces=[tile], state="loose")

        found = refreshed(tile, 0.1)

        assert len(fresh) == 1
        assert found.key != before.key
        late = [row.windows["bisque"]["p50_s"] for row in (before, found)]
        assert late[1] is None or late[1] > late[0]
        assert_same(found, anew(tile, 0.1))

    def test_reckons_anew_when_it_is_told_late_of_a_cover(self, tile, maker, fresh) -> None:
        demould(tile, maker[0], -8.0)
        refreshed(tile)
        told = act(maker[0], NOW - timedelta(hours=6))
        covers.cover(act=told, pieces=[tile], state="sealed")

        found = refreshed(tile, 0.1)

        assert len(fresh) == 2
        assert_same(found, anew(tile, 0.1))

    def test_waits_half_an_hour_for_readings_but_not_for_acts(self, tile, read, maker) -> None:
        first = refreshed(tile)
        read(0.1)

        assert refreshed(tile, 0.2).computed_at == first.computed_at
        assert refreshed(tile, 0.6).computed_at == NOW + timedelta(hours=0.6)
        demould(tile, maker[0], 0.7)
        assert refreshed(tile, 0.75).computed_at == NOW + timedelta(hours=0.75)

    def test_leaves_alone_what_is_up_to_date(self, tile) -> None:
        refreshed(tile)

        assert forecasts.refresh(studio=tile.studio, at=NOW + timedelta(hours=5)) == 0
        assert forecasts.refresh(studio=tile.studio, at=NOW + timedelta(hours=7)) == 1

    def test_forgets_what_is_called_dry(self, tile, maker) -> None:
        refreshed(tile)
        demould(tile, maker[0], -1.0)
        Piece.objects.filter(pk=tile.pk).update(stage="drying", state="bone_dry")

        forecasts.refresh(studio=tile.studio, at=NOW)

        assert not Forecast.objects.filter(piece=tile).exists()

    def test_reckons_one_piece_and_leaves_the_others(self, kit, tile, maker, room) -> None:
        refreshed(tile)
        other = kits.press(
            act(maker[0], PRESSED), kit.body_mould, "body", kits.given(kit.boat), place=room
        ).pieces[0]

        count = forecasts.refresh(studio=tile.studio, at=NOW, piece_id=other.pk)

        assert count == 1
        assert Forecast.objects.filter(piece__in=[tile, other]).count() == 2

    def test_keeps_to_its_own_studio(self, tile, other_studio) -> None:
        assert forecasts.refresh(studio=other_studio, at=NOW) == 0

    def test_leaves_out_what_was_taken_back(self, kit, maker, room) -> None:
        pressed = act(maker[0], PRESSED)
        kits.press(pressed, kit.tile_mould, "tile", kits.given(kit.tile), place=room)
        retractions.retract(act=act(maker[0], corrects=pressed.id), may_any=False)

        assert forecasts.refresh(studio=kit.studio, at=NOW) == 0

    def test_asks_as_often_for_many_parts_as_for_few(
        self, kit, maker, room, tile, django_assert_max_num_queries
    ) -> None:
        for number in range(2, 8):
            kits.press(
                act(maker[0], PRESSED + timedelta(minutes=number)),
                kit.tile_mould,
                "tile",
                kits.given(kit.tile, f"T0{number}"),
                place=room,
            )
        refreshed(tile)

        with django_assert_max_num_queries(18):
            assert forecasts.refresh(studio=tile.studio, at=NOW + timedelta(hours=1)) == 0
