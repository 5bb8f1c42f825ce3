"""Laws of the solver: order in time, water balance, continuation, symmetry, bounds."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pieces.domain.drying import (
    Batch,
    Ensemble,
    Exchange,
    Face,
    FaceEvent,
    Plaster,
    Problem,
    Section,
    Shape,
    advance,
    constant_climate,
    faults,
    in_mould,
    simulate,
)
from pieces.domain.drying.checks import mass_error
from pieces.domain.drying.draws import ensemble_of
from pieces.domain.drying.surface import plaster_at_rest
from tests.pieces.domain.drying.problems import (
    HOUR_S,
    PRESSED,
    RED,
    SECTIONS,
    WALL,
    carried,
    hours_of,
    wall,
)


class TestSimulate:
    def test_is_of_second_order_in_time(self) -> None:
        def mean_after(slower: float) -> float:
            body = replace(RED, diffusivity_m2_s=RED.diffusivity_m2_s / slower)
            exchange = Exchange(3.0 / slower, 5.5 / slower)  # the same course, told more slowly
            hours = round(24 * slower)
            climate = constant_climate(0, (12 + hours) * HOUR_S, 20.0, 0.5)
            event = FaceEvent(0.0, Face(0.4), Face(1.0))
            made = ensemble_of(Problem(body, WALL, (event,), climate, exchange), PRESSED)
            made = replace(made, advanced_to_s=12 * 3600)
            run = simulate(Batch((made,), (12 + hours) * HOUR_S, keeps_track=True))
            return float(run.tracks[0].mean_kg_per_kg[-1, 0])

        exact = mean_after(64.0)
        errors = [abs(mean_after(slower) - exact) for slower in (0.5, 1.0, 2.0, 4.0)]

        orders = np.log2(np.array(errors[:-1]) / np.array(errors[1:]))
        assert orders[1:] == pytest.approx([2.0, 2.0], abs=0.1)

    def test_balances_water_to_round_off(self, mixed: list[Ensemble]) -> None:
        run = simulate(Batch(tuple(mixed), 200 * HOUR_S, keeps_track=True))

        assert max(mass_error(each) for each in run.after) < 1e-12
        assert run.unsettled == 0

    def test_finds_no_fault_with_itself(self, mixed: list[Ensemble]) -> None:
        run = simulate(Batch(tuple(mixed), 200 * HOUR_S, keeps_track=True))

        pairs = zip(run.after, run.tracks, strict=True)
        assert [faults(after, track) for after, track in pairs] == [[]] * len(mixed)

    def test_goes_on_from_a_stored_state_as_if_it_had_not_stopped(
        self, mixed: list[Ensemble]
    ) -> None:
        unbroken = advance(mixed, 200 * HOUR_S)

        halfway = advance(mixed, 100 * HOUR_S)
        kept = [Ensemble.from_bytes(each.problem, each.to_bytes()) for each in halfway]
        resumed = advance(kept, 200 * HOUR_S)

        for straight, stopped in zip(unbroken, resumed, strict=True):
            assert stopped.advanced_to_s == straight.advanced_to_s
            for field in ("moisture_kg_per_kg", "saturation", "left_kg_m2"):
                was, now = getattr(straight.state, field), getattr(stopped.state, field)
                assert now == pytest.approx(was, abs=1e-12)
            reached = np.isfinite(straight.state.crossed_s)
            assert np.array_equal(reached, np.isfinite(stopped.state.crossed_s))
            late = stopped.state.crossed_s[reached] - straight.state.crossed_s[reached]
            assert np.max(np.abs(late), initial=0.0) < 1e-5  # seconds

    def test_gives_a_piece_the_same_answer_alone_as_in_company(self, mixed: list[Ensemble]) -> None:
        together = advance(mixed, 100 * HOUR_S)

        for each, beside in zip(mixed, together, strict=True):
            alone = advance([each], 100 * HOUR_S)[0]
            assert alone.state.moisture_kg_per_kg == pytest.approx(
                beside.state.moisture_kg_per_kg, abs=1e-12
            )

    def test_leaves_alone_what_is_already_there(self, mixed: list[Ensemble]) -> None:
        there = advance(mixed, 50 * HOUR_S)

        again = advance(there, 20 * HOUR_S)

        for was, now in zip(there, again, strict=True):
            assert now.advanced_to_s == was.advanced_to_s
            assert np.array_equal(now.state.moisture_kg_per_kg, was.state.moisture_kg_per_kg)

    def test_does_not_care_which_face_is_called_inner(self) -> None:
        there = carried(wall((FaceEvent(0.0, Face(0.4), Face(1.0)),)), 100)
        mirrored = carried(wall((FaceEvent(0.0, Face(1.0), Face(0.4)),)), 100)

        assert hours_of(mirrored) == pytest.approx(hours_of(there), rel=1e-9)

    def test_does_not_care_which_face_lies_on_plaster(self) -> None:
        against = Face(0.0, Plaster(0.2))
        there = carried(wall((FaceEvent(0.0, against, Face(1.0)),)), 100)
        mirrored = carried(wall((FaceEvent(0.0, Face(1.0), against),)), 100)

        assert hours_of(mirrored)[:4] == pytest.approx(hours_of(there)[:4], rel=1e-9)

    def test_changes_nothing_behind_shut_faces(self) -> None:
        run = carried(wall((FaceEvent(0.0, Face(0.0), Face(0.0)),)), 100)

        assert run.after[0].state.moisture_kg_per_kg == pytest.approx(0.25, abs=1e-14)

    def test_changes_nothing_at_rest_with_the_air(self) -> None:
        theta = np.array([[0.0], [0.0], [RED.at_rest_kg_per_kg(0.8)], [0.0], [0.0]])
        made = ensemble_of(wall(humidity=0.8), theta)

        after = advance([made], 100 * HOUR_S)[0]

        assert after.state.moisture_kg_per_kg == pytest.approx(theta[2, 0], abs=1e-12)

    def test_shares_water_between_clay_and_closed_plaster(self) -> None:
        shut = FaceEvent(0.0, Face(0.0), Face(0.0, Plaster(0.3, outside_factor=0.0)))

        state = carried(wall((shut,)), 48, nodes=33).after[0].state

        clay = RED.dry_density_kg_m3 * 0.008
        mean = 0.25 - state.left_kg_m2[0] / clay
        water = clay * mean + 0.030 * 435.0 * state.saturation[1, 0]
        assert water == pytest.approx(clay * 0.25 + 0.030 * 435.0 * 0.3, rel=1e-12)
        # regression values of an earlier kernel of the same equations
        assert state.saturation[1, 0] == pytest.approx(0.3780, rel=0.01)
        assert mean == pytest.approx(0.1703, rel=0.01)
        rest, _ = plaster_at_rest(state.moisture_kg_per_kg[-1])
        assert rest[0] - state.saturation[1, 0] == pytest.approx(0.0, abs=2e-4)

    def test_keeps_the_water_of_a_mould_that_is_covered(self) -> None:
        section = WALL
        plain = (in_mould(0.0, section, Plaster(0.2)),)
        told_twice = (*plain, in_mould(3 * HOUR_S, section, Plaster(None)))

        once, twice = carried(wall(plain), 24), carried(wall(told_twice), 24)

        assert hours_of(twice)[0] == pytest.approx(hours_of(once)[0], rel=1e-3)
        # quarter-hour steps go on for longer in one of the two, hence not equal
        assert twice.after[0].state.saturation[1] == pytest.approx(
            once.after[0].state.saturation[1], rel=1e-3
        )

    def test_refuses_air_that_ends_too_soon(self) -> None:
        with pytest.raises(ValueError, match="climate"):
            carried(wall(hours=10), 11)

    def test_refuses_another_number_of_instants(self, mixed: list[Ensemble]) -> None:
        with pytest.raises(ValueError, match="until_s"):
            simulate(Batch(tuple(mixed), (1.0,)))

    @settings(max_examples=8, deadline=None, derandomize=True)
    @given(thinner_mm=st.floats(4.0, 15.0), more_mm=st.floats(0.5, 10.0), air=st.floats(0.3, 0.7))
    def test_dries_the_thicker_later(self, thinner_mm: float, more_mm: float, air: float) -> None:
        def hours(thickest_mm: float) -> list[float]:
            section = Section(Shape.FLAT, thickest_mm / 1000.0)
            return hours_of(carried(wall(section=section, humidity=air, hours=400), 400))

        thin, thick = hours(thinner_mm), hours(thinner_mm + more_mm)

        assert all(b >= a for a, b in zip(thin, thick, strict=True))

    @settings(max_examples=8, deadline=None, derandomize=True)
    @given(air_c=st.floats(5.0, 30.0), drier=st.floats(0.2, 0.7), more=st.floats(0.02, 0.25))
    def test_dries_later_in_damper_air(self, air_c: float, drier: float, more: float) -> None:
        dry, damp = (
            hours_of(carried(wall(air_c=air_c, humidity=humidity, hours=300), 300))
            for humidity in (drier, drier + more)
        )

        assert all(b >= a for a, b in zip(dry, damp, strict=True))

    @settings(max_examples=10, deadline=None, derandomize=True)
    @given(
        section=st.sampled_from(SECTIONS),
        air_c=st.floats(5.0, 35.0),
        humidity=st.floats(0.1, 0.95),
        openness=st.floats(0.02, 1.0),
    )
    def test_never_dries_past_the_air_and_never_takes_water_up(
        self, section: Section, air_c: float, humidity: float, openness: float
    ) -> None:
        event = FaceEvent(0.0, Face(openness), Face(openness))
        problem = wall((event,), section=section, air_c=air_c, humidity=humidity, hours=240)

        run = carried(problem, 240)

        rest = RED.at_rest_kg_per_kg(humidity)
        assert run.after[0].state.moisture_kg_per_kg.min() >= rest - 1e-7
        assert np.all(np.diff(run.tracks[0].mean_kg_per_kg[:, 0]) <= 1e-12)
