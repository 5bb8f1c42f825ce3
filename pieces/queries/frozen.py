"""The history of an order as a text that can be kept to the letter, and what was told afterwards.

It holds acts, marks, initials and reports: no client, no note, no price, no place to reach anybody.
"""

import json
from collections.abc import Iterable
from datetime import datetime
from typing import Any

from pieces.domain.stages import WORDS
from pieces.models import Commission, FrozenHistory
from studio.queries import journal

from . import commission_history as history
from .commission_history import OrderTold
from .commissions import pieces_of, reports_of


def document(commission: Commission, *, at: datetime) -> tuple[str, int]:
    """Return the history as JSON text with its keys in order, and the journal number it goes to."""
    upto = journal.highest_seq(commission.studio)
    told = history.told(commission, list(history.acts_of(commission)))
    body = {
        "order": commission.number,
        "what": commission.what,
        "use": commission.use,
        "kept_at": _instant(at),
        "journal_seq": upto,
        "pieces": [
            {"mark": piece.shown_mark, "is": piece.design.noun, "stage": WORDS[piece.state]}
            for piece in pieces_of([commission])
        ],
        "reports": [_report(row) for row in reports_of(commission)],
        "acts": shown_acts(told),
    }
    return json.dumps(body, ensure_ascii=False, indent=1, sort_keys=True), upto


def later(frozen: FrozenHistory) -> list[dict[str, Any]]:
    """Return what was told after the copy was kept, newest first."""
    acts = history.acts_of(frozen.commission).filter(seq__gt=frozen.upto_seq)
    return shown_acts(history.told(frozen.commission, list(acts)))


def frozen_of(commission: Commission) -> FrozenHistory | None:
    """Return the copy kept last."""
    rows: Any = FrozenHistory.objects.filter(commission=commission).select_related(
        "commission__studio", "commission__maker"
    )
    found: FrozenHistory | None = rows.order_by("-upto_seq", "-id").first()
    return found


def shown_acts(told: Iterable[OrderTold]) -> list[dict[str, Any]]:
    """Return acts with who told them by initials; never their notes."""
    return [
        {
            "happened_at": _instant(one.entry.happened_at),
            "written_at": _instant(one.entry.written_at),
            "is_late": one.is_late,
            "by": one.entry.member.initials,
            "words": one.words,
            "pieces": [
                {"words": line.words, "marks": [mark for _, mark in line.pieces]}
                for line in one.lines
            ],
            "is_taken_back": one.taken_back_by is not None,
        }
        for one in told
        if one.words or one.lines
    ]


def _report(row: Any) -> dict[str, Any]:
    return {
        "laboratory": row.laboratory,
        "reported_on": row.reported_on.isoformat(),
        "lead_value": row.lead_value,
        "lead_is_below": row.lead_is_below,
        "cadmium_value": row.cadmium_value,
        "cadmium_is_below": row.cadmium_is_below,
        "unit": row.unit,
    }


def _instant(at: datetime) -> str:
    return at.isoformat(timespec="seconds").replace("+00:00", "Z")
