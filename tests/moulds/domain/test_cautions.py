from moulds.domain import cautions
from moulds.domain.cautions import Caution, wall_over_limit


class TestCaution:
    def test_has_a_code_of_its_own_and_a_sentence(self) -> None:
        said = [value for value in vars(cautions).values() if isinstance(value, Caution)]

        assert len({caution.code for caution in said}) == len(said) > 5
        assert all(caution.detail.endswith(".") for caution in said)
        assert not any("safe" in caution.detail.lower() for caution in said)


class TestWallOverLimit:
    def test_names_the_part_its_section_and_the_limit(self) -> None:
        said = wall_over_limit("back", 14.0, 12.0)

        assert said.code == "wall-over-limit"
        assert said.detail.startswith("back: 14 mm")
        assert said.detail.endswith("(12 mm).")
