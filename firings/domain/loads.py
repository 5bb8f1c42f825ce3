"""What a load is now, from everything that was told of it, whatever the order it was heard in.

A load goes open, settled, loading, firing, cooling, opened, unloaded; it may be reopened once
settled, called off until it is lit, and stopped while it fires. What somebody saw happen is never
refused for coming late: it is sorted in by when it happened, and what cannot follow there is named.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime
from enum import StrEnum, auto
from types import MappingProxyType
from typing import Final
from uuid import UUID


class State(StrEnum):
    OPEN = auto()
    SETTLED = auto()
    LOADING = auto()
    FIRING = auto()
    STOPPED = auto()
    COOLING = auto()
    OPENED = auto()
    UNLOADED = auto()
    CALLED_OFF = auto()


class Kind(StrEnum):
    SETTLED = auto()
    REOPENED = auto()
    LOADING = auto()
    STARTED = auto()
    STOPPED = auto()
    RESUMED = auto()
    ENDED = auto()
    OPENED = auto()
    UNLOADED = auto()
    CALLED_OFF = auto()


OUTCOMES: Final = ("fired", "not_fired", "unsure")
RESULTS: Final = ("fired", "not_fired", "broken", "damp")
CLAIMS: Final = (Kind.SETTLED, Kind.REOPENED)

NEXT: Final[Mapping[State, Mapping[Kind, State]]] = {
    State.OPEN: {
        Kind.SETTLED: State.SETTLED,
        Kind.CALLED_OFF: State.CALLED_OFF,
    },
    State.SETTLED: {
        Kind.LOADING: State.LOADING,
        Kind.REOPENED: State.OPEN,
        Kind.CALLED_OFF: State.CALLED_OFF,
    },
    State.LOADING: {
        Kind.STARTED: State.FIRING,
        Kind.CALLED_OFF: State.CALLED_OFF,
    },
    State.FIRING: {Kind.ENDED: State.COOLING, Kind.STOPPED: State.STOPPED},
    State.STOPPED: {Kind.RESUMED: State.FIRING, Kind.ENDED: State.COOLING},
    State.COOLING: {Kind.OPENED: State.OPENED},
    State.OPENED: {Kind.UNLOADED: State.UNLOADED},
    State.UNLOADED: {},
    State.CALLED_OFF: {},
}
# A later step says that the ones before it happened, though nobody wrote them down.
ROAD: Final = (
    (State.OPEN, Kind.SETTLED),
    (State.SETTLED, Kind.LOADING),
    (State.LOADING, Kind.STARTED),
    (State.FIRING, Kind.ENDED),
    (State.COOLING, Kind.OPENED),
    (State.OPENED, Kind.UNLOADED),
)
_PLACE_ON_ROAD: Final = {state: place for place, (state, _) in enumerate(ROAD)} | {
    State.STOPPED: 3,
}
_TIME_OF: Final = {
    Kind.SETTLED: "settled_at",
    Kind.LOADING: "loaded_at",
    Kind.STARTED: "started_at",
    Kind.STOPPED: "stopped_at",
    Kind.RESUMED: "resumed_at",
    Kind.ENDED: "ended_at",
    Kind.OPENED: "opened_at",
    Kind.UNLOADED: "unloaded_at",
    Kind.CALLED_OFF: "called_off_at",
}


@dataclass(frozen=True, slots=True)
class Event:
    """One thing told of a load.

    `happened_at` of a claim (`settled`, `reopened`) is the instant at which the server took it.
    `results` goes from placement id to one of `RESULTS`. `celsius` is what was read then. [°C]
    """

    id: UUID
    happened_at: datetime
    kind: str
    celsius: float | None = None
    outcome: str = ""
    reason: str = ""
    results: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Stop:
    """A firing that went out, and when it was lit again: None while it has not been."""

    stopped_at: datetime
    resumed_at: datetime | None = None
    celsius: float | None = None


@dataclass(frozen=True, slots=True)
class Quarrel:
    """An event that cannot follow, and the one that it cannot follow; None before any."""

    misfit: UUID
    against: UUID | None


@dataclass(frozen=True, slots=True)
class Now:
    """What a load is now.

    `stopped_at` and `resumed_at` are the last ones. `skipped` names the steps that a later one says
    have happened, `misfits` the events that cannot follow what stands before them; `told_last` is
    the last event that could.
    """

    state: State = State.OPEN
    outcome: str = ""
    settled_at: datetime | None = None
    loaded_at: datetime | None = None
    started_at: datetime | None = None
    stopped_at: datetime | None = None
    resumed_at: datetime | None = None
    ended_at: datetime | None = None
    opened_at: datetime | None = None
    opened_c: float | None = None
    unloaded_at: datetime | None = None
    called_off_at: datetime | None = None
    stops: tuple[Stop, ...] = ()
    results: Mapping[str, str] = field(default_factory=lambda: MappingProxyType({}))
    skipped: tuple[Kind, ...] = ()
    told_last: UUID | None = None
    quarrels: tuple[Quarrel, ...] = ()

    @property
    def misfits(self) -> tuple[UUID, ...]:
        return tuple(quarrel.misfit for quarrel in self.quarrels)

    @property
    def is_interrupted(self) -> bool:
        """Whether the firing went out before its end, once or more."""
        return bool(self.stops)

    @property
    def is_over(self) -> bool:
        return self.state in (State.UNLOADED, State.CALLED_OFF)

    @property
    def may_be_edited(self) -> bool:
        return self.state == State.OPEN

    @property
    def counts_as_firing(self) -> bool:
        """Whether it is one more firing of the kiln; what did not fire counts its hours only."""
        return self.ended_at is not None and self.outcome == "fired"


def fold(events: Iterable[Event]) -> Now:
    """Return what is so now.

    Parameters
    ----------
    events
        All events of one load, in any order, without those taken back.

    Returns
    -------
    The state. It depends on the events alone: they are sorted by when they happened, then by id.

    Raises
    ------
    ValueError
        When a kind or an outcome is none of a load's: the caller has a bug.
    """
    now = Now()
    for event in sorted(events, key=_when):
        now = _after(now, event)
    return now


def result_of(now: Now, placement_id: str) -> str | None:
    """Return how one placement came out: its own result, else the load's; None before unloading."""
    if now.state != State.UNLOADED:
        return None
    return now.results.get(placement_id) or now.outcome or "unsure"


