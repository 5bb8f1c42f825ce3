"""Reminders that the windows ask for: come and look, join before it is too stiff, perhaps dry.

A sweep finds what has opened and sets each reminder once; what is done since is taken back.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from typing import Final
from uuid import UUID

from pieces.domain.drying import together
from pieces.domain.window_store import restored
from pieces.models import Forecast, Part, Piece
from studio.actions import reminders
from studio.actions.reminders import About
from studio.models import Member, Place, Studio

DEMOULD: Final = "demould_window_opens"
JOIN: Final = "joining_window_closes"
DRY: Final = "perhaps_dry_enough"
CAUSES: Final = (DEMOULD, JOIN, DRY)
JOIN_LEAD: Final = timedelta(hours=2)

Wish = tuple[Member, About, datetime, datetime]


def tell_makers(*, studio: Studio, at: datetime) -> int:
    """Set what has come due, take back what is no longer so; return how many are wanted."""
    forecasts = list(_forecasts(studio))
    wishes = [
        *_demould(forecasts),
        *_join(forecasts),
        *_dry(forecasts),
    ]
    due = [wish for wish in wishes if wish[2] <= at]
    for person, about, due_at, known_since in due:
        reminders.set_for(
            studio=studio, person=person, about=about, due_at=due_at, at=at, heard_at=known_since
        )
    # Somebody did it, or the piece moved on.
    wanted = {(about.cause, about.object_id) for _, about, _, _ in wishes}
    reminders.withdraw_all_but(studio=studio, causes=CAUSES, still=wanted)
    return len(due)


def _forecasts(studio: Studio) -> Iterator[Forecast]:
    return iter(
        Forecast.objects.filter(
            studio=studio, known_since__isnull=False, piece__maker__isnull=False,
            piece__is_undone=False,
        )
        .exclude(windows={})
        .select_related(
            "piece__design", "piece__maker", "piece__place", "part__design_part",
            "part__pressing__casting__mould_set__place",
        )
        .order_by("piece__mark_key", "pk")
    )  # fmt: skip


def _demould(forecasts: list[Forecast]) -> Iterator[Wish]:
    for forecast in forecasts:
        part = forecast.part
        if part.state != Part.State.IN_MOULD or part.pressing is None:
            continue
        due_at = _instant(restored(forecast.windows).demould.opens.p10_s)
        if due_at is None:
            continue
        mould_set = part.pressing.casting.mould_set
        where = _where(mould_set.place)
        about = _about(
            DEMOULD,
            forecast.piece,
            part.pk,
            title=f"{_named(forecast.piece)} is worth a look in {mould_set.label}{where}.",
            body="It likely lets go of its mould about now. Feel it, then say out or not yet.",
            kind="part",
            link="/",
        )
        yield _wish(forecast, about, due_at)


def _join(forecasts: list[Forecast]) -> Iterator[Wish]:
    by_piece: dict[UUID, list[Forecast]] = {}
    for forecast in forecasts:
        ready = forecast.part.state == Part.State.OUT and forecast.piece.state == "out"
        if ready and forecast.part.design_part.is_required:
            by_piece.setdefault(forecast.piece_id, []).append(forecast)
    for rows in by_piece.values():
        closes = _instant(together([restored(r.windows) for r in rows]).join.closes.p50_s)
        if len(rows) < 2 or closes is None:
            continue
        piece = rows[0].piece
        about = _about(
            JOIN,
            piece,
            piece.pk,
            title=f"Join {_named(piece)} within about two hours{_where(piece.place)}.",
            body="Its parts are likely getting too stiff to join. Cover them if it cannot be now.",
        )
        since = max(row.known_since for row in rows if row.known_since is not None)
        yield _maker(piece), about, closes - JOIN_LEAD, since


def _dry(forecasts: list[Forecast]) -> Iterator[Wish]:
    by_piece: dict[UUID, list[Forecast]] = {}
    for forecast in forecasts:
        if forecast.piece.state == "drying":
            by_piece.setdefault(forecast.piece_id, []).append(forecast)
    for rows in by_piece.values():
        dry_s = max(restored(row.windows).bisque.p50_s for row in rows)
        due_at = _instant(dry_s)
        if due_at is None:
            continue
        piece = rows[0].piece
        about = _about(
            DRY,
            piece,
            piece.pk,
            title=f"{_named(piece)} is perhaps dry enough to fire{_where(piece.place)}.",
            body="Feel its thickest part, or weigh it twice. Damp ware bursts in the kiln.",
        )
        since = max(row.known_since for row in rows if row.known_since is not None)
        yield _maker(piece), about, due_at, since


def _about(
    cause: str,
    piece: Piece,
    object_id: UUID,
    *,
    title: str,
    body: str,
    kind: str = "piece",
    link: str = "",
) -> About:
    return About(
        cause=cause,
        grade="C",
        kind=kind,
        object_id=object_id,
        mark=piece.shown_mark,
        title=title,
        body=body,
        link=link or f"/pieces/{piece.pk}",
    )


def _wish(forecast: Forecast, about: About, due_at: datetime) -> Wish:
    assert forecast.known_since is not None  # filtered above
    return _maker(forecast.piece), about, due_at, forecast.known_since


def _maker(piece: Piece) -> Member:
    assert piece.maker is not None  # filtered above
    return piece.maker


def _named(piece: Piece) -> str:
    return f"{piece.shown_mark}, {piece.design.noun},"


def _where(place: Place | None) -> str:
    return f", {place.name}" if place is not None else ""


def _instant(at_s: float) -> datetime | None:
    return None if at_s == float("inf") else datetime.fromtimestamp(at_s, tz=UTC)
