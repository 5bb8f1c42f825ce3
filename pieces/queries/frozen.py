"""The history of an order as a text that can be kept to the letter, and what was told afterwards.

It holds acts, marks, initials and reports: no client, no note, no price, no place to reach anybody.
"""

import json
from collections.abc import Iterable
from datetime import datetime
from typing import Any, Final

from pieces.domain.stages import WORDS
from pieces.models import Commission
from studio.models import FrozenCopy
from studio.queries.frozen import copies_of

from . import commission_history as history
from .commission_history import OrderTold
from .commissions import pieces_of, reports_of

KIND: Final = "order_history"


def document(commission: Commission, *, at: datetime) -> str:
    """Return the history as it stands as JSON text, its keys in order."""
    told = history.told(commission, list(history.acts_of(commission)))
    body = {
        "order": commission.number,
        "what": commission.what,
        "use": commission.use,
        "kept_at": _instant(at),
        "pieces": [
            {"mark": piece.shown_mark, "is": piece.design.noun, "stage": WORDS[piece.state]}
            for piece in pieces_of([commission])
        ],
        "reports": [_report(row) for row in reports_of(commission)],
        "acts": shown_acts(told),
    }
    return json.dumps(body, ensure_ascii=False, indent=1, sort_keys=True)


def later(commission: Commission, copy: FrozenCopy) -> list[dict[str, Any]]:
    """Return what was told after the copy was kept, newest first."""
    acts = history.acts_of(commission).filter(seq__gt=copy.known_seq)
    return shown_acts(history.told(commission, list(acts)))


def latest_copy(commission: Commission) -> FrozenCopy | None:
    """Return the copy kept last, without its bytes."""
    return copies_of(commission.studio, commission.pk, kind=KIND).first()


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
