"""What counts as evidence that a piece is dry. Thresholds: common practice, no source."""

from datetime import UTC, datetime, timedelta

import pytest

from firings.domain.dry_evidence import evidence

AT = datetime(2026, 10, 31, 9, tzinfo=UTC)
HOUR = timedelta(hours=1)


def of(*weighings, is_called_dry=False):
    return evidence(is_called_dry=is_called_dry, called_at=AT, weighings=weighings)


def test_a_person_who_called_it_dry_is_enough():
    found = of(is_called_dry=True)

    assert (found.word, found.is_ok) == ("check", True)
    assert "31 October" in found.detail


@pytest.mark.parametrize(
    ("weighings", "is_ok"),
    [
        ([], False),
        ([(AT, 500.0)], False),
        ([(AT - 13 * HOUR, 500.0), (AT, 499.5)], True),
        ([(AT - 13 * HOUR, 500.0), (AT, 495.0)], False),
        ([(AT - 2 * HOUR, 500.0), (AT, 500.0)], False),
        ([(AT, 500.0), (AT - 12 * HOUR, 500.9)], True),
        ([(AT - 40 * HOUR, 560.0), (AT - 13 * HOUR, 500.2), (AT, 500.0)], True),
        ([(AT - 13 * HOUR, 500.0), (AT, 506.0)], False),
    ],
)
def test_two_weighings_half_a_day_apart_must_agree(weighings, is_ok):
    found = of(*weighings)

    assert found.is_ok is is_ok
    assert found.word == ("weighings" if is_ok else "none")


def test_no_order_of_weighings_changes_it():
    rows = [(AT - 40 * HOUR, 560.0), (AT - 13 * HOUR, 500.2), (AT, 500.0)]

    assert of(*rows) == of(*reversed(rows))
