from datetime import date

import pytest

from firings.domain.client_words import EVENTS, PLAIN, expected, staged, stood
from pieces.domain.sets import Counts
from pieces.domain.stages import SPOTS, STATES

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
