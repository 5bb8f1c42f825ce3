"""Cautions are shown at every act that burns or cuts, and none of them promises safety."""

import pytest

from firings.domain import cautions
from firings.domain.loads import Kind

SAID = [value for value in vars(cautions).values() if isinstance(value, cautions.Caution)]


@pytest.mark.parametrize("caution", [*SAID, *cautions.CHECKLIST], ids=lambda c: c.code)
def test_no_caution_calls_anything_safe(caution):
    words = caution.detail.casefold().replace("not a safety device", "")

    assert "safe" not in words
    assert caution.detail.endswith(".")


def test_every_event_of_a_load_has_its_cautions():
    assert set(cautions.AT) == {str(kind) for kind in Kind}
    for kind in ("loading", "started", "stopped", "resumed", "ended", "opened", "unloaded"):
        assert cautions.AT[kind]


def test_the_checklist_names_a_change_of_the_clocks():
    plain = cautions.checklist(clocks_change="")
    changed = cautions.checklist(clocks_change="They go back.")

    assert changed[:-1] == plain
    assert changed[-1].detail == "They go back."
