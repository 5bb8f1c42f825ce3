"""The checker must find what is wrong: each test breaks a sound result in one way."""

from dataclasses import replace

import numpy as np
import pytest

from pieces.domain.drying import Batch, ensemble, faults, simulate
from tests.pieces.domain.drying.problems import HOUR_S, wall


@pytest.fixture(scope="module")
def run():
    return simulate(Batch((ensemble(wall(), 8),), 100 * HOUR_S, keeps_track=True))


def broken(run, **changes):
    sound = run.after[0]
    return replace(sound, state=replace(sound.state, **changes))


class TestFaults:
    def test_finds_none_in_a_sound_result(self, run) -> None:
        assert faults(run.after[0], run.tracks[0]) == []

    def test_finds_missing_water(self, run) -> None:
        state = run.after[0].state

        found = faults(broken(run, left_kg_m2=state.left_kg_m2 * (1 + 1e-9)))

        assert len(found) == 1
        assert "balance" in found[0]

    def test_finds_impossible_moisture(self, run) -> None:
        state = run.after[0].state
        below = state.moisture_kg_per_kg.copy()
        below[0, 0] = -0.01
        unknown = np.full_like(below, np.nan)

        assert "A moisture is not positive." in faults(broken(run, moisture_kg_per_kg=below))
        assert "A moisture is not a number." in faults(broken(run, moisture_kg_per_kg=unknown))

    def test_finds_plaster_beyond_full(self, run) -> None:
        found = faults(broken(run, saturation=np.full((2, 8), 1.1)))

        assert found == ["A plaster holds less than nothing or more than it can."]

    def test_finds_stages_out_of_order(self, run) -> None:
        crossed = run.after[0].state.crossed_s[[0, 2, 1, 3, 4]]

        assert "join_closes comes before join_opens." in faults(broken(run, crossed_s=crossed))

    def test_finds_instants_that_the_track_does_not_have(self, run) -> None:
        crossed = run.after[0].state.crossed_s.copy()
        crossed[3] += 5 * HOUR_S

        found = faults(broken(run, crossed_s=crossed), run.tracks[0])

        assert "shrinkage_ended is not where the track has it." in found

    def test_finds_instants_outside_the_time_reckoned(self, run) -> None:
        late = np.where(np.isfinite(run.after[0].state.crossed_s), 1e9, np.inf)

        found = faults(broken(run, crossed_s=late))

        assert "A stage is reached outside the time that was reckoned." in found

    def test_finds_drying_faster_than_the_room_allows(self, run) -> None:
        track = run.tracks[0]
        hasty = replace(track, mean_kg_per_kg=track.mean_kg_per_kg.copy())
        hasty.mean_kg_per_kg[1:] -= 0.05

        found = faults(run.after[0], hasty)

        assert any("faster" in sentence for sentence in found)
