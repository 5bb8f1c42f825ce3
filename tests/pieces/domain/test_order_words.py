from datetime import date

import pytest

from pieces.domain.order_words import counted, stands_with, time_left
from pieces.domain.sets import Counts

TODAY = date(2026, 10, 31)


def counts(**given):
    return Counts(**{name: given.get(name, 0) for name in Counts.__slots__})


class TestCounted:
    def test_says_how_a_line_stands(self):
        # As the demo's sauce boats stand: one bisqued, three on the way, one lost.
        stands = counts(made=4, lost_pieces=1)

        said = counted(2, stands, set_size=1, ahead=(1, "bisqued"))

        assert said == "2 wanted: 1 bisqued, 3 on the way, 1 lost"

    def test_tells_delivered_from_finished(self):
        stands = counts(delivered=1, finished=3, made=5, planned=1, in_doubt=2)

        said = counted(6, stands, set_size=2)

        assert said == (
            "6 pairs wanted: 1 delivered, 2 finished, 2 on the way, 2 in doubt, 1 planned"
        )

    def test_says_when_nothing_is_begun(self):
        assert counted(1, counts(), set_size=3) == "1 set wanted: none begun"


class TestTimeLeft:
    @pytest.mark.parametrize(
        ("promised", "said"),
        [
            (None, "no day promised"),
            (date(2026, 11, 20), "promised for 20 Nov 2026, in 20 days"),
            (TODAY, "promised for 31 Oct 2026, today"),
            (date(2026, 11, 1), "promised for 1 Nov 2026, tomorrow"),
            (date(2026, 10, 30), "promised for 30 Oct 2026, a day ago"),
            (date(2026, 10, 1), "promised for 1 Oct 2026, 30 days ago"),
        ],
    )
    def test_says_how_long(self, promised, said):
        assert time_left(promised, TODAY) == said


class TestStandsWith:
    def test_names_what_it_is_for(self):
        assert stands_with("lid", ["J06"]) == "lid for J06"
        assert stands_with(None, ["B02", "B03"]) == "piece for B02 and B03"
        assert stands_with("lid", []) == ""
