"""A load is settled, lit, opened, unloaded or called off, and its ware goes with it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Final
from uuid import UUID

from django.db import transaction

from firings.domain import load_rules
from firings.domain.load_rules import LoadOutOfOrder
from firings.domain.loads import CLAIMS, Event, Kind, Now, fold
from firings.models import Load, LoadEvent, Placement
from firings.queries import told
from pieces.models import Piece
from studio.actions import journal
from studio.domain.refusals import Conflict, Missing, Unworkable
from studio.models import Act, JournalHead, JournalSubject, Place

from . import folds, moving
from .moving import Going

VERBS: Final[dict[str, str]] = {
    "settled": "settled_load",
    "reopened": "reopened_load",
    "loading": "loaded_kiln",
    "started": "lit_kiln",
    "stopped": "kiln_stopped",
    "resumed": "relit_kiln",
    "ended": "ended_firing",
    "opened": "opened_kiln",
    "unloaded": "unloaded_kiln",
    "called_off": "called_off_load",
}


class OutcomeWanted(Unworkable):
    code = "outcome-wanted"
    title = "Say whether it fired."


class NotInLoad(Missing):
    code = "not-in-load"
    title = "That is not in this load."


class WareHeld(Conflict):
    code = "ware-held"
    title = "Two stories are told of ware in this load."


@dataclass(frozen=True, slots=True)
class Result:
    """How one placement came out, and where it was put."""

    placement_id: UUID
    result: str
    place: Place | None = None


@dataclass(frozen=True, slots=True)
class Given:
    """What somebody says of a load."""

    kind: str
    celsius: float | None = None
    outcome: str = ""
    reason: str = ""
    results: Sequence[Result] = ()
    place: Place | None = None
    is_catching_up: bool = False
    result_of: Mapping[str, str] = field(init=False)

    def __post_init__(self) -> None:
        results = {str(row.placement_id): row.result for row in self.results}
        object.__setattr__(self, "result_of", results)


@transaction.atomic
def tell(*, act: Act, load: Load, given: Given) -> LoadEvent:
    """Record what happened to a load; its pieces go in, come out or go back by the same act.

    Raises `ReasonWanted`, `NotCoolEnough`, `OutcomeWanted`, `NotInLoad`, `WareHeld`,
    `LoadOutOfOrder` when the writer could have known that it cannot be, and what the pieces raise.
    """
    JournalHead.objects.select_for_update().get(studio=act.studio)
    load = folds.locked(load)
    events = told.events_of([load]).get(load.pk, [])
    before = fold(events)
    placed = moving.of(load)
    is_misfit = _check(act, load, events, before, given)
    if given.kind == Kind.SETTLED:
        _check_held(placed)
    # Ware goes nowhere on a word that does not fit: somebody must say first which word stands.
    goings = [] if is_misfit else going_with(act, load, before, placed, given)
    entry = journal.write(
        act=act,
        verb=VERBS[given.kind],
        subjects=_subjects(load, placed, goings),
        facts=_facts(load, given, goings),
    )
    row = LoadEvent.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        load=load,
        kind=given.kind,
        celsius=given.celsius,
        outcome=given.outcome,
        reason=given.reason,
        results=dict(given.result_of),
        place=given.place,
        is_catching_up=given.is_catching_up,
    )
    if given.kind == Kind.LOADING:
        moving.remember(goings)
    folds.refold([load], at=act.written_at)
    moving.go(act, entry, folds.locked(load), goings)
    return row


def _check(act: Act, load: Load, events: Sequence[Event], before: Now, given: Given) -> bool:
    """Refuse what cannot be; return whether what others told meanwhile leaves it in doubt."""
    load_rules.check_reason(given.kind, given.reason)
    if given.kind == Kind.OPENED:
        limit_c = act.studio.settings.open_kiln_below_c
        load_rules.check_opening(given.celsius, given.reason, limit_c=limit_c)
    new = _event(act, given)
    after = fold((*events, new))
    is_catching_up = given.is_catching_up or load.is_unplanned
    fits = (
        set(after.misfits) <= set(before.misfits)
        and (is_catching_up or len(after.skipped) <= len(before.skipped))
        and not (given.kind in CLAIMS and after.state == before.state)
    )
    if fits or (given.kind not in CLAIMS and _others_told(act, load)):
        return act.id in after.misfits
    load_rules.check_event(before, given.kind, is_catching_up=False)
    raise LoadOutOfOrder(
        "What was told of it at another time does not allow that then.",
        state=str(before.state),
        can_follow=[str(kind) for kind in load_rules.can_follow(before.state)],
    )


def _event(act: Act, given: Given) -> Event:
    return Event(
        id=act.id,
        happened_at=act.written_at if given.kind in CLAIMS else act.happened_at,
        kind=given.kind,
        celsius=given.celsius,
        outcome=given.outcome,
        reason=given.reason,
        results=given.result_of,
    )


def _others_told(act: Act, load: Load) -> bool:
    """Say whether others told something of the load that this device had not seen."""
    if act.based_on == 0:
        return False
    told_of = JournalSubject.objects.filter(
        subject_id=load.pk, entry__studio=act.studio, entry__seq__gt=act.based_on
    )
    return told_of.exclude(entry__device=act.device).exists()


def _check_held(placed: Sequence[Placement]) -> None:
    held = [row.piece for row in placed if row.piece is not None and row.piece.has_clash]
    if held:
        marks = ", ".join(piece.shown_mark for piece in held)
        raise WareHeld(
            f"Settle first what became of {marks}, or take it off the load.",
            refused=[_named(piece) for piece in held],
        )


def _named(piece: Piece) -> dict[str, str]:
    return {"id": str(piece.pk), "mark": piece.shown_mark, "code": "two-stories"}


def going_with(
    act: Act, load: Load, before: Now, placed: Sequence[Placement], given: Given
) -> list[Going]:
    """Return where the ware of a load goes by what somebody says of it.

    Raises `NotInLoad` and `OutcomeWanted`.
    """
    match given.kind:
        case Kind.LOADING:
            return moving.going_in(act, load, placed)
        case Kind.UNLOADED:
            outcome = given.outcome or before.outcome
            _check_results(load, placed, given, outcome)
            return moving.going_out(
                act,
                load,
                placed,
                results=given.result_of,
                outcome=outcome,
                places={row.placement_id: row.place for row in given.results if row.place},
                place=given.place,
            )
        case Kind.CALLED_OFF:
            return moving.going_home(act, load, placed)
        case _:
            return []


def _check_results(load: Load, placed: Sequence[Placement], given: Given, outcome: str) -> None:
    everything = Placement.objects.filter(load=load, removed_at=None)
    known = {str(pk) for pk in everything.values_list("pk", flat=True)}
    foreign = sorted(set(given.result_of) - known)
    if foreign:
        raise NotInLoad("Read the load again.", placements=foreign)
    unsaid = [row for row in placed if str(row.pk) not in given.result_of]
    is_broken_unsaid = "broken" in given.result_of.values()
    if outcome not in ("fired", "not_fired") and (unsaid or is_broken_unsaid or not placed):
        raise OutcomeWanted(
            "Say of the whole load, or of each piece, whether it fired.",
            placements=[str(row.pk) for row in unsaid],
        )


def _subjects(
    load: Load, placed: Sequence[Placement], goings: Sequence[Going]
) -> list[tuple[str, UUID]]:
    pieces = dict.fromkeys(("piece", going.piece.pk) for going in goings)
    return [("load", load.pk), ("kiln", load.kiln_id), *pieces]


def _facts(load: Load, given: Given, goings: Sequence[Going]) -> dict[str, object]:
    told_of = {
        "load": load.number,
        "celsius": given.celsius,
        "outcome": given.outcome,
        "reason": given.reason,
        "results": dict(given.result_of),
        "is_catching_up": given.is_catching_up,
        "place": given.place.pk if given.place else None,
        "visits": [going.as_facts(load) for going in goings],
    }
    return {name: value for name, value in told_of.items() if value}
