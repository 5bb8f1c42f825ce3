"""The bench: what to look at now, later, what to join, press, watch and fire. Reads only.

Windows come from stored forecasts; nothing here reckons physics.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Final
from uuid import UUID

from django.db.models import Prefetch, QuerySet

from moulds.queries.castings import damp_of
from pieces.domain import bench as rules
from pieces.domain.drying import ReadinessWindows, latest, together
from pieces.domain.window_store import restored
from pieces.models import Clash, Forecast, Part, Piece
from pieces.queries.covering import Covering, by_part, checks_of, covering_of
from studio.models import Member, Studio, StudioSettings

LIVE_STAGES: Final = ("pressing", "assembly", "drying")


@dataclass(frozen=True, slots=True)
class Row:
    """One piece or part on the bench, with where it belongs."""

    piece: Piece
    part: Part | None
    windows: ReadinessWindows | None
    forecast_at: datetime | None
    seat: rules.Seat | None
    verdict: str
    is_mine: bool
    clash_id: UUID | None
    press_since_dry: int | None = None
    covering: Covering | None = None
    checks: int = 0


@dataclass(frozen=True, slots=True)
class JoinRow:
    """A piece whose parts are all out of their moulds."""

    piece: Piece
    parts: tuple[Part, ...]
    windows: ReadinessWindows
    verdict: rules.JoinVerdict
    is_mine: bool
    clash_id: UUID | None
    covering: Covering
    checks: int


@dataclass(frozen=True, slots=True)
class Bench:
    """The first screen in one answer; `forecast_at` is the oldest reckoning used."""

    look_now: tuple[Row, ...]
    later_today: tuple[Row, ...]
    later: tuple[Row, ...]
    join_today: tuple[JoinRow, ...]
    drying: tuple[Row, ...]
    ready_for_bisque: tuple[Row, ...]
    forecast_at: datetime | None
    busy_castings: frozenset[UUID]
    checks: int


def bench(studio: Studio, *, member: Member, at: datetime, closing_at: datetime) -> Bench:
    """Return the bench of a studio as it stands at `at` (eight queries, however many pieces)."""
    pieces = list(_live_pieces(studio))
    presses = _presses_since_dry(studio, pieces, at)
    mine = {member.pk, *member.helps.values_list("pk", flat=True)}
    clashes = dict(
        Clash.objects.of(studio).filter(state=Clash.State.OPEN).values_list("piece_id", "pk")
    )
    reader = _Reader(at.timestamp(), closing_at.timestamp(), mine, clashes, presses)
    in_mould = [row for piece in pieces for row in reader.in_mould(piece)]
    seated = _by_block(in_mould)
    drying = sorted(
        (reader.drying(piece) for piece in pieces if _is_drying(piece)), key=_driest_first
    )
    ready = [reader.ready(piece) for piece in pieces if _is_ready(piece)]
    joins = [row for row in map(reader.joining, pieces) if row is not None]
    times = [row.forecast_at for row in (*in_mould, *drying) if row.forecast_at is not None]
    return Bench(
        look_now=seated[rules.Block.LOOK_NOW],
        later_today=seated[rules.Block.LATER_TODAY],
        later=seated[rules.Block.LATER],
        join_today=tuple(joins),
        drying=tuple(drying),
        ready_for_bisque=tuple(ready),
        forecast_at=min(times, default=None),
        busy_castings=frozenset(
            row.part.pressing.casting_id
            for row in in_mould
            if row.part is not None and row.part.pressing is not None
        ),
        checks=min((row.checks for row in (*in_mould, *drying)), default=0),
    )


def _live_pieces(studio: Studio) -> QuerySet[Piece]:
    parts = Part.objects.select_related(
        "design_part",
        "pressing__casting__mould_set__place",
        "pressing__casting__mould_set__makes",
        "forecast",
    ).order_by("design_part__order", "number")
    return (
        Piece.objects.of(studio)
        .filter(stage__in=LIVE_STAGES, is_undone=False)
        .exclude(state="to_press")
        .select_related("design", "maker", "place")
        .prefetch_related(Prefetch("parts", queryset=parts, to_attr="bench_parts"))
        .order_by("mark_key", "suffix")
    )


def _presses_since_dry(studio: Studio, pieces: Iterable[Piece], at: datetime) -> dict[UUID, int]:
    """Return, for each casting with clay in it, its pressings since it was dry."""
    castings = {
        part.pressing.casting_id: part.pressing.casting
        for piece in pieces
        for part in _parts(piece)
        if part.state == Part.State.IN_MOULD and part.pressing is not None
    }
    settings = StudioSettings.objects.get(studio=studio)
    damp = damp_of(castings.values(), settings=settings, at=at)
    return {casting: found.since.count for casting, found in damp.items()}


@dataclass(frozen=True, slots=True)
class _Reader:
    now_s: float
    closing_s: float
    mine: set[UUID]
    clashes: Mapping[UUID, UUID]
    presses: Mapping[UUID, int]

    def in_mould(self, piece: Piece) -> Iterable[Row]:
        for part in _parts(piece):
            if part.state != Part.State.IN_MOULD:
                continue
            windows, computed_at = _windows(part)
            again = part.look_again_at
            seat = rules.seat(
                windows.demould if windows else None,
                now_s=self.now_s,
                closing_s=self.closing_s,
                look_again_s=again.timestamp() if again else None,
            )
            yield Row(
                piece=piece,
                part=part,
                windows=windows,
                forecast_at=computed_at,
                seat=seat,
                verdict=seat.verdict.value,
                is_mine=piece.maker_id in self.mine,
                clash_id=self.clashes.get(piece.pk),
                press_since_dry=(
                    self.presses.get(part.pressing.casting_id) if part.pressing else None
                ),
                checks=checks_of(by_part([part])),
            )

    def drying(self, piece: Piece) -> Row:
        windows, computed_at = _joined_windows(piece)
        if windows is None:
            verdict = "asked"
        elif windows.not_in_this_room:
            verdict = "not_in_this_room"
        else:
            ready = rules.worth_a_touch(windows.bisque, self.now_s)
            verdict = "worth_a_touch" if ready else "drying"
        return self._row(piece, windows, computed_at, verdict)

    def ready(self, piece: Piece) -> Row:
        return self._row(piece, None, None, "ready")

    def joining(self, piece: Piece) -> JoinRow | None:
        parts = [part for part in _parts(piece) if part.design_part.is_required]
        if piece.state != "out" or len(parts) < 2:
            return None
        if any(part.state not in (Part.State.OUT, Part.State.JOINED) for part in parts):
            return None
        known = [windows for part in parts if (windows := _windows(part)[0]) is not None]
        if len(known) < len(parts):
            return None
        shared = together(known)
        verdict = rules.joining(shared.join, now_s=self.now_s, closing_s=self.closing_s)
        if verdict is None:
            return None
        is_mine = piece.maker_id in self.mine
        clash = self.clashes.get(piece.pk)
        forecasts = by_part(parts)
        covering, checks = covering_of(forecasts), checks_of(forecasts)
        return JoinRow(piece, tuple(parts), shared, verdict, is_mine, clash, covering, checks)

    def _row(
        self,
        piece: Piece,
        windows: ReadinessWindows | None,
        computed_at: datetime | None,
        verdict: str,
    ) -> Row:
        forecasts = by_part(_parts(piece))
        return Row(
            piece=piece,
            part=None,
            windows=windows,
            forecast_at=computed_at,
            seat=None,
            verdict=verdict,
            is_mine=piece.maker_id in self.mine,
            clash_id=self.clashes.get(piece.pk),
            covering=covering_of(forecasts),
            checks=checks_of(forecasts),
        )


def _parts(piece: Piece) -> list[Part]:
    """Return the parts that still count: neither scrapped nor replaced."""
    ended = (Part.State.SCRAPPED, Part.State.REPLACED)
    parts: list[Part] = piece.bench_parts  # type: ignore[attr-defined]  # prefetched above
    return [part for part in parts if part.state not in ended]


def _windows(part: Part) -> tuple[ReadinessWindows | None, datetime | None]:
    forecast: Forecast | None = getattr(part, "forecast", None)
    if forecast is None or not forecast.windows:
        return None, None
    return restored(forecast.windows), forecast.computed_at


def _joined_windows(piece: Piece) -> tuple[ReadinessWindows | None, datetime | None]:
    """Return the windows of the whole piece: as damp as its dampest part."""
    found = [_windows(part) for part in _parts(piece) if part.state != Part.State.TO_PRESS]
    known = [(windows, at) for windows, at in found if windows is not None and at is not None]
    if not known:
        return None, None
    return latest([windows for windows, _ in known]), min(at for _, at in known)


def _is_drying(piece: Piece) -> bool:
    return piece.state in ("drying", "joined") or (piece.state == "out" and len(_parts(piece)) == 1)


def _is_ready(piece: Piece) -> bool:
    # What nobody claims is dry too, but nobody's to fire: a load would refuse it.
    return piece.state == "bone_dry" and piece.unclaimed_since is None


def _by_block(rows: Iterable[Row]) -> dict[rules.Block, tuple[Row, ...]]:
    found: defaultdict[rules.Block, list[Row]] = defaultdict(list)
    for row in rows:
        if row.seat is not None:
            found[row.seat.block].append(row)
    return {block: tuple(sorted(found[block], key=_seat_order)) for block in rules.Block}


def _seat_order(row: Row) -> tuple[tuple[float, float], str]:
    assert row.seat is not None  # rows with a seat only come here
    return row.seat.order, row.piece.mark_key


def _driest_first(row: Row) -> tuple[float, str]:
    return (row.windows.bisque.p50_s if row.windows else 0.0), row.piece.mark_key
