"""Draws reweighted, and what a studio comes to believe."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pieces.domain.drying.draws import draw
from pieces.domain.learning import (
    FIRST,
    Feel,
    Groups,
    Lesson,
    StudioBelief,
    Touched,
    Weighed,
    fold,
    learn,
    weigh,
)
from pieces.domain.learning.likelihood import Limits
from pieces.domain.learning.update import LIKELIHOOD_EXPONENT

LIMITS = Limits(0.215, 0.205, 0.150, 0.025)
TILE = Groups("cream", "drying room", ("Nessa",))
DRAWS = 256


def theta(seed: int = 1, draws: int = DRAWS) -> np.ndarray:
    drawn = draw(FIRST.of_piece(TILE), 0.25, draws, seed)
    drawn[2] -= 0.25
    return drawn


def moisture(drawn: np.ndarray, hours: float) -> np.ndarray:
    """Return the mean moisture of a wall that dries by its room alone, for trying the algebra."""
    return 0.25 + drawn[2] - 0.0058 * hours * np.exp(0.8 * drawn[1])


def touched(drawn: np.ndarray, feel: Feel, hours: float) -> Touched:
    mean = moisture(drawn, hours)
    return Touched(feel, "Nessa", LIMITS, mean, mean)


def lesson(*seen, drawn: np.ndarray | None = None) -> Lesson:
    return Lesson(TILE, theta() if drawn is None else drawn, FIRST.of_piece(TILE), seen)


def width(belief: StudioBelief, name: str) -> float:
    at = belief.names.index(name)
    return float(np.sqrt(belief.covariance[at, at]))


class TestWeigh:
    def test_leaves_all_draws_alike_when_nothing_was_seen(self) -> None:
        weights, effective = weigh(FIRST, lesson())

        assert weights == pytest.approx(np.full(DRAWS, 1 / DRAWS), abs=1e-15)
        assert effective == pytest.approx(DRAWS)

    def test_prefers_draws_that_weigh_what_the_scale_said(self) -> None:
        drawn = theta()
        ratio = (1 + moisture(drawn, 12.0)) / (1 + moisture(drawn, 1.0))

        weights, effective = weigh(FIRST, lesson(Weighed(float(np.median(ratio)), ratio)))

        apart = np.abs(ratio - np.median(ratio))
        assert weights @ apart < 0.6 * apart.mean()
        assert 10 < effective < 0.6 * DRAWS

    def test_forgets_a_mass_typed_in_the_wrong_unit(self) -> None:
        drawn = theta()
        ratio = (1 + moisture(drawn, 12.0)) / (1 + moisture(drawn, 1.0))

        weights, _ = weigh(FIRST, lesson(Weighed(float(ratio[7]) * 0.001, ratio)))

        assert weights @ drawn[1] == pytest.approx(drawn[1].mean(), abs=1e-3)

    def test_follows_what_the_studio_believes_by_now(self) -> None:
        names = FIRST.naming(TILE.names)
        mean = names.mean.copy()
        mean[names.names.index("exchange:drying room")] = 0.4
        brisk = StudioBelief(names.names, mean, names.covariance)

        weights, _ = weigh(brisk, lesson())

        assert weights @ theta()[1] == pytest.approx(0.4, abs=0.05)


class TestLearn:
    def test_learns_nothing_from_a_piece_nobody_looked_at(self) -> None:
        assert learn(FIRST, lesson()) is FIRST

    def test_says_that_a_room_is_brisk_whose_clay_is_stiff_early(self) -> None:
        belief = learn(FIRST, lesson(touched(theta(), Feel.TOO_STIFF, 13.0)))

        at = belief.names.index("exchange:drying room")
        assert belief.mean[at] > 0.2
        assert width(belief, "exchange:drying room") < 0.42
        assert belief.pieces == 1

    def test_learns_nothing_of_diffusivity_where_the_drying_does_not_depend_on_it(self) -> None:
        seen = [touched(theta(), Feel.LEATHER_HARD, hours) for hours in (8.0, 12.0, 16.0)]

        belief = learn(FIRST, lesson(*seen))

        at = belief.names.index("diffusivity:cream")
        assert width(belief, "diffusivity:cream") == pytest.approx(0.35, rel=0.01)
        assert belief.mean[at] == pytest.approx(0.0, abs=0.02)

    def test_agrees_with_weights_on_very_many_draws(self) -> None:
        drawn = theta(seed=5, draws=4096)
        ratio = (1 + moisture(drawn, 12.0)) / (1 + moisture(drawn, 1.0))
        seen = lesson(Weighed(0.955, ratio), drawn=drawn)

        belief = learn(FIRST, seen)

        # What the weighted draws say of the piece, passed on to the room by the share of the
        # piece's spread that the room's own is: Gaussian conditioning, done by hand.
        weights, _ = weigh(FIRST, seen)
        share = 0.45**2 / FIRST.prior(TILE).covariance[1, 1]
        at = belief.names.index("exchange:drying room")
        assert belief.mean[at] == pytest.approx(share * (weights @ drawn[1]), abs=0.03)

    def test_takes_a_hands_habit_for_the_hands_own(self) -> None:
        seen = []
        for seed in range(12):
            drawn = theta(seed)
            ratio = (1 + moisture(drawn, 12.0)) / (1 + moisture(drawn, 1.0))
            # By the scale the clay is at 0.18 or so, leather-hard; this hand always says soft.
            seen.append(
                lesson(Weighed(1.19 / 1.244, ratio), touched(drawn, Feel.SOFT, 8.0), drawn=drawn)
            )

        belief = fold(seen)

        at = belief.names.index("touch:Nessa")
        assert belief.mean[at] < -0.003

    def test_is_the_same_to_the_last_bit_when_told_again(self) -> None:
        seen = [lesson(touched(theta(i), Feel.LEATHER_HARD, 10.0), drawn=theta(i)) for i in (1, 2)]

        assert fold(seen).digest() == fold(seen).digest()

    @settings(max_examples=40, deadline=None)
    @given(
        feel=st.sampled_from(list(Feel)),
        hours=st.floats(1.0, 60.0),
        ratio=st.floats(0.75, 1.02),
    )
    def test_never_grows_less_sure(self, feel: Feel, hours: float, ratio: float) -> None:
        drawn = theta()
        predicted = (1 + moisture(drawn, hours)) / (1 + moisture(drawn, 1.0))

        belief = learn(FIRST, lesson(touched(drawn, feel, hours), Weighed(ratio, predicted)))

        before = np.diag(FIRST.naming(belief.names).covariance)
        assert np.all(np.diag(belief.covariance) <= before * (1 + 1e-9))
        assert np.linalg.eigvalsh(belief.covariance).min() > -1e-12
        assert 0.0 < LIKELIHOOD_EXPONENT < 1.0
