from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pieces.domain.drying import (
    BODIES,
    Batch,
    Cover,
    Plaster,
    Problem,
    Section,
    Shape,
    advance,
    constant_climate,
    ensemble,
    simulate,
)
from pieces.domain.schedule import Standing, face_events

WALL = Section(Shape.FLAT, 0.010)
PLASTER = Plaster(0.1)
HOUR_S = 3600.0


def events(*, out_h: float | None = None, plaster: Plaster | None = PLASTER, standings=()):
    return face_events(
        WALL,
        begun_at_s=0.0,
        plaster=plaster,
        out_at_s=None if out_h is None else out_h * HOUR_S,
        standings=standings,
    )


def covers(*told: tuple[float, Cover]) -> list[Standing]:
    return [Standing(hour * HOUR_S, cover) for hour, cover in told]


def outside(found) -> list[tuple[float, float]]:
    """Return (hour, openness of the outer face) of every event in the air."""
    return [
        (event.at_s / HOUR_S, event.outer.factor) for event in found if event.outer.plaster is None
    ]


class TestFaceEvents:
    def test_leaves_a_part_in_its_mould_until_somebody_took_it_out(self) -> None:
        (only,) = events()

        assert only.outer.plaster is not None
        assert only.outer.plaster.free_water_fraction == 0.1

    def test_begins_in_the_air_where_no_mould_was_used(self) -> None:
        (only,) = events(plaster=None)

        assert outside([only]) == [(0.0, 1.0)]

    def test_follows_the_covers_from_the_demoulding_on(self) -> None:
        told = covers((5, Cover.LOOSE), (30, Cover.OPEN), (9, Cover.SEALED))

        found = events(out_h=4, standings=told)

        assert outside(found) == [
            (4.0, Cover.OPEN.factor),
            (5.0, Cover.LOOSE.factor),
            (9.0, Cover.SEALED.factor),
            (30.0, Cover.OPEN.factor),
        ]

    def test_leaves_out_covers_over_a_filled_mould(self) -> None:
        assert events(standings=covers((1, Cover.SEALED))) == events()

    def test_comes_out_under_the_cover_that_lay_over_it(self) -> None:
        found = events(out_h=4, standings=covers((1, Cover.LOOSE)))

        assert outside(found) == [(4.0, Cover.LOOSE.factor)]

    def test_takes_the_last_word_of_one_moment(self) -> None:
        found = events(out_h=1, standings=covers((2, Cover.LOOSE), (2, Cover.TUCKED)))

        assert outside(found)[-1] == (2.0, Cover.TUCKED.factor)

    def test_takes_a_part_out_in_the_second_it_was_pressed(self) -> None:
        first, second = events(out_h=0)

        assert first.outer.plaster is not None
        assert second.at_s == first.at_s + 1

    def test_refuses_a_part_that_came_out_before_it_was_pressed(self) -> None:
        with pytest.raises(ValueError, match="before it was pressed"):
            face_events(WALL, begun_at_s=10.0, plaster=PLASTER, out_at_s=9.0, standings=())

    @given(
        out_h=st.none() | st.floats(0.0, 50.0),
        told=st.lists(
            st.tuples(st.floats(-20.0, 100.0), st.sampled_from(Cover), st.booleans()), max_size=8
        ),
        has_mould=st.booleans(),
    )
    def test_is_always_a_schedule_that_the_model_takes(self, out_h, told, has_mould) -> None:
        standings = [Standing(hour * HOUR_S, *rest) for hour, *rest in told]

        found = events(out_h=out_h, plaster=PLASTER if has_mould else None, standings=standings)

        problem = Problem(
            BODIES["red_earthenware"], WALL, found, constant_climate(0, HOUR_S, 15.0, 0.65)
        )
        assert problem.pressed_at_s == 0

    def test_is_the_same_in_any_order_of_telling(self) -> None:
        told = covers((5, Cover.LOOSE), (30, Cover.OPEN), (9, Cover.SEALED))

        assert events(out_h=4, standings=told[::-1]) == events(out_h=4, standings=told)


