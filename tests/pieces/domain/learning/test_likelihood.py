"""How well something explains what somebody saw."""

import math

import numpy as np
import pytest
from scipy import stats

from pieces.domain.learning.likelihood import (
    MIS_TAP_SHARE,
    OUTLIER_SHARE,
    OUTLIER_SPAN,
    STUDENT_DEGREES,
    WEIGHING_SD,
    Feel,
    Limits,
    StillInMould,
    Touched,
    Weighed,
)

LIMITS = Limits(0.215, 0.205, 0.150, 0.025)


def chance(feel: Feel, mean: float, dampest: float) -> float:
    """Return the chance of a word, all its factors together."""
    touched = Touched(feel, "Nessa", LIMITS, np.array([mean]), np.array([dampest]))
    logs = [factor.log_likelihood(factor.predicted) for factor in touched.factors]
    return float(np.exp(sum(logs))[0])


class TestWeighed:
    def test_is_a_student_t_with_a_share_of_outliers(self) -> None:
        predicted = np.array([0.90, 0.903, 0.95])
        (factor,) = Weighed(0.9, predicted).factors

        said = np.exp(factor.log_likelihood(predicted))

        inlier = stats.t.pdf(0.9, STUDENT_DEGREES, loc=predicted, scale=WEIGHING_SD)  # scipy 1.17
        expected = (1 - OUTLIER_SHARE) * inlier + OUTLIER_SHARE / OUTLIER_SPAN
        assert said == pytest.approx(expected, rel=1e-12)

    @pytest.mark.parametrize("ratio", [0.0, -0.9, math.nan, math.inf])
    def test_refuses_what_no_scale_shows(self, ratio: float) -> None:
        with pytest.raises(ValueError, match="ratio"):
            Weighed(ratio, np.array([0.9]))


class TestTouched:
    @pytest.mark.parametrize(
        ("feel", "mean", "dampest"),
        [
            (Feel.SOFT, 0.24, 0.245),
            (Feel.LEATHER_HARD, 0.178, 0.19),
            (Feel.TOO_STIFF, 0.09, 0.10),
            (Feel.BONE_DRY, 0.004, 0.005),
        ],
    )
    def test_is_likely_where_the_word_belongs(
        self, feel: Feel, mean: float, dampest: float
    ) -> None:
        chances = {word: chance(word, mean, dampest) for word in Feel}

        assert max(chances, key=lambda word: chances[word]) is feel
        assert chances[feel] > 0.9

    def test_is_even_at_the_step_between_two_words(self) -> None:
        at_step = LIMITS.leather_opens

        assert chance(Feel.SOFT, at_step, at_step) == pytest.approx(
            chance(Feel.LEATHER_HARD, at_step, at_step), rel=1e-9
        )

    def test_never_quite_excludes_a_slip_of_the_finger(self) -> None:
        assert chance(Feel.BONE_DRY, 0.24, 0.24) == pytest.approx(MIS_TAP_SHARE / 4, rel=1e-6)


class TestStillInMould:
    def test_says_that_the_clay_holds_more_than_lets_it_go(self) -> None:
        mean = np.array([0.235, 0.215, 0.190])
        (factor,) = StillInMould("Nessa", LIMITS, mean).factors

        wet, at_limit, dry = np.exp(factor.log_likelihood(mean))

        assert wet > 0.95
        assert at_limit == pytest.approx(0.5 * (1 - MIS_TAP_SHARE) + MIS_TAP_SHARE / 4)
        assert dry < 0.02
