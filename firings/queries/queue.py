"""Ware that waits for a firing, by kind and cone, in the order of the studio's rule."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Final
from uuid import UUID
from zoneinfo import ZoneInfo

from django.db.models import QuerySet

from firings.domain import queue as rules
from firings.domain.dry_evidence import Evidence
from firings.domain.queue import Ask, Ranked, Shared
from firings.models import FiringTicket, Placement, QueueTurn
from pieces.domain.stages import GLAZE_FIRED
from pieces.models import Piece
from studio.domain.hours import ONE_DAY
from studio.models import Studio

from .evidence import evidence_of
from .gate import thickest_of
from .loads import usual_cone
from .refires import tickets_of, turns_of, waiting_since
from .sizes import Size, Sizes, measured_for

KINDS: Final = ("bisque", "glaze")
WAITS: Final = {"bisque": ("bone_dry",), "glaze": ("glazed",)}
AGAIN: Final = ("glaze_fired", "checked")
SMALLEST_L: Final = 0.01
FIRED_IS_DRY: Final = Evidence("none", is_ok=True, detail="")
"""Of what has been through a bisque nobody asks whether it is bone dry."""


@dataclass(frozen=True, slots=True)
class Waiting:
    """A piece that waits, why it stands where it stands, and what is known of it."""

    piece: Piece
    kind: str
    cone: str
    due_date: date | None
    since: datetime
    waits_days: int
    size: Size | None
    evidence: Evidence
    thickest_mm: float | None
    ticket: FiringTicket | None
    reason: str
    is_put_first: bool


@dataclass(frozen=True, slots=True)
class Group:
    """All that waits for one kind of firing to one cone."""

    kind: str
    cone: str
    rows: tuple[Waiting, ...]
    ranked: tuple[Ranked, ...]

    def shared(self, room_l: float) -> Shared:
        """Return who gets a layer of `room_l` litres by the rule, and why others do not."""
        return rules.share(self.ranked, room_l)

    @property
    def litres(self) -> float:
        return sum(row.size.litres for row in self.rows if row.size is not None)

    @property
    def oldest_days(self) -> int:
        return max((row.waits_days for row in self.rows), default=0)


def groups(
    studio: Studio,
    *,
    at: datetime,
    kind: str | None = None,
    cone: str | None = None,
    with_drying: bool = False,
) -> list[Group]:
    """Return what waits, coldest firing first. A fixed number of queries for each kind."""
    found = []
    for each in KINDS if kind is None else [kind]:
        if each in KINDS:
            found += _of_kind(studio, each, at=at, with_drying=with_drying)
    return [group for group in found if cone is None or group.cone == cone]


def waiting_pieces(studio: Studio, kind: str, *, with_drying: bool = False) -> "QuerySet[Piece]":
    """Return the pieces that wait for a kind of firing and are in no load. One query when read."""
    states = [*WAITS[kind], *(["drying"] if with_drying and kind == "bisque" else [])]
    rows = Piece.objects.filter(
        studio=studio, is_undone=False, has_clash=False, unclaimed_since=None, state__in=states
    )
    return _with_names(rows)


def _with_names(rows: "QuerySet[Piece]") -> "QuerySet[Piece]":
    placed = Placement.objects.filter(is_live=True, piece__isnull=False).values("piece_id")
    rows = rows.exclude(pk__in=placed)
    return rows.select_related("design", "maker", "place", "body", "line__commission")


def _again(studio: Studio) -> list[Piece]:
    """Return fired pieces that somebody wrote a ticket for since: they wait to be fired again."""
    rows = Piece.objects.filter(
        studio=studio, is_undone=False, has_clash=False, unclaimed_since=None, state__in=AGAIN
    )
    pieces = list(_with_names(rows))
    tickets = tickets_of(pieces, "glaze")
    return [
        piece for piece in pieces if piece.pk in tickets and _still_waits(piece, tickets[piece.pk])
    ]


def _still_waits(piece: Piece, ticket: FiringTicket) -> bool:
    """Say whether nobody found it good since; what came back from a load called off waits on."""
    return piece.state == GLAZE_FIRED.state or ticket.happened_at >= piece.since_at


def _of_kind(studio: Studio, kind: str, *, at: datetime, with_drying: bool) -> list[Group]:
    pieces = list(waiting_pieces(studio, kind, with_drying=with_drying))
    pieces += _again(studio) if kind == "glaze" else []
    zone = ZoneInfo(studio.zone)
    today = at.astimezone(zone).date()
    sizes = {piece.pk: size for piece, size in _sized(pieces, kind)}
    tickets, usual = tickets_of(pieces, kind), usual_cone(studio, kind)
    shown, thickest = evidence_of(pieces), thickest_of(pieces)
    burnt = litres_this_month(studio, at=at)
    turns = turns_of(pieces, kind)
    since = _since(pieces, tickets)
    by_cone: defaultdict[str, list[Piece]] = defaultdict(list)
    for piece in pieces:
        by_cone[tickets[piece.pk].cone if piece.pk in tickets else usual].append(piece)
    found = []
    for cone, rows in sorted(by_cone.items()):
        asks = [
            _ask(piece, sizes.get(piece.pk), since[piece.pk].astimezone(zone).date(), turns, burnt)
            for piece in rows
        ]
        by_id = {piece.pk: piece for piece in rows}
        ranked = rules.order(asks, today)
        waiting = tuple(
            Waiting(
                piece=by_id[row.ask.id],
                kind=kind,
                cone=cone,
                due_date=row.ask.due_date,
                since=since[row.ask.id],
                waits_days=rules.waits_days(row.ask, today),
                size=sizes.get(row.ask.id),
                evidence=shown[row.ask.id] if kind == "bisque" else FIRED_IS_DRY,
                thickest_mm=thickest.get(by_id[row.ask.id].design_id),
                ticket=tickets.get(row.ask.id),
                reason=row.reason,
                is_put_first=bool(row.ask.put_first),
            )
            for row in ranked
        )
        found.append(Group(kind, cone, waiting, ranked))
    return found


def _sized(pieces: Sequence[Piece], kind: str) -> Iterable[tuple[Piece, Size]]:
    sizes = Sizes(pieces)
    for piece in pieces:
        size = sizes.of(piece, measured_for(kind))
        if size is not None:
            yield piece, size


def _since(pieces: Sequence[Piece], tickets: dict[UUID, FiringTicket]) -> dict[UUID, datetime]:
    """Return since when each waits: fired ware from its ticket on, other ware since it is ready."""
    known = waiting_since(pieces)
    found = {piece.pk: known.get(piece.pk, piece.since_at) for piece in pieces}
    again = (piece.pk for piece in pieces if piece.state in AGAIN and piece.pk in tickets)
    return found | {pk: tickets[pk].happened_at for pk in again}


def _ask(
    piece: Piece,
    size: Size | None,
    since: date,
    turns: dict[UUID, QueueTurn],
    burnt: dict[UUID, float],
) -> Ask:
    return Ask(
        id=piece.pk,
        maker=piece.maker.first_name if piece.maker is not None else "nobody",
        due_date=due_date(piece),
        waiting_since=since,
        litres=size.litres if size is not None else SMALLEST_L,
        put_first=_turn_words(turns.get(piece.pk)),
        maker_litres_this_month=burnt.get(piece.maker_id, 0.0) if piece.maker_id else 0.0,
    )


def _turn_words(turn: QueueTurn | None) -> str:
    if turn is None:
        return ""
    return f"{turn.entry.member.first_name}: {turn.reason.rstrip('.')}."


def due_date(piece: Piece) -> date | None:
    """Return for when the piece is promised, None when it is not or its order is closed."""
    commission = piece.line.commission if piece.line is not None else None
    if commission is None or commission.state != "open":
        return None
    return commission.promised_date


def litres_this_month(studio: Studio, *, at: datetime) -> dict[UUID, float]:
    """Return how much of each maker's ware was fired this month, as bisqued. Four queries."""
    zone = ZoneInfo(studio.zone)
    first = at.astimezone(zone).replace(day=1, hour=0, minute=0, second=0, microsecond=0)
    rows = Placement.objects.filter(
        studio=studio,
        removed_at=None,
        piece__isnull=False,
        load__started_at__gte=first,
        load__started_at__lt=at + ONE_DAY,
    )
    pieces = [row.piece for row in rows.select_related("piece__design") if row.piece is not None]
    found: defaultdict[UUID, float] = defaultdict(float)
    for piece, size in _sized(pieces, "bisque"):
        if piece.maker_id is not None:
            found[piece.maker_id] += size.litres
    return found
