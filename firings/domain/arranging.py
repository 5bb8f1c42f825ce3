"""Ways to set all ware of one layer on its shelf, the surest first, with room for posts if asked.

Equal round ware stands in a known arrangement or in rows; everything else is set down piece by
piece. Each way is valid; that none is found proves nothing.
"""

import math
from collections.abc import Iterator, Sequence
from typing import Final

import numpy as np

from firings.domain.circles import MOST_ARRANGED, arranged, in_rows
from firings.domain.placing import is_free, set_down_all
from firings.domain.posts import stand_posts
from firings.domain.shapes import Floats, Footprint, Outline, Spot

Ways = Iterator[list[Spot]]
SAME_RING_MM: Final = 1e-3


def arrange(
    outline: Outline, pieces: Sequence[Footprint], gap_mm: float, posts: Sequence[Spot] = ()
) -> list[Spot] | None:
    """Return a place for each piece, clear of posts that stand already; None if none was found."""
    for way in _ways(outline, pieces, gap_mm, posts):
        if all(is_free(outline, posts, spot, gap_mm) for spot in way):
            return way
    return None


def arrange_with_posts(
    outline: Outline, pieces: Sequence[Footprint], gap_mm: float, footprint_mm: float
) -> tuple[list[Spot], list[Spot]] | None:
    """Return a place for each piece and for three posts among them; None if none was found."""
    for way in _ways(outline, pieces, gap_mm):
        posts = stand_posts(outline, [way], footprint_mm, gap_mm)
        if posts is not None:
            return way, posts
    posts = stand_posts(outline, [], footprint_mm, gap_mm)
    way_round = None if posts is None else set_down_all(outline, pieces, gap_mm, posts)
    return None if posts is None or way_round is None else (way_round, posts)


def _ways(
    outline: Outline, pieces: Sequence[Footprint], gap_mm: float, posts: Sequence[Spot] = ()
) -> Ways:
    if not pieces:
        yield []
        return
    if len(set(pieces)) == 1:
        yield from _equal(outline, pieces[0], len(pieces), gap_mm)
    found = set_down_all(outline, pieces, gap_mm, posts)
    if found is not None:
        yield found


def _equal(outline: Outline, piece: Footprint, count: int, gap_mm: float) -> Ways:
    if piece.is_round and outline.is_round:
        radius, outer = (piece.width_mm + gap_mm) / 2.0, (outline.width_mm + gap_mm) / 2.0
        # With fewer pieces the places of more may still leave better room for posts.
        for many in range(count, min(count + 3, MOST_ARRANGED) + 1):
            centres = arranged(many, radius, outer)
            if centres is not None:
                yield _spots(centres[:count], piece)
                spread = _closed_up(centres, radius)
                if spread is not None:
                    yield _spots(spread[:count], piece)
    elif piece.is_round:
        centres = in_rows(
            (piece.width_mm + gap_mm) / 2.0,
            outline.width_mm + gap_mm,
            outline.depth_mm + gap_mm,
        )
        if len(centres) >= count:
            yield _spots(centres[:count], piece)
    elif outline.is_round:
        for way, is_turned in ((piece, False), (piece.turned(), True)):
            centres = _rows_in_disc(outline, way, gap_mm)
            if len(centres) >= count:
                yield _spots(centres[:count], way, is_turned=is_turned)


def _closed_up(centres: Floats, radius: float) -> Floats | None:
    """Return the outer ring closed up so that three wider spaces are left in it, for posts."""
    reach = np.hypot(*centres.T)
    ring = np.flatnonzero(reach >= reach.max() - SAME_RING_MM)
    if len(ring) < 4 or reach.max() <= radius:
        return None
    step = 2.0 * math.asin(min(1.0, radius / float(reach.max())))
    slack = 2.0 * math.pi - len(ring) * step
    if slack <= 0.0:
        return None
    wide = {round(third * len(ring) / 3.0) for third in range(3)}
    angle, spread = 0.0, centres.copy()
    for place, i in enumerate(ring):
        angle += (step if place else 0.0) + (slack / 3.0 if place in wide else 0.0)
        spread[i] = reach.max() * np.array([math.cos(angle), math.sin(angle)])
    apart = spread[:, None, :] - spread[None, :, :]
    nearest = np.hypot(apart[..., 0], apart[..., 1])[np.triu_indices(len(spread), 1)].min()
    return spread if nearest >= 2.0 * radius - 1e-9 else None


def _rows_in_disc(outline: Outline, piece: Footprint, gap_mm: float) -> Floats:
    """Return middles of boxes in rows across a round shelf, one at its middle or two beside it."""
    radius = outline.width_mm / 2.0
    step = piece.depth_mm + gap_mm
    best = np.empty((0, 2))
    for first in (0.0, step / 2.0):
        rows = [row for row in np.arange(-9, 10) * step + first if abs(row) < radius]
        found = [
            (x, row)
            for row in rows
            for x in _along(radius, abs(row) + piece.depth_mm / 2.0, piece.width_mm, gap_mm)
        ]
        if len(found) > len(best):
            best = np.array(found)
    return best


def _along(radius: float, off: float, width: float, gap_mm: float) -> list[float]:
    if off >= radius:
        return []
    chord = 2.0 * math.sqrt(radius**2 - off**2)
    count = math.floor((chord + gap_mm) / (width + gap_mm) + 1e-9)
    return [(place - (count - 1) / 2.0) * (width + gap_mm) for place in range(count)]


def _spots(centres: Floats, piece: Footprint, *, is_turned: bool = False) -> list[Spot]:
    return [Spot(float(x), float(y), piece, is_turned) for x, y in centres]
