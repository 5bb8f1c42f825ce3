"""In the shed, without signal: a photo of a piece, and a loss that it shows."""

from __future__ import annotations

import io
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Page, expect

from tests import pictures
from tests.journeys.conftest import Phone
from tests.journeys.phones import STUDIO, heard
from tests.services.processes import until

MARK = "J06"


@pytest.fixture
def snap(tmp_path: Path) -> Path:
    """A photo as a camera leaves it: large, on its side, and with the place in it."""
    file = tmp_path / "IMG_0042.jpg"
    file.write_bytes(pictures.from_a_camera(3000, 2000, orientation=6))
    return file


def piece_id(page: Page) -> str:
    found: str = heard(page, f"pieces/?q={MARK}")["results"][0]["id"]
    return found


def told(page: Page, piece: str) -> list[str]:
    entries = heard(page, f"journal/?subject={piece}")["results"]
    return [entry["verb"] for entry in entries]


class TestAPhotoWithoutSignal:
    def test_is_kept_shown_and_sent_before_what_it_shows(self, phone: Phone, snap: Path) -> None:
        page = phone("odile")
        piece = piece_id(page)
        page.goto(f"/pieces/{piece}")
        page.get_by_role("button", name="Something else").click()
        page.get_by_role("button", name="Scrap, missing").click()
        page.context.set_offline(True)

        page.set_input_files("input[type=file]", snap)
        expect(page.get_by_text("Take another")).to_be_visible()
        page.get_by_role("radio", name="cracked").check(force=True)
        page.get_by_role("button", name=f"{MARK}: scrapped").click()

        expect(page.locator("body")).to_contain_text("2 kept on this phone")
        shown = page.get_by_role("link", name=f"Photo of {MARK}").first.locator("img")
        width = "image => image.decode().then(() => image.naturalWidth)"
        assert shown.evaluate(width) == 1365

        page.context.set_offline(False)
        page.reload()
        assert until(lambda: "scrapped" in told(page, piece), within_s=60)
        (photo,) = heard(page, f"pieces/{piece}/")["photo_ids"]
        kept = page.request.get(f"{STUDIO}/photos/{photo}/image/").body()
        assert b"Exif" not in kept
        assert Image.open(io.BytesIO(kept)).size == (1365, 2048)
        assert heard(page, f"pieces/{piece}/history/")["results"][0]["photo_ids"] == [photo]
