"""From what people wrote down to what the draws are asked."""

import numpy as np
import pytest

from pieces.domain.drying import Batch, ensemble, simulate
from pieces.domain.learning import StillInMould, Touched, Weighed
from pieces.domain.learning.looks import Look, LookKind, asked, counted, digest, ordered
from tests.pieces.domain.drying.problems import HOUR_S, wall


def touched(hours: float, feel: str = "leather_hard") -> Look:
    return Look(hours * HOUR_S, "Nessa", LookKind.TOUCHED, feel=feel)


def weighed(hours: float, mass_g: float) -> Look:
    return Look(hours * HOUR_S, "Nessa", LookKind.WEIGHED, mass_g=mass_g)


class TestDigest:
    def test_does_not_know_in_which_order_looks_were_heard(self) -> None:
        assert digest([touched(5), weighed(6, 500)]) == digest([weighed(6, 500), touched(5)])

    def test_tells_looks_from_other_looks(self) -> None:
        said = {
            digest([touched(5)]),
            digest([touched(5, "soft")]),
            digest([touched(6)]),
            digest([]),
        }

        assert len(said) == 4


class TestCounted:
    def test_leaves_out_the_weighing_that_others_are_held_against(self) -> None:
        assert counted([weighed(1, 500)]) == 0
        assert counted([weighed(1, 500), weighed(5, 480), touched(6)]) == 2


class TestOrdered:
    def test_begins_with_the_earliest_since_the_pressing(self) -> None:
        assert ordered([touched(5), touched(2), touched(-1)], 0.0) == [touched(2), touched(5)]


class TestAsked:
    def test_gives_each_look_every_draws_answer_at_its_time(self) -> None:
        run = simulate(Batch((ensemble(wall(), 8),), 40 * HOUR_S, keeps_track=True))
        (track,) = run.tracks
        held = Look(2 * HOUR_S, "Jun", LookKind.NOT_YET)
        looks = [touched(20), held, weighed(4, 600.0), weighed(24, 540.0)]

        still, leather, second = asked(looks, wall(), [track])

        def mean(hours: float) -> np.ndarray:
            return track.mean_kg_per_kg[np.searchsorted(track.at_s, hours * HOUR_S)]

        assert isinstance(still, StillInMould)
        assert still.mean == pytest.approx(mean(2))
        assert isinstance(leather, Touched)
        assert leather.mean == pytest.approx(mean(20))
        assert np.all(leather.dampest >= leather.mean)
        assert isinstance(second, Weighed)
        assert second.ratio == pytest.approx(0.9)
        assert second.predicted == pytest.approx((1 + mean(24)) / (1 + mean(4)))

    def test_goes_on_into_the_track_that_follows(self) -> None:
        whole = simulate(Batch((ensemble(wall(), 8),), 40 * HOUR_S, keeps_track=True))
        part = simulate(Batch((ensemble(wall(), 8),), 16 * HOUR_S, keeps_track=True))
        rest = simulate(Batch(part.after, 40 * HOUR_S, keeps_track=True))

        (alone,) = asked([touched(20.5)], wall(), whole.tracks)
        (joined,) = asked([touched(20.5)], wall(), [*part.tracks, *rest.tracks])

        assert isinstance(alone, Touched)
        assert isinstance(joined, Touched)
        assert joined.mean == pytest.approx(alone.mean, rel=1e-12)
