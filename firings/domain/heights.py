"""How layers stack: shelf, the tallest piece on it, what is kept free above, the next shelf."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations_with_replacement
from typing import Final

from firings.domain.fit_problem import (
    POSTS_PER_SHELF,
    Problem,
    Ware,
    headroom_mm,
)

CLOSE_MM: Final = 1e-6
MOST_POSTS_STACKED: Final = 2


@dataclass(frozen=True, slots=True)
class Stack:
    """Layers from below: upper faces of the shelves, room above each, all from the floor. [mm]

    The last room goes up to what is kept free under the lid. `short_of_posts` names layers, from 1,
    for which no posts of the right height are left; they are reckoned as cut to measure.
    """

    floors_mm: tuple[float, ...]
    rooms_mm: tuple[float, ...]
    used_mm: float
    top_gap_mm: float
    short_of_posts: tuple[int, ...]


def stacked(problem: Problem, layers: Sequence[Sequence[Ware]]) -> Stack:
    """Return how layers of measured ware stand on one another; layers count from the lowest."""
    rules, thickness = problem.rules, problem.shelf.thickness_mm
    needs = [_need_mm(problem, layer) for layer in layers]
    carried, short = _posts(problem, needs[:-1])
    floors: list[float] = []
    rooms: list[float] = []
    top = rules.base_post_mm
    for place in range(len(needs)):
        floors.append(top + thickness)
        is_last = place == len(needs) - 1
        rooms.append(_under_lid_mm(problem, layers[place]) if is_last else carried[place])
        top = floors[-1] + rooms[-1]
    gap = problem.chamber.height_mm - (floors[-1] if floors else 0.0)
    return Stack(tuple(floors), tuple(rooms), top if floors else 0.0, gap, short)


def spare_ware_mm(problem: Problem, layers: Sequence[Sequence[Ware]]) -> float | None:
    """Return how high ware on one more shelf might be; None when no shelf would stand. [mm]"""
    if len(layers) >= problem.shelf.count:
        return None
    rules, height = problem.rules, problem.chamber.height_mm
    carried, _ = _posts(problem, [_need_mm(problem, layer) for layer in layers])
    top = rules.base_post_mm + sum(problem.shelf.thickness_mm + room for room in carried)
    floor = top + problem.shelf.thickness_mm
    if rules.top_shelf_to_lid_mm is not None and height - floor < rules.top_shelf_to_lid_mm:
        return None
    spare = height - floor - rules.lid_mm
    return spare if spare > CLOSE_MM else None


def layers_left(problem: Problem, layers: Sequence[Sequence[Ware]]) -> int:
    """Return how many more layers would stand with ware as high as the highest, 0 without any."""
    ware = [piece for layer in layers for piece in layer]
    if not ware:
        return 0
    highest = max(ware, key=lambda piece: (piece.height_mm or 0.0, piece.id))
    more = list(layers)
    while len(more) < problem.shelf.count:
        more.append([highest])
        if not stands(problem, stacked(problem, more)):
            more.pop()
            break
    return len(more) - len(layers)


def stands(problem: Problem, stack: Stack) -> bool:
    """Return whether a stack goes under the lid with what is kept free there."""
    keeps = problem.rules.top_shelf_to_lid_mm
    return stack.used_mm <= problem.chamber.height_mm + CLOSE_MM and (
        keeps is None or not stack.floors_mm or stack.top_gap_mm >= keeps - CLOSE_MM
    )


def _need_mm(problem: Problem, layer: Sequence[Ware]) -> float:
    return max(
        ((ware.height_mm or 0.0) + headroom_mm(ware, problem.rules) for ware in layer), default=0.0
    )


def _under_lid_mm(problem: Problem, layer: Sequence[Ware]) -> float:
    rules = problem.rules
    return max(
        ((ware.height_mm or 0.0) + max(rules.lid_mm, headroom_mm(ware, rules)) for ware in layer),
        default=rules.lid_mm,
    )


def _posts(problem: Problem, needs: Sequence[float]) -> tuple[list[float], tuple[int, ...]]:
    """Return the height of the posts of each layer, the tallest layer choosing first.

    Posts stand singly or two on one another.
    """
    if not problem.posts:
        return list(needs), ()
    left = Counter({post.height_mm: 0 for post in problem.posts})
    for post in problem.posts:
        left[post.height_mm] += post.count
    carried = list(needs)
    short: list[int] = []
    for place in sorted(range(len(needs)), key=lambda i: (-needs[i], i)):
        chosen = _lowest(left, needs[place])
        if chosen is None:
            short.append(place + 1)
            continue
        carried[place] = sum(chosen)
        left.subtract({h: POSTS_PER_SHELF * chosen.count(h) for h in set(chosen)})
    return carried, tuple(sorted(short))


def _lowest(left: Counter[float], need: float) -> tuple[float, ...] | None:
    """Return the lowest column of posts that is high enough and of which three are left."""
    columns = (
        column
        for many in range(1, MOST_POSTS_STACKED + 1)
        for column in combinations_with_replacement(sorted(left), many)
    )
    enough = (
        column
        for column in columns
        if sum(column) >= need - CLOSE_MM
        and all(left[h] >= POSTS_PER_SHELF * column.count(h) for h in column)
    )
    return min(enough, key=lambda column: (sum(column), len(column)), default=None)
