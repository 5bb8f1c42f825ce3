"""What clients are asked, and what stands as their answer."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from math import isfinite
from typing import Any
from zoneinfo import ZoneInfo

from django.db.models import QuerySet

from pieces.domain import approval_words as words
from pieces.domain.window_store import restored
from pieces.models import Approval, ApprovalAnswer, Commission, Forecast
from studio.models import Studio

SOFT_STAGES = ("pressing", "assembly")


@dataclass(frozen=True, slots=True)
class ApprovalNow:
    """An approval with the answer that stands, if there is one."""

    approval: Approval
    answer: ApprovalAnswer | None

    @property
    def is_open(self) -> bool:
        return self.answer is None

    @property
    def client_words(self) -> str:
        """What the client wrote with the answer; what was noted here is not theirs."""
        if self.answer is None or self.answer.through != ApprovalAnswer.Through.LINK:
            return ""
        return next((note.text for note in self.answer.entry.notes.all()), "")


def approvals_of(commission: Commission) -> list[ApprovalNow]:
    """Return what was asked of a client, the nearest day first. Three queries."""
    rows: Any = Approval.objects.filter(commission=commission).standing()
    return now(rows.order_by("due_date", "happened_at", "id"))


def open_ones(studio: Studio) -> list[ApprovalNow]:
    """Return what still waits for an answer, in orders that are open. Three queries."""
    rows: Any = Approval.objects.filter(
        studio=studio, commission__closed_at=None, commission__cancelled_at=None
    ).standing()
    return [one for one in now(rows.order_by("due_date", "id")) if one.is_open]


def now(rows: "QuerySet[Approval]") -> list[ApprovalNow]:
    """Return approvals with the answers that stand."""
    approvals = list(rows.select_related("commission__maker__studio", "entry__member"))
    answers: Any = ApprovalAnswer.objects.filter(approval__in=approvals).standing()
    told: Iterable[ApprovalAnswer] = (
        answers.select_related("entry__member")
        .prefetch_related("entry__notes")
        .order_by("entry__seq")
    )
    first: dict[Any, ApprovalAnswer] = {}
    for answer in told:
        first.setdefault(answer.approval_id, answer)
    return [ApprovalNow(row, first.get(row.pk)) for row in approvals]


def clay_closes(commission: Commission, zone: ZoneInfo) -> list[tuple[str, date]]:
    """Return the pieces that can still be changed, with the likely day of their being too stiff.

    What is not reckoned, or not to be reached in this room's air, is left out. One query.
    """
    rows = Forecast.objects.filter(
        piece__line__commission=commission,
        piece__is_undone=False,
        piece__stage__in=SOFT_STAGES,
    ).exclude(windows={})
    found = [
        (row.piece.shown_mark, restored(row.windows).join.closes.p50_s)
        for row in rows.select_related("piece")
    ]
    return [
        (mark, datetime.fromtimestamp(at_s, tz=UTC).astimezone(zone).date())
        for mark, at_s in found
        if isfinite(at_s)
    ]


def clocks(commission: Commission, approvals: Sequence[ApprovalNow]) -> dict[Any, str]:
    """Return, for each approval still open, until when the clay waits. One query."""
    still = [one.approval for one in approvals if one.is_open]
    if not still:
        return {}
    closes = clay_closes(commission, ZoneInfo(commission.studio.zone))
    return {row.pk: words.clock(row.waits, closes) for row in still}
