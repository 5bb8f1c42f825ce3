import pytest

from pieces.domain import stages
from pieces.domain.stages import Spot, Step


def kind(
    start: Spot, end: Spot, *, is_one_part: bool = False, missed_at: Spot | None = None
) -> Step:
    return stages.step(start, end, is_one_part=is_one_part, missed_at=missed_at)


class TestStep:
    @pytest.mark.parametrize("spot", stages.SPOTS[:-3])
    def test_loses_a_piece_from_anywhere(self, spot):
        assert {kind(spot, end) for end in stages.SPOTS[-3:]} == {Step.LOST}

    @pytest.mark.parametrize(
        ("start", "end"),
        [
            (stages.IN_BISQUE, stages.DRYING),
            (stages.BONE_DRY, stages.DRYING),
            (stages.BONE_DRY, stages.JOINED),
            (stages.GLAZED, stages.BISQUED),
            (stages.BISQUED, stages.IN_BISQUE),
            (stages.GLAZE_FIRED, stages.GLAZED),
            (stages.PACKED, stages.GLAZED),
        ],
    )
    def test_goes_back_where_the_craft_does(self, start, end):
        assert kind(start, end) is Step.BACK

    def test_joins_nothing_to_a_single_part(self):
        assert kind(stages.OUT, stages.DRYING, is_one_part=True) is Step.ON
        assert kind(stages.OUT, stages.DRYING) is Step.NONE

    def test_skips_no_firing(self):
        assert kind(stages.BONE_DRY, stages.BISQUED) is Step.NONE
        assert kind(stages.BISQUED, stages.GLAZE_FIRED) is Step.NONE

    def test_finds_a_piece_where_it_was_missed(self):
        assert kind(stages.MISSING, stages.GLAZED, missed_at=stages.GLAZED) is Step.FOUND
        assert kind(stages.MISSING, stages.PACKED, missed_at=stages.GLAZED) is Step.NONE

    def test_brings_nothing_back_from_the_scrap(self):
        assert {kind(stages.SCRAPPED, end) for end in stages.SPOTS[:-3]} == {Step.NONE}

    def test_refuses_a_spot_that_is_none(self):
        with pytest.raises(ValueError, match="no such spot"):
            kind(Spot("glaze", "bone_dry"), stages.OUT)


class TestWords:
    def test_says_how_a_drying_piece_is_covered(self):
        assert stages.words("drying", "tucked") == "drying, tucked in"
        assert stages.words("bone_dry", "tucked") == "bone dry"

    def test_has_words_for_every_state(self):
        assert set(stages.WORDS) == set(stages.STATES)
