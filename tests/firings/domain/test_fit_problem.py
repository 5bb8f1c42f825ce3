"""The size that ware has when it stands in a kiln."""

import pytest

from firings.domain.fit_problem import size_in_firing_mm


class TestSizeInFiring:
    @pytest.mark.parametrize(
        ("measured", "firing", "size"),
        [
            ("wet", "bisque", 94.0),
            ("wet", "glaze", 93.5),
            ("dry", "bisque", 100.0),
            ("dry", "glaze", 100.0 * 0.935 / 0.94),
            ("bisque", "glaze", 100.0),
            ("bisque", "bisque", 100.0),
        ],
    )
    def test_takes_only_the_shrinkage_that_has_happened_by_then(self, measured, firing, size):
        # 6.0 % from wet to dry, half a percent more in the bisque; arithmetic.
        found = size_in_firing_mm(100.0, measured, firing, dry_fraction=0.06, bisque_fraction=0.065)

        assert found == pytest.approx(size)

    def test_refuses_shrinkage_that_goes_down(self):
        with pytest.raises(ValueError, match="goes up"):
            size_in_firing_mm(100.0, "wet", "glaze", dry_fraction=0.06, bisque_fraction=0.05)
