import pytest

from pieces.domain.drying import (
    Cover,
    Face,
    FaceEvent,
    Plaster,
    Section,
    Shape,
    in_mould,
    out_of_mould,
)
from pieces.domain.drying.sections import checked_events

WALL = Section(Shape.FLAT, 0.008)


class TestSection:
    @pytest.mark.parametrize("thickest_m", [0.0009, 0.081, -0.01, float("nan")])
    def test_refuses_what_the_model_does_not_reach(self, thickest_m: float) -> None:
        with pytest.raises(ValueError, match="thickest_m"):
            Section(Shape.FLAT, thickest_m)

    def test_refuses_openness_outside_0_to_1(self) -> None:
        with pytest.raises(ValueError, match="inside_factor"):
            Section(Shape.FLAT, 0.01, inside_factor=1.1)
        with pytest.raises(ValueError, match="open_fraction"):
            Section(Shape.ROD, 0.01, open_fraction=0.0)

    @pytest.mark.parametrize(
        ("shape", "thickest_m", "nodes"),
        [
            (Shape.FLAT, 0.012, 9),
            (Shape.FLAT, 0.0121, 17),
            (Shape.ROD, 0.012, 9),
            (Shape.LUMP, 0.005, 17),
        ],
    )
    def test_takes_more_nodes_where_it_is_thick(
        self, shape: Shape, thickest_m: float, nodes: int
    ) -> None:
        assert Section(shape, thickest_m).nodes == nodes


class TestCover:
    def test_closes_step_by_step(self) -> None:
        factors = [cover.factor for cover in Cover]

        assert factors == [1.0, 0.3, 0.05, 0.02]


class TestPlaster:
    def test_conducts_by_the_skin_more_than_by_its_depth(self) -> None:
        plaster = Plaster(0.1)

        assert plaster.holds_kg_m2 == pytest.approx(13.05)
        # 1 / (0.03 / (3 x 2.8e-7 x 435) + 1 / 1.5e-4) by hand
        assert plaster.conductance_kg_m2_s == pytest.approx(1.4818e-4, rel=1e-4)

    @pytest.mark.parametrize(
        ("field", "value"),
        [
            ("free_water_fraction", 1.2),
            ("thickness_m", 0.0),
            ("capacity_kg_m3", -1.0),
            ("outside_factor", 2.0),
        ],
    )
    def test_refuses_figures_no_mould_has(self, field: str, value: float) -> None:
        with pytest.raises(ValueError, match=field):
            Plaster(**{"free_water_fraction": 0.1, field: value})


class TestInMould:
    def test_lays_one_face_of_a_wall_on_plaster(self) -> None:
        event = in_mould(5.0, WALL, Plaster(0.1), cover=Cover.LOOSE)

        assert event.inner == Face(0.3)
        assert event.outer.plaster == Plaster(0.1, outside_factor=0.3)

    def test_lays_a_rod_in_plaster_all_round(self) -> None:
        event = in_mould(5.0, Section(Shape.ROD, 0.01), Plaster(0.1))

        assert event.outer.plaster is not None


class TestOutOfMould:
    def test_covers_both_faces(self) -> None:
        event = out_of_mould(0.0, WALL, cover=Cover.TUCKED)

        assert event.inner.factor == pytest.approx(0.4 * 0.05)
        assert event.outer.factor == pytest.approx(0.05)

    def test_shields_a_lump_by_what_it_stands_on(self) -> None:
        event = out_of_mould(0.0, Section(Shape.LUMP, 0.02, open_fraction=0.7))

        assert event.outer.factor == pytest.approx(0.7)


class TestCheckedEvents:
    def test_refuses_no_events_and_events_out_of_order(self) -> None:
        with pytest.raises(ValueError, match="pressing"):
            checked_events([])
        with pytest.raises(ValueError, match="sorted"):
            checked_events([out_of_mould(10.0, WALL), out_of_mould(10.2, WALL)])

    def test_refuses_plaster_of_unknown_water(self) -> None:
        with pytest.raises(ValueError, match="free_water_fraction"):
            checked_events([FaceEvent(0.0, Face(1.0), Face(0.0, Plaster(None)))])
        with pytest.raises(ValueError, match="free_water_fraction"):
            checked_events([out_of_mould(0.0, WALL), in_mould(9.0, WALL, Plaster(None))])
