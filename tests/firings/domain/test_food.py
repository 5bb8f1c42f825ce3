"""Limits: WSI 2012/2705, part 4 and schedule 3. Batches, loads and figures are invented."""

from dataclasses import replace
from datetime import date
from uuid import UUID

import pytest

from firings.domain.food import Batch, Firing, Glazed, Report, coverage
from studio.domain.food_contact import FILLABLE, FLAT, Figure, Released, judged

CLEAR = Batch(UUID(int=7), "GB-07")
WHITE = Batch(UUID(int=8), "GB-08")
FINCH = Firing("F-205", "K2 Finch", "6")
BOAT = Glazed(is_display=False, limits=FILLABLE, dips=[CLEAR], fired=FINCH)
LITTLE = Released(Figure(0.1, is_below=True), Figure(0.01, is_below=True))


def report(batch=CLEAR, *, number=1, limits=FILLABLE, released=LITTLE, **more):
    given = {
        "id": UUID(int=100 + number),
        "batch": batch.id,
        "firing": FINCH,
        "verdict": judged(limits, released, unit=limits.unit),
        "has_lid": False,
        "reported_on": date(2026, 10, 20 + number),
        **more,
    }
    return Report(**given)


class TestCoverage:
    def test_holds_for_the_same_batch_fired_alike_under_the_same_limits(self):
        other_load = replace(FINCH, load="F-210")

        told = coverage(replace(BOAT, fired=other_load), [report()])

        assert told.is_within
        assert told.words.startswith("within the limits of the report")
        assert told.words.endswith("report of 21 Oct 2026")

    @pytest.mark.parametrize(
        "changed",
        [
            {"dips": [WHITE]},
            {"fired": replace(FINCH, cone="5")},
            {"fired": replace(FINCH, kiln="K3 Ember")},
            {"limits": FLAT},
        ],
    )
    def test_does_not_reach_other_ware(self, changed):
        told = coverage(replace(BOAT, **changed), [report()])

        assert told.code == "no_report"
        assert told.words.startswith("not tested: no report for")

    def test_wants_a_report_for_every_batch_it_was_dipped_in(self):
        twice = replace(BOAT, dips=[CLEAR, WHITE])

        assert coverage(twice, [report()]).code == "no_report"
        assert coverage(twice, [report(), report(WHITE, number=2)]).is_within

    def test_says_the_worst_of_two_batches(self):
        much = Released(Figure(4.5), Figure(0.0))

        told = coverage(
            replace(BOAT, dips=[CLEAR, WHITE]), [report(), report(WHITE, number=2, released=much)]
        )

        assert told.code == "over"
        assert told.words.startswith("over (")

    def test_counts_the_newest_of_two_reports(self):
        much = Released(Figure(4.5), Figure(0.0))

        assert coverage(BOAT, [report(number=1), report(number=2, released=much)]).code == "over"

    def test_of_a_lidded_jar_wants_its_lid_tested(self):
        jar = replace(BOAT, has_lid=True)

        assert coverage(jar, [report()]).code == "lid_not_tested"
        assert coverage(jar, [report(), report(number=2, has_lid=True)]).is_within


class TestWhatIsMissing:
    @pytest.mark.parametrize(
        ("changed", "words"),
        [
            ({"is_display": True}, "for display only, not for food"),
            ({"fired": None}, "not covered yet: no glaze load"),
            ({"fired": None, "booked": "F-212"}, "not covered yet: F-212 is not drawn"),
            ({"dips": [None]}, "not covered: nobody said which glaze batch it was dipped in"),
            (
                {"dips": [CLEAR, None]},
                "not covered: nobody said which glaze batch it was dipped in",
            ),
            ({"limits": None}, "not covered yet: nobody said how deep it is inside"),
            (
                {"is_lid": True, "has_vessel": False},
                "not covered yet: the lid stands with no vessel",
            ),
        ],
    )
    def test_is_said_first(self, changed, words):
        assert coverage(replace(BOAT, **changed), [report()]).words == words
