import pytest

from pieces.domain.drying.grid import grid


class TestGrid:
    @pytest.mark.parametrize("power", [0, 1, 2])
    @pytest.mark.parametrize("nodes", [5, 9, 17])
    def test_fills_the_whole_body(self, power: int, nodes: int) -> None:
        cells = grid(power, nodes)

        assert cells.volume.sum() == pytest.approx(1.0 / (power + 1), rel=1e-12)
        assert cells.share.sum() == pytest.approx(1.0, rel=1e-12)

    def test_mirrors_a_wall(self) -> None:
        cells = grid(0, 9)

        assert cells.at == pytest.approx(1.0 - cells.at[::-1], abs=1e-15)
        assert cells.volume == pytest.approx(cells.volume[::-1], abs=1e-15)

    def test_is_finest_at_the_face(self) -> None:
        rod = grid(1, 9)

        assert rod.at[-1] - rod.at[-2] < 0.4 * (rod.at[1] - rod.at[0])
