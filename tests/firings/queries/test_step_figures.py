from datetime import timedelta

import pytest

from firings.queries.step_figures import known
from moulds.models import Design
from pieces.actions import retractions
from studio.models import JournalEntry
from tests import factories
from tests.factories import NOW
from tests.pieces.orders import DAY, form, lose, put

BEGUN = NOW - 40 * DAY
WAY = (
    ("drying", "drying", 1),
    ("bisque", "in_bisque", 10),
    ("bisque", "bisqued", 12),
    ("glaze", "glazed", 15),
    ("glaze", "in_glaze", 18),
    ("glaze", "glaze_fired", 20),
    ("finished", "checked", 21),
)


def beaker(member, mark, *, until=7):
    design = form(member.studio, f"beaker {mark}", "K")
    factories.piece(design, member, mark=mark, begun_at=BEGUN)
    for stage, state, day in WAY[:until]:
        put(member, mark, stage, state, at=BEGUN + day * DAY)


class TestKnown:
    def test_counts_losses_in_the_step_in_which_they_were(self, studio, maker):
        beaker(maker[0], "K01")
        beaker(maker[0], "K02", until=1)
        lose(maker[0], "K02")
        beaker(maker[0], "K03", until=5)
        lose(maker[0], "K03")
        beaker(maker[0], "K04", until=3)

        figures = known(studio, at=NOW)

        assert figures.lost_of == {
            "forming": (1, 4),
            "bisque": (0, 3),
            "glaze": (1, 2),
            "finish": (0, 1),
        }
        assert (figures.outcomes, figures.basis) == (3, "guess")

    def test_tells_designs_apart_on_top_of_the_studio(self, studio, maker):
        beaker(maker[0], "K01")
        beaker(maker[0], "K02", until=1)
        lose(maker[0], "K02")
        good, bad = (Design.objects.get(name=f"beaker {mark} K") for mark in ("K01", "K02"))

        seen = known(studio, at=NOW)

        # Studio: 1 lost of 2 and the guess of 1.4 in 10; a design: its own and the studio as 10.
        of_studio = 1 - 2.4 / 12
        assert seen.figures.survival["forming"] == pytest.approx(of_studio)
        assert seen.figures_of(good.pk).survival["forming"] == pytest.approx(
            (1 + 10 * of_studio) / 11
        )
        assert seen.figures_of(bad.pk).survival["forming"] == pytest.approx(10 * of_studio / 11)
        assert seen.figures_of(None) == seen.figures

    def test_does_not_count_a_loss_that_was_taken_back(self, studio, maker):
        beaker(maker[0], "K01", until=1)
        lose(maker[0], "K01")
        lost = JournalEntry.objects.get(verb="scrapped")
        back = factories.act(maker[0], corrects=lost.pk)
        retractions.retract(act=back, may_any=False)

        assert known(studio, at=NOW).lost_of["forming"] == (0, 0)

    def test_measures_steps_and_the_last_look_from_the_last_firing(self, studio, maker):
        for number in range(8):
            beaker(maker[0], f"K{number:02}", until=6)
            for stage, state, day in (("glaze", "glazed", 22), ("glaze", "glaze_fired", 29)):
                put(maker[0], f"K{number:02}", stage, state, at=BEGUN + day * DAY)
            put(maker[0], f"K{number:02}", "finished", "checked", at=BEGUN + 31 * DAY)

        # What was told first, on day 1, is when it was begun.
        days = known(studio, at=NOW).figures.days

        assert [round(days[step].usual, 6) for step in days] == [9.0, 2.0, 8.0, 2.0]

    def test_counts_apart_what_one_glaze_firing_was_enough_for(self, studio, maker):
        beaker(maker[0], "K01")
        beaker(maker[0], "K02", until=6)
        put(maker[0], "K02", "glaze", "glazed", at=BEGUN + 22 * DAY)
        put(maker[0], "K02", "glaze", "glaze_fired", at=BEGUN + 29 * DAY)
        put(maker[0], "K02", "finished", "checked", at=BEGUN + 31 * DAY)
        beaker(maker[0], "K03", until=6)
        lose(maker[0], "K03")
        beaker(maker[0], "K04", until=6)  # nobody has looked at it since

        seen = known(studio, at=NOW)

        assert (seen.first_time.good, seen.first_time.of) == (1, 3)
        # Both that passed their last look survive, however often they were fired.
        assert seen.lost_of["finish"] == (1, 3)

    def test_knows_nothing_of_pieces_of_long_ago(self, studio, maker):
        beaker(maker[0], "K01")

        assert known(studio, at=NOW + timedelta(days=800)).outcomes == 0
