"""The compiled march against the plain one, over problems that hypothesis makes."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pieces.domain.drying import (
    BODIES,
    Batch,
    Belief,
    Cover,
    Ensemble,
    Face,
    FaceEvent,
    Plaster,
    Problem,
    Section,
    Shape,
    constant_climate,
    engine,
    ensemble,
    faults,
    in_mould,
    out_of_mould,
    simulate,
)
from pieces.domain.drying.checks import mass_error
from pieces.domain.drying.march import March
from pieces.domain.drying.march import march as plain
from tests.pieces.domain.drying.problems import HOUR_S, wall

AGREED = 1e-9


@pytest.fixture(scope="module")
def compiled() -> March:
    return engine.compiled()


@st.composite
def problems(draw: st.DrawFn) -> Problem:
    """Any section in any of six bodies, in and out of plaster, covered and uncovered."""
    section = Section(
        draw(st.sampled_from(Shape)),
        draw(st.floats(0.002, 0.060)),
        inside_factor=draw(st.sampled_from([0.0, 0.1, 0.4, 1.0])),
        open_fraction=draw(st.sampled_from([0.3, 1.0])),
    )
    at_s = draw(st.floats(0.0, 20 * HOUR_S))
    events: list[FaceEvent] = []
    if draw(st.booleans()):
        events.append(in_mould(at_s, section, Plaster(draw(st.floats(0.0, 1.0)))))
        at_s += draw(st.floats(0.1, 30.0)) * HOUR_S
    for cover in draw(st.lists(st.sampled_from(Cover), min_size=1, max_size=4)):
        events.append(out_of_mould(at_s, section, cover=cover))
        at_s += draw(st.floats(0.1, 40.0)) * HOUR_S
    climate = constant_climate(
        0, 200 * HOUR_S, draw(st.floats(5.0, 35.0)), draw(st.floats(0.2, 0.98))
    )
    return Problem(BODIES[draw(st.sampled_from(list(BODIES)))], section, tuple(events), climate)


def assert_agree(found: Ensemble, wanted: Ensemble, within: float = AGREED) -> None:
    """Compare states, and instants by the time since the pressing."""
    for name in ("moisture_kg_per_kg", "saturation", "left_kg_m2"):
        np.testing.assert_allclose(
            getattr(found.state, name), getattr(wanted.state, name), rtol=within, atol=within
        )
    began = wanted.problem.pressed_at_s
    np.testing.assert_allclose(
        found.state.crossed_s - began, wanted.state.crossed_s - began, rtol=within
    )


class TestMarch:
    @given(made=st.lists(problems(), min_size=1, max_size=6), hours=st.floats(1.0, 180.0))
    @settings(max_examples=40, deadline=None)
    def test_agrees_with_the_plain_one(
        self, compiled: March, made: list[Problem], hours: float
    ) -> None:
        batch = Batch(tuple(ensemble(each, 4) for each in made), hours * HOUR_S)

        found, wanted = simulate(batch, compiled), simulate(batch, plain)

        for one, other in zip(found.after, wanted.after, strict=True):
            assert_agree(one, other)
        assert found.unsettled == wanted.unsettled

    def test_agrees_on_the_way(self, compiled: March, mixed: list[Ensemble]) -> None:
        batch = Batch(tuple(mixed), 200 * HOUR_S, keeps_track=True)

        found, wanted = simulate(batch, compiled), simulate(batch, plain)

        for one, other in zip(found.tracks, wanted.tracks, strict=True):
            np.testing.assert_array_equal(one.at_s, other.at_s)
            np.testing.assert_allclose(one.mean_kg_per_kg, other.mean_kg_per_kg, atol=AGREED)
            np.testing.assert_allclose(one.dampest_kg_per_kg, other.dampest_kg_per_kg, atol=AGREED)

    def test_goes_on_from_a_stored_state_as_if_it_had_not_stopped(
        self, compiled: March, mixed: list[Ensemble]
    ) -> None:
        unbroken = simulate(Batch(tuple(mixed), 200 * HOUR_S), compiled).after

        halfway = simulate(Batch(tuple(mixed), 100 * HOUR_S), compiled).after
        kept = tuple(Ensemble.from_bytes(each.problem, each.to_bytes()) for each in halfway)
        resumed = simulate(Batch(kept, 200 * HOUR_S), compiled).after

        for straight, stopped in zip(unbroken, resumed, strict=True):
            assert_agree(stopped, straight, within=1e-12)

    def test_gives_a_lane_the_same_answer_whatever_its_neighbours(
        self, compiled: March, mixed: list[Ensemble]
    ) -> None:
        together = simulate(Batch(tuple(mixed), 150 * HOUR_S), compiled).after

        for place, each in enumerate(mixed):
            alone = simulate(Batch((each,), 150 * HOUR_S), compiled).after[0]
            assert_agree(together[place], alone, within=1e-12)

    def test_balances_water_and_finds_no_fault(
        self, compiled: March, mixed: list[Ensemble]
    ) -> None:
        run = simulate(Batch(tuple(mixed), 200 * HOUR_S, keeps_track=True), compiled)

        pairs = zip(run.after, run.tracks, strict=True)
        assert [faults(after, track) for after, track in pairs] == [[]] * len(mixed)
        assert max(mass_error(each) for each in run.after) < 1e-12
        assert run.unsettled == 0

    def test_leaves_what_is_never_reached_without_an_instant(self, compiled: March) -> None:
        at_rest_known = Belief.independent((0.35, 0.45, 0.004, 0.30, 0.0))
        damp = replace(wall(humidity=0.95, hours=720), belief=at_rest_known)
        batch = Batch((ensemble(damp, 8),), 720 * HOUR_S)

        crossed = simulate(batch, compiled).after[0].state.crossed_s

        assert np.all(np.isinf(crossed[4]))  # bisque: clay rests at 0.056 in this air
        np.testing.assert_array_equal(
            np.isinf(crossed), np.isinf(simulate(batch, plain).after[0].state.crossed_s)
        )

    def test_does_nothing_in_no_time(self, compiled: March) -> None:
        made = ensemble(wall(), 4)

        found = simulate(Batch((made,), -HOUR_S, keeps_track=True), compiled)

        np.testing.assert_array_equal(
            found.after[0].state.moisture_kg_per_kg, made.state.moisture_kg_per_kg
        )
        assert np.all(np.isinf(found.after[0].state.crossed_s))

    def test_takes_states_whose_rows_do_not_lie_whole_in_memory(self, compiled: March) -> None:
        made = ensemble(wall(), 4)
        turned = replace(
            made,
            state=replace(
                made.state, moisture_kg_per_kg=np.asfortranarray(made.state.moisture_kg_per_kg)
            ),
        )

        found = simulate(Batch((turned,), 50 * HOUR_S), compiled).after[0]

        assert_agree(found, simulate(Batch((made,), 50 * HOUR_S), compiled).after[0], within=1e-15)

    def test_lets_a_shut_wall_keep_its_water(self, compiled: March) -> None:
        shut = FaceEvent(0.0, inner=Face(0.0), outer=Face(0.0))

        after = simulate(Batch((ensemble(wall((shut,)), 4),), 50 * HOUR_S), compiled).after[0]

        assert np.abs(after.state.moisture_kg_per_kg - after.theta[2]).max() < 1e-14
