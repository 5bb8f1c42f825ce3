import pytest

from tests import factories
from tests.moulds import yard


@pytest.fixture
def shelves(studio, owner):
    """The mould sets of the yard."""
    return yard.stock(studio, owner[0])


@pytest.fixture
def tile_set(studio):
    """A studio's set for a tile of 560 g, without a casting."""
    part = factories.design_part(factories.design(studio), clay_g=560.0)
    return factories.mould_set(part, "M01")


@pytest.fixture
def casting(maker, tile_set):
    """Its first casting, of a face and a back."""
    return yard.poured(maker[0], tile_set)
