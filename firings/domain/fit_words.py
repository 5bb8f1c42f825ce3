"""What the fit of a load says in words: one sentence, and what a layer still takes."""

from collections.abc import Sequence
from typing import Final

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


def room_left(
    problem: Problem, layer: Layer, posts: Sequence[Spot], height_mm: float, *, is_top: bool
) -> str:
    """Return what more a layer takes, of each sample by itself: "room for 4 tiles"."""
    counted = [
        (count, sample)
        for sample in problem.samples
        if (count := _more(problem, layer, posts, sample, height_mm, is_top=is_top))
    ]
    if not counted:
        return ""
    said = " or ".join(
        f"{'at least ' * (count == MOST_COUNTED)}{count} "
        f"{sample.singular if count == 1 else sample.plural}"
        for count, sample in counted
    )
    return f"room for {said}"


def _more(
    problem: Problem,
    layer: Layer,
    posts: Sequence[Spot],
    sample: Sample,
    height_mm: float,
    *,
    is_top: bool,
) -> int:
    rules, ware = problem.rules, sample.ware
    if not ware.is_measured:
        return 0
    over = headroom_mm(ware, rules)
    if (ware.height_mm or 0.0) + (max(over, rules.lid_mm) if is_top else over) > height_mm:
        return 0
    outline, gap, piece = problem.shelf.outline, rules.gap_mm, ware.footprint
    best = 0
    for score in SCORES:
        standing = [*layer.spots, *posts]
        count = 0
        while count < MOST_COUNTED:
            spot = set_down(outline, standing, piece, gap, score)
            if spot is None:
                break
            standing.append(spot)
            count += 1
        best = max(best, count)
    prints = [spot.footprint for spot in layer.spots]
    if prints and set(prints) == {piece}:
        while best < MOST_COUNTED and arrange(
            outline, [piece] * (len(prints) + best + 1), gap, posts
        ):
            best += 1
    return best


def _many(count: int, word: str) -> str:
    return f"{count} {word}{'s' * (count != 1)}"
