"""How a kiln ages, in words."""

from datetime import UTC, datetime, timedelta

import pytest

from firings.domain.kiln_health import (
    Age,
    Fired,
    Ohms,
    Shelf,
    age,
    age_words,
    leaning,
    notes,
    ohms_words,
    trend,
)

MONDAY = datetime(2026, 10, 5, 20, 0, tzinfo=UTC)
WEEK = timedelta(days=7)


def codes(**more):
    given = {"elements": Age(10, 80.0, None), "ohms": [], "leanings": [], **more}
    return [note.code for note in notes(**given)]


class TestAge:
    def test_adds_to_what_was_taken_over(self):
        fired = [Fired(MONDAY, 6.5, counts=True), Fired(MONDAY + WEEK, 1.5, counts=False)]

        found = age(fired, changed_at=None, firings_before=68, hot_hours_before=512.0)

        # What stopped adds its hours and no firing.
        assert (found.firings, found.hot_h, found.since) == (69, 520.0, None)
        assert age_words(found) == "69 firings, 520 h hot"

    def test_begins_anew_with_a_change(self):
        fired = [Fired(MONDAY, 6.5, counts=True), Fired(MONDAY + 2 * WEEK, 7.0, counts=True)]

        found = age(fired, changed_at=MONDAY + WEEK, firings_before=68, hot_hours_before=512.0)

        assert (found.firings, found.hot_h) == (1, 7.0)
        assert age_words(found) == "1 firing, 7 h hot"


class TestLeaning:
    @pytest.mark.parametrize(
        ("cones", "said"),
        [
            ([], ""),
            ([Shelf("firing", None)], ""),
            ([Shelf("firing", 6), Shelf("firing", 5)], "on"),
            ([Shelf("firing", 7), Shelf("firing", 6)], "hot"),
            ([Shelf("firing", 6), Shelf("guard", 1)], "hot"),
            # Leaning to the left is read as in a mirror.
            ([Shelf("firing", 6), Shelf("guard", 11)], "hot"),
            ([Shelf("firing", 6), Shelf("guard", 12)], "on"),
            ([Shelf("firing", 3)], "cool"),
            ([Shelf("guide", 5), Shelf("firing", 5)], "cool"),
        ],
    )
    def test_goes_by_what_the_cones_did(self, cones, said):
        assert leaning(cones) == said


class TestTrend:
    @pytest.mark.parametrize(
        ("leanings", "said"),
        [
            (["hot"], ""),
            (["hot", "hot"], "hot"),
            (["on", "hot"], ""),
            (["hot", "hot", "on"], ""),
            # A load that nobody read between does not break the two.
            (["hot", "", "hot"], "hot"),
            (["cool", "cool"], "cool"),
        ],
    )
    def test_wants_the_last_two_to_agree(self, leanings, said):
        assert trend(leanings) == said


class TestNotes:
    def test_say_nothing_of_a_young_kiln(self):
        assert codes(ohms=[Ohms(MONDAY, 0.04)], leanings=["on", "on"]) == []

    @pytest.mark.parametrize(
        ("over", "said"), [(0.07, []), (0.08, ["ohms-near"]), (0.10, ["ohms-high"])]
    )
    def test_tell_of_ohms_at_a_tenth_over_new(self, over, said):
        # +10 %: https://plumestudio.nz/pages/how-long-will-elements-last
        assert codes(ohms=[Ohms(MONDAY, 0.15), Ohms(MONDAY + WEEK, over)]) == said

    def test_call_two_hot_loads_getting_hotter(self):
        assert codes(leanings=["hot", "hot"]) == ["getting-hotter"]

    def test_tell_of_elements_in_the_usual_life(self):
        # 100 to 200 firings: https://plumestudio.nz/pages/how-long-will-elements-last
        assert codes(elements=Age(99, 700.0, None)) == []
        assert codes(elements=Age(100, 700.0, None)) == ["elements-old"]


class TestOhmsWords:
    def test_tell_the_course(self):
        course = [Ohms(MONDAY, 0.04), Ohms(MONDAY + WEEK, 0.07)]

        assert ohms_words(course) == "+4 %, then +7 % over new"
        assert ohms_words([]) == ""
