import re

import pytest

from pieces.domain.drying import Stage
from pieces.domain.drying_words import sentence, verdict
from tests.pieces.domain.windows import HOUR_S, NEVER, about, windows

SHUT = windows(bisque=NEVER, shut=frozenset({Stage.BISQUE}))
OPEN = windows()  # joins from 4 to 10 h, shrunk at 30 h, dry at 60 h


class TestVerdict:
    @pytest.mark.parametrize(
        ("hour", "words"),
        [
            (1, "Damp"),
            (4, "Leather-hard"),
            (10, "Turning"),
            (30, "Nearly"),
            (60, "Perhaps dry"),
        ],
    )
    def test_goes_with_the_stages(self, hour: float, words: str) -> None:
        assert verdict(OPEN, is_bone_dry=False, now_s=hour * HOUR_S) == words

    def test_leaves_dry_to_a_person(self) -> None:
        hours = (0, 60, 10_000)

        said = {verdict(OPEN, is_bone_dry=False, now_s=hour * HOUR_S) for hour in hours}

        assert "Called dry" not in said
        assert verdict(OPEN, is_bone_dry=True, now_s=0.0) == "Called dry"
        assert verdict(None, is_bone_dry=True, now_s=0.0) == "Called dry"

    def test_says_when_the_room_cannot_do_the_rest(self) -> None:
        assert verdict(SHUT, is_bone_dry=False, now_s=29 * HOUR_S) == "Turning"
        assert verdict(SHUT, is_bone_dry=False, now_s=31 * HOUR_S) == "Not in this room"

    def test_says_that_nothing_is_reckoned(self) -> None:
        assert verdict(None, is_bone_dry=False, now_s=0.0) == "Not reckoned yet"


class TestSentence:
    def test_gives_no_date_where_the_room_cannot_dry_it(self) -> None:
        said = sentence(SHUT)

        assert "will not come dry enough" in said
        assert "No date is given." in said

    @pytest.mark.parametrize("its", [None, OPEN, SHUT, windows(bisque=about(60, p_never=0.4))])
    def test_never_calls_anything_safe(self, its) -> None:
        assert not re.search(r"\bsafe", sentence(its), re.IGNORECASE)

    def test_sends_people_to_touch_and_weight(self) -> None:
        assert "touch and two equal weighings say that it is dry" in sentence(OPEN)
        assert "go by touch and weight" in sentence(None)
