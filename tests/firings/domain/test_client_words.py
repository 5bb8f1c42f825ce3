from datetime import UTC, date, datetime
from uuid import UUID

import pytest

from firings.domain.client_words import EVENTS, PLAIN, expected, staged, stood, worth_telling
from pieces.domain import stages
from pieces.domain.sets import Counts
from pieces.domain.stages import SPOTS, STATES
from pieces.domain.story import Visited

SOME = Counts(
    delivered=1,
    finished=3,
    made=7,
    in_doubt=0,
    planned=1,
    pieces=9,
    lost_pieces=2,
    outside_pieces=0,
)


class TestStood:
    def test_counts_what_is_there_and_leaves_losses_out(self):
        (said,) = stood([("jar", 6, SOME)], with_losses=False)

        assert said == "jar: 6 wanted, 1 delivered, 2 finished, 4 being made"

    def test_tells_of_losses_where_that_was_chosen(self):
        (said,) = stood([("jar", 6, SOME)], with_losses=True)

        assert said.endswith(", 2 lost on the way")


class TestStaged:
    def test_begins_with_what_is_furthest_and_leaves_out_the_lost(self):
        rows = staged(["drying", "scrapped", "checked", "drying", "missing"])

        assert rows == [("finished", 1), ("drying", 2)]

    @pytest.mark.parametrize("spot", [spot for spot in SPOTS if spot.stage != "lost"], ids=str)
    def test_has_words_for_every_state(self, spot):
        assert PLAIN[spot.state]


def visited(*spots, reason=""):
    return [
        Visited(spot, datetime(2026, 10, day, tzinfo=UTC), UUID(int=day), reason)
        for day, spot in enumerate(spots, start=1)
    ]


class TestWorthTelling:
    def test_tells_each_spot_once_but_every_glaze_firing(self):
        visits = visited(
            stages.BISQUED, stages.GLAZED, stages.GLAZE_FIRED, stages.GLAZED, stages.GLAZE_FIRED
        )

        told = worth_telling(visits, with_losses=False)

        assert [one.spot.state for one in told] == [
            "bisqued",
            "glazed",
            "glaze_fired",
            "glaze_fired",
        ]

    def test_tells_of_a_loss_only_where_that_was_chosen(self):
        visits = visited(stages.DRYING, stages.SCRAPPED)

        assert len(worth_telling(visits, with_losses=False)) == 1
        assert len(worth_telling(visits, with_losses=True)) == 2

    def test_leaves_out_a_return_from_a_load_that_was_called_off(self):
        visits = visited(stages.BONE_DRY, reason=stages.CALLED_OFF)

        assert worth_telling(visits, with_losses=True) == []


class TestExpected:
    def test_is_a_range_that_says_it_is_none_of_a_promise(self):
        said = expected((date(2026, 12, 4), date(2026, 12, 12)), date(2026, 12, 18))

        assert said == [
            "Likely ready 4 Dec 2026 to 12 Dec 2026. That is an estimate, not a promise.",
            "Promised for 18 Dec 2026.",
        ]

    def test_says_that_no_day_is_promised(self):
        assert expected((None, None), None) == ["No day is promised yet."]


class TestEvents:
    def test_are_of_states_there_are(self):
        assert set(EVENTS) <= set(STATES)
