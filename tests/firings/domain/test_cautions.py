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
    plain = cautions.checklist("glaze", clocks_change="")
    changed = cautions.checklist("glaze", clocks_change="They go back.")

    assert changed[:-1] == plain
    assert changed[-1].detail == "They go back."


def test_the_checklist_asks_for_dry_ware_before_a_bisque_and_clean_shelves_before_a_glaze():
    first = {kind: cautions.checklist(kind, clocks_change="")[0] for kind in ("bisque", "glaze")}

    assert first == {"bisque": cautions.DRY_WARE, "glaze": cautions.SHELVES_WASHED}
    assert cautions.checklist("test", clocks_change="") == cautions.CHECKLIST
