import pytest

from moulds.domain.sections import NoSuchSection, Section, check_section


class TestCheckSection:
    @pytest.mark.parametrize("wall_mm", [1.0, 12.0, 80.0])
    def test_takes_what_can_be_pressed(self, wall_mm):
        check_section(Section("tile", wall_mm, wall_mm))

    @pytest.mark.parametrize("wall_mm", [0.5, 80.5, float("nan"), float("inf")])
    def test_refuses_what_cannot(self, wall_mm):
        with pytest.raises(NoSuchSection) as refused:
            check_section(Section("tile", wall_mm, 1.0), pointer="#/parts/1")

        assert refused.value.facts["errors"][0]["pointer"] == "#/parts/1/thickest_mm"

    def test_asks_for_a_slipped_point(self):
        with pytest.raises(NoSuchSection, match=r"Did you mean 9\?"):
            check_section(Section("tile", 90.0, 8.0))

    def test_takes_a_thick_wall_that_is_meant_but_not_any(self):
        meant = ["#/thickest_mm"]

        check_section(Section("foot", 90.0, 8.0), confirmed=meant)

        for wall_mm in (300.5, 0.5, float("nan")):
            with pytest.raises(NoSuchSection):
                check_section(Section("foot", wall_mm, 0.5), confirmed=meant)

    def test_refuses_thinnest_above_thickest(self):
        with pytest.raises(NoSuchSection) as refused:
            check_section(Section("tile", 8.0, 10.0))

        assert refused.value.facts["errors"][0]["pointer"] == "#/thinnest_mm"
