"""What a forecast rests on is told with it; what a room cannot bring about is an answer."""

from datetime import datetime, timedelta

import pytest

from moulds.actions import weighings as mould_weighings
from pieces.actions import forecast_questions
from pieces.queries import readiness
from studio.models import Place
from tests import factories
from tests.factories import NOW, act
from tests.pieces import kit as kits
from tests.pieces.drying_room import PRESSED, demould, refreshed

pytestmark = pytest.mark.usefixtures("short_forecasts")


class TestInputs:
    def test_travel_with_what_was_assumed(self, tile, kit, read) -> None:
        plain = refreshed(tile)

        assert plain.inputs["model"] == "drying-2"
        assert plain.inputs["draws"] == 64
        assert plain.inputs["air"] == ["Readings of Drying room."]
        assert plain.inputs["readings"] == 12
        assert plain.inputs["last_reading_at"] == "2026-10-31T08:00:00+00:00"
        assert plain.inputs["thickest_mm"] == 10.0
        assert plain.inputs["assumed"] == ["mould_water"]  # nobody weighed the mould

    def test_say_how_wet_the_mould_was(self, tile, kit, maker) -> None:
        casting = kit.tile_mould.casting
        for mass_g, is_dry, hours in ((2000.0, True, 60), (2086.0, False, 17)):
            mould_weighings.weigh(
                act=act(maker[0], NOW - timedelta(hours=hours)),
                casting=casting,
                mass_g=mass_g,
                is_dry=is_dry,
            )

        found = refreshed(tile)

        # 86 g of 0.43 x 2000 g, the capacity at 70:100
        assert found.inputs["mould_free_water_fraction"] == pytest.approx(0.1)
        assert found.inputs["assumed"] == []

    def test_call_the_studio_s_usual_air_assumed(self, kit, maker) -> None:
        piece = kits.pressed_tile(kit, maker[0])

        found = refreshed(piece)

        assert "air" in found.inputs["assumed"]
        assert "are assumed" in found.inputs["air"][0]
        assert readiness.drying_of(piece).assumed == ("air", "mould_water")


class TestDampRoom:
    @pytest.fixture
    def cellar(self, studio, read) -> Place:
        cellar = factories.place(studio, "Cellar")
        for hours in range(-40, 0, 8):
            read(hours, air_c=12.0, humidity=0.95, place=cellar)
        return cellar

    def test_is_an_answer_and_never_a_date(self, kit, maker, cellar) -> None:
        given = kits.given(kit.tile)
        pressed = act(maker[0], PRESSED)
        tile = kits.press(pressed, kit.tile_mould, "tile", given, place=cellar).pieces[0]
        demould(tile, maker[0], -2.0)

        found = refreshed(tile)

        assert found.windows["not_in_this_room"] == ["bisque"]
        assert found.windows["bisque"] == {
            "p10_s": None,
            "p50_s": None,
            "p90_s": None,
            "p_never": 1.0,
        }
        assert found.windows["demould"]["opens"]["p50_s"] is not None
        horizon: datetime = NOW + forecast_questions.HORIZON
        assert found.curve["ahead"][-1][0] == horizon.timestamp()
        assert found.curve["ahead"][-1][2] > 0.0
