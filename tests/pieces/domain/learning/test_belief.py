"""What is believed of clays, rooms, covers and hands."""

import json

import numpy as np
import pytest

from pieces.domain.drying.belief import FIRST_BELIEF, PIECE_VARIANCE
from pieces.domain.learning import FIRST, Groups, StudioBelief
from pieces.domain.learning.belief import FIRST_SD

TILE = Groups("cream", "drying room", ("Nessa",))


class TestStudioBelief:
    def test_takes_a_new_name_as_first_believed(self) -> None:
        named = FIRST.naming(TILE.names)

        widths = dict(zip(named.names, np.sqrt(np.diag(named.covariance)), strict=True))
        assert widths["exchange:drying room"] == FIRST_SD["exchange"]
        assert widths["touch:Nessa"] == FIRST_SD["touch"]
        assert not named.mean.any()

    def test_leaves_what_it_knows_when_it_takes_a_name(self) -> None:
        known = StudioBelief(("cover:",), np.array([0.2]), np.array([[0.01]]), pieces=4)

        named = known.naming(TILE.names)

        at = named.names.index("cover:")
        assert (named.mean[at], named.covariance[at, at], named.pieces) == (0.2, 0.01, 4)
        assert named.naming(TILE.names) is named

    def test_refuses_a_kind_it_knows_nothing_of(self) -> None:
        with pytest.raises(ValueError, match="'colour'"):
            FIRST.naming(["colour:blue"])

    def test_adds_what_is_a_pieces_own(self) -> None:
        prior = FIRST.prior(TILE)

        kinds = ("diffusivity", "exchange", "pressed", "cover", "rest")
        shared = [FIRST_SD[kind] for kind in kinds]
        together = np.square(shared) + PIECE_VARIANCE
        assert np.diag(prior.covariance)[:5] == pytest.approx(together)
        assert prior.covariance[5, 5] == pytest.approx(FIRST_SD["touch"] ** 2)

    def test_comes_back_from_storage_to_the_last_bit(self) -> None:
        named = FIRST.naming(TILE.names)
        odd = StudioBelief(named.names, named.mean + 0.1, named.covariance / 3.0, pieces=7)

        again = StudioBelief.from_json(json.loads(json.dumps(odd.to_json())))

        assert again.digest() == odd.digest()
        assert again.digest() != named.digest()
        assert StudioBelief.from_json(FIRST.to_json()).covariance.shape == (0, 0)

    def test_gives_a_piece_of_its_own_what_is_first_believed(self) -> None:
        assert FIRST.of_piece(TILE) == FIRST_BELIEF
