"""A client rings: how does it stand, and what happened to the sauce boat? Told on a phone."""

from __future__ import annotations

import io
import re
import time

from playwright.sync_api import Page, expect
from pypdf import PdfReader

from tests.journeys.conftest import Phone

# The keystroke-level model (Card, Moran & Newell 1980, from memory): making up one's mind, moving
# the hand to it, touching it; a line is read at about the pace of a glance for each.
MIND_S, POINT_S, TOUCH_S = 1.35, 1.10, 0.20
WITHIN_S = 20.0


class Hand:
    """Counts taps, and how long the screen takes to answer each."""

    def __init__(self, page: Page) -> None:
        self.page, self.taps, self.waited_s = page, 0, 0.0

    def tap(self, role: str, name: str, *, until_shows: str) -> None:
        """Tap, and wait until the main part shows some words."""
        start = time.monotonic()
        found = self.page.get_by_role(role, name=re.compile(name))  # type: ignore[arg-type]
        (found.check if role == "radio" else found.click)()
        expect(self.page.locator("body")).to_contain_text(until_shows)
        self.waited_s += time.monotonic() - start
        self.taps += 1

    @property
    def takes_s(self) -> float:
        """What a person takes, the waiting for the screen with it."""
        return self.taps * (MIND_S + POINT_S + TOUCH_S) + self.waited_s


class TestAClientRings:
    def test_is_told_how_it_stands_in_two_taps(self, phone: Phone) -> None:
        hand = Hand(phone("odile"))

        hand.tap("link", "^Orders$", until_shows="Dr E. Wainfleet")
        hand.tap("link", "^C-102,", until_shows="likely")

        main = hand.page.get_by_role("main")
        expect(main).to_contain_text("1 bisqued, 3 on the way")
        expect(main).to_contain_text("1 lost")
        expect(main).to_contain_text("guess")  # in words: it has not seen twenty of its own
        expect(main).to_contain_text("promised")
        assert hand.taps == 2
        assert hand.takes_s < WITHIN_S

    def test_is_told_what_happened_to_the_boat_in_four(self, phone: Phone) -> None:
        hand = Hand(phone("odile"))

        hand.tap("link", "^Orders$", until_shows="Dr E. Wainfleet")
        hand.tap("link", "^C-102,", until_shows="Life line")
        hand.tap("link", "^Story", until_shows="Week of")
        hand.tap("radio", "^Losses$", until_shows="Handle cracked")

        main = hand.page.get_by_role("main")
        expect(main).not_to_contain_text("Bone dry")
        expect(main).to_contain_text("S03")
        expect(main).to_contain_text("Handle pressed in M04 g1, in the place of the one before")
        assert hand.taps == 4
        assert hand.takes_s < WITHIN_S

    def test_hears_of_firings_alone_and_of_no_other_client(self, phone: Phone) -> None:
        hand = Hand(phone("jun"))

        hand.tap("link", "^Orders$", until_shows="Dr E. Wainfleet")
        hand.tap("link", "^C-102,", until_shows="promised")
        expect(hand.page.locator("body")).not_to_contain_text("wainfleet@")
        hand.tap("link", "^Story", until_shows="Week of")
        hand.tap("radio", "^Firings$", until_shows="Bisqued, F-207")

        expect(hand.page.get_by_role("main")).not_to_contain_text("Handle cracked")
        expect(hand.page.get_by_role("main")).not_to_contain_text("Larkspur")


class TestWhatItsHistoryIs:
    def test_is_answered_from_the_papers_in_three_taps(self, phone: Phone) -> None:
        hand = Hand(phone("odile"))

        hand.tap("link", "^Orders$", until_shows="Dr E. Wainfleet")
        hand.tap("link", "^C-102,", until_shows="Life line")
        hand.tap("link", "^Papers of C-102$", until_shows="Use with food")

        main = hand.page.get_by_role("main")
        expect(main).to_contain_text("Not declared")
        expect(main).to_contain_text("S02")
        expect(main).to_contain_text("not covered yet: no glaze load")
        expect(main).to_contain_text("Natch keeps what was written and signed; it does not certify")
        assert hand.taps == 3
        assert hand.takes_s < WITHIN_S
        assert "Papers, C-102" in hand.page.title()

    def test_is_printed_with_the_papers_from_the_first_line_on(self, phone: Phone) -> None:
        hand = Hand(phone("odile"))
        hand.tap("link", "^Orders$", until_shows="Dr E. Wainfleet")
        hand.tap("link", "^C-102,", until_shows="Life line")
        hand.tap("link", "^Papers of C-102$", until_shows="Use with food")

        # Another sheet of the browser opens them; what it asks for is asked for here once more.
        context = hand.page.context
        with context.expect_event("request", lambda asked: asked.url.endswith("/papers/")) as seen:
            hand.page.get_by_role("button", name="Make the papers").click()

        sheets = PdfReader(io.BytesIO(hand.page.request.get(seen.value.url).body())).pages
        told = " ".join(" ".join(sheet.extract_text() for sheet in sheets).split())
        for text in ("C-102", "S02", "M03 g1", "F-207", "Not declared for food."):
            assert text in told
