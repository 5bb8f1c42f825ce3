"""Whether ware goes into a kiln: fits, doubtful or does not fit, with why and a picture.

*Fits* shows where everything stands. *Does not fit* rests on a bound that no arrangement beats.
Everything between is *doubtful*: no way was found, and none was excluded.
"""

from collections.abc import Sequence

from firings.domain.filling import Filling, Layer
from firings.domain.fit_bounds import excluded
from firings.domain.fit_problem import Item, Level, Problem, Reason, Result, Verdict, Ware
from firings.domain.fit_words import room_left, sentence
from firings.domain.heights import Stack, layers_left, spare_ware_mm, stacked, stands
from firings.domain.placing import can_lie_on


def solve(problem: Problem) -> Result:
    """Return whether the ware goes in, and where it would stand.

    Raises
    ------
    ValueError
        When a length is not above 0 mm: the caller has a bug.
    """
    _check_lengths(problem)
    measured = [piece for piece in problem.ware if piece.is_measured]
    ruled_out = excluded(problem, measured)
    filling, needs_posts_moved = _filled(problem, measured)
    layers = sorted(filling.layers, key=lambda layer: layer.level)
    stack = stacked(problem, [layer.ware for layer in layers])
    too_high = _too_high(problem, layers, stack)
    doubts = _doubts(problem, filling, stack, layers, needs_posts_moved=needs_posts_moved)
    verdict: Verdict = "fits"
    if ruled_out or too_high:
        verdict, reasons = "does_not_fit", [*ruled_out, *too_high]
    elif doubts:
        verdict, reasons = "doubtful", doubts
    else:
        reasons = []
    unknown = [piece.id for piece in problem.ware if not piece.is_measured]
    on_layers = [layer.ware for layer in layers]
    spare = spare_ware_mm(problem, on_layers)
    return Result(
        verdict=verdict,
        reasons=tuple(reasons),
        levels=_levels(problem, filling, layers, stack),
        left_out=(*(piece.id for piece in filling.left_out), *unknown),
        used_height_mm=stack.used_mm,
        spare_ware_mm=spare,
        layers_left=layers_left(problem, on_layers),
        top_gap_mm=stack.top_gap_mm,
        sentence=sentence(verdict, reasons, len(layers), len(problem.ware), spare),
    )


def _filled(problem: Problem, ware: Sequence[Ware]) -> tuple[Filling, bool]:
    """Return the best filling, and whether it stands only if the posts happen to have room."""
    careful = Filling(problem, has_posts=problem.inside_post is not None)
    careful.fill(ware)
    if not careful.left_out or problem.inside_post is None:
        return careful, False
    bold = Filling(problem, has_posts=False)
    bold.fill(ware)
    if len(bold.left_out) < len(careful.left_out):
        return bold, True
    return careful, False


def _doubts(
    problem: Problem,
    filling: Filling,
    stack: Stack,
    layers: Sequence[Layer],
    *,
    needs_posts_moved: bool,
) -> list[Reason]:
    found = [
        Reason("size_unknown", f"Nobody has measured {piece.name}.", piece.id, piece.level)
        for piece in problem.ware
        if not piece.is_measured
    ]
    for piece in filling.left_out:
        if can_lie_on(problem.shelf.outline, piece.footprint) is None:
            detail = f"{piece.name} goes on the shelf only at a slant."
            found.append(Reason("only_slanted", detail, piece.id, piece.level))
        else:
            detail = f"No place was found for {piece.name}; a hand may find one."
            found.append(Reason("no_place_found", detail, piece.id, piece.level))
    if needs_posts_moved:
        detail = "This stands only if the posts leave room. Where do they stand on the shelf?"
        found.append(Reason("posts_inside", detail))
    found += [
        Reason(
            "no_posts",
            f"No three posts of the right height are left for layer {layers[place - 1].level}.",
            level=layers[place - 1].level,
        )
        for place in stack.short_of_posts
    ]
    return found


def _too_high(problem: Problem, layers: Sequence[Layer], stack: Stack) -> list[Reason]:
    """Return what is wrong with the layers that people chose; the others were chosen to stand."""
    found = []
    if len(layers) > problem.shelf.count:
        detail = f"{len(layers)} layers need as many shelves; there are {problem.shelf.count}."
        found.append(Reason("shelves_short", detail))
    keeps = problem.rules.top_shelf_to_lid_mm
    if stack.used_mm > problem.chamber.height_mm:
        detail = (
            f"The layers take {stack.used_mm:.0f} mm with shelves and gaps; "
            f"the kiln has {problem.chamber.height_mm:.0f} mm."
        )
        found.append(Reason("too_high", detail))
    elif keeps is not None and not stands(problem, stack):
        detail = (
            f"From the top shelf to the lid are {stack.top_gap_mm:.0f} mm; "
            f"this studio keeps {keeps:.0f} mm."
        )
        found.append(Reason("top_gap", detail, level=layers[-1].level))
    return found


def _levels(
    problem: Problem, filling: Filling, layers: Sequence[Layer], stack: Stack
) -> tuple[Level, ...]:
    found = []
    for place, layer in enumerate(layers):
        carries = place < len(layers) - 1
        posts = filling.posts if carries else []
        room = problem.chamber.height_mm - problem.rules.lid_mm - stack.floors_mm[place]
        height = stack.rooms_mm[place] if carries else room + problem.rules.lid_mm
        items = zip(layer.ware, layer.spots, strict=True)
        left = room_left(problem, layer, posts, height, is_top=not carries)
        found.append(
            Level(
                level=layer.level,
                floor_mm=stack.floors_mm[place],
                height_mm=height,
                items=tuple(Item(piece.id, spot) for piece, spot in items),
                posts=tuple((post.x_mm, post.y_mm) for post in posts),
                room_left=left.words,
                room_spots=left.spots,
            )
        )
    return tuple(found)


def _check_lengths(problem: Problem) -> None:
    lengths = [problem.chamber.width_mm, problem.chamber.depth_mm, problem.chamber.height_mm]
    lengths += [problem.shelf.width_mm, problem.shelf.depth_mm, problem.shelf.thickness_mm]
    for piece in problem.ware:
        sides = (piece.width_mm, piece.depth_mm, piece.height_mm)
        lengths += [side for side in sides if side is not None]
    if not all(length > 0.0 for length in lengths):
        raise ValueError("Lengths are above 0 mm.")
