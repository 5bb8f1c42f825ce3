"""What the journeys ask beside what they tap."""

from __future__ import annotations

from typing import Any

from playwright.sync_api import Page

STUDIO = "/api/v1/studios/sallowbeck-yard"


def heard(page: Page, path: str) -> Any:
    """Ask the server, as this phone's person."""
    answer = page.request.get(f"{STUDIO}/{path}")
    assert answer.ok, answer.text()
    return answer.json()
