"""The whole chain against an independent reckoning: scipy BDF with an exact balance of heat."""

import numpy as np
import pytest

from pieces.domain.drying import (
    Batch,
    Climate,
    Face,
    FaceEvent,
    Plaster,
    Problem,
    Section,
    Shape,
    simulate,
)
from pieces.domain.drying.draws import ensemble_of
from tests.pieces.domain.drying import independent
from tests.pieces.domain.drying.problems import HOUR_S, PRESSED, RED, hours_of

LIMITS = (0.205, 0.150, 0.110, 0.030)  # red earthenware: opens, closes, shrinkage, bisque
SHUT, OPEN = Face(0.0), Face(1.0)
CASES = {
    "wall of 8 mm": (Shape.FLAT, 8, [(0, 0.4)], [(0, 1.0)], None, 62),
    "wall of 20 mm on one face": (Shape.FLAT, 20, [(0, 0.0)], [(0, 1.0)], None, 500),
    "rod of 15 mm": (Shape.ROD, 15, [(0, 0.0)], [(0, 1.0)], None, 60),
    "lump of 50 mm": (Shape.LUMP, 50, [(0, 0.0)], [(0, 1.0)], None, 220),
    "wall four hours in its mould": (Shape.FLAT, 8, [(0, 1.0), (4, 0.4)], [(0, 1.0)], 0.1, 56),
    "wall covered and uncovered": (
        Shape.FLAT, 8, [(0, 0.4), (6, 0.12), (30, 0.4)], [(0, 1.0), (6, 0.3), (30, 1.0)], None, 84,
    ),
}  # fmt: skip


def compare(name: str) -> tuple[list[float], list[float]]:
    """Return hours to the four stages by the model and by the independent reckoning."""
    shape, thickest_mm, inner, outer, wetness, hours = CASES[name]
    section = Section(shape, thickest_mm / 1000.0)
    air_c, vapour = independent.weather(hours)
    climate = Climate(0, air_c, vapour, np.zeros(hours, bool), None)
    events = []
    for since in sorted({h for h, _ in inner} | {h for h, _ in outer}):
        against = wetness is not None and since == 0
        events.append(
            FaceEvent(
                since * HOUR_S,
                Face(independent.at(inner, since)),
                Face(0.0, Plaster(wetness)) if against else Face(independent.at(outer, since)),
            )
        )
    problem = Problem(RED, section, tuple(events), climate)
    run = simulate(Batch((ensemble_of(problem, PRESSED),), hours * HOUR_S))
    wall = independent.Wall(
        section.power,
        section.depth_m,
        [(h * HOUR_S, f) for h, f in inner],
        [(h * HOUR_S, f) for h, f in outer],
        air_c,
        vapour,
        plaster=None if wetness is None else (0.030, wetness),
        plaster_until_s=4 * HOUR_S if wetness is not None else 0.0,
    )
    at_s, mean, most = independent.moistures(wall, hours)
    expected = [
        independent.crossing_h(at_s, moisture, limit)
        for moisture, limit in zip((mean, mean, most, most), LIMITS, strict=True)
    ]
    return hours_of(run)[1:], expected


class TestSimulate:
    def test_agrees_with_an_independent_solver_on_a_wall(self) -> None:
        found, expected = compare("wall of 8 mm")

        assert all(np.isfinite(expected))
        assert found == pytest.approx(expected, rel=0.01)

    @pytest.mark.slow
    @pytest.mark.parametrize("name", [name for name in CASES if name != "wall of 8 mm"])
    def test_agrees_with_an_independent_solver(self, name: str) -> None:
        found, expected = compare(name)

        assert all(np.isfinite(expected))
        assert found == pytest.approx(expected, rel=0.015)