def _when(event: Event) -> tuple[datetime, UUID]:
    return event.happened_at.astimezone(UTC), event.id


def _after(now: Now, event: Event) -> Now:
    kind = Kind(event.kind)
    if event.outcome and event.outcome not in OUTCOMES:
        raise ValueError(f"no such outcome: {event.outcome}")
    missing: tuple[Kind, ...] | None = (
        () if kind in NEXT[now.state] else steps_left_out(now.state, kind)
    )
    if missing is None:
        # A claim that comes to nothing leaves no doubt about the ware; a fact does.
        if kind in CLAIMS:
            return now
        return replace(now, quarrels=(*now.quarrels, Quarrel(event.id, now.told_last)))
    before = now if not missing else replace(now, skipped=(*now.skipped, *missing))
    return _told(before, kind, event)


def _told(now: Now, kind: Kind, event: Event) -> Now:
    at = event.happened_at
    if kind == Kind.REOPENED:
        return replace(now, state=State.OPEN, settled_at=None, told_last=event.id)
    times = {_TIME_OF[kind]: at}
    told = replace(
        now,
        state=_state_after(kind),
        told_last=event.id,
        outcome=event.outcome or now.outcome,
        results=MappingProxyType({**now.results, **event.results}),
        **times,  # type: ignore[arg-type]  # names of instants only
    )
    if kind == Kind.STOPPED:
        return replace(told, stops=(*told.stops, Stop(at, celsius=event.celsius)))
    if kind == Kind.RESUMED and told.stops:
        return replace(told, stops=(*told.stops[:-1], replace(told.stops[-1], resumed_at=at)))
    return replace(told, opened_c=event.celsius) if kind == Kind.OPENED else told


def _state_after(kind: Kind) -> State:
    return next(after[kind] for after in NEXT.values() if kind in after)


def steps_left_out(state: State, kind: Kind) -> tuple[Kind, ...] | None:
    """Return the steps left out between a state and an event; None if the road does not lead on."""
    here = _PLACE_ON_ROAD.get(state)
    if here is None:
        return None
    way = [step for _, step in ROAD[here:]]
    if kind == Kind.STOPPED and here < _PLACE_ON_ROAD[State.FIRING]:
        return tuple(way[: way.index(Kind.STARTED) + 1])
    if kind not in way:
        return None
    return tuple(way[: way.index(kind)])
