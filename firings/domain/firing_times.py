"""Hours of a firing that really passed, and what a stopped one may become.

Hours are elapsed ones, so a change of the clocks neither adds nor takes any. Between two readings
the temperature is taken to go in a straight line; nothing is said before the first or after the
last.

A restart after 1700 °F without cones ended in crawled glaze (http://potters.org/subject67395.htm),
one after a gap of three hours under-fired (http://potters.org/subject75869.htm).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from itertools import pairwise
from typing import Final

from firings.domain.loads import Kind, Now
from studio.domain.hours import elapsed_h

Point = tuple[datetime, float]
Span = tuple[datetime, datetime]

HOT_C: Final = 600.0
"""Where counting of hot hours begins: red heat, kaolinite gone; common practice, no source. [°C]"""

FLAT_ENOUGH_HAND: Final = 5
STOPPED_CAUTION: Final = (
    "A firing relit without looking at the cones has ended in crawled glaze; another that stood "
    "three hours came out under-fired. Look at the cones first. Whatever you choose stays with "
    "every piece as an interrupted firing."
)


@dataclass(frozen=True, slots=True)
class ConeSeen:
    """A witness cone as it was found: by level and by the hand of a clock, None if not read."""

    level: int | None
    role: str
    cone: str
    clock_hand: int | None


@dataclass(frozen=True, slots=True)
class StoppedFacts:
    """What is known of a firing that stopped. Temperatures in °C, times in hours.

    `cones` of one shelf stand in the order they were seen.
    """

    highest_c: float | None
    highest_at: datetime | None
    above_600_h: float
    gap_h: float
    last_c: float | None
    last_at: datetime | None
    cones: tuple[ConeSeen, ...]


@dataclass(frozen=True, slots=True)
class Choice:
    """One way on from a stop: the event it is, with which outcome, and what speaks for it."""

    code: str
    kind: Kind
    outcome: str
    words: str
    is_backed: bool


def firing_h(now: Now, at: datetime) -> float | None:
    """Return the hours from lighting to the end, stops and all, up to `at`; None if not lit."""
    if now.started_at is None:
        return None
    return max(0.0, elapsed_h(now.started_at, now.ended_at or at))


def gap_h(now: Now, at: datetime) -> float:
    """Return the hours for which the firing stood still."""
    return sum(elapsed_h(start, end) for start, end in _gaps(now, at))


def powered_spans(now: Now, at: datetime) -> list[Span]:
    """Return the spans in which the kiln was driven: lit to ended, without the stops."""
    if now.started_at is None:
        return []
    spans: list[Span] = []
    start = now.started_at
    for out, back in _gaps(now, at):
        spans.append((start, out))
        start = back
    spans.append((start, now.ended_at or at))
    return [(first, last) for first, last in spans if elapsed_h(first, last) > 0.0]


def in_order(points: Sequence[Point]) -> list[Point]:
    """Return readings by when they were taken, in UTC, where a wall clock cannot mislead."""
    return sorted((at.astimezone(UTC), celsius) for at, celsius in points)


def hours_above(
    points: Sequence[Point], above_c: float, spans: Sequence[Span] | None = None
) -> float:
    """Return for how long a kiln stood above a temperature.

    Parameters
    ----------
    points
        Readings in any order, (instant, °C).
    above_c
        The temperature. [°C]
    spans
        Count only within these; None counts all between the first and the last reading.

    Returns
    -------
    Hours above, 0 with fewer than two readings.
    """
    total = 0.0
    for (start, low), (end, high) in pairwise(in_order(points)):
        length_h = elapsed_h(start, end)
        first, last = _share_above(low, high, above_c)
        if length_h <= 0.0 or first >= last:
            continue
        for opens, closes in [(start, end)] if spans is None else spans:
            opened = elapsed_h(start, opens) / length_h
            closed = elapsed_h(start, closes) / length_h
            total += max(0.0, min(last, closed) - max(first, opened)) * length_h
    return total


def hot_h(now: Now, points: Sequence[Point], at: datetime, *, above_c: float = HOT_C) -> float:
    """Return the hours with the elements driven above a temperature, which age them."""
    return hours_above(points, above_c, powered_spans(now, at))


def highest(points: Sequence[Point]) -> Point | None:
    """Return the hottest reading, the first of equals."""
    return max(in_order(points), key=lambda point: point[1], default=None)


def stopped_facts(
    now: Now, points: Sequence[Point], at: datetime, cones: Sequence[ConeSeen] = ()
) -> StoppedFacts:
    """Return what a person should see before deciding about a firing that stopped."""
    ordered = in_order(points)
    top, last = highest(ordered), ordered[-1] if ordered else None
    return StoppedFacts(
        highest_c=None if top is None else top[1],
        highest_at=None if top is None else top[0],
        above_600_h=hours_above(points, HOT_C),
        gap_h=gap_h(now, at),
        last_c=None if last is None else last[1],
        last_at=None if last is None else last[0],
        cones=tuple(cones),
    )


def choices(facts: StoppedFacts, load_cone: str) -> tuple[Choice, ...]:
    """Return what a stopped firing may become; the person chooses, nothing is chosen for them."""
    now_at = "an unknown temperature" if facts.last_c is None else f"{facts.last_c:.0f} °C"
    seen = [one for one in facts.cones if one.cone == load_cone]
    # A cone bends as it is looked at again: the last look at each counts.
    last = {(one.level, one.role): one.clock_hand for one in seen if one.clock_hand is not None}
    hands = last.values()
    are_down = bool(hands) and all(FLAT_ENOUGH_HAND <= hand <= 7 for hand in hands)
    if not hands:
        by_cone = f"Nobody has read a cone {load_cone}: accept only what a cone has shown."
    elif are_down:
        by_cone = f"Cone {load_cone} is down on every shelf read."
    else:
        by_cone = f"Cone {load_cone} is not down on every shelf read: the ware is under-fired."
    return (
        Choice("resume", Kind.RESUMED, "", f"Light it again from {now_at}.", bool(seen)),
        Choice("refire", Kind.ENDED, "not_fired", "Fire it again from cold.", is_backed=True),
        Choice("accept_by_cone", Kind.ENDED, "fired", by_cone, are_down),
    )


def _gaps(now: Now, at: datetime) -> list[Span]:
    """Return the stops; one that was never lit again lasts until the firing was ended, or `at`."""
    end = now.ended_at or at
    gaps = ((stop.stopped_at, stop.resumed_at or end) for stop in now.stops)
    return [(out, back) for out, back in gaps if elapsed_h(out, back) > 0.0]


def _share_above(low: float, high: float, above_c: float) -> tuple[float, float]:
    """Return which share of a straight line from `low` to `high` lies above, as (from, to)."""
    if min(low, high) >= above_c:
        return 0.0, 1.0
    if max(low, high) <= above_c:
        return 0.0, 0.0
    crossing = (above_c - low) / (high - low)
    return (crossing, 1.0) if high > low else (0.0, crossing)
