"""How moving air takes heat and vapour from a surface."""

import pytest

from pieces.domain.drying import exchange_in


class TestExchangeIn:
    @pytest.mark.parametrize(
        ("air_m_s", "expected"), [(0.1, 3.20), (0.3, 5.53), (1.0, 10.1), (3.0, 17.5)]
    )
    def test_is_that_of_a_flat_plate(self, air_m_s, expected):
        # Reckoned apart from this code, by Nu = 0.664 Re^1/2 Pr^1/3 over 0.15 m of air at 20 °C.
        assert exchange_in(air_m_s).convection_w_m2_k == pytest.approx(expected, rel=0.01)

    def test_is_never_less_than_still_air(self):
        still, hardly_moving = (exchange_in(air_m_s).convection_w_m2_k for air_m_s in (0.0, 0.05))
        assert still == hardly_moving == 3.0
