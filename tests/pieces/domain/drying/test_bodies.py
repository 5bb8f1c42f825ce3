from dataclasses import replace

import pytest

from pieces.domain.drying import BODIES, Mark
from pieces.domain.drying.bodies import UNITS


class TestBody:
    def test_has_the_density_of_wet_clay(self) -> None:
        # 1 / (1/2650 + 0.25/1000) by hand
        assert BODIES["red_earthenware"].dry_density_kg_m3 == pytest.approx(1593.985, rel=1e-6)

    @pytest.mark.parametrize(
        ("humidity", "moisture"),
        [(0.3, 0.010245), (0.5, 0.015), (0.8, 0.027991), (0.95, 0.056433)],
    )
    def test_rests_on_its_isotherm(self, humidity: float, moisture: float) -> None:
        # Oswin's X = A (a/(1-a))^B by hand
        found = BODIES["red_earthenware"].at_rest_kg_per_kg(humidity)

        assert found == pytest.approx(moisture, rel=1e-4)

    def test_lies_on_both_sides_of_published_leather_hard(self) -> None:
        # "about 15 %" on the wet basis (Wikipedia, Leather-hard) is 0.15/0.85 of dry clay
        red = BODIES["red_earthenware"]

        assert red.leather_closes_kg_per_kg < 0.15 / 0.85 < red.leather_opens_kg_per_kg

    @pytest.mark.parametrize("name", list(BODIES))
    def test_marks_every_figure(self, name: str) -> None:
        figures = BODIES[name].figures()

        assert [figure[0] for figure in figures] == list(UNITS)
        assert all(isinstance(mark, Mark) and mark.words for *_, mark in figures)

    def test_refuses_figures_no_clay_has(self) -> None:
        red = BODIES["red_earthenware"]
        with pytest.raises(ValueError, match="diffusivity_m2_s"):
            replace(red, diffusivity_m2_s=0.0)
        with pytest.raises(ValueError, match="fall"):
            replace(red, bisque_kg_per_kg=0.2)
        with pytest.raises(ValueError, match="humidity_fraction"):
            red.at_rest_kg_per_kg(1.0)
