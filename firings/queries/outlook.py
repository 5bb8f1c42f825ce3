"""Will a promise be kept: what lies ahead of the pieces of an order, and where they are booked."""

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Final
from uuid import UUID
from zoneinfo import ZoneInfo

from firings.domain import outlook, outlook_words
from firings.domain.outlook import Ahead, More, Span
from firings.domain.press_days import LatestDays, NoOpenDay, latest_press_day
from firings.domain.survival import Basis
from firings.models import Load, Placement
from firings.models.programmes import FiringKind
from pieces.models import Piece
from pieces.queries.commissions import OrderNow
from pieces.queries.sets import LineNow
from studio.models import ClosedDay, OpeningHours, Studio

from .step_figures import Known, done_of, known

SHARES: Final = (0.5, 0.8, 0.9)
BEFORE_GLAZE: Final = outlook.STEPS.index("glaze")
DAY: Final = timedelta(days=1)
SHARED_LOAD: Final = 0.5  # so much of what is still to come in one kiln is worth a word


@dataclass(frozen=True, slots=True)
class Risk:
    """Something that may keep the promise from being kept."""

    code: str
    words: str


@dataclass(frozen=True, slots=True)
class Press:
    """How many more of each role to press, the chance with them, and splits that do as well."""

    by_role: Mapping[str, int]
    chance: float
    also: tuple[tuple[Mapping[str, int], float], ...] = ()


@dataclass(frozen=True, slots=True)
class LineOutlook:
    """What is to be expected of one line. `more` is by role; None where no number would do."""

    now: LineNow
    chance: float
    chance_in_time: float
    more: Press | None
    latest: LatestDays | None
    span: Span | None
    is_all_there: bool
    risks: tuple[Risk, ...]


@dataclass(frozen=True, slots=True)
class Outlook:
    """What is to be expected of an order on a day."""

    order: OrderNow
    today: date
    known: Known
    lines: tuple[LineOutlook, ...]

    @property
    def chance(self) -> float:
        """The chance that every line has enough, in time where a day was promised."""
        product = 1.0
        for line in self.lines:
            product *= line.chance_in_time
        return product

    @property
    def basis(self) -> Basis:
        return self.known.basis

    @property
    def is_all_there(self) -> bool:
        return bool(self.lines) and all(line.is_all_there for line in self.lines)

    @property
    def likely(self) -> tuple[date | None, date | None]:
        """The likely first and last day on which the last line is there."""
        spans = [line.span for line in self.lines if line.span is not None]
        if not spans:
            return None, None
        last = max(spans, key=lambda span: span.p50)
        latest = max(span.p90 for span in spans)
        return outlook.day_after(self.today, last.p10), outlook.day_after(self.today, latest)

    @property
    def likely_middle(self) -> date | None:
        """The day by which the last line is as likely there as not."""
        spans = [line.span for line in self.lines if line.span is not None]
        return outlook.day_after(self.today, max(span.p50 for span in spans)) if spans else None

    @property
    def is_at_risk(self) -> bool:
        """Whether the chance is below 80 in 100, or the likely days go past the promise."""
        promised = self.order.commission.promised_date
        if self.is_all_there or not self.lines or promised is None:
            return False
        until = self.likely[1]
        return self.chance < outlook.RISKY_BELOW or (until is not None and until > promised)

    @property
    def words(self) -> str:
        """The chance and the likely days in a sentence."""
        promised = self.order.commission.promised_date
        if not self.lines:
            return "nothing was ordered yet"
        said = outlook_words.enough(self.chance, promised, is_all_there=self.is_all_there)
        days = outlook_words.range_words(*self.likely)
        return f"{said}; {days}" if days else said


@dataclass(frozen=True, slots=True)
class Ground:
    """What outlooks of one studio share. Eight queries."""

    today: date
    at: datetime
    known: Known
    booked: Mapping[UUID, Load]
    closed_weekdays: frozenset[int]
    closed_dates: frozenset[date]

    @classmethod
    def of(cls, studio: Studio, pieces: Iterable[UUID], *, at: datetime) -> "Ground":
        """Return it for the pieces of some orders."""
        live = Placement.objects.filter(piece__in=list(pieces), is_live=True, removed_at=None)
        open_on = set(OpeningHours.objects.of(studio).values_list("weekday", flat=True))
        closed = ClosedDay.objects.of(studio).values_list("date", flat=True)
        return cls(
            today=at.astimezone(ZoneInfo(studio.zone)).date(),
            at=at,
            known=known(studio, at=at),
            booked={row.piece_id: row.load for row in live.select_related("load") if row.piece_id},
            closed_weekdays=frozenset(range(7)) - open_on if open_on else frozenset(),
            closed_dates=frozenset(closed),
        )


def outlook_of(order: OrderNow, ground: Ground) -> Outlook:
    """Return what is to be expected of an order. No query."""
    lines = tuple(_line(now, order.commission.promised_date, ground) for now in order.lines)
    return Outlook(order, ground.today, ground.known, lines)


