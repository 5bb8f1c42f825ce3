"""On a phone, wet-handed and without signal: what is ready to come out of its mould."""

from __future__ import annotations

import re

from playwright.sync_api import Page, expect

from tests.journeys.conftest import Phone
from tests.journeys.phones import heard
from tests.services.processes import until


def look_now(page: Page) -> list[str]:
    """Return the marks of the first block, in order."""
    rows = page.get_by_role("region", name="Look now").get_by_role("listitem")
    return [re.split(r"\s", text.strip())[0] for text in rows.all_inner_texts()]


def verbs(page: Page, mark: str) -> list[str]:
    """Return what the server has heard of a piece, oldest first."""
    piece = heard(page, f"pieces/?q={mark}")["results"][0]
    entries = heard(page, f"journal/?subject={piece['id']}")["results"]
    return [entry["verb"] for entry in reversed(entries)]


class TestTheFirstScreen:
    def test_says_what_to_look_at_and_how_sure_it_is(self, phone: Phone) -> None:
        page = phone("nessa")

        first, *others = look_now(page)

        assert first == "T26"
        assert sorted(others) == ["J08", "L08"]
        expect(page.get_by_role("region", name="Look now")).to_contain_text("studio guess")
        later = page.get_by_role("region", name="Later today")
        expect(later).to_contain_text("T25")
        expect(later).to_contain_text("S04")
        expect(page.get_by_role("region", name="Press next")).to_contain_text("M09")


class TestOneThumb:
    def test_answers_undoes_and_keeps_what_it_hears_without_signal(self, phone: Phone) -> None:
        page = phone("odile")
        page.get_by_role("button", name=re.compile("^T26 out")).click()

        expect(page.get_by_role("button", name="Undo").first).to_be_visible()
        page.get_by_role("button", name="Undo").first.click()
        expect(page.get_by_role("button", name=re.compile(r"^T26, tile, in mould"))).to_be_visible()
        page.wait_for_timeout(800)  # the tray is dead for 600 ms after an answer, by design
        told = verbs(page, "T26")
        assert told[-2:] == ["demoulded", "took_back"]

        page.context.set_offline(True)
        page.get_by_role("button", name=re.compile(r"^T26, tile, in mould")).click()
        page.get_by_role("button", name=re.compile("^T26 out")).click()
        expect(page.locator("body")).to_contain_text("1 kept on this phone · no signal")
        page.reload()
        # A page opened anew says "waiting to send" until it has tried by itself.
        expect(page.locator("body")).to_contain_text("1 kept on this phone · ")
        assert "T26" not in look_now(page)

        page.context.set_offline(False)
        page.reload()
        assert until(lambda: verbs(page, "T26").count("demoulded") == 2, within_s=45)
        assert verbs(page, "T26") == ["pressed", "demoulded", "took_back", "demoulded"]
        expect(page.locator("body")).not_to_contain_text("kept on this phone", timeout=10_000)
