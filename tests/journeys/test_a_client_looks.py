"""A maker shows an order to its client, who opens the link on a phone of their own."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.journeys.conftest import PHONE, Phone, Running

STAFF = ("wainfleet", "Rack", "Bench 2", "reclaim", "Farrant", "Odile", "Larkspur", "£", "lost")
ASKS_AGAIN_MS = 70_000


@pytest.fixture
def client_phone(natch: Running, browser: Browser) -> Iterator[Page]:
    """A phone that was never here, with scripts switched off."""
    context = browser.new_context(
        viewport=PHONE, device_scale_factor=2, base_url=natch.address, java_script_enabled=False
    )
    yield context.new_page()
    context.close()


def share(page: Page) -> str:
    """Go from the order to a link, and return its address."""
    page.get_by_role("link", name="Orders", exact=True).click()
    page.get_by_role("link", name=re.compile("^C-102,")).click()
    page.get_by_role("link", name="Share C-102 with its client").click()
    expect(page.get_by_role("main")).to_contain_text("Colour to approve")
    page.get_by_role("button", name="New link").click()
    page.get_by_label("Opens until the end of").fill("2099-01-01")
    page.get_by_role("button", name="Preview").click()
    expect(page.get_by_role("main")).to_contain_text("within two years")
    until = page.evaluate("new Date(Date.now() + 20 * 864e5).toISOString().slice(0, 10)")
    page.get_by_label("Opens until the end of").fill(until)
    page.get_by_role("button", name="Preview").click()
    shown = page.frame_locator("iframe")
    expect(shown.locator("main")).to_contain_text("Sauce boat: 2 wanted")
    page.get_by_role("button", name="Make the link").click()
    text = page.get_by_label("Text to send").input_value()
    found = re.search(r"https?://\S+(/c/\S+)", text)
    assert found is not None, text
    return found[1]


class TestAClientLooks:
    def test_sees_what_was_chosen_says_yes_and_loses_sight_of_it(
        self, phone: Phone, client_phone: Page
    ) -> None:
        page = phone("odile")
        address = share(page)

        answer = client_phone.goto(address)

        assert answer is not None
        assert answer.status == 200
        source = answer.text()
        for word in STAFF:
            assert word.lower() not in source.lower(), word
        wide = client_phone.evaluate("document.documentElement.scrollWidth")
        assert wide <= PHONE["width"]

        client_phone.get_by_label("A word with it").fill("A shade darker, please.")
        client_phone.get_by_role("button", name="Yes").click()
        expect(client_phone.get_by_role("main")).to_contain_text("You said yes.")

        page.get_by_role("button", name="Done").click()
        main = page.get_by_role("main")
        # The screen asks again once a minute.
        expect(main).to_contain_text("The client said yes", timeout=ASKS_AGAIN_MS)
        expect(main).to_contain_text("A shade darker, please.")
        expect(main).to_contain_text("opened once", timeout=ASKS_AGAIN_MS)

        page.get_by_role("button", name=re.compile(": revoke it$")).first.click()
        page.get_by_role("button", name=re.compile("revoke it for good$")).click()
        expect(page.get_by_role("button", name=re.compile(": revoke it$"))).to_have_count(1)
        gone = client_phone.goto(address)
        assert gone is not None
        assert gone.status == 404
