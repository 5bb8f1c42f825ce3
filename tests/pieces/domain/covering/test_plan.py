"""Cover plans: the fastest drying that a skin stands."""

from itertools import pairwise

import pytest

from pieces.domain.covering import LIMIT, CoverStep, PieceNow, plan_covers
from pieces.domain.covering.plan import covered
from pieces.domain.drying import Cover, Plaster, Section, Shape, out_of_mould
from tests.pieces.domain.covering.standing import HOUR_S, after, piece

EVERY_THIRD_HOUR = list(range(0, 14 * 24 * HOUR_S, 3 * HOUR_S))
BY_DAY = [at for at in EVERY_THIRD_HOUR if 8 <= at // HOUR_S % 24 <= 17]
WALL = Section(Shape.FLAT, 0.012)
THICK = Section(Shape.FLAT, 0.020)
THIN = Section(Shape.FLAT, 0.004)


def plan(section: Section, hours: list[int], cover: Cover = Cover.OPEN):
    (found,) = plan_covers([PieceNow(piece(section, cover=cover), cover)], hours)
    return found


class TestCovered:
    def test_leaves_a_piece_on_its_plaster_bat(self) -> None:
        bat = Plaster(0.1, thickness_m=0.025, outside_factor=0.5)
        on_bat = piece(WALL, events=(out_of_mould(0, WALL, bat=bat),))

        found = covered(after(on_bat, 3), Cover.LOOSE).problem.events[-1]

        assert found.inner.plaster is not None
        assert found.inner.plaster.free_water_fraction is None
        assert found.is_covered


class TestPlanCovers:
    def test_leaves_open_then_covers_loosely_then_opens(self) -> None:
        found = plan(WALL, EVERY_THIRD_HOUR)

        assert [step.cover for step in found.steps] == [Cover.LOOSE, Cover.OPEN]
        assert found.steps[0].at_s > 12 * HOUR_S
        assert found.peak <= LIMIT < found.peak_as_it_stands

    def test_is_faster_than_one_cover_throughout(self) -> None:
        loosely = piece(WALL, cover=Cover.LOOSE)

        found = plan(WALL, EVERY_THIRD_HOUR)

        assert found.ends_s is not None
        dampest = after(loosely, found.ends_s // HOUR_S).state.moisture_kg_per_kg.max()
        assert dampest > loosely.problem.body.shrinkage_ends_kg_per_kg

    def test_opens_a_piece_that_need_not_be_covered(self) -> None:
        found = plan(THIN, EVERY_THIRD_HOUR, cover=Cover.LOOSE)

        assert found.steps == (CoverStep(0, Cover.OPEN),)

    def test_asks_for_nothing_where_it_may_stay(self) -> None:
        assert plan(THIN, EVERY_THIRD_HOUR).steps == ()

    def test_changes_covers_only_while_somebody_is_in(self) -> None:
        found = plan(THICK, BY_DAY)

        assert found.steps
        assert {step.at_s for step in found.steps} <= set(BY_DAY)
        assert all(sooner.cover is not later.cover for sooner, later in pairwise(found.steps))

    def test_goes_the_same_way_alone_and_beside_others(self) -> None:
        alone = plan(WALL, BY_DAY)

        beside = plan_covers(
            [PieceNow(piece(each), Cover.OPEN) for each in (THICK, WALL, THIN)], BY_DAY
        )

        assert beside[1].steps == alone.steps
        assert beside[1].peak == pytest.approx(alone.peak, rel=1e-9)

    def test_has_nothing_to_say_of_no_pieces(self) -> None:
        assert plan_covers([], BY_DAY) == []

    def test_refuses_pieces_that_stand_at_different_hours(self) -> None:
        early, late = piece(WALL), after(piece(WALL), 3)

        with pytest.raises(ValueError, match="same hour"):
            plan_covers([PieceNow(early, Cover.OPEN), PieceNow(late, Cover.OPEN)], BY_DAY)

    def test_refuses_hours_that_do_not_rise(self) -> None:
        with pytest.raises(ValueError, match="rise"):
            plan_covers([PieceNow(piece(WALL), Cover.OPEN)], [3 * HOUR_S, 0])
