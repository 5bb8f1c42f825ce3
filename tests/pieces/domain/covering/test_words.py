"""What a screen says of covering."""

from typing import Any

import pytest

from pieces.domain.covering import Level
from pieces.domain.covering.words import (
    CALIBRATED,
    VERBS,
    Driver,
    Lead,
    meeting_words,
    reason,
    roles_said,
    step_words,
)
from pieces.domain.drying import Cover


def driver(**more: Any) -> Driver:
    told = {"role": "", "thickest_mm": 12.0, "cover": Cover.OPEN, "humidity_fraction": 0.4}
    return Driver(**{**told, **more})


class TestReason:
    def test_names_what_makes_the_skin_dry_first(self) -> None:
        said = reason(Level.HIGH, driver(), None)

        assert said == "Its skin dries well before the inside: 12 mm thick, open, in dry air."

    def test_names_the_part_that_drives_it_and_how_uneven_it_is(self) -> None:
        said = reason(Level.WATCH, driver(role="body", thinnest_mm=6.0), None)

        assert said == (
            "The skin of the body dries well before its inside: "
            "uneven, 6 to 12 mm, open, in dry air."
        )

    def test_names_the_part_that_is_ahead_even_where_no_skin_is_near(self) -> None:
        said = reason(Level.LOW, driver(), Lead("handle", 9.0, "body"))

        assert said == "The handle, 9 mm, dries ahead of the body."

    def test_names_no_cause_that_is_not_there(self) -> None:
        damp = driver(thickest_mm=8.0, cover=Cover.LOOSE, humidity_fraction=0.7)

        assert reason(Level.WATCH, damp, None) == (
            "Its skin dries well before the inside: for this clay."
        )

    def test_is_calm_where_nothing_is_to_do(self) -> None:
        assert reason(Level.LOW, driver(), None) == "Skin and inside dry together."


class TestStepWords:
    @pytest.mark.parametrize(
        ("cover", "roles", "said"),
        [
            (Cover.LOOSE, [], "cover loosely"),
            (Cover.LOOSE, ["handle"], "cover the handle loosely"),
            (Cover.OPEN, ["body", "foot"], "open the body and foot"),
        ],
    )
    def test_say_what_to_do_and_to_what(self, cover: Cover, roles: list[str], said: str) -> None:
        assert step_words(cover, roles) == said


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
            "Cover the handle loosely and open the body now, "
            "so that they come to leather-hard together."
        )

    def test_say_so_where_they_meet_or_cannot(self) -> None:
        assert meeting_words([], meets=True) == "Leather-hard together as they stand."
        assert "feel them before you join" in meeting_words([], meets=False)


class TestWords:
    def test_hold_one_verb_for_each_cover_and_own_up_to_the_limit(self) -> None:
        assert set(VERBS) == set(Cover)
        assert "rule of thumb" in CALIBRATED
