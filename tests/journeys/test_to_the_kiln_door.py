"""One piece on a phone, from an empty mould to the kiln door, and told when to look."""

from __future__ import annotations

import re
from typing import Any

from playwright.sync_api import Page, expect

from tests.journeys.conftest import Phone
from tests.journeys.phones import heard
from tests.services.processes import until


def mould_set(page: Page, label: str) -> dict[str, Any]:
    """Return a mould set as the server lists it."""
    sets = heard(page, "mould-sets/")["results"]
    found: dict[str, Any] = next(row for row in sets if row["label"] == label)
    return found


def verbs(page: Page, piece_id: str) -> list[str]:
    """Return what the server has heard of the piece, oldest first."""
    entries = heard(page, f"journal/?subject={piece_id}")["results"]
    return [entry["verb"] for entry in reversed(entries)]


class TestOnePiece:
    def test_goes_from_an_empty_mould_to_the_kiln_door(self, phone: Phone) -> None:
        page = phone("odile")
        tile_mould = mould_set(page, "M01")
        before = max(part["presses"] for part in tile_mould["parts"])

        # The tile in M01 comes out, so that the mould is free for another.
        page.get_by_role("button", name=re.compile(r"^T25, tile")).click()
        page.get_by_role("button", name=re.compile("^T25 out")).click()
        assert until(lambda: heard(page, "pieces/?q=T25")["results"][0]["state"] == "drying")

        page.goto(f"/press/{tile_mould['id']}")
        pressed = page.get_by_role("button", name=re.compile(r"^Pressed T\d+$"))
        mark = pressed.inner_text().removeprefix("Pressed ")
        pressed.click()
        expect(
            page.get_by_role("button", name=re.compile(f"^Undo: Pressed {mark}"))
        ).to_be_visible()
        assert until(lambda: len(heard(page, f"pieces/?q={mark}")["results"]) == 1)
        piece_id = heard(page, f"pieces/?q={mark}")["results"][0]["id"]
        counted = mould_set(page, "M01")
        assert [part["presses"] for part in counted["parts"]] == [before + 1, before + 1]

        # Told when to look: the worker reckons it, and the bench says a time.
        def is_reckoned() -> bool:
            rows = heard(page, "bench/")
            found = [*rows["look_now"], *rows["later_today"], *rows["later"]]
            mine = [row for row in found if row["piece"]["id"] == piece_id]
            return bool(mine) and mine[0]["window"] is not None

        assert until(is_reckoned, within_s=60)
        page.goto("/")
        row = page.get_by_role("button", name=re.compile(rf"^{mark}, tile, M01"))
        expect(row).to_be_visible(timeout=70_000)

        row.click()
        page.get_by_role("button", name=re.compile(f"^{mark} out")).click()
        assert until(lambda: verbs(page, piece_id)[-1] == "demoulded")

        page.goto(f"/pieces/{piece_id}")
        page.get_by_role("button", name=f"Cover {mark}").click()
        page.get_by_role("button", name=f"{mark}: Loosely").click()
        assert until(lambda: verbs(page, piece_id)[-1] == "covered")
        page.reload()
        expect(page.get_by_role("main")).to_contain_text("drying, loosely covered")
        expect(page.get_by_role("main")).to_contain_text("bursts the pot")

        page.get_by_role("button", name="Weigh").click()
        page.get_by_role("textbox", name=re.compile("on the scale")).fill("505")
        page.get_by_role("button", name="Keep").click()
        assert until(lambda: verbs(page, piece_id)[-1] == "weighed")
        page.get_by_role("button", name="Call it dry").click()
        assert until(lambda: heard(page, f"pieces/{piece_id}/")["piece"]["state"] == "bone_dry")

        page.goto("/")
        ready = page.get_by_role("region", name="Ready for bisque")
        expect(ready).to_contain_text(mark)
