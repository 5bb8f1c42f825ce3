from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firings.domain import outlook
from firings.domain.outlook import (
    GUESSED_DAYS,
    STEPS,
    Ahead,
    Figures,
    ahead,
    chance,
    day_after,
    durations,
    likely_span,
    more_to_press,
    survivals,
)
from firings.domain.survival import at_least, press_count

GUESS = Figures(survivals({}), durations({}))
FRESH = ahead(GUESS, 0)
DONE = ahead(GUESS, 4)


class TestSurvivals:
    def test_are_the_guess_without_own_pieces(self):
        kept = survivals({})

        # 0.86 x 0.96 x 0.93 x 0.97: the cautious guess of the module, about a quarter lost.
        assert kept["forming"] * kept["bisque"] * kept["glaze"] * kept["finish"] == pytest.approx(
            0.745, abs=1e-3
        )

    def test_come_to_the_studios_own_share_with_many_pieces(self):
        assert survivals({"glaze": (100, 1000)})["glaze"] == pytest.approx(0.9, abs=1e-3)
        assert survivals({"glaze": (0, 5)})["glaze"] < 1.0


class TestDurations:
    def test_are_a_guess_until_there_are_eight(self):
        own = [2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0]

        assert durations({"glaze": own})["glaze"] == GUESSED_DAYS["glaze"]
        few = durations({"glaze": [*own, 30.0]})["glaze"]
        assert (few.least, few.usual, few.most) == (2.0, 6.0, 30.0)


class TestAhead:
    def test_nothing_lies_ahead_of_what_is_finished(self):
        assert Ahead(1.0, 0.0, 0.0) == DONE
        assert DONE.in_time(-3.0) == 1.0

    def test_grows_surer_and_nearer_with_every_step(self):
        pieces = [ahead(GUESS, done) for done in range(len(STEPS) + 1)]

        kept = [piece.survival for piece in pieces]
        days = [piece.mean_days for piece in pieces]
        assert kept == sorted(kept)
        assert days == sorted(days, reverse=True)

    def test_is_in_time_by_its_mean_half_the_time(self):
        assert FRESH.in_time(FRESH.mean_days) == pytest.approx(0.5)
        one_deviation = FRESH.mean_days + FRESH.deviation_days
        # Standard normal distribution at 1: 0.8413, any table of it.
        assert FRESH.in_time(one_deviation) == pytest.approx(0.8413, abs=1e-4)

    def test_time_spent_in_a_step_is_not_spent_again_but_never_all(self):
        start, later, stuck = (ahead(GUESS, 0, days_in_step=d).mean_days for d in (0, 4, 400))

        assert start - later == pytest.approx(4.0)
        rest = ahead(GUESS, 1).mean_days
        assert stuck > rest

    def test_goes_by_the_kiln_it_is_booked_on(self):
        # Glazed ware on a load lit in three days: out two days later, then the last look.
        booked = ahead(GUESS, 2, fired_in_days=3.0)
        lit = ahead(GUESS, 2, fired_in_days=-1.0)
        look = ahead(GUESS, 3).mean_days

        assert booked.mean_days == pytest.approx(3.0 + outlook.FIRING_DAYS + look)
        assert lit.mean_days == pytest.approx(1.0 + look)


def counts(more):
    assert more is not None
    return more.counts


class TestMoreToPress:
    def test_agrees_with_the_count_for_one_kind(self):
        # Case: 12 wanted at 0.96 x 0.90 x 0.96 x 0.93 = 0.771 wants 18 for 90 %.
        survival = 0.96 * 0.90 * 0.96 * 0.93

        assert counts(more_to_press([([], 12)], [survival])) == (18,)
        assert press_count(12, survival, 0.9).count == 18

    def test_counts_what_is_there(self):
        there = [Ahead(1.0, 0.0, 0.0)] * 12

        assert counts(more_to_press([(there, 12)], [0.7])) == (0,)
        assert counts(more_to_press([(there[:11], 12)], [0.7])) == (2,)

    def test_adds_to_the_role_that_is_short(self):
        lids = [Ahead(0.95, 3.0, 1.0)] * 6
        jars = [Ahead(0.95, 3.0, 1.0)] * 2

        more = counts(more_to_press([(jars, 3), (lids, 3)], [0.8, 0.8]))

        assert more[0] >= 1
        assert more[1] == 0

    def test_presses_ten_jars_and_eight_lids_for_six_pairs(self):
        # By hand: 0.967 x 0.962 = 0.930; nine of each, 0.914 x 0.992 = 0.907, would do as well.
        more = more_to_press([([], 6), ([], 6)], [0.80, 0.90])

        assert more is not None
        assert more.counts == (10, 8)
        assert more.chance == pytest.approx(0.930, abs=5e-4)
        assert more.also == (((9, 9), pytest.approx(0.907, abs=5e-4)),)

    @settings(deadline=None)
    @given(
        wanted=st.integers(1, 8),
        percents=st.tuples(st.integers(50, 99), st.integers(50, 99)),
    )
    def test_no_smaller_total_does_and_no_equal_one_does_better(self, wanted, percents):
        shares = [percent / 100 for percent in percents]
        found = more_to_press([([], wanted)] * 2, shares)

        assert found is not None
        total = sum(found.counts)
        for first in range(total + 1):
            best = at_least(wanted, first, shares[0]) * at_least(wanted, total - first, shares[1])
            fewer = total - 1 - first
            assert best <= found.chance + 1e-9
            assert at_least(wanted, first, shares[0]) * at_least(wanted, fewer, shares[1]) < 0.9

    def test_gives_up_where_nothing_would_do(self):
        assert more_to_press([([], 150)], [0.2]) is None
        assert more_to_press([([], 1)], [0.0]) is None

    @given(
        st.lists(st.floats(0.3, 1.0), max_size=12),
        st.integers(1, 10),
        st.floats(0.5, 0.99),
    )
    def test_is_enough_and_one_fewer_is_not(self, shares, wanted, survival):
        pieces = [Ahead(share, 1.0, 1.0) for share in shares]

        (more,) = counts(more_to_press([(pieces, wanted)], [survival]))

        fresh = Ahead(survival, 1.0, 1.0)
        assert chance([*pieces, *[fresh] * more], wanted, days=None) >= 0.9
        if more:
            assert chance([*pieces, *[fresh] * (more - 1)], wanted, days=None) < 0.9


class TestLikelySpan:
    def test_is_that_of_the_last_piece_that_is_needed(self):
        pieces = [Ahead(0.99, days, 1.0) for days in (2.0, 9.0, 20.0)]

        span = likely_span(pieces, 2, FRESH, more=0)

        assert span is not None
        # Mean plus and minus 1.2816 deviations: 10 and 90 of a hundred.
        assert (span.p10, span.p50, span.p90) == pytest.approx((7.7184, 9.0, 10.2816))

    def test_is_none_when_all_is_there(self):
        assert likely_span([DONE, DONE], 2, FRESH, more=0) is None

    def test_reckons_with_what_is_still_to_be_pressed(self):
        span = likely_span([DONE], 2, FRESH, more=3)

        assert span is not None
        assert span.p50 == FRESH.mean_days


class TestDayAfter:
    def test_counts_a_day_begun(self):
        assert day_after(date(2026, 10, 31), 0.2) == date(2026, 11, 1)
        assert day_after(date(2026, 10, 31), 0.0) == date(2026, 10, 31)
