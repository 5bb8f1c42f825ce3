"""The demo loaded so that its own clock is another now: it must say what it says unshifted."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from django.core.management import call_command
from django.db import transaction
from django.utils import timezone

from firings.models import Load
from firings.queries.opening import openings_of
from firings.queries.told import points_of
from pieces.models import Forecast, Piece
from studio.models import OpeningHours, Reminder, Studio
from studio.queries import chain
from tests import factories
from tests.firings.demo.telling import Demo, sweep

LONDON = ZoneInfo("Europe/London")
BLOCKS = ("look_now", "drying", "ready_for_bisque")

NOWS = [
    pytest.param(datetime(2027, 7, 14, 0, 4, tzinfo=LONDON), id="just after midnight in July"),
    pytest.param(
        datetime(2027, 3, 28, 2, 30, tzinfo=LONDON), id="clocks go on", marks=pytest.mark.slow
    ),
    pytest.param(
        datetime(2026, 11, 25, 16, 29, 31, tzinfo=LONDON), id="a weekday", marks=pytest.mark.slow
    ),
    pytest.param(
        datetime(2028, 2, 29, 23, 57, tzinfo=LONDON), id="before midnight", marks=pytest.mark.slow
    ),
]


@pytest.fixture(scope="module", params=NOWS)
def renewed(request: Any, loaded: Demo, django_db_blocker: Any) -> Iterator[Demo]:
    """A second copy, made by the command at another now."""
    now: datetime = request.param
    with django_db_blocker.unblock(), pytest.MonkeyPatch.context() as patch, transaction.atomic():
        patch.setenv("NATCH_DEMO_PASSWORD", factories.PASSWORD)
        patch.setattr(timezone, "now", lambda: now)
        call_command("demo", renew=True, verbosity=0)
        yield Demo(Studio.objects.get(slug="sallowbeck-yard-2"), now.astimezone(UTC))
        transaction.set_rollback(True)


@pytest.fixture
def both(
    loaded: Demo, renewed: Demo, db: None, monkeypatch: pytest.MonkeyPatch
) -> tuple[dict[str, Any], dict[str, Any]]:
    """The first screens of the demo and of its copy, each at its own now."""
    screens = []
    for demo in (loaded, renewed):
        monkeypatch.setattr(timezone, "now", lambda now=demo.now: now)
        screens.append(demo.get("bench/"))
    return screens[0], screens[1]


def verdicts(bench: dict[str, Any], block: str) -> dict[str, str]:
    return {row["piece"]["mark"]: row["verdict"] for row in bench[block]}


def opens(bench: dict[str, Any]) -> dict[str, datetime]:
    rows = [row for name in ("look_now", "later_today", "later") for row in bench[name]]
    return {
        row["piece"]["mark"]: datetime.fromisoformat(row["window"]["opens"]["p50"]) for row in rows
    }


class TestCopy:
    @pytest.mark.parametrize("block", BLOCKS)
    def test_says_the_same_of_every_piece(self, both, block: str) -> None:
        plain, shifted = both

        assert verdicts(shifted, block) == verdicts(plain, block)

    def test_has_the_same_moulds_to_press_in_the_same_order(self, both) -> None:
        plain, shifted = (
            [(r["set"]["label"], r["dryness"]["word"], r["may_press"]) for r in b["press_next"]]
            for b in both
        )

        assert shifted == plain

    def test_expects_this_mornings_pieces_after_the_same_time(self, both, loaded, renewed) -> None:
        plain, shifted = (opens(bench) for bench in both)

        assert set(shifted) == set(plain)
        for mark, at in plain.items():
            # Steps begin at whole hours and rooms have a daily shape, both by the clock.
            apart = (shifted[mark] - renewed.now) - (at - loaded.now)
            assert abs(apart) <= timedelta(minutes=5), (mark, apart)

    def test_puts_what_opens_before_closing_under_later_today(self, both, renewed) -> None:
        shifted = both[1]
        local = renewed.now.astimezone(LONDON)
        hours = OpeningHours.objects.of(renewed.studio).filter(weekday=local.weekday()).first()
        closes = hours.closes if hours and hours.closes > local.time() else None
        last = local.replace(hour=closes.hour if closes else 23, minute=0 if closes else 59)

        for mark in ("T25", "S04"):
            block = "later_today" if opens(shifted)[mark] < last else "later"
            assert mark in verdicts(shifted, block)

    def test_keeps_elapsed_time_to_the_minute(self, loaded, renewed, db) -> None:
        def since(demo: Demo) -> dict[str, timedelta]:
            rows = Piece.objects.of(demo.studio).values_list("mark", "since_at")
            return {mark: demo.now - at for mark, at in rows}

        plain, shifted = since(loaded), since(renewed)

        apart = {mark: shifted[mark] - age for mark, age in plain.items()}
        assert max(map(abs, apart.values())) <= timedelta(seconds=30)
        assert len(set(apart.values())) == 1

    def test_has_a_whole_journal_and_no_reminder_that_is_due(self, renewed, db, monkeypatch):
        monkeypatch.setattr(timezone, "now", lambda: renewed.now)

        sweep(renewed, renewed.now)

        assert chain.faults(renewed.studio) == []
        assert not Reminder.objects.of(renewed.studio).filter(due_at__lt=renewed.now).exists()

    def test_keeps_the_hours_of_a_firing(self, renewed, db) -> None:
        load = Load.objects.of(renewed.studio).get(number="F-209")

        assert load.ended_at is not None
        assert load.started_at is not None
        assert load.ended_at - load.started_at == timedelta(hours=11)

    def test_opens_its_cooling_kiln_as_long_after(self, both, renewed, loaded, db) -> None:
        def opens_after(demo: Demo) -> timedelta:
            points = points_of(rows := list(Load.objects.of(demo.studio).filter(number="F-210")))
            opening = openings_of(demo.studio, rows, points, demo.now)[rows[0].pk]
            assert opening.likely is not None
            return opening.likely - demo.now

        assert abs(opens_after(renewed) - opens_after(loaded)) <= timedelta(minutes=1)

    def test_has_its_forecasts_from_the_start(self, renewed, db) -> None:
        assert Forecast.objects.of(renewed.studio).exclude(windows={}).count() == 23
