"""A week of mixed pieces, which both ways of marching are tried on."""

import pytest

from pieces.domain.drying import BODIES, Ensemble, ensemble
from tests.pieces.domain.drying.problems import SECTIONS, a_week


@pytest.fixture(scope="module")
def mixed() -> list[Ensemble]:
    names = list(BODIES)
    return [
        ensemble(a_week(section, names[i % len(names)], 1000.0 * i), 8)
        for i, section in enumerate(SECTIONS)
    ]