def _line(now: LineNow, promised: date | None, ground: Ground) -> LineOutlook:
    roles = dict(_roles(now, ground))
    wanted = {role: now.wanted.get(role, 1) * now.line.wanted_sets for role in roles}
    asked = [(pieces, wanted[role]) for role, pieces in roles.items()]
    days = (promised - ground.today).days if promised is not None else None
    enough = in_time = 1.0
    for pieces, count in asked:
        enough *= outlook.chance(pieces, count, days=None)
        in_time *= outlook.chance(pieces, count, days=days)
    fresh = {role: _fresh(now, role, ground) for role in roles}
    found = outlook.more_to_press(asked, [fresh[role].survival for role in roles])
    more = _press(list(roles), found)
    spans = [
        outlook.likely_span(
            pieces, wanted[role], fresh[role], more=more.by_role.get(role, 0) if more else 0
        )
        for role, pieces in roles.items()
    ]
    there = [span for span in spans if span is not None]
    is_all_there = now.counts.finished >= now.line.wanted_sets
    return LineOutlook(
        now=now,
        chance=enough,
        chance_in_time=in_time,
        more=more,
        latest=_latest(promised, ground) if not is_all_there else None,
        span=max(there, key=lambda span: span.p50) if there and not is_all_there else None,
        is_all_there=is_all_there,
        risks=() if is_all_there else tuple(_risks(now, more, ground)),
    )


def _roles(now: LineNow, ground: Ground) -> Iterator[tuple[str, list[Ahead]]]:
    """Yield what lies ahead of the live pieces of each role; one in doubt counts as it stands."""
    for role in now.wanted or {"": 1}:
        pieces = [p for p in now.pieces if p.stage != "lost" and now.role_of(p) == role]
        yield role, [_ahead(piece, ground) for piece in pieces]


def _fresh(now: LineNow, role: str, ground: Ground) -> Ahead:
    """Return what lies ahead of a piece of a role that is pressed now."""
    designs = [row.design_id for row in now.recipe if row.role == role]
    designs += [piece.design_id for piece in now.pieces if now.role_of(piece) == role]
    return outlook.ahead(ground.known.figures_of(next(iter(designs), None)), 0)


def _press(roles: Sequence[str], found: More | None) -> Press | None:
    if found is None:
        return None
    return Press(
        dict(zip(roles, found.counts, strict=True)),
        found.chance,
        tuple((dict(zip(roles, counts, strict=True)), share) for counts, share in found.also),
    )


def _ahead(piece: Piece, ground: Ground) -> Ahead:
    load = ground.booked.get(piece.pk)
    done = done_of(piece)
    if load is not None and load.kind == FiringKind.GLAZE:
        done = min(done, BEFORE_GLAZE)  # booked once more, it has that firing before it again
    lit_at = (load.started_at or load.starts_at) if load is not None else None
    return outlook.ahead(
        ground.known.figures_of(piece.design_id),
        done,
        days_in_step=max((ground.at - piece.since_at) / DAY, 0.0),
        fired_in_days=(lit_at - ground.at) / DAY if lit_at is not None else None,
    )


def _latest(promised: date | None, ground: Ground) -> LatestDays | None:
    if promised is None:
        return None
    try:
        return latest_press_day(
            promised,
            list(ground.known.figures.days.values()),
            closed_weekdays=ground.closed_weekdays,
            closed_dates=ground.closed_dates,
        )
    except NoOpenDay:
        return None


def _risks(now: LineNow, more: Press | None, ground: Ground) -> Iterator[Risk]:
    live = [piece for piece in now.pieces if piece.stage != "lost"]
    coming = [piece for piece in live if done_of(piece) < len(outlook.STEPS)]
    asked = more.by_role if more is not None else None
    if asked is None or any(asked.values()):
        yield Risk("too-few", f"Too few for what may be lost: {outlook_words.press(asked)}.")
    shared = Counter(ground.booked[p.pk].number for p in coming if p.pk in ground.booked)
    for number, count in shared.most_common(1):
        if count > 1 and count >= SHARED_LOAD * len(coming):
            yield Risk(
                "one-kiln",
                f"{count} of the {len(coming)} to come are in {number}: one firing, one fate. "
                "Spread them over two loads.",
            )
    yield from _of_pieces(live, coming)


def _of_pieces(live: Sequence[Piece], coming: Sequence[Piece]) -> Iterator[Risk]:
    wet = [piece.shown_mark for piece in coming if done_of(piece) == 0]
    said = (
        ("wet", wet, "not dry and fired yet, where most is lost"),
        ("damaged", [p.shown_mark for p in live if p.is_damaged], "damaged: somebody must decide"),
        ("in-doubt", [p.shown_mark for p in live if p.has_clash], "two stories are told of it"),
    )
    for code, marks, words in said:
        if marks:
            yield Risk(code, f"{outlook_words.listed(marks)}: {words}.")
