"""How many of one kind of ware a kiln takes: on a layer, on how many layers, in all."""

from collections.abc import Callable
from typing import Final

from firings.domain.arranging import arrange, arrange_with_posts
from firings.domain.fit_bounds import alone, most_on_shelf
from firings.domain.fit_problem import Capacity, Problem, Ware
from firings.domain.fit_words import capacity_words
from firings.domain.heights import spare_ware_mm, stacked, stands
from firings.domain.shapes import swollen_area_mm2
from studio.domain.refusals import Unworkable

MOST_TRIED: Final = 200


class TooBigForKiln(Unworkable):
    code = "too-big-for-kiln"
    title = "That does not go into this kiln, even alone."


def how_many(problem: Problem, piece: Ware) -> Capacity:
    """Return how many such pieces the kiln takes; the ware of the problem is passed over.

    Parameters
    ----------
    problem
        Kiln, furniture and spaces.
    piece
        A measured piece.

    Raises
    ------
    ValueError
        When the piece is not measured.
    TooBigForKiln
        When one alone does not go in.
    """
    if not piece.is_measured:
        raise ValueError("The piece has no size.")
    reasons = alone(problem, piece)
    if reasons:
        raise TooBigForKiln(reasons[0].detail, reason=reasons[0].code)
    layers = [[piece]]
    while len(layers) < problem.shelf.count and stands(
        problem, stacked(problem, [*layers, [piece]])
    ):
        layers.append([piece])
    bare, with_posts = _sure(problem, piece)
    is_stacked_on = len(layers) > 1
    sure = with_posts if is_stacked_on else bare
    stack = stacked(problem, layers)
    possible = max(bare, _possible(problem, piece))
    # With posts to be found room for, what the bare shelf surely takes is what may still go.
    doubtful_at = bare if with_posts < bare and is_stacked_on else possible
    return Capacity(
        per_layer_sure=sure,
        per_layer_possible=possible,
        top_layer_sure=bare,
        layers=len(layers),
        total_sure=sure * (len(layers) - 1) + bare,
        used_height_mm=stack.used_mm,
        spare_ware_mm=spare_ware_mm(problem, layers),
        top_gap_mm=stack.top_gap_mm,
        words=capacity_words(
            sure, doubtful_at, len(layers), asks_posts=problem.inside_post is not None
        ),
    )


def _sure(problem: Problem, piece: Ware) -> tuple[int, int]:
    """Return how many were found to stand on a bare shelf, and with posts among them."""
    outline, gap, post = problem.shelf.outline, problem.rules.gap_mm, problem.inside_post
    most = min(MOST_TRIED, _possible(problem, piece))
    bare = _greatest(most, lambda n: arrange(outline, [piece.footprint] * n, gap))
    if post is None:
        return bare, bare
    return bare, _greatest(
        bare,
        lambda n: arrange_with_posts(outline, [piece.footprint] * n, gap, post.footprint_mm),
    )


def _possible(problem: Problem, piece: Ware) -> int:
    outline, gap = problem.shelf.outline, problem.rules.gap_mm
    swollen = swollen_area_mm2(outline.is_round, outline.width_mm, outline.depth_mm, gap / 2.0)
    each = piece.footprint
    own = swollen_area_mm2(each.is_round, each.width_mm, each.depth_mm, gap / 2.0)
    by_area = int(swollen / own + 1e-9)
    return min(by_area, most_on_shelf(outline, each.inner_radius_mm, gap))


def _greatest(most: int, stands_with: Callable[[int], object]) -> int:
    """Return the greatest number that was found to stand, looked for from above."""
    return next((n for n in range(most, 0, -1) if stands_with(n) is not None), 0)
