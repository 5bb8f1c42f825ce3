"""What each step costs a studio in pieces and in days, from its own pieces."""

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from uuid import UUID

from django.db.models import Min

from firings.domain import outlook
from firings.domain.outlook import STEPS, Figures
from firings.domain.survival import Basis, FirstTime, basis, first_time
from pieces.domain.stages import UNFIRED
from pieces.models import Part, Piece, StageEvent
from studio.models import Studio

LOOKED_BACK = timedelta(days=730)
#: A piece that was said to be in one of these states has the step before it behind it.
PASSED = {
    "in_bisque": 1,
    "bisqued": 2,
    "glazed": 2,
    "in_glaze": 2,
    "glaze_fired": 3,
    "checked": 4,
    "packed": 4,
    "delivered": 4,
}
#: The states in which a step ends.
ENDS = {"in_bisque": 1, "bisqued": 2, "glaze_fired": 3, "checked": 4, "packed": 4, "delivered": 4}
LOST = ("scrapped", "missing")
PART_LOST = (Part.State.SCRAPPED, Part.State.REPLACED)


@dataclass(frozen=True, slots=True)
class Known:
    """The figures, and from how many pieces whose fate is known they come."""

    figures: Figures
    outcomes: int
    lost_of: Mapping[str, tuple[int, int]]
    first_time: FirstTime
    survival_of: Mapping[UUID, Mapping[str, float]] = field(default_factory=dict)
    parts_lost: Mapping[str, tuple[int, int]] = field(default_factory=dict)

    def figures_of(self, design_id: UUID | None) -> Figures:
        """Return what a design's pieces tell; where nothing is known of them, the studio's."""
        own = self.survival_of.get(design_id) if design_id is not None else None
        return Figures(own, self.figures.days) if own is not None else self.figures

    @property
    def basis(self) -> Basis:
        return basis(self.outcomes)


def known(studio: Studio, *, at: datetime) -> Known:
    """Return what the studio's pieces of the last two years tell. Four queries."""
    since = at - LOOKED_BACK
    begun, design_of = _begun(studio, since)
    reached: dict[UUID, int] = defaultdict(int)
    ends: dict[UUID, dict[int, list[datetime]]] = defaultdict(lambda: defaultdict(list))
    lost: set[UUID] = set()
    visits = StageEvent.objects.of(studio).filter(
        piece__begun_at__gte=since, piece__is_undone=False
    )
    rows = visits.agreed().order_by("happened_at", "id")
    told = rows.values_list("piece", "state", "happened_at", "reason")
    firings: Counter[UUID] = Counter()
    for piece, state, happened_at, reason in told:
        firings[piece] += state == "glaze_fired" and reason not in UNFIRED
        if state in PASSED:
            reached[piece] = max(reached[piece], PASSED[state])
            lost.discard(piece)
            if state in ENDS:
                ends[piece][ENDS[state]].append(happened_at)
        elif state in LOST:
            lost.add(piece)
    lost_of = _lost_of(reached, lost)
    through = [pk for pk, done in reached.items() if done == len(STEPS) and pk not in lost]
    figures = Figures(outlook.survivals(lost_of), outlook.durations(_spans(begun, ends)))
    tried = first_time(firings, good=set(through), lost=lost)
    by_design = _by_design(reached, lost, design_of, figures)
    parts = parts_lost(studio, since=since)
    return Known(figures, len(lost) + len(through), lost_of, tried, by_design, parts)


def done_of(piece: Piece) -> int:
    """Return how many steps a piece has behind it, by where it is now."""
    return PASSED.get(piece.state, 0)


def parts_lost(studio: Studio, *, since: datetime) -> dict[str, tuple[int, int]]:
    """Return by role how many parts were lost, of those joined or lost. One query.

    A part that is replaced is no loss of its piece, which is counted by itself. Only designs of
    more than one role: elsewhere the part is the piece.
    """
    rows = Part.objects.of(studio).filter(pressed_at__gte=since, piece__is_undone=False)
    told = list(rows.values_list("design_part__design", "role", "state"))
    roles: dict[UUID, set[str]] = defaultdict(set)
    for design, role, _ in told:
        roles[design].add(role)
    counted: dict[str, list[int]] = defaultdict(lambda: [0, 0])
    for design, role, state in told:
        if len(roles[design]) > 1 and state in (*PART_LOST, Part.State.JOINED):
            counted[role][0] += state in PART_LOST
            counted[role][1] += 1
    return {role: (lost, of) for role, (lost, of) in sorted(counted.items())}


def _begun(studio: Studio, since: datetime) -> tuple[dict[UUID, datetime], dict[UUID, UUID]]:
    """Return when each piece was begun (pressed first, else planned or made), and its design."""
    pieces = Piece.objects.filter(studio=studio, is_undone=False, begun_at__gte=since)
    rows = list(pieces.values_list("pk", "begun_at", "design"))
    begun: dict[UUID, datetime] = {pk: at for pk, at, _ in rows}
    parts = Part.objects.filter(studio=studio, piece__begun_at__gte=since)
    pressed = parts.values("piece").annotate(first=Min("pressed_at"))
    for piece, first in pressed.values_list("piece", "first"):
        if first is not None and piece in begun:
            begun[piece] = first
    return begun, {pk: design for pk, _, design in rows}


def _by_design(
    reached: Mapping[UUID, int],
    lost: Iterable[UUID],
    design_of: Mapping[UUID, UUID],
    figures: Figures,
) -> dict[UUID, dict[str, float]]:
    """Return what survives each step of each design: its own pieces, on top of the studio's."""
    gone = set(lost)
    pieces: dict[UUID, set[UUID]] = defaultdict(set)
    for piece in {*reached, *gone}:
        pieces[design_of[piece]].add(piece)
    loss = {step: 1.0 - share for step, share in figures.survival.items()}
    return {
        design: outlook.survivals(
            _lost_of({pk: reached.get(pk, 0) for pk in own}, own & gone), loss
        )
        for design, own in pieces.items()
    }


def _lost_of(reached: Mapping[UUID, int], lost: Iterable[UUID]) -> dict[str, tuple[int, int]]:
    """Return for each step how many were lost in it, of those whose fate in it is known."""
    gone = set(lost)
    counted = {step: [0, 0] for step in STEPS}
    for piece in {*reached, *gone}:
        done = reached.get(piece, 0)
        for step in STEPS[:done]:
            counted[step][1] += 1
        if piece in gone and done < len(STEPS):
            counted[STEPS[done]][0] += 1
            counted[STEPS[done]][1] += 1
    return {step: (lost_, of) for step, (lost_, of) in counted.items()}


def _spans(
    begun: Mapping[UUID, datetime], ends: Mapping[UUID, Mapping[int, list[datetime]]]
) -> dict[str, list[float]]:
    """Return how long pieces took for each step they are through. [days]

    Until it was through the first time, from when the step before was last done: what was fired
    twice waited for its last look from the second firing on.
    """
    spans: dict[str, list[float]] = defaultdict(list)
    for piece, passed in ends.items():
        before = [begun[piece]] if piece in begun else []
        for number, step in enumerate(STEPS, start=1):
            done = passed.get(number, [])
            starts = [at for at in before if done and at <= done[0]]
            if starts:
                spans[step].append((done[0] - starts[-1]) / timedelta(days=1))
            before = done
    return spans
