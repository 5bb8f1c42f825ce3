"""The demo studio, told once for all tests of this folder and rolled back after them."""

from collections.abc import Iterator
from typing import Any

import pytest
from django.utils import timezone

from firings.demo import tables
from tests.firings.demo.telling import Demo, told


@pytest.fixture(scope="package")
def loaded(django_db_setup: None, django_db_blocker: Any) -> Iterator[Demo]:
    with django_db_blocker.unblock(), told(None, tables.SLUG) as demo:
        yield demo


@pytest.fixture
def demo(loaded: Demo, db: None, monkeypatch: pytest.MonkeyPatch) -> Demo:
    """The demo at nine on its Saturday; what a test does to it is undone after the test."""
    monkeypatch.setattr(timezone, "now", lambda: loaded.now)
    return loaded
