"""Where a piece may stand so that it touches two things at once: crossings of lines and arcs.

With everything that stands and the rim swollen by half the gap, the middle of a piece that touches
another lies on a line or an arc about that one; where two of them cross it touches two.
"""

from collections.abc import Sequence

import numpy as np

from firings.domain.shapes import CLOSE_MM, Floats, Footprint, Outline, Spot, box, boxes


def crossings(
    outline: Outline, standing: Sequence[Spot], piece: Footprint, gap_mm: float
) -> tuple[Floats, Floats]:
    """Return where the middle of a piece may stand touching two things at once. `(n,)`, `(n,)`"""
    half_w, half_d, radius = box(piece, gap_mm)
    ox, oy, ow, od, orad = boxes(standing, gap_mm)
    wide, deep, around = ow + half_w, od + half_d, orad + radius
    lines_x, lines_y = (
        [ox - wide - around, ox + wide + around],
        [oy - deep - around, oy + deep + around],
    )
    rims: list[Floats] = []
    if outline.is_round:
        outer = (outline.width_mm + gap_mm) / 2.0 - radius
        rims = [_circle(sx * half_w, sy * half_d, outer) for sx in (-1, 1) for sy in (-1, 1)]
    else:
        room_x = (outline.width_mm + gap_mm) / 2.0 - half_w - radius
        room_y = (outline.depth_mm + gap_mm) / 2.0 - half_d - radius
        lines_x.append(np.array([-room_x, room_x]))
        lines_y.append(np.array([-room_y, room_y]))
    # Corners of two square pieces are rounded by the gap alone; lines do for them.
    is_arc = np.ones(len(ox), bool) if piece.is_round else (ow == 0.0) & (od == 0.0)
    arcs = [
        np.column_stack([ox + sx * wide, oy + sy * deep, around])[is_arc]
        for sx in (-1, 1)
        for sy in (-1, 1)
    ]
    circles = np.unique(np.concatenate([*rims, *arcs, np.empty((0, 3))]).round(9), axis=0)
    circles = circles[circles[:, 2] > 0.0]
    all_x = np.unique(np.concatenate([*lines_x, [0.0]]).round(9))
    all_y = np.unique(np.concatenate([*lines_y, [0.0]]).round(9))
    grid_x, grid_y = (side.ravel() for side in np.meshgrid(all_x, all_y))
    parts = [
        (grid_x, grid_y),
        _line_meets_circle(all_x, circles),
        _line_meets_circle(all_y, circles[:, [1, 0, 2]])[::-1],
        _circle_meets_circle(circles),
    ]
    return np.concatenate([x for x, _ in parts]), np.concatenate([y for _, y in parts])


def _line_meets_circle(lines: Floats, circles: Floats) -> tuple[Floats, Floats]:
    across = lines[:, None] - circles[:, 0]
    inside = circles[:, 2] ** 2 - across**2
    rise = np.sqrt(np.maximum(inside, 0.0))
    meets = inside >= 0.0
    at = np.broadcast_to(lines[:, None], across.shape)[meets]
    middle = np.broadcast_to(circles[:, 1], across.shape)[meets]
    return np.concatenate([at, at]), np.concatenate([middle - rise[meets], middle + rise[meets]])


def _circle_meets_circle(circles: Floats) -> tuple[Floats, Floats]:
    first, second = (circles[i] for i in np.triu_indices(len(circles), 1))
    step = second[:, :2] - first[:, :2]
    apart = np.hypot(step[:, 0], step[:, 1])
    meets = (
        (apart <= first[:, 2] + second[:, 2])
        & (apart >= np.abs(first[:, 2] - second[:, 2]))
        & (apart > CLOSE_MM)
    )
    first, second, step, apart = first[meets], second[meets], step[meets], apart[meets]
    along = (apart**2 + first[:, 2] ** 2 - second[:, 2] ** 2) / (2.0 * apart)
    rise = np.sqrt(np.maximum(first[:, 2] ** 2 - along**2, 0.0))
    way = step / apart[:, None]
    foot = first[:, :2] + along[:, None] * way
    aside = np.column_stack([-way[:, 1], way[:, 0]]) * rise[:, None]
    both = np.concatenate([foot + aside, foot - aside])
    return both[:, 0], both[:, 1]


def _circle(x: float, y: float, radius: float) -> Floats:
    return np.array([[x, y, radius]])
