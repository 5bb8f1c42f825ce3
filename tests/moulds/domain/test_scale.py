import pytest

from moulds.domain.scale import likely_meant_g


class TestLikelyMeantG:
    @pytest.mark.parametrize(
        ("said", "meant_g"),
        [
            (239.5, 2395.0),  # a digit too few
            (23950.0, 2395.0),  # one too many
            (2.395, 2395.0),  # kilograms
            (5.28, 2395.0),  # pounds: 5.28 x 453.59237
            (84.5, 2395.5),  # ounces: 84.5 x 28.349523
        ],
    )
    def test_undoes_the_usual_slips(self, said, meant_g):
        found = likely_meant_g(said, dry_g=2310.0, capacity_fraction=0.43)

        assert found == pytest.approx(meant_g, abs=0.1)

    def test_guesses_nothing_where_no_slip_fits(self):
        assert likely_meant_g(1200.0, dry_g=2310.0, capacity_fraction=0.43) is None
