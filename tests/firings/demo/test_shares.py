"""The demo's links and approvals against what its paper says of them."""

from datetime import UTC, date, datetime

from firings.models import Share
from pieces.models import Approval
from studio.models import Reminder
from tests.firings.demo.telling import sweep


def links(demo, number: str) -> list[Share]:
    rows = Share.objects.of(demo.studio).filter(commission__number=number)
    return list(rows.order_by("made_at"))


class TestLinks:
    def test_of_the_brackets_runs_out_on_the_thirtieth(self, demo) -> None:
        (link,) = links(demo, "C-105")

        # The first instant after 30 November in London.
        assert link.expires_at == datetime(2026, 12, 1, tzinfo=UTC)
        assert link.revoked_at is None

    def test_of_the_sauce_boats_was_once_revoked_and_made_anew(self, demo) -> None:
        old, new = links(demo, "C-102")

        assert old.revoked_at is not None
        assert old.revoked_at < new.made_at
        assert new.revoked_at is None
        assert old.token_hash != new.token_hash


class TestApproval:
    def test_of_the_colour_is_due_on_the_sixth(self, demo) -> None:
        (asked,) = Approval.objects.of(demo.studio)

        assert (asked.commission.number, asked.about) == ("C-102", "colour")
        assert asked.due_date == date(2026, 11, 6)

    def test_is_told_to_its_maker_two_days_before_and_not_yet(self, demo) -> None:
        sweep(demo, demo.now)
        assert not Reminder.objects.filter(cause="approval_due").exists()

        sweep(demo, datetime(2026, 11, 4, 9, 0, tzinfo=UTC))

        (told,) = Reminder.objects.filter(cause="approval_due")
        assert told.person.first_name == "Odile"
        assert told.title == "C-102: colour to approve by 6 Nov 2026."
        assert "Wainfleet" not in told.title + told.body
