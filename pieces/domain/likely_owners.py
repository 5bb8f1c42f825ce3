"""Whose a found thing may be: by what the records say stood there, its size, its clay and the day.

The weights are common sense, no source: they only put names in an order in which to ask.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final
from uuid import UUID

MOST: Final = 3
LONG_AGO: Final = timedelta(days=60)
#: A thing against its size as pressed: clay shrinks, and a tape measures to a few per cent.
SMALLEST: Final = 0.82
LARGEST: Final = 1.04

STOOD_HERE: Final = 4.0
STOOD_NEAR: Final = 1.0
MISSING: Final = 4.0
SIZE_FITS: Final = 3.0
SAME_BODY: Final = 2.0
SAME_STATE: Final = 1.0
RECENT: Final = 1.0
LEAST: Final = 3.0


@dataclass(frozen=True, slots=True)
class Found:
    """A thing that was found: what it measures, its clay and how it looks, as far as known."""

    at: datetime
    sizes_mm: Sequence[float] = ()
    body: UUID | None = None
    state: str = ""


@dataclass(frozen=True, slots=True)
class Recorded:
    """A piece that the records know. `here` is 2 where it stood there, 1 near by, else 0.

    `sizes_mm` is its size as pressed, `left_at` when it was last said to stand there (None: never).
    """

    piece: UUID
    maker: UUID
    here: int
    left_at: datetime | None
    is_missing: bool
    state: str
    sizes_mm: Sequence[float] = ()
    body: UUID | None = None


@dataclass(frozen=True, slots=True)
class Candidate:
    """Somebody to ask, the piece that speaks for it, and why."""

    maker: UUID
    piece: UUID
    why: tuple[str, ...]


def candidates(found: Found, records: Sequence[Recorded]) -> list[Candidate]:
    """Return up to three people to ask, the likeliest first; a piece of another size is none."""
    best: dict[UUID, tuple[float, Candidate]] = {}
    for record in records:
        weighed = _weigh(found, record)
        if weighed is None or weighed[0] < LEAST:
            continue
        weight, why = weighed
        known = best.get(record.maker)
        if known is None or weight > known[0]:
            best[record.maker] = weight, Candidate(record.maker, record.piece, why)
    ordered = sorted(best.values(), key=lambda row: (-row[0], str(row[1].piece)))
    return [candidate for _, candidate in ordered[:MOST]]


def _weigh(found: Found, record: Recorded) -> tuple[float, tuple[str, ...]] | None:
    fits = _fits(found.sizes_mm, record.sizes_mm)
    if fits is False:
        return None
    is_recent = record.left_at is not None and abs(found.at - record.left_at) < LONG_AGO
    said = [
        (record.is_missing, MISSING, "missing since"),
        (record.here == 2, STOOD_HERE, "stood there by the records"),
        (record.here == 1, STOOD_NEAR, "stood near there by the records"),
        (record.here > 0 and is_recent, RECENT, "not long before"),
        (fits is True, SIZE_FITS, "its size fits"),
        (found.body is not None and found.body == record.body, SAME_BODY, "same clay"),
        (bool(found.state) and found.state == record.state, SAME_STATE, "as far along"),
    ]
    told = [(weight, words) for holds, weight, words in said if holds]
    if found.body is not None and record.body is not None and found.body != record.body:
        told.append((-SAME_BODY, "other clay"))
    return sum(weight for weight, _ in told), tuple(words for _, words in told)


def _fits(found_mm: Sequence[float], recorded_mm: Sequence[float]) -> bool | None:
    """Say whether the sizes agree, whichever way it was laid; None where one is not known."""
    if not found_mm or len(found_mm) != len(recorded_mm):
        return None
    ratios = [f / r for f, r in zip(sorted(found_mm), sorted(recorded_mm), strict=True)]
    return all(SMALLEST <= ratio <= LARGEST for ratio in ratios)
