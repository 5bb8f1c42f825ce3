import pytest

from pieces.domain import cautions, stages


def codes(spot, visited, **more):
    return [caution.code for caution in cautions.on_coming_to(spot, visited, **more)]


class TestOnComingTo:
    def test_warns_of_ware_nobody_called_dry(self):
        assert codes(stages.IN_BISQUE, [stages.DRYING]) == ["not-called-bone-dry"]
        assert codes(stages.IN_BISQUE, [stages.DRYING, stages.BONE_DRY]) == []

    def test_forgets_bone_dry_once_it_was_damp_again(self):
        visited = [stages.BONE_DRY, stages.IN_BISQUE, stages.DRYING]

        assert codes(stages.IN_BISQUE, visited) == ["not-called-bone-dry"]

    def test_warns_of_dust_before_anybody_sands(self):
        assert codes(stages.BONE_DRY, [stages.DRYING]) == ["silica-dust"]

    def test_warns_of_a_second_glaze_firing(self):
        visited = [stages.BISQUED, stages.GLAZED, stages.IN_GLAZE, stages.GLAZE_FIRED]

        assert codes(stages.GLAZED, visited) == ["glaze-fired-again"]

    def test_follows_an_interrupted_bisque_to_the_glaze(self):
        said = codes(stages.GLAZED, [stages.BISQUED], has_interrupted_bisque=True)

        assert said == ["interrupted-bisque"]


class TestThickWall:
    @pytest.mark.parametrize(("thickest_mm", "warns"), [(12.0, False), (12.1, True)])
    def test_speaks_above_the_limit_only(self, thickest_mm, warns):
        assert (cautions.thick_wall(thickest_mm, 12.0) is not None) == warns


def test_nothing_is_ever_called_safe():
    said = [value for value in vars(cautions).values() if isinstance(value, cautions.Caution)]

    assert len(said) > 5
    assert not any("safe" in caution.detail.casefold() for caution in said)
