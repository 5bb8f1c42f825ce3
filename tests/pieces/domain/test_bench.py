import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pieces.domain.bench import (
    Block,
    JoinVerdict,
    Verdict,
    fraction_used,
    joining,
    seat,
    worth_a_touch,
)
from pieces.domain.drying import Quantiles, Window
from tests.pieces.domain.windows import HOUR_S, NEVER, about, window

CLOSING_S = 8 * HOUR_S
hours = st.floats(0.0, 200.0, allow_nan=False)


def seated(its: Window | None, now_h: float, again_h: float | None = None):
    again_s = None if again_h is None else again_h * HOUR_S
    return seat(its, now_s=now_h * HOUR_S, closing_s=CLOSING_S, look_again_s=again_s)


class TestSeat:
    @pytest.mark.parametrize(
        ("now_h", "block", "verdict"),
        [
            (0.5, Block.LATER_TODAY, Verdict.LATER),  # opens p10 at 1, p50 at 2
            (1.0, Block.LOOK_NOW, Verdict.IN_WINDOW),
            (5.0, Block.LOOK_NOW, Verdict.IN_WINDOW),  # closes p50 at 5: not yet past
            (5.1, Block.LOOK_NOW, Verdict.PAST),
        ],
    )
    def test_follows_the_window(self, now_h: float, block: Block, verdict: Verdict) -> None:
        found = seated(window(2, 5), now_h)

        assert (found.block, found.verdict) == (block, verdict)

    def test_keeps_for_another_day_what_opens_after_closing(self) -> None:
        found = seated(window(9, 20), 0.0)

        assert (found.block, found.verdict) == (Block.LATER, Verdict.NOT_TODAY)

    def test_asks_for_a_look_where_nothing_is_reckoned(self) -> None:
        found = seated(None, 0.0)

        assert (found.block, found.verdict) == (Block.LOOK_NOW, Verdict.ASKED)

    def test_keeps_for_later_what_never_lets_go(self) -> None:
        found = seated(Window(NEVER, NEVER), 0.0)

        assert (found.block, found.verdict) == (Block.LATER, Verdict.NOT_TODAY)

    def test_waits_as_long_as_somebody_who_felt_it_said(self) -> None:
        put_off = seated(window(2, 5), 5.5, again_h=7.0)
        come_round = seated(window(2, 5), 7.0, again_h=7.0)

        assert (put_off.block, put_off.verdict) == (Block.LATER_TODAY, Verdict.LATER)
        assert come_round.verdict == Verdict.PAST

    def test_puts_what_is_longest_past_first_then_what_used_most_of_its_window(self) -> None:
        rows = {
            "long past": seated(window(1, 2), 6.0),
            "just past": seated(window(1, 5), 6.0),
            "late in it": seated(window(2, 7), 6.0),
            "early in it": seated(window(5, 30), 6.0),
            "not reckoned": seated(None, 6.0),
        }

        assert sorted(rows, key=lambda name: rows[name].order) == list(rows)

    def test_puts_what_opens_first_first(self) -> None:
        sooner, later = seated(window(3, 9), 0.0), seated(window(4, 9), 0.0)

        assert sooner.order < later.order

    @given(opens=hours, length=hours, now=hours, step=st.floats(0.0, 50.0))
    def test_never_goes_back_as_time_goes_on(self, opens, length, now, step) -> None:
        its = Window(about(opens), about(opens + length))
        rank = {Verdict.NOT_TODAY: 0, Verdict.LATER: 0, Verdict.IN_WINDOW: 1, Verdict.PAST: 2}

        sooner, later = (
            seat(its, now_s=at * HOUR_S, closing_s=math.inf) for at in (now, now + step)
        )

        assert rank[sooner.verdict] <= rank[later.verdict]


class TestFractionUsed:
    def test_runs_from_the_first_release_to_the_middle_close(self) -> None:
        its = Window(about(2, spread=1), about(6))

        assert [fraction_used(its, h * HOUR_S) for h in (0, 1, 3.5, 6, 9)] == [0, 0, 0.5, 1, 1]

    @pytest.mark.parametrize("its", [Window(about(2), NEVER), Window(NEVER, NEVER), window(6, 2)])
    def test_is_nought_where_the_window_has_no_length(self, its: Window) -> None:
        assert fraction_used(its, 4 * HOUR_S) == 0.0


class TestJoining:
    @pytest.mark.parametrize(
        ("opens", "closes", "verdict"),
        [
            (1, 6, JoinVerdict.NOW),
            (4, 6, JoinVerdict.WAIT),
            (1, 2, JoinVerdict.TOO_STIFF),
            (9, 20, None),  # opens after closing time
        ],
    )
    def test_says_what_all_parts_say_together(self, opens, closes, verdict) -> None:
        found = joining(window(opens, closes), now_s=3 * HOUR_S, closing_s=CLOSING_S)

        assert found == verdict

    def test_says_that_it_is_too_late_where_no_moment_suits_all(self) -> None:
        # the last part is fit at 12 h, the first too stiff at 2 h
        found = joining(window(12, 2), now_s=3 * HOUR_S, closing_s=CLOSING_S)

        assert found == JoinVerdict.TOO_STIFF


class TestWorthATouch:
    def test_begins_when_one_draw_in_ten_says_dry(self) -> None:
        dry = Quantiles(10.0, 20.0, 30.0, 0.0)

        assert [worth_a_touch(dry, at) for at in (9.0, 10.0, 25.0)] == [False, True, True]
        assert not worth_a_touch(NEVER, 1e12)
