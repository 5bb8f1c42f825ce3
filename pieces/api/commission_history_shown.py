"""The history of an order as it is shown, and as a table."""

import csv
import io
from collections.abc import Sequence
from typing import Any, Final

from pieces.queries.commission_history import OrderTold
from studio.domain.text import defused
from studio.models import Member

from .bench_rows import shown_person

CSV_COLUMNS: Final = (
    "happened_at",
    "written_at",
    "told_late",
    "who",
    "device",
    "kind",
    "what_happened",
    "note",
    "photo_ids",
    "taken_back_by",
    "taken_back_at",
)


def shown_history(told: OrderTold) -> dict[str, Any]:
    """Return one act of an order's history."""
    entry, back = told.entry, told.taken_back_by
    return {
        "id": entry.pk,
        "seq": entry.seq,
        "verb": entry.verb,
        "kind": told.kind,
        "words": told.words,
        "lines": [
            {
                "words": line.words,
                "marks": [mark for _, mark in line.pieces],
                "piece_ids": [pk for pk, _ in line.pieces],
            }
            for line in told.lines
        ],
        "happened_at": entry.happened_at,
        "written_at": entry.written_at,
        "is_late": told.is_late,
        "member": shown_person(entry.member),
        "device": entry.device.name,
        "note": told.note,
        "has_hidden_note": told.has_hidden_note,
        "photo_ids": told.photos,
        "has_hidden_photos": told.has_hidden_photos,
        "corrects": entry.corrects,
        "is_taken_back": back is not None,
        "taken_back_by": shown_person(back.member) if back else None,
        "taken_back_at": back.happened_at if back else None,
        "came_from_other_order": told.came_from_other_order,
    }


def history_table(rows: Sequence[OrderTold]) -> str:
    """Return a history as CSV; no cell of text is one that a table program takes for a sum."""
    written = io.StringIO()
    table = csv.writer(written)
    table.writerow(CSV_COLUMNS)
    for told in rows:
        entry, back = told.entry, told.taken_back_by
        lines = [f"{', '.join(m for _, m in line.pieces)}: {line.words}" for line in told.lines]
        texts = [
            _person(entry.member),
            entry.device.name,
            told.kind,
            "; ".join([*([told.words] if told.words else []), *lines]),
            told.note or "",
            " ".join(str(photo) for photo in told.photos),
            _person(back.member) if back else "",
        ]
        table.writerow(
            [
                entry.happened_at.isoformat(),
                entry.written_at.isoformat(),
                "yes" if told.is_late else "no",
                *(defused(text) for text in texts),
                back.happened_at.isoformat() if back else "",
            ]
        )
    return written.getvalue()


def _person(member: Member) -> str:
    return f"{member.first_name} ({member.initials})"
