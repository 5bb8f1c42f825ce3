"""Cover plans and meetings as a table can keep them."""

import json
import math

from pieces.domain.covering import CoverPlan, CoverStep, Level, Meeting
from pieces.domain.covering.keeping import advice, kept_meeting, kept_plan, met
from pieces.domain.drying import Cover, Quantiles, Window

STEPS = (CoverStep(3600, Cover.LOOSE), CoverStep(90_000, Cover.OPEN))
PLAN = CoverPlan(STEPS, index_now=0.2, peak=0.7, peak_as_it_stands=1.4, ends_s=100_000)


def quantiles(middle: float) -> Quantiles:
    return Quantiles(middle - 5.0, middle, middle + 5.0, 0.0)


class TestAdvice:
    def test_gives_levels_and_steps_of_a_plan_and_no_numbers(self) -> None:
        found = advice(json.loads(json.dumps(kept_plan(PLAN))))

        assert (found.now, found.peak) == (Level.LOW, Level.HIGH)
        assert found.steps == STEPS
        assert found.ends_s == 100_000
        assert not any(isinstance(value, float) for value in (found.now, found.peak))


class TestMet:
    def test_comes_back_with_what_is_to_change(self) -> None:
        window = Window(quantiles(7200.0), quantiles(20_000.0))

        found = met(json.loads(json.dumps(kept_meeting(Meeting(window, ((1, Cover.LOOSE),))))))

        assert (found.opens_s, found.closes_s) == (7200.0, 20_000.0)
        assert found.covers == ((1, Cover.LOOSE),)

    def test_is_never_where_the_parts_do_not_meet_or_never_close(self) -> None:
        never = met(kept_meeting(Meeting(None)))
        open_ended = Window(quantiles(7200.0), Quantiles(math.inf, math.inf, math.inf, 1.0))

        assert (never.opens_s, never.closes_s) == (None, None)
        assert met(kept_meeting(Meeting(open_ended))).closes_s is None
