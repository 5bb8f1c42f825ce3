"""What the fit of a load says in words: one sentence, and what a layer still takes."""

from collections.abc import Sequence
from typing import Final, NamedTuple

from firings.domain.arranging import arrange
from firings.domain.filling import Layer
from firings.domain.fit_problem import Problem, Reason, Sample, Verdict, headroom_mm
from firings.domain.placing import SCORES, set_down
from firings.domain.shapes import Spot

MOST_COUNTED: Final = 20


def sentence(
    verdict: Verdict, reasons: Sequence[Reason], layers: int, pieces: int, spare_mm: float | None
) -> str:
    """Return the answer in one sentence; never a bare percentage."""
    if not pieces:
        return "Nothing is on this load yet."
    more = len(reasons) - 1
    because = f"{reasons[0].detail}{f' And {more} more.' if more > 0 else ''}" if reasons else ""
    if verdict == "does_not_fit":
        return f"Does not fit: {because}"
    if verdict == "doubtful":
        return f"Doubtful: {because}"
    spare = "no room for another shelf"
    if spare_mm is not None:
        spare = f"one more shelf takes ware up to {spare_mm:.0f} mm high"
    return f"Fits: {_many(pieces, 'piece')} on {_many(layers, 'layer')}; {spare}."


def capacity_words(sure: int, possible: int, layers: int, *, asks_posts: bool) -> str:
    """Return how many stand on a layer, and on how many layers."""
    on = f"{sure} on a layer"
    if possible > sure:
        on = f"doubtful at {possible} on a layer, sure at {sure}"
    ask = " Where do the posts stand on the shelf?" if asks_posts and possible > sure else ""
    return f"{on[0].upper()}{on[1:]}; {_many(layers, 'layer')}.{ask}"


class Room(NamedTuple):
    """What more a layer takes: in words, and where the first of its samples was set down.

    Without spots the words count on the ware there being moved about.
    """

    words: str
    spots: tuple[Spot, ...] = ()


def room_left(
    problem: Problem, layer: Layer, posts: Sequence[Spot], height_mm: float, *, is_top: bool
) -> Room:
    """Return what more a layer takes, of each sample by itself: "room for 4 tiles"."""
    tried = [
        (*_more(problem, layer, posts, sample, height_mm, is_top=is_top), sample)
        for sample in problem.samples
    ]
    counted = [row for row in tried if row[0]]
    if not counted:
        return Room("")
    said = " or ".join(
        f"{'at least ' * (count == MOST_COUNTED)}{count} "
        f"{sample.singular if count == 1 else sample.plural}"
        for count, _, sample in counted
    )
    count, spots, _ = counted[0]
    return Room(f"room for {said}", tuple(spots) if len(spots) == count else ())


def _more(
    problem: Problem,
    layer: Layer,
    posts: Sequence[Spot],
    sample: Sample,
    height_mm: float,
    *,
    is_top: bool,
) -> tuple[int, list[Spot]]:
    """Return how many more, and where as many of them as find a spot beside the ware there."""
    rules, ware = problem.rules, sample.ware
    if not ware.is_measured:
        return 0, []
    over = headroom_mm(ware, rules)
    if (ware.height_mm or 0.0) + (max(over, rules.lid_mm) if is_top else over) > height_mm:
        return 0, []
    outline, gap, piece = problem.shelf.outline, rules.gap_mm, ware.footprint
    spots: list[Spot] = []
    for score in SCORES:
        more: list[Spot] = []
        while len(more) < MOST_COUNTED:
            spot = set_down(outline, [*layer.spots, *posts, *more], piece, gap, score)
            if spot is None:
                break
            more.append(spot)
        spots = max(spots, more, key=len)
    best = len(spots)
    prints = [spot.footprint for spot in layer.spots]
    if prints and set(prints) == {piece}:
        while best < MOST_COUNTED and arrange(
            outline, [piece] * (len(prints) + best + 1), gap, posts
        ):
            best += 1
    return best, spots


def _many(count: int, word: str) -> str:
    return f"{count} {word}{'s' * (count != 1)}"
