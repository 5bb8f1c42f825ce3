"""The product as people start it, and phones that look at it."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import urllib.request
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

from tests.services.fixtures import free_port
from tests.services.processes import until

ROOT = Path(__file__).resolve().parents[2]
PASSWORD = "slip-and-score"
PHONE = {"width": 360, "height": 640}
UP_WITHIN_S = 240
DOWN_WITHIN_S = 15


@dataclass(frozen=True)
class Running:
    """Natch, up with the demo studio."""

    address: str
    log: Path

    def is_ready(self) -> bool:
        try:
            with urllib.request.urlopen(f"{self.address}/healthz", timeout=2) as answer:
                return bool(answer.status == 200)
        except OSError:
            return False


@pytest.fixture(scope="session")
def natch(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Running]:
    """Start `manage.py up` on a data folder of its own; end it as Ctrl-C does."""
    data = tmp_path_factory.mktemp("natch")
    port = free_port()
    running = Running(f"http://localhost:{port}", data / "up.log")
    command = [sys.executable, "manage.py", "up", "--port", str(port), "--data", str(data)]
    with running.log.open("wb") as log:
        up = subprocess.Popen(
            command,
            cwd=ROOT,
            env={**os.environ, "NATCH_DEMO_PASSWORD": PASSWORD},
            stdout=log,
            stderr=subprocess.STDOUT,
        )
    try:
        until(lambda: running.is_ready() or up.poll() is not None, within_s=UP_WITHIN_S)
        assert running.is_ready(), running.log.read_text(errors="replace")
        yield running
    finally:
        up.send_signal(signal.SIGINT)
        up.wait(timeout=DOWN_WITHIN_S)


@pytest.fixture(scope="session")
def browser(browser_executable: Path) -> Iterator[Browser]:
    """The Chromium of this machine, without a window."""
    flags = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--no-first-run"]
    with sync_playwright() as playwright:
        chromium = playwright.chromium.launch(executable_path=str(browser_executable), args=flags)
        yield chromium
        chromium.close()


Phone = Callable[[str], Page]


@pytest.fixture
def phone(natch: Running, browser: Browser) -> Iterator[Phone]:
    """Give a phone of 360 x 640 on which somebody has signed in; each call is another phone."""
    contexts: list[BrowserContext] = []
    faults: list[str] = []

    def sign_in(who: str) -> Page:
        context = browser.new_context(
            viewport=PHONE, device_scale_factor=2, has_touch=True, base_url=natch.address
        )
        contexts.append(context)
        page = context.new_page()
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.goto("/")
        page.get_by_label("Name", exact=True).fill(who)
        page.get_by_label("Password", exact=True).fill(PASSWORD)
        page.get_by_role("button", name="Sign in").click()
        page.get_by_role("region", name="Look now").wait_for()
        return page

    yield sign_in
    for context in contexts:
        context.close()
    assert faults == []
