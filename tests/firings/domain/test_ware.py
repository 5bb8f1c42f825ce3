"""Where ware goes as it enters and leaves a kiln."""

from datetime import UTC, datetime

import pytest

from firings.domain import ware
from pieces.domain.stages import (
    BISQUED,
    BONE_DRY,
    CALLED_OFF,
    CATCHING_UP,
    CHECKED,
    DRYING,
    GLAZE_FIRED,
    GLAZED,
    IN_BISQUE,
    IN_GLAZE,
    NOT_FIRED,
    UNFIRED,
)


class TestInto:
    @pytest.mark.parametrize(
        ("kind", "stood", "reason"),
        [
            ("bisque", BONE_DRY, "hold"),
            ("bisque", DRYING, "hold"),
            ("glaze", GLAZED, "hold"),
            ("glaze", GLAZE_FIRED, "hold"),
            ("glaze", BISQUED, CATCHING_UP),
            ("glaze", CHECKED, CATCHING_UP),
        ],
    )
    def test_says_where_steps_between_are_missing(self, kind, stood, reason):
        way = ware.into(kind, stood, is_one_part=True, reason="hold")

        assert way.spot == ware.INTO[kind]
        assert way.reason == reason


class TestOutOf:
    @pytest.mark.parametrize(
        ("kind", "stood", "came_from", "result", "outcome", "spot", "reason"),
        [
            ("bisque", IN_BISQUE, BONE_DRY, "fired", "fired", BISQUED, ""),
            ("glaze", IN_GLAZE, GLAZED, "fired", "fired", GLAZE_FIRED, ""),
            ("bisque", IN_BISQUE, BONE_DRY, "not_fired", "not_fired", BONE_DRY, NOT_FIRED),
            ("glaze", IN_GLAZE, GLAZE_FIRED, "not_fired", "fired", GLAZE_FIRED, NOT_FIRED),
            ("bisque", IN_BISQUE, BONE_DRY, "damp", "fired", DRYING, "damp"),
            ("bisque", IN_BISQUE, BONE_DRY, "broken", "fired", BISQUED, ""),
            ("bisque", IN_BISQUE, BONE_DRY, "broken", "not_fired", BONE_DRY, NOT_FIRED),
            ("bisque", BONE_DRY, None, "fired", "fired", BISQUED, CATCHING_UP),
        ],
    )
    def test_goes_by_result_and_outcome(
        self, kind, stood, came_from, result, outcome, spot, reason
    ):
        way = ware.out_of(kind, stood, came_from, result, outcome=outcome, is_one_part=True)

        assert way is not None
        assert (way.spot, way.reason) == (spot, reason)

    def test_leaves_where_it_is_what_never_went_in(self):
        way = ware.out_of("bisque", BONE_DRY, None, "not_fired", outcome="fired", is_one_part=True)

        assert way is None


class TestCalledOff:
    def test_brings_it_back_by_a_visit_that_is_no_firing(self):
        way = ware.called_off(IN_GLAZE, GLAZE_FIRED, is_one_part=True)

        assert way is not None
        assert (way.spot, way.is_back) == (GLAZE_FIRED, True)
        assert way.reason == CALLED_OFF
        assert way.reason in UNFIRED


class TestWaitsSince:
    @staticmethod
    def stays(*told: tuple[str, str]) -> list[ware.Stay]:
        """Return visits a day apart, from the first of the month."""
        return [
            ware.Stay(state, reason, datetime(2026, 11, day, tzinfo=UTC))
            for day, (state, reason) in enumerate(told, start=1)
        ]

    @pytest.mark.parametrize(
        ("told", "day"),
        [
            ([("bisqued", ""), ("glazed", "")], 2),
            ([("glazed", ""), ("in_glaze", ""), ("glazed", "called off")], 1),
            (
                [
                    ("glazed", ""),
                    ("in_glaze", ""),
                    ("glazed", "called off"),
                    ("in_glaze", ""),
                    ("glazed", "not fired"),
                ],
                1,
            ),
            # Fired, glazed anew and only then called off: it waits since it was glazed anew.
            (
                [
                    ("glazed", ""),
                    ("in_glaze", ""),
                    ("glaze_fired", ""),
                    ("glazed", ""),
                    ("in_glaze", ""),
                    ("glazed", "called off"),
                ],
                4,
            ),
            # Moved on since it came back.
            ([("glazed", ""), ("in_glaze", ""), ("glazed", "called off"), ("bisqued", "")], 4),
            # Where it was before is not known.
            ([("in_glaze", ""), ("glazed", "called off")], 2),
            ([("bisqued", ""), ("in_glaze", ""), ("glazed", "called off")], 3),
        ],
    )
    def test_is_where_it_stood_before_a_kiln_let_it_down(
        self, told: list[tuple[str, str]], day: int
    ) -> None:
        assert ware.waits_since(self.stays(*told)).day == day
