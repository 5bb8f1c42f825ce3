from datetime import timedelta

import pytest

from moulds.actions.weighings import ImpossibleWeight
from tests import factories
from tests.moulds import yard


@pytest.fixture
def dry(maker, casting):
    yard.weighed(maker[0], casting, 2310, at=factories.NOW - timedelta(days=9), is_dry=True)
    casting.refresh_from_db()
    return casting


class TestWeigh:
    def test_gives_the_free_water_of_what_it_can_hold(self, maker, dry):
        # 85 g of 43 % of 2310 g.
        assert yard.weighed(maker[0], dry, 2395).free_water_fraction == pytest.approx(
            0.0856, abs=1e-4
        )

    def test_keeps_a_weight_without_a_dry_one(self, maker, casting):
        on_scale = yard.weighed(maker[0], casting, 2395)

        assert on_scale.free_water_fraction is None
        assert on_scale.casting.now_g == 2395

    @pytest.mark.parametrize(
        ("mass_g", "meant"), [(239.5, "Did you mean 2395 g"), (23950, "Did you mean 2395 g")]
    )
    def test_refuses_a_slip_and_asks_for_what_was_meant(self, maker, dry, mass_g, meant):
        with pytest.raises(ImpossibleWeight, match=meant) as refused:
            yard.weighed(maker[0], dry, mass_g)

        assert refused.value.facts["errors"][0]["pointer"] == "#/mass_g"

    def test_refuses_a_mould_lighter_than_dry(self, maker, dry):
        with pytest.raises(ImpossibleWeight, match="less than its dry weight"):
            yard.weighed(maker[0], dry, 1200)

    def test_refuses_another_dry_weight_altogether(self, maker, dry):
        with pytest.raises(ImpossibleWeight, match="Dry it weighed 2310 g before"):
            yard.weighed(maker[0], dry, 3000, is_dry=True)

    def test_refuses_a_dry_weight_above_the_wet_one(self, maker, casting):
        yard.weighed(maker[0], casting, 2310)

        with pytest.raises(ImpossibleWeight):
            yard.weighed(maker[0], casting, 2900, is_dry=True)

    def test_lets_an_earlier_weighing_arrive_late(self, maker, dry):
        yard.weighed(maker[0], dry, 2340)
        late = yard.weighed(maker[0], dry, 2500, at=factories.NOW - timedelta(days=1))

        assert late.casting.now_g == 2340
