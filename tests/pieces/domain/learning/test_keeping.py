"""A lesson as a table can keep it."""

import json

import numpy as np
import pytest

from pieces.domain.drying import Belief
from pieces.domain.learning import Feel, Groups, Lesson, StillInMould, Touched, Weighed
from pieces.domain.learning.keeping import kept, restored
from pieces.domain.learning.likelihood import Limits

LIMITS = Limits(0.215, 0.205, 0.150, 0.025)


def lesson() -> Lesson:
    chance = np.random.default_rng(3)
    theta = chance.normal(size=(5, 16))
    mean, dampest, ratio = chance.uniform(0.1, 0.25, (3, 16))
    seen = (
        Touched(Feel.TOO_STIFF, "Nessa", LIMITS, mean, dampest),
        StillInMould("Jun", LIMITS, dampest),
        Weighed(0.93, ratio),
    )
    groups = Groups("cream", "drying room", ("Jun", "Nessa"))
    return Lesson(groups, theta, Belief.independent((0.3, 0.4, 0.01, 0.3, 0.3)), seen)


class TestKept:
    def test_comes_back_to_the_last_bit(self) -> None:
        told, numbers = kept(lesson())

        again = restored(json.loads(json.dumps(told)), numbers)

        first = lesson()
        assert again.groups == first.groups
        assert again.drawn_from == first.drawn_from
        assert np.array_equal(again.theta, first.theta)
        assert [type(look) for look in again.seen] == [type(look) for look in first.seen]
        for found, wanted in zip(again.seen, first.seen, strict=True):
            for one, other in zip(found.factors, wanted.factors, strict=True):
                assert np.array_equal(one.predicted, other.predicted)
                assert (one.who, one.steps, one.ratio) == (other.who, other.steps, other.ratio)

    def test_holds_a_piece_nobody_looked_at(self) -> None:
        blank = Lesson(lesson().groups, lesson().theta, lesson().drawn_from)

        assert restored(*kept(blank)).seen == ()

    def test_refuses_another_format(self) -> None:
        told, numbers = kept(lesson())

        with pytest.raises(ValueError, match="format"):
            restored({**told, "format": "lesson-0"}, numbers)
