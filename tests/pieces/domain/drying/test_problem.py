from dataclasses import replace

import numpy as np
import pytest

from pieces.domain.drying import (
    Belief,
    Ensemble,
    Exchange,
    Section,
    Shape,
    advance,
    constant_climate,
    ensemble,
    out_of_mould,
)
from tests.pieces.domain.drying.problems import HOUR_S, OPEN, WALL, wall

COVERED = out_of_mould(30 * HOUR_S, WALL)


class TestProblem:
    def test_has_one_key_in_any_air(self) -> None:
        assert wall(humidity=0.4).key() == wall(humidity=0.8).key()

    @pytest.mark.parametrize(
        "other",
        [
            wall(section=Section(Shape.FLAT, 0.009)),
            wall((OPEN, COVERED)),
            replace(wall(), belief=Belief.independent((0.3, 0.3, 0.01, 0.3, 0.3))),
            replace(wall(), exchange=Exchange(4.0)),
        ],
    )
    def test_has_another_key_for_another_question(self, other) -> None:
        assert other.key() != wall().key()

    def test_shares_its_key_up_to_a_later_event(self) -> None:
        assert wall((OPEN, COVERED)).key(30 * HOUR_S) == wall().key(30 * HOUR_S)

    def test_draws_alike_for_pieces_alike(self) -> None:
        assert wall().seed() == wall((OPEN, COVERED)).seed()
        assert wall().seed() != wall(section=Section(Shape.ROD, 0.008)).seed()


class TestEnsemble:
    def test_comes_back_from_bytes(self) -> None:
        there = advance([ensemble(wall(), 8)], 20 * HOUR_S)[0]

        back = Ensemble.from_bytes(there.problem, there.to_bytes())

        assert back.advanced_to_s == there.advanced_to_s
        assert np.array_equal(back.theta, there.theta)
        assert np.array_equal(back.weights, there.weights)
        for field in ("moisture_kg_per_kg", "saturation", "crossed_s", "left_kg_m2"):
            assert np.array_equal(getattr(back.state, field), getattr(there.state, field))

    def test_goes_on_under_a_cover_laid_later(self) -> None:
        there = advance([ensemble(wall(), 8)], 20 * HOUR_S)[0]
        covered = wall((OPEN, COVERED))

        resumed = advance([Ensemble.from_bytes(covered, there.to_bytes())], 60 * HOUR_S)[0]

        anew = advance([ensemble(covered, 8)], 60 * HOUR_S)[0]
        assert resumed.state.moisture_kg_per_kg == pytest.approx(
            anew.state.moisture_kg_per_kg, abs=1e-12
        )

    def test_is_refused_to_another_past(self) -> None:
        kept = advance([ensemble(wall(), 8)], 40 * HOUR_S)[0].to_bytes()

        with pytest.raises(ValueError, match="another problem"):
            Ensemble.from_bytes(wall((OPEN, COVERED)), kept)

    def test_scales_its_weights(self) -> None:
        made = ensemble(wall(), 4)

        heavy = made.with_weights(np.array([1.0, 1.0, 2.0, 0.0]))

        assert heavy.weights == pytest.approx([0.25, 0.25, 0.5, 0.0])

    @pytest.mark.parametrize("weights", [np.zeros(4), np.array([1.0, 1.0, 1.0, -1.0]), np.ones(3)])
    def test_refuses_weights_that_are_none(self, weights: np.ndarray) -> None:
        with pytest.raises(ValueError, match="weights"):
            ensemble(wall(), 4).with_weights(weights)

    def test_meets_new_air_where_it_stands(self) -> None:
        there = advance([ensemble(wall(), 8)], 20 * HOUR_S)[0]
        damper = constant_climate(0, 60 * HOUR_S, 20.0, 0.8)

        wet, dry = advance([there.with_climate(damper), there], 60 * HOUR_S)

        assert np.all(wet.state.moisture_kg_per_kg > dry.state.moisture_kg_per_kg)


class TestExchange:
    def test_refuses_no_exchange(self) -> None:
        with pytest.raises(ValueError, match="convection"):
            Exchange(0.0)
