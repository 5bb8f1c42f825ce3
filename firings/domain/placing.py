"""Set pieces down on one shelf, one after another, each where it touches what stands already.

The search is greedy, bounded and the same every time; it may miss a way that exists.
"""

from collections.abc import Callable, Iterator, Sequence
from typing import Final

import numpy as np
from numpy.typing import NDArray

from firings.domain.shapes import CLOSE_MM, Floats, Footprint, Outline, Spot, box, boxes
from firings.domain.touching import crossings

AT_ONCE: Final = 256
MOST_WIDE_SEARCH: Final = 16
"""Pieces on a shelf up to which several orders are tried; common sense, for time."""


Score = Callable[[Floats, Floats], Floats]
SCORES: Final[tuple[Score, ...]] = (
    lambda x, y: y + 1e-3 * x,
    lambda x, y: x + 1e-3 * y,
    lambda x, y: -np.hypot(x, y) + 1e-6 * y,
)


def set_down(
    outline: Outline,
    standing: Sequence[Spot],
    piece: Footprint,
    gap_mm: float,
    score: Score = SCORES[0],
) -> Spot | None:
    """Return the best-scored place for one more piece, turned or not; None if none was found."""
    ways = [(piece, False)]
    if not piece.is_round and piece.width_mm != piece.depth_mm:
        ways.append((piece.turned(), True))
    found = []
    for way, is_turned in ways:
        at = _first_free(outline, standing, way, gap_mm, score)
        if at is not None:
            value = float(score(np.array([at[0]]), np.array([at[1]]))[0])
            found.append((value, is_turned, Spot(*at, way, is_turned)))
    return min(found, key=lambda each: each[:2])[2] if found else None


def set_down_all(
    outline: Outline,
    pieces: Sequence[Footprint],
    gap_mm: float,
    obstacles: Sequence[Spot] = (),
) -> list[Spot] | None:
    """Return a place for each piece, in the order given; None when no order tried led to one.

    `obstacles` stand already; they are not returned. Pieces that found no room are put first in the
    next try, a few times.
    """
    for order in _orders(pieces):
        for score in SCORES:
            places = _greedy(outline, pieces, order, gap_mm, obstacles, score)
            if None not in places:
                return [place for place in places if place is not None]
            failed = [i for i in order if places[i] is None]
            again = _greedy(
                outline,
                pieces,
                [*failed, *(i for i in order if i not in failed)],
                gap_mm,
                obstacles,
                score,
            )
            if None not in again:
                return [place for place in again if place is not None]
    return None


def is_free(outline: Outline, standing: Sequence[Spot], spot: Spot, gap_mm: float) -> bool:
    """Return whether a piece can stand there."""
    return bool(
        free_places(
            outline,
            standing,
            spot.footprint,
            gap_mm,
            np.array([spot.x_mm]),
            np.array([spot.y_mm]),
        )[0]
    )


def can_lie_on(outline: Outline, piece: Footprint) -> bool | None:
    """Return whether a piece alone goes on the shelf; None if only at a slant."""
    if is_free(outline, (), Spot(0.0, 0.0, piece), 0.0):
        return True
    if is_free(outline, (), Spot(0.0, 0.0, piece.turned()), 0.0):
        return True
    if outline.is_round or piece.is_round:
        return False
    slant = np.radians(np.linspace(0.0, 90.0, 361))
    wide = piece.width_mm * np.cos(slant) + piece.depth_mm * np.sin(slant)
    deep = piece.width_mm * np.sin(slant) + piece.depth_mm * np.cos(slant)
    fits = (wide <= outline.width_mm) & (deep <= outline.depth_mm)
    return None if bool(fits.any()) else False


def _orders(pieces: Sequence[Footprint]) -> Iterator[list[int]]:
    """Yield orders to try: the largest first, then the longest, then round ware last."""
    numbers = range(len(pieces))
    yield sorted(numbers, key=lambda i: (-pieces[i].area_mm2, i))
    if len(pieces) <= MOST_WIDE_SEARCH and len(set(pieces)) > 1:
        yield sorted(numbers, key=lambda i: (-max(pieces[i].width_mm, pieces[i].depth_mm), i))
        yield sorted(numbers, key=lambda i: (pieces[i].is_round, -pieces[i].area_mm2, i))


def _greedy(
    outline: Outline,
    pieces: Sequence[Footprint],
    order: Sequence[int],
    gap_mm: float,
    obstacles: Sequence[Spot],
    score: Score,
) -> list[Spot | None]:
    standing = list(obstacles)
    places: list[Spot | None] = [None] * len(pieces)
    failed: set[Footprint] = set()
    for i in order:
        if pieces[i] in failed:
            continue
        found = set_down(outline, standing, pieces[i], gap_mm, score)
        if found is None:
            failed.add(pieces[i])
        else:
            places[i] = found
            standing.append(found)
    return places


def _first_free(
    outline: Outline,
    standing: Sequence[Spot],
    piece: Footprint,
    gap_mm: float,
    score: Score,
) -> tuple[float, float] | None:
    x, y = crossings(outline, standing, piece, gap_mm)
    order = np.argsort(score(x, y), kind="stable")
    for start in range(0, len(order), AT_ONCE):
        some = order[start : start + AT_ONCE]
        free = free_places(outline, standing, piece, gap_mm, x[some], y[some])
        if free.any():
            first = some[int(free.argmax())]
            return float(x[first]), float(y[first])
    return None


def free_places(
    outline: Outline,
    standing: Sequence[Spot],
    piece: Footprint,
    gap_mm: float,
    x: Floats,
    y: Floats,
) -> NDArray[np.bool_]:
    """Return at which of these places a piece can stand. `(n,)`"""
    half_w, half_d, radius = box(piece, gap_mm)
    if outline.is_round:
        reach = np.hypot(np.abs(x) + half_w, np.abs(y) + half_d) + radius
        free = reach <= outline.width_mm / 2.0 + gap_mm / 2.0 + CLOSE_MM
    else:
        room_x = (outline.width_mm + gap_mm) / 2.0 - half_w - radius
        room_y = (outline.depth_mm + gap_mm) / 2.0 - half_d - radius
        free = (np.abs(x) <= room_x + CLOSE_MM) & (np.abs(y) <= room_y + CLOSE_MM)
    if len(standing) and free.any():
        ox, oy, ow, od, orad = boxes(standing, gap_mm)
        beside = np.maximum(np.abs(x[:, None] - ox) - (ow + half_w), 0.0)
        before = np.maximum(np.abs(y[:, None] - oy) - (od + half_d), 0.0)
        apart = np.hypot(beside, before) >= orad + radius - CLOSE_MM
        # With no gap two boxes may touch, not overlap: there the distance alone says nothing.
        hard = (orad + radius) == 0.0
        deep = np.minimum(
            ow + half_w - np.abs(x[:, None] - ox), od + half_d - np.abs(y[:, None] - oy)
        )
        free &= (apart & ~(hard & (deep > CLOSE_MM))).all(axis=1)
    return free
