"""Ware that is fired again: how often it went through a fire, and what its tickets ask for."""

from collections import defaultdict
from collections.abc import Iterable
from datetime import datetime
from typing import Any
from uuid import UUID

from firings.domain import ware
from firings.domain.ware import Stay
from firings.models import FiringTicket, Load, QueueTurn
from pieces.domain.stages import CHECKED, GLAZE_FIRED, PACKED, UNFIRED
from pieces.models import Piece, StageEvent

FIRED: tuple[str, ...] = (GLAZE_FIRED.state, CHECKED.state, PACKED.state)
"""States of glaze-fired ware: put into a glaze firing from there, it is fired again."""


def times_fired(pieces: Iterable[Piece], load: Load) -> dict[UUID, int]:
    """Return the how manieth firing of its kind this load is for each piece. One query.

    Where a load was called off or did not fire, its ware came back to where it was: no firing.
    """
    rows = _fired(pieces, load.kind)
    before_at = load.loaded_at or load.called_off_at
    if before_at is not None:
        rows = rows.filter(happened_at__lt=before_at)
    before: defaultdict[UUID, set[Any]] = defaultdict(set)
    for piece_id, pk, occasion in rows.values_list("piece_id", "pk", "occasion_id"):
        if occasion != load.pk:
            before[piece_id].add(occasion or pk)
    return {piece_id: len(seen) + 1 for piece_id, seen in before.items()}


def fired_again(pieces: Iterable[Piece], load: Load) -> set[UUID]:
    """Return the pieces that a glaze load fires again, those glazed anew too. One query.

    A piece that somebody said to be checked was fired before, though nobody wrote that down.
    """
    if load.kind != "glaze":
        return set()
    pieces = list(pieces)
    # Once it is over, this firing or a later one brought them to where they are.
    by_state = set() if load.is_over else {piece.pk for piece in pieces if piece.state in FIRED}
    return by_state | times_fired(pieces, load).keys()


def tickets_of(
    pieces: Iterable[Piece], kind: str, load: Load | None = None
) -> dict[UUID, FiringTicket]:
    """Return the last word on which cone each piece waits for. Two queries.

    A ticket is spent by the next firing of its kind, but for that of `load`.
    """
    return _unspent(FiringTicket.objects.filter(kind=kind), pieces, kind, load)


def turns_of(pieces: Iterable[Piece], kind: str) -> dict[UUID, QueueTurn]:
    """Return who put pieces first for their next firing of a kind. Two queries."""
    rows = QueueTurn.objects.filter(kind=kind).select_related("entry__member")
    return _unspent(rows, pieces, kind)


def waiting_since(pieces: Iterable[Piece]) -> dict[UUID, datetime]:
    """Return since when pieces wait of which some load let one down before. One query."""
    came_back = StageEvent.objects.filter(reason__in=UNFIRED).values("piece_id")
    ids = [piece.pk for piece in pieces]
    back: Any = StageEvent.objects.filter(piece__in=came_back)
    rows = back.filter(piece__in=ids).agreed()
    stays: defaultdict[UUID, list[Stay]] = defaultdict(list)
    for row in rows.order_by("happened_at", "id"):
        stays[row.piece_id].append(Stay(row.state, row.reason, row.happened_at))
    return {pk: ware.waits_since(visits) for pk, visits in stays.items()}


def _unspent(
    rows: Any, pieces: Iterable[Piece], kind: str, load: Load | None = None
) -> dict[UUID, Any]:
    pieces = list(pieces)
    spent: dict[UUID, datetime] = {}
    fired = _fired(pieces, kind).order_by("happened_at")
    for piece_id, at, occasion in fired.values_list("piece_id", "happened_at", "occasion_id"):
        if load is None or occasion != load.pk:
            spent[piece_id] = at
    told = rows.filter(piece__in=[piece.pk for piece in pieces]).standing()
    found = {row.piece_id: row for row in told.order_by("happened_at", "id")}
    return {pk: row for pk, row in found.items() if pk not in spent or row.happened_at >= spent[pk]}


def _fired(pieces: Iterable[Piece], kind: str) -> Any:
    """Return the visits by which pieces came out of a firing of a kind; a test load has none."""
    spot = ware.OUT_OF.get(kind)
    rows: Any = StageEvent.objects.none()
    if spot is not None:
        ids = [piece.pk for piece in pieces]
        rows = StageEvent.objects.filter(piece__in=ids, stage=spot.stage, state=spot.state)
    return rows.exclude(reason__in=UNFIRED).agreed()
