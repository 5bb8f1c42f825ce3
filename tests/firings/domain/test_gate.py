"""What speaks against a piece in a load."""

import pytest

from firings.domain.gate import Asked, objections
from pieces.domain.stages import BISQUED, BONE_DRY, DRYING, GLAZED, IN_BISQUE, SCRAPPED


def codes(kind, spot, **more):
    return [each.code for each in objections(kind, Asked("T1", spot, **more))]


@pytest.mark.parametrize(
    ("kind", "spot", "found"),
    [
        ("bisque", BONE_DRY, []),
        ("bisque", BISQUED, ["wrong-stage"]),
        ("bisque", SCRAPPED, ["wrong-stage"]),
        ("glaze", GLAZED, []),
        ("glaze", BISQUED, []),
        ("glaze", BONE_DRY, ["wrong-stage"]),
        ("test", BONE_DRY, ["wrong-stage"]),
        ("glaze", IN_BISQUE, ["wrong-stage"]),
    ],
)
def test_stage_must_suit_the_firing(kind, spot, found):
    assert codes(kind, spot) == found


def test_dryness_is_asked_of_a_bisque_only():
    assert codes("bisque", DRYING, is_dry=False) == ["damp-evidence-missing"]
    assert codes("glaze", GLAZED, is_dry=False) == []


def test_everything_that_speaks_against_it_is_named():
    found = codes("bisque", BONE_DRY, has_clash=True, is_unclaimed=True, in_load="F-211")

    assert found == ["unclaimed", "two-stories", "in-another-load"]
