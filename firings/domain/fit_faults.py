"""What is wrong with an answer about a kiln, looked at without the way it was found.

Distances between outlines are worked out here from corners and sides alone.
"""

import math
from collections import Counter
from collections.abc import Iterator
from itertools import combinations
from typing import Final

from firings.domain.fit_problem import Item, Level, Problem, Result, Ware

CLOSE_MM: Final = 1e-3


def faults(problem: Problem, result: Result) -> list[str]:
    """Return what is wrong with an answer; an empty list when nothing is.

    Checked are the sizes and places of all pieces, gaps, posts, heights, that each piece is either
    placed once or left out, and that the verdict agrees with its reasons.
    """
    ware = {piece.id: piece for piece in problem.ware}
    found = list(_of_counts(problem, result))
    for level in result.levels:
        found += _of_places(problem, level, ware)
        found += _of_heights(problem, level, ware, is_top=level is result.levels[-1])
    found += _of_layers(problem, result)
    if result.verdict == "fits" and (result.left_out or result.reasons):
        found.append("It is said to fit, with reasons against or ware left out.")
    if result.verdict != "fits" and not result.reasons:
        found.append("It is said not to fit, without a reason.")
    return found


def _of_counts(problem: Problem, result: Result) -> Iterator[str]:
    named = Counter(item.ware_id for level in result.levels for item in level.items)
    named.update(result.left_out)
    for piece in problem.ware:
        if named[piece.id] != 1:
            yield f"{piece.id} is named {named[piece.id]} times."
    for unknown in set(named) - {piece.id for piece in problem.ware}:
        yield f"{unknown} was never asked about."


def _of_places(problem: Problem, level: Level, ware: dict[str, Ware]) -> Iterator[str]:
    for item in level.items:
        piece = ware[item.ware_id]
        sides = [piece.width_mm, piece.depth_mm]
        shown = [item.spot.footprint.width_mm, item.spot.footprint.depth_mm]
        if sides != (shown[::-1] if item.rotation_deg else shown):
            yield f"{item.ware_id} has another size where it stands."
        if piece.level not in (None, level.level):
            yield f"{item.ware_id} stands on level {level.level}, not {piece.level}."
        if _overhang_mm(problem, item) > CLOSE_MM:
            yield f"{item.ware_id} hangs over the shelf."
    for one, other in combinations(level.items, 2):
        if _apart_mm(one, other) < problem.rules.gap_mm - CLOSE_MM:
            yield f"{one.ware_id} and {other.ware_id} are too close."
    post = problem.inside_post
    for x, y in level.posts if post is not None else ():
        for item in level.items:
            free = _to_point_mm(item, x, y) - (post.footprint_mm / math.sqrt(2.0) if post else 0.0)
            if free < problem.rules.gap_mm - CLOSE_MM:
                yield f"A post stands too close to {item.ware_id}."


def _of_heights(
    problem: Problem, level: Level, ware: dict[str, Ware], *, is_top: bool
) -> Iterator[str]:
    for item in level.items:
        piece = ware[item.ware_id]
        free = problem.rules.lid_mm if is_top else problem.rules.above_mm
        if piece.is_refire:
            free = max(free, problem.rules.refire_above_mm)
        over = level.height_mm - (piece.height_mm or 0.0)
        if over < free - CLOSE_MM and not (is_top and "too_high" in _codes_of(level, problem)):
            yield f"{item.ware_id} has {over:.1f} mm above it, {free:.1f} mm are kept."


def _codes_of(level: Level, problem: Problem) -> tuple[str, ...]:
    """Return that a top level ends above the kiln, where its answer must say so."""
    is_over = level.floor_mm + problem.rules.lid_mm > problem.chamber.height_mm
    return ("too_high",) if is_over else ()


def _of_layers(problem: Problem, result: Result) -> Iterator[str]:
    top = problem.rules.base_post_mm
    for level in result.levels:
        if abs(level.floor_mm - top - problem.shelf.thickness_mm) > CLOSE_MM:
            yield f"Level {level.level} does not stand on what is below it."
        top = level.floor_mm + level.height_mm
    if result.verdict != "does_not_fit":
        if len(result.levels) > problem.shelf.count:
            yield "There are not so many shelves."
        if top > problem.chamber.height_mm + CLOSE_MM:
            yield "It is higher than the kiln."
    if problem.inside_post is not None and result.verdict == "fits":
        for level in result.levels[:-1]:
            if len(level.posts) != 3:
                yield f"Level {level.level} carries a shelf without three posts."


def _overhang_mm(problem: Problem, item: Item) -> float:
    half_w, half_d = _halves(item)
    x, y = abs(item.x_mm), abs(item.y_mm)
    shelf = problem.shelf
    if not shelf.is_round:
        return max(x + half_w - shelf.width_mm / 2.0, y + half_d - shelf.depth_mm / 2.0)
    if item.spot.footprint.is_round:
        return math.hypot(x, y) + half_w - shelf.width_mm / 2.0
    return math.hypot(x + half_w, y + half_d) - shelf.width_mm / 2.0


def _apart_mm(one: Item, other: Item) -> float:
    """Return the distance between two outlines, below 0 when they overlap."""
    if other.spot.footprint.is_round:
        return _to_point_mm(one, other.x_mm, other.y_mm) - _halves(other)[0]
    if one.spot.footprint.is_round:
        return _to_point_mm(other, one.x_mm, one.y_mm) - _halves(one)[0]
    (w, d), (v, e) = _halves(one), _halves(other)
    beside = abs(one.x_mm - other.x_mm) - w - v
    before = abs(one.y_mm - other.y_mm) - d - e
    if max(beside, before) <= 0.0:
        return max(beside, before)
    return math.hypot(max(beside, 0.0), max(before, 0.0))


def _to_point_mm(item: Item, x: float, y: float) -> float:
    """Return the distance from an outline to a point, below 0 inside."""
    half_w, half_d = _halves(item)
    if item.spot.footprint.is_round:
        return math.hypot(item.x_mm - x, item.y_mm - y) - half_w
    beside, before = abs(item.x_mm - x) - half_w, abs(item.y_mm - y) - half_d
    if max(beside, before) <= 0.0:
        return max(beside, before)
    return math.hypot(max(beside, 0.0), max(before, 0.0))


def _halves(item: Item) -> tuple[float, float]:
    return item.spot.footprint.width_mm / 2.0, item.spot.footprint.depth_mm / 2.0
