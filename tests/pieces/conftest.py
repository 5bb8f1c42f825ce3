from datetime import timedelta

import pytest

from pieces.actions import forecast_questions, forecast_runs
from studio.models import Studio
from tests.pieces import kit as kits


@pytest.fixture
def kit(studio: Studio) -> kits.Kit:
    return kits.kit(studio)


@pytest.fixture
def short_forecasts(monkeypatch: pytest.MonkeyPatch) -> None:
    """Look eight days ahead instead of three weeks, which costs a third."""
    for module in (forecast_questions, forecast_runs):
        monkeypatch.setattr(module, "HORIZON", timedelta(days=8))
