"""What is believed of clays, rooms, covers and hands."""

import json

import numpy as np
import pytest

from pieces.domain.learning import FIRST, Groups, StudioBelief
from pieces.domain.learning.belief import PIECE_SD, SHARED_SD

TILE = Groups("cream", "drying room", ("Nessa",))


class TestStudioBelief:
    def test_takes_a_new_name_as_first_believed(self) -> None:
        named = FIRST.naming(TILE.names)

        widths = dict(zip(named.names, np.sqrt(np.diag(named.covariance)), strict=True))
        assert widths["exchange:drying room"] == SHARED_SD["exchange"]
        assert widths["touch:Nessa"] == SHARED_SD["touch"]
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

        shared = [SHARED_SD[kind] ** 2 for kind in ("diffusivity", "exchange", "pressed", "cover")]
        assert np.diag(prior.covariance)[:4] == pytest.approx(np.array(shared) + PIECE_SD**2)
        assert prior.covariance[4, 4] == pytest.approx(SHARED_SD["touch"] ** 2)

    def test_comes_back_from_storage_to_the_last_bit(self) -> None:
        named = FIRST.naming(TILE.names)
        odd = StudioBelief(named.names, named.mean + 0.1, named.covariance / 3.0, pieces=7)

        again = StudioBelief.from_json(json.loads(json.dumps(odd.to_json())))

        assert again.digest() == odd.digest()
        assert again.digest() != named.digest()
        assert StudioBelief.from_json(FIRST.to_json()).covariance.shape == (0, 0)
