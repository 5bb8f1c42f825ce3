"""What a screen says of covering."""

import pytest

from pieces.domain.covering import Level
from pieces.domain.covering.words import (
    CALIBRATED,
    VERBS,
    ahead_words,
    meeting_words,
    reason,
    roles_said,
)
from pieces.domain.drying import Cover


class TestReason:
    def test_names_what_makes_the_skin_dry_first(self) -> None:
        said = reason(Level.HIGH, thickest_mm=12.0, cover=Cover.OPEN, humidity_fraction=0.4)

        assert said == "Its skin dries well before the inside: 12 mm thick, open, in dry air."

    def test_names_no_cause_that_is_not_there(self) -> None:
        said = reason(Level.WATCH, thickest_mm=8.0, cover=Cover.LOOSE, humidity_fraction=0.7)

        assert said == "Its skin dries well before the inside: for this clay."

    def test_is_calm_where_nothing_is_to_do(self) -> None:
        said = reason(Level.LOW, thickest_mm=12.0, cover=Cover.OPEN, humidity_fraction=0.4)

        assert said == "Skin and inside dry together."


class TestRolesSaid:
    @pytest.mark.parametrize(
        ("roles", "said"),
        [([], ""), (["body"], "body"), (["body", "knop", "foot"], "body, knop and foot")],
    )
    def test_joins_them_as_people_do(self, roles: list[str], said: str) -> None:
        assert roles_said(roles) == said


class TestMeetingWords:
    def test_tell_what_to_cover_now(self) -> None:
        said = meeting_words([("handle", Cover.LOOSE), ("body", Cover.OPEN)], meets=True)

        assert said == (
            "Cover loosely the handle and open the body now, "
            "so that they come to leather-hard together."
        )

    def test_say_so_where_they_meet_or_cannot(self) -> None:
        assert meeting_words([], meets=True) == "Leather-hard together as they stand."
        assert "feel them before you join" in meeting_words([], meets=False)


class TestAheadWords:
    def test_cover_the_part_that_leads(self) -> None:
        assert ahead_words("handle", "body") == (
            "The handle dries before the body: cover the handle loosely."
        )


class TestWords:
    def test_hold_one_verb_for_each_cover_and_own_up_to_the_limit(self) -> None:
        assert set(VERBS) == set(Cover)
        assert "rule of thumb" in CALIBRATED
