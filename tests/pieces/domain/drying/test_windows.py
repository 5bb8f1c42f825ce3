import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pieces.domain.drying import (
    BODIES,
    Problem,
    Quantiles,
    ReadinessWindows,
    Stage,
    Window,
    advance,
    constant_climate,
    ensemble,
    latest,
    readiness,
    together,
)
from pieces.domain.drying.windows import NEVER, quantiles
from tests.pieces.domain.drying.problems import HOUR_S, OPEN, RED, WALL, wall

INF = math.inf


def equal(count: int) -> np.ndarray:
    return np.full(count, 1.0 / count)


def windows(*hours: float) -> ReadinessWindows:
    said = [Quantiles(h - 1, h, h + 1, 0.0) for h in hours]
    return ReadinessWindows(
        Window(said[0], said[2]), Window(said[1], said[2]), said[3], said[4], frozenset()
    )


class TestQuantiles:
    def test_are_those_of_numpy_where_all_is_reached(self) -> None:
        instants = np.random.default_rng(3).normal(size=64)

        found = quantiles(instants, equal(64))

        expected = np.quantile(instants, [0.1, 0.5, 0.9], method="hazen")
        assert (found.p10_s, found.p50_s, found.p90_s) == pytest.approx(tuple(expected))
        assert found.p_never == 0.0

    def test_rank_what_is_not_reached_last(self) -> None:
        found = quantiles(np.array([3.0, INF, 1.0, INF, 2.0, INF]), equal(6))

        assert (found.p10_s, found.p50_s, found.p90_s) == (pytest.approx(1.1), INF, INF)
        assert found.p_never == pytest.approx(0.5)

    def test_know_never(self) -> None:
        found = quantiles(np.full(8, INF), equal(8))

        assert found == NEVER
        assert not found.is_reached

    @settings(max_examples=40, deadline=None, derandomize=True)
    @given(st.lists(st.one_of(st.floats(0, 1e6), st.just(INF)), min_size=2, max_size=40))
    def test_rise_with_their_level(self, instants: list[float]) -> None:
        found = quantiles(np.array(instants), equal(len(instants)))

        assert found.p10_s <= found.p50_s <= found.p90_s

    def test_follow_the_weights(self) -> None:
        heavy = np.array([0.01, 0.01, 0.97, 0.01])

        found = quantiles(np.array([1.0, 2.0, 3.0, 4.0]), heavy)

        assert found.p50_s == pytest.approx(3.0, abs=0.05)


class TestReadiness:
    def test_orders_the_stages_of_an_open_wall(self) -> None:
        after = advance([ensemble(wall(hours=400))], 400 * HOUR_S)[0]

        found = readiness(after, 0.0)

        middles = [
            found.demould.opens.p50_s,
            found.join.opens.p50_s,
            found.join.closes.p50_s,
            found.shrinkage_ended.p50_s,
            found.bisque.p50_s,
        ]
        assert middles == sorted(middles)
        assert found.demould.closes == found.join.closes
        assert found.not_in_this_room == frozenset()

    def test_gives_no_date_that_the_rooms_air_cannot_keep(self) -> None:
        # red earthenware rests at 0.040 in air of 0.9, above the 0.030 asked for
        after = advance([ensemble(wall(humidity=0.9, hours=720))], 720 * HOUR_S)[0]

        found = readiness(after, 0.0)

        assert RED.at_rest_kg_per_kg(0.9) == pytest.approx(0.040, abs=5e-4)
        assert found.not_in_this_room == {Stage.BISQUE}
        assert found.bisque == NEVER
        assert found.shrinkage_ended.is_reached

    def test_gives_none_even_where_some_draw_slips_through(self) -> None:
        climate = constant_climate(0, 400 * HOUR_S, 20.0, 0.5)
        dry = advance([ensemble(Problem(RED, WALL, (OPEN,), climate))], 400 * HOUR_S)[0]
        damp = dry.with_climate(constant_climate(0, 400 * HOUR_S, 20.0, 0.92))

        assert readiness(damp, 0.0).not_in_this_room == {Stage.BISQUE}
        # what is past is past, whatever the air does next
        assert readiness(damp, 399 * HOUR_S).not_in_this_room == frozenset()

    def test_knows_nothing_of_later_times(self) -> None:
        made = ensemble(wall())

        with pytest.raises(ValueError, match="now_s"):
            readiness(made, 10.0)

    def test_is_later_for_porcelain_kept_wetter(self) -> None:
        bodies = ("porcelain", "terracotta_crank")
        problems = [wall(body=BODIES[name], hours=400) for name in bodies]

        porcelain, crank = (
            readiness(each, 0.0)
            for each in advance([ensemble(problem) for problem in problems], 400 * HOUR_S)
        )

        assert porcelain.bisque.p50_s > crank.bisque.p50_s


class TestLatest:
    def test_is_as_late_as_the_dampest_part(self) -> None:
        body, handle = windows(2, 4, 8, 12, 40), windows(1, 3, 6, 9, 50)

        found = latest([body, handle])

        assert found.join == body.join
        assert found.bisque == handle.bisque

    def test_keeps_what_one_part_cannot_reach(self) -> None:
        plain = windows(2, 4, 8, 12, 40)
        shut = ReadinessWindows(
            plain.demould, plain.join, plain.shrinkage_ended, NEVER, frozenset({Stage.BISQUE})
        )

        found = latest([plain, shut])

        assert found.bisque == NEVER
        assert found.not_in_this_room == {Stage.BISQUE}

    def test_refuses_a_piece_without_parts(self) -> None:
        with pytest.raises(ValueError, match="part"):
            latest([])


class TestTogether:
    def test_opens_with_the_last_and_closes_with_the_first(self) -> None:
        body, handle = windows(2, 4, 8, 12, 40), windows(1, 3, 6, 9, 50)

        found = together([body, handle])

        assert found.join.opens == body.join.opens
        assert found.join.closes == handle.join.closes
