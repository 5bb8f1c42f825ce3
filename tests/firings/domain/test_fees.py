"""Shares that add up."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain.fees import NothingToShare, box_litres, split


class TestSplit:
    def test_gives_the_odd_penny_to_the_largest_remainder(self):
        # £27.40 by 46.0, 31.5 and 22.5 l; the last share, 616.5p, is a tie. Arithmetic.
        assert split(2740, [46.0, 31.5, 22.5]) == (1260, 863, 617)

    @settings(deadline=None)
    @given(
        cost=st.integers(0, 100_000),
        volumes=st.lists(st.floats(0, 500), min_size=1, max_size=20).filter(lambda v: sum(v) > 0),
    )
    def test_adds_up_and_is_never_a_penny_off(self, cost, volumes):
        shares = split(cost, volumes)

        assert sum(shares) == cost
        for share, volume in zip(shares, volumes, strict=True):
            assert abs(share - cost * volume / sum(volumes)) < 1.0 + 1e-6

    def test_refuses_to_share_by_nothing(self):
        with pytest.raises(NothingToShare):
            split(2740, [0.0, 0.0])

    @pytest.mark.parametrize("volumes", [[-1.0, 2.0], [float("nan")], [float("inf")]])
    def test_refuses_volumes_that_are_none(self, volumes):
        with pytest.raises(ValueError, match="0 or more"):
            split(2740, volumes)


class TestBoxLitres:
    def test_multiplies(self):
        # 240 × 150 × 130 mm is 4.68 l, 286 cubic inches; arithmetic.
        assert box_litres(240.0, 150.0, 130.0) == pytest.approx(4.68)
        assert box_litres(240.0, 150.0, 130.0) * 1e6 / 25.4**3 == pytest.approx(286, abs=0.5)
