"""The rows of the bench as they are shown: numbers become instants, verdicts get their sentence."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from moulds.domain.words import ordinal
from pieces.domain.drying import Quantiles, ReadinessWindows, Stage, Window
from pieces.domain.stages import words
from pieces.models import Part, Piece
from pieces.queries.bench import Bench, JoinRow, Row
from pieces.queries.covering import Covering
from studio.models import Member, Place

from .covering_shown import shown_covering
from .moments import instant, iso

Shown = dict[str, Any]

FEWEST_CHECKS = 8  # of a clay, before its estimates are more than a guess

STAGE_WORDS = {
    Stage.DEMOULD: "let go of its mould",
    Stage.JOIN_OPENS: "stiffen for joining",
    Stage.JOIN_CLOSES: "stiffen",
    Stage.SHRINKAGE_ENDED: "stop shrinking",
    Stage.BISQUE: "dry enough to fire",
}


def shown_bench(bench: Bench, *, at: datetime, journal_seq: int, press_next: list[Shown]) -> Shown:
    """Return the whole answer of the bench."""
    return {
        "at": iso(at.timestamp()),
        "journal_seq": journal_seq,
        "forecast_at": bench.forecast_at and iso(bench.forecast_at.timestamp()),
        "confidence": confidence(bench.checks),
        "look_now": [shown_row(row) for row in bench.look_now],
        "later_today": [shown_row(row) for row in bench.later_today],
        "later": [shown_row(row) for row in bench.later],
        "join_today": [shown_join(row) for row in bench.join_today],
        "press_next": press_next,
        "drying": [shown_row(row) for row in bench.drying],
        "ready_for_bisque": [shown_row(row) for row in bench.ready_for_bisque],
    }


def shown_row(row: Row) -> Shown:
    """Return one row; the window is the demould window in a mould, else when it may be joined."""
    in_mould = row.part is not None
    windows = row.windows
    window = None
    if windows is not None:
        window = windows.demould if in_mould else windows.join
    again = row.part.look_again_at if row.part is not None else None
    return {
        "piece": shown_piece(row.piece),
        "part": shown_part(row.part) if row.part else None,
        "mould": _mould(row),
        "place": _place(row),
        "maker": shown_person(row.piece.maker),
        "mine": row.is_mine,
        "since_at": iso(_since(row).timestamp()),
        "verdict": row.verdict,
        "reason": reason(row),
        "window": shown_window(window),
        "ready_at": shown_quantiles(windows.bisque) if windows and not in_mould else None,
        "look_again_at": again and iso(again.timestamp()),
        "cover_next": _cover_next(row.covering),
        "confidence": confidence(row.checks),
        "forecast_at": row.forecast_at and iso(row.forecast_at.timestamp()),
        "clash_id": row.clash_id,
    }


def shown_join(row: JoinRow) -> Shown:
    """Return one piece whose parts are all out, with the window they share."""
    return {
        "piece": shown_piece(row.piece),
        "parts": [shown_part(part) for part in row.parts],
        "place": shown_place(row.piece.place),
        "maker": shown_person(row.piece.maker),
        "mine": row.is_mine,
        "verdict": row.verdict.value,
        "reason": _join_reason(row),
        "window": shown_window(row.windows.join),
        "until": instant(row.windows.join.closes.p50_s),
        "cover_next": _cover_next(row.covering),
        "confidence": confidence(row.checks),
        "clash_id": row.clash_id,
    }


def confidence(checks: int) -> Shown:
    """Return what an estimate rests on: a guess, until eight of the studio's own looks."""
    return {"basis": "checks" if checks >= FEWEST_CHECKS else "guess", "checks": checks}


def _cover_next(covering: Covering | None) -> Shown | None:
    steps = shown_covering(covering)["steps"] if covering is not None else []
    return steps[0] if steps else None


def _join_reason(row: JoinRow) -> str:
    """Return how the parts come to meet, where they do not as they stand."""
    if row.verdict.value != "now" and row.covering.meeting_words:
        return row.covering.meeting_words
    return JOIN_REASONS[row.verdict.value]


JOIN_REASONS = {
    "now": "all parts likely leather-hard together",
    "wait": "one part is still soft; leave it open, cover the others",
    "too_stiff": "one part is likely too stiff to join; feel it",
}


def reason(row: Row) -> str:
    """Return the one sentence the tray says of a row."""
    if row.clash_id is not None:
        return "two stories: somebody must say which stands"
    if row.verdict == "asked":
        return "nothing reckoned yet; feel it"
    if row.verdict == "not_in_this_room" and row.windows is not None:
        first = min(row.windows.not_in_this_room, key=list(Stage).index)
        return f"will not {STAGE_WORDS[first]} in this room's air"
    if row.part is not None:
        return _mould_reason(row)
    if row.verdict == "worth_a_touch":
        return "perhaps dry; a touch or two weighings must say so"
    if row.verdict == "ready":
        return "a person called it dry"
    return "drying"


def _mould_reason(row: Row) -> str:
    mould = _mould(row)
    if mould is None or not row.press_since_dry:
        return "in its mould"
    return f"{ordinal(row.press_since_dry)} press since {mould['label']} was dry"


def _since(row: Row) -> datetime:
    if row.part is not None and row.part.pressed_at is not None:
        return row.part.pressed_at
    return row.piece.since_at


def _mould(row: Row) -> Shown | None:
    if row.part is None or row.part.pressing is None:
        return None
    casting = row.part.pressing.casting
    return {
        "set_id": str(casting.mould_set_id),
        "label": casting.mould_set.label,
        "generation": casting.generation,
        "press_since_dry": row.press_since_dry,
    }


def _place(row: Row) -> Shown | None:
    """Return where to go: to the piece, or while it is in its mould to the mould."""
    if row.piece.place is not None:
        return shown_place(row.piece.place)
    if row.part is not None and row.part.pressing is not None:
        return shown_place(row.part.pressing.casting.mould_set.place)
    return None


def shown_piece(piece: Piece) -> Shown:
    """Return what names a piece on any screen."""
    return {
        "id": str(piece.pk),
        "mark": piece.shown_mark,
        "noun": piece.design.noun,
        "design_name": piece.design.name,
        "stage": piece.stage,
        "state": piece.state,
        "state_words": words(piece.state, piece.cover),
    }


def shown_part(part: Part) -> Shown:
    """Return what names a part of a piece."""
    return {"id": str(part.pk), "role": part.role, "state": part.state}


def shown_place(place: Place | None) -> Shown | None:
    """Return what names a place."""
    return {"id": str(place.pk), "name": place.name} if place is not None else None


def shown_person(member: Member | None) -> Shown | None:
    """Return what names a person: first name and initials, never a contact."""
    if member is None:
        return None
    return {"id": str(member.pk), "first_name": member.first_name, "initials": member.initials}


def shown_windows(windows: ReadinessWindows) -> Shown:
    """Return every window of a piece or part."""
    return {
        "demould": shown_window(windows.demould),
        "join": shown_window(windows.join),
        "shrinkage_ended": shown_quantiles(windows.shrinkage_ended),
        "bisque": shown_quantiles(windows.bisque),
    }


def shown_window(window: Window | None) -> Shown | None:
    """Return a window as instants."""
    if window is None:
        return None
    return {"opens": shown_quantiles(window.opens), "closes": shown_quantiles(window.closes)}


def shown_quantiles(said: Quantiles) -> Shown:
    """Return quantiles as instants; null where the horizon does not hold them."""
    return {
        "p10": instant(said.p10_s),
        "p50": instant(said.p50_s),
        "p90": instant(said.p90_s),
        "p_never": round(said.p_never, 3),
    }
