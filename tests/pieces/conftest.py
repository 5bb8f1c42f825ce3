import pytest

from studio.models import Studio
from tests.pieces import kit as kits


@pytest.fixture
def kit(studio: Studio) -> kits.Kit:
    return kits.kit(studio)