class TestStanding:
    @pytest.mark.parametrize(
        ("cover", "is_in_cupboard", "wanted"),
        [
            (Cover.OPEN, False, Cover.OPEN),
            (Cover.OPEN, True, Cover.SEALED),
            (Cover.LOOSE, True, Cover.SEALED),
            (Cover.SEALED, True, Cover.SEALED),
            (Cover.SEALED, False, Cover.SEALED),
        ],
    )
    def test_counts_the_tighter_of_cover_and_cupboard(self, cover, is_in_cupboard, wanted) -> None:
        assert Standing(0.0, cover, is_in_cupboard).factor_cover == wanted

    def test_dries_more_slowly_the_tighter_it_stands(self) -> None:
        begun_s = datetime(2026, 10, 1, tzinfo=UTC).timestamp()
        air = constant_climate(begun_s, begun_s + 60 * HOUR_S, 15.0, 0.65)
        problems = [
            Problem(
                BODIES["red_earthenware"],
                WALL,
                face_events(
                    WALL,
                    begun_at_s=begun_s,
                    plaster=None,
                    out_at_s=None,
                    standings=[Standing(begun_s, Cover.LOOSE, is_in_cupboard)],
                ),
                air,
            )
            for is_in_cupboard in (False, True)
        ]

        run = simulate(
            Batch(tuple(ensemble(problem, 4) for problem in problems), begun_s + 48 * HOUR_S)
        )

        loose, shut = (after.state.left_kg_m2.mean() for after in run.after)
        assert shut < 0.5 * loose


class TestOnABat:
    def test_lays_the_inner_face_on_plaster_and_leaves_its_water_to_it_from_then_on(self) -> None:
        standings = [
            Standing(0.0, Cover.OPEN, is_on_bat=True),
            Standing(5 * HOUR_S, Cover.LOOSE, is_on_bat=True),
            Standing(9 * HOUR_S, Cover.LOOSE),
        ]

        first, covered, moved = face_events(
            Section(Shape.FLAT, 0.010),
            begun_at_s=0.0,
            plaster=None,
            out_at_s=None,
            standings=standings,
        )

        assert first.inner.plaster is not None
        assert first.inner.plaster.free_water_fraction is not None
        assert covered.inner.plaster is not None
        assert covered.inner.plaster.free_water_fraction is None
        assert moved.inner.plaster is None
        assert all(event.outer.plaster is None for event in (first, covered, moved))

    def test_dries_a_wall_sooner_than_a_board_does(self) -> None:
        def mean_after_a_day(*, is_on_bat: bool) -> float:
            section = Section(Shape.FLAT, 0.010, inside_factor=0.1)
            events = face_events(
                section,
                begun_at_s=0.0,
                plaster=None,
                out_at_s=None,
                standings=[Standing(0.0, Cover.OPEN, is_on_bat=is_on_bat)],
            )
            air = constant_climate(0, 48 * HOUR_S, 15.0, 0.65)
            made = ensemble(Problem(BODIES["red_earthenware"], section, events, air), 4)
            return float(advance([made], 24 * HOUR_S)[0].state.moisture_kg_per_kg.mean())

        assert mean_after_a_day(is_on_bat=True) < mean_after_a_day(is_on_bat=False)


class TestOnSlats:
    def lying(self, section: Section) -> float:
        (event,) = face_events(
            section,
            begun_at_s=0.0,
            plaster=None,
            out_at_s=None,
            standings=[Standing(0.0, Cover.LOOSE, is_open_below=True)],
        )
        return event.inner.factor

    def test_lets_air_to_what_lies_flat_under_the_same_cover(self) -> None:
        assert self.lying(Section(Shape.FLAT, 0.010, inside_factor=0.1)) == Cover.LOOSE.factor

    def test_leaves_the_hollow_of_a_form_as_sheltered_as_it_is(self) -> None:
        assert self.lying(Section(Shape.FLAT, 0.010)) == 0.4 * Cover.LOOSE.factor
