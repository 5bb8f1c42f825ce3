import pytest
from hypothesis import given
from hypothesis import strategies as st

from moulds.domain.lineage import from_fired


class TestFromFired:
    def test_gives_the_knop_of_the_yard(self):
        # Derived by hand: 32.0 x 0.884 = 28.288 and 32.0 / 0.884 = 36.199.
        sizes = from_fired(32.0, 0.116)

        assert round(sizes.would_become_mm, 1) == 28.3
        assert round(sizes.model_mm, 1) == 36.2

    @given(st.floats(0.1, 5000), st.floats(0, 0.4))
    def test_keeps_the_size_when_the_model_is_enlarged(self, fired_mm, shrinkage):
        sizes = from_fired(fired_mm, shrinkage)

        assert sizes.model_mm * (1 - shrinkage) == pytest.approx(fired_mm)
        assert sizes.would_become_mm <= fired_mm <= sizes.model_mm

    @pytest.mark.parametrize(("fired_mm", "shrinkage"), [(0, 0.1), (32, 1.0), (32, -0.1)])
    def test_refuses_what_cannot_be(self, fired_mm, shrinkage):
        with pytest.raises(ValueError, match="fired_mm"):
            from_fired(fired_mm, shrinkage)
