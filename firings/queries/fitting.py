"""A load as the geometry sees it: the kiln, its furniture, the ware at its size in that firing."""

from collections import Counter
from collections.abc import Container, Iterable, Sequence
from dataclasses import replace
from typing import Final
from uuid import UUID

from firings.domain.fit import solve
from firings.domain.fit_bounds import excluded
from firings.domain.fit_problem import (
    Chamber,
    PostStock,
    Problem,
    Reason,
    Result,
    Rules,
    Sample,
    ShelfStock,
    Ware,
    only_measured,
)
from firings.models import Kiln, Load, Placement
from pieces.models import Piece
from studio.models import StudioSettings

from .refires import fired_again
from .sizes import Size, Sizes, measured_for

SAMPLES_MOST: Final = 3
SEPARATOR: Final = "#"
TRIED_TO_SHOW: Final = 160
TRIED_AT_THE_GATE: Final = 80
"""Ware tried piece by piece while everybody else's acts wait; a second or so of one processor."""


def problem_of(
    load: Load,
    placements: Iterable[Placement],
    *,
    sizes: Sizes,
    more: Sequence[Piece] = (),
    samples: Sequence[Piece] = (),
) -> Problem | None:
    """Return what is asked of the kiln; None when it has no shelves written down. Four queries.

    `more` is ware tried beside what is placed; of `samples` the commonest are tried in the room
    that is left.
    """
    kiln = load.kiln
    shelf = _shelf(kiln)
    if shelf is None:
        return None
    placements = list(placements)
    inside = [row.piece for row in placements if row.piece is not None]
    again = fired_again([*inside, *more], load)
    return Problem(
        chamber=Chamber(
            is_round=kiln.is_round,
            width_mm=_across(kiln.diameter_mm, kiln.width_mm, is_round=kiln.is_round),
            depth_mm=_across(kiln.diameter_mm, kiln.depth_mm, is_round=kiln.is_round),
            height_mm=kiln.height_mm,
        ),
        shelf=shelf,
        posts=tuple(
            PostStock(post.height_mm, post.count, post.footprint_mm, post.stands_inside)
            for post in kiln.posts.order_by("height_mm", "id")
        ),
        rules=_rules(load),
        ware=(
            *(ware for row in placements for ware in _wares(row, load, sizes, again)),
            *(ware_of(piece, load, sizes, again, id=str(piece.pk)) for piece in more),
        ),
        samples=_samples(samples, load, sizes),
    )


def answer_to(problem: Problem, *, most_tried: int = TRIED_TO_SHOW) -> Result:
    """Return whether the ware goes in.

    Setting many pieces down one by one takes long: of more than `most_tried` only what surely does
    not go in is found, and the rest is doubtful.
    """
    if len(problem.ware) <= most_tried:
        return solve(problem)
    ruled_out = excluded(problem, only_measured(problem.ware))
    many = f"{len(problem.ware)} pieces are too many to try where each would stand."
    reasons = ruled_out or [Reason("too_many_to_try", many)]
    return Result(
        verdict="does_not_fit" if ruled_out else "doubtful",
        reasons=tuple(reasons),
        levels=(),
        left_out=(),
        used_height_mm=0.0,
        spare_ware_mm=None,
        layers_left=0,
        top_gap_mm=0.0,
        sentence=reasons[0].detail,
    )


def _shelf(kiln: Kiln) -> ShelfStock | None:
    """Return the shelves the kiln has most of."""
    row = kiln.shelves.order_by("-count", "id").first()
    if row is None:
        return None
    is_round = row.shape == Kiln.Chamber.ROUND
    return ShelfStock(
        is_round=is_round,
        width_mm=_across(row.diameter_mm, row.width_mm, is_round=is_round),
        depth_mm=_across(row.diameter_mm, row.depth_mm, is_round=is_round),
        thickness_mm=row.thickness_mm,
        count=row.count,
    )


def _across(diameter_mm: float | None, side_mm: float | None, *, is_round: bool) -> float:
    return (diameter_mm if is_round else side_mm) or 0.0


def _rules(load: Load) -> Rules:
    settings = StudioSettings.objects.get(studio=load.studio_id)
    rules = Rules.of(
        load.kind,
        bisque_may_touch=settings.bisque_may_touch,
        glaze_gap_mm=settings.glaze_gap_mm,
    )
    return replace(rules, refire_above_mm=settings.refire_headroom_mm)


def _wares(row: Placement, load: Load, sizes: Sizes, again: Container[UUID]) -> list[Ware]:
    if row.piece is not None:
        ware = ware_of(row.piece, load, sizes, again, id=str(row.pk))
        return [replace(ware, level=row.level)]
    return [
        Ware(
            id=f"{row.pk}{SEPARATOR}{number}",
            name=row.what,
            width_mm=row.width_mm,
            depth_mm=row.depth_mm,
            height_mm=row.height_mm,
            is_round=row.is_round,
            level=row.level,
        )
        for number in range(row.count)
    ]


def ware_of(piece: Piece, load: Load, sizes: Sizes, again: Container[UUID], *, id: str) -> Ware:
    """Return a piece at the size it has in this firing; `again` are those fired before."""
    size = sizes.of(piece, measured_for(load.kind))
    return Ware(
        id=id,
        name=piece.shown_mark,
        width_mm=size.x_mm if size else None,
        depth_mm=size.y_mm if size else None,
        height_mm=size.height_mm if size else None,
        is_round=size.is_round if size else False,
        is_refire=piece.pk in again,
    )


def _samples(pieces: Sequence[Piece], load: Load, sizes: Sizes) -> tuple[Sample, ...]:
    """Return one of each of the commonest designs."""
    first: dict[str, tuple[Piece, Size]] = {}
    seen: Counter[str] = Counter()
    for piece in pieces:
        size = sizes.of(piece, measured_for(load.kind))
        if size is not None:
            first.setdefault(piece.design.noun, (piece, size))
            seen[piece.design.noun] += 1
    return tuple(
        Sample(noun, f"{noun}s", ware_of(first[noun][0], load, sizes, (), id=noun))
        for noun, _ in seen.most_common(SAMPLES_MOST)
    )
