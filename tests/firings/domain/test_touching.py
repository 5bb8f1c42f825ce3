"""Places that touch two things, against triangles and corners reckoned by hand."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from firings.domain.shapes import Footprint, Outline, Spot
from firings.domain.touching import crossings

DISC = Footprint(20.0, 20.0, is_round=True)
WIDE = Outline(False, 400.0, 400.0)


def nearest_mm(found, x: float, y: float) -> float:
    return float(np.hypot(found[0] - x, found[1] - y).min())


def touch_both(found, places, apart_mm: float) -> int:
    """Return how many of the crossings are this far from both places."""
    off = [np.abs(np.hypot(found[0] - x, found[1] - y) - apart_mm) < 1e-6 for x, y in places]
    return int((off[0] & off[1]).sum())


class TestCrossings:
    @pytest.mark.parametrize("gap", [0.0, 6.0])
    @pytest.mark.parametrize("corner", [(-1, -1), (-1, 1), (1, -1), (1, 1)])
    def test_of_a_tile_on_an_empty_shelf_are_its_corners(self, corner, gap):
        # The rim asks for no gap: a tile of 20 on 100 reaches 40 from the middle either way.
        found = crossings(Outline(False, 100.0, 100.0), [], Footprint(20.0, 20.0), gap)

        assert nearest_mm(found, 40.0 * corner[0], 40.0 * corner[1]) < 1e-6

    def test_of_a_disc_on_an_empty_round_shelf_lie_on_its_rim(self):
        found = crossings(Outline(True, 100.0, 100.0), [], DISC, 0.0)

        assert nearest_mm(found, 0.0, 40.0) < 1e-6
        assert nearest_mm(found, -40.0, 0.0) < 1e-6
        assert np.hypot(*found).max() == pytest.approx(40.0)

    @given(st.floats(20.0, 39.0), st.floats(0.0, 10.0), st.floats(0.0, math.pi))
    def test_of_a_third_disc_touch_both_others(self, apart, gap, way):
        # Two discs and the third make a triangle with two sides of 20 mm and the gap.
        along, aside = (math.cos(way), math.sin(way)), (-math.sin(way), math.cos(way))
        standing = [
            Spot(13.0 + off * along[0], 7.0 + off * along[1], DISC)
            for off in (-apart / 2.0, apart / 2.0)
        ]

        found = crossings(WIDE, standing, DISC, gap)

        rise = math.sqrt((20.0 + gap) ** 2 - (apart / 2.0) ** 2)
        for up in (rise, -rise):
            assert nearest_mm(found, 13.0 + up * aside[0], 7.0 + up * aside[1]) < 1e-5

    def test_touch_no_two_discs_too_far_apart(self):
        near, far = (
            touch_both(
                crossings(WIDE, [Spot(-off, 0.0, DISC), Spot(off, 0.0, DISC)], DISC, 0.0),
                [(-off, 0.0), (off, 0.0)],
                20.0,
            )
            for off in (15.0, 21.0)
        )

        assert near >= 2
        assert far == 0
