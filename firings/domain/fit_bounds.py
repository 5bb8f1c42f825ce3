"""What surely does not go in, whatever way it is set: only this may say so.

Each bound looks at less than the whole: areas with their gaps, the circles inside the pieces, the
heights of layers. Ware that passes them all may still not go in.
"""

import math
from collections.abc import Sequence
from typing import Final

from firings.domain.circles import most_in_circle, most_in_rectangle
from firings.domain.fit_problem import Problem, Reason, Ware, headroom_mm
from firings.domain.placing import can_lie_on
from firings.domain.shapes import Outline, swollen_area_mm2

CLOSE: Final = 1e-9


def excluded(problem: Problem, ware: Sequence[Ware]) -> list[Reason]:
    """Return why this measured ware cannot all go in; nothing when no bound excludes it."""
    found = [reason for piece in ware for reason in alone(problem, piece)]
    if found:
        return found
    by_level: dict[int, list[Ware]] = {}
    for piece in ware:
        if piece.level is not None:
            by_level.setdefault(piece.level, []).append(piece)
    for level, pieces in sorted(by_level.items()):
        if _least_layers(problem, pieces) > 1:
            detail = f"{len(pieces)} pieces are more than level {level} can hold."
            found.append(Reason("too_many", detail, level=level))
    layers, height_mm = _least_height_mm(problem, ware)
    too_many = layers > problem.shelf.count or height_mm > problem.chamber.height_mm + CLOSE
    if not found and too_many:
        found.append(Reason("too_many", f"{len(ware)} pieces are more than the kiln can hold."))
    return found


def alone(problem: Problem, piece: Ware) -> list[Reason]:
    """Return why one measured piece cannot go in, even alone."""
    rules = problem.rules
    room = problem.chamber.height_mm - rules.base_post_mm - problem.shelf.thickness_mm
    over = max(rules.lid_mm, headroom_mm(piece, rules))
    height = piece.height_mm or 0.0
    found = []
    if height > room - over + CLOSE:
        detail = f"{piece.name} is {height:.0f} mm high; {room - over:.0f} mm is the most."
        found.append(Reason("too_tall", detail, piece.id, piece.level))
    if can_lie_on(problem.shelf.outline, piece.footprint) is False:
        across = f"{piece.width_mm:.0f} × {piece.depth_mm:.0f} mm"
        if piece.is_round:
            across = f"{piece.width_mm:.0f} mm across"
        detail = f"{piece.name}, {across}, is wider than the shelf."
        found.append(Reason("too_wide", detail, piece.id, piece.level))
    return found


def most_on_shelf(outline: Outline, radius_mm: float, gap_mm: float) -> int:
    """Return above how many pieces, each with a circle of this radius inside, none can stand."""
    radius = radius_mm + gap_mm / 2.0
    if outline.is_round:
        return most_in_circle(radius, (outline.width_mm + gap_mm) / 2.0)[1]
    return most_in_rectangle(radius, outline.width_mm + gap_mm, outline.depth_mm + gap_mm)[1]


def _least_layers(problem: Problem, ware: Sequence[Ware]) -> int:
    """Return below how many layers this ware surely does not stand."""
    outline, gap = problem.shelf.outline, problem.rules.gap_mm
    prints = [piece.footprint for piece in ware]
    swollen = swollen_area_mm2(outline.is_round, outline.width_mm, outline.depth_mm, gap / 2.0)
    area = sum(
        swollen_area_mm2(each.is_round, each.width_mm, each.depth_mm, gap / 2.0) for each in prints
    )
    least = math.ceil(area / swollen - CLOSE)
    radii = sorted((each.inner_radius_mm for each in prints), reverse=True)
    for radius in set(radii):
        # All of these hold a circle of this radius, so no more of them stand than of such circles.
        broad = sum(other >= radius for other in radii)
        least = max(least, math.ceil(broad / max(1, most_on_shelf(outline, radius, gap))))
    return least


def _least_height_mm(problem: Problem, ware: Sequence[Ware]) -> tuple[int, float]:
    """Return how many layers the ware needs at least, and how high they stand at least. [mm]

    As many layers as the ware of a height or more needs are that high or more.
    """
    layers: list[float] = []
    for height in sorted({piece.height_mm or 0.0 for piece in ware}, reverse=True):
        tall = [piece for piece in ware if (piece.height_mm or 0.0) >= height]
        layers += [height] * (_least_layers(problem, tall) - len(layers))
    rules = problem.rules
    between = problem.shelf.thickness_mm + min(rules.above_mm, rules.lid_mm)
    return len(layers), rules.base_post_mm + sum(layers) + len(layers) * between
