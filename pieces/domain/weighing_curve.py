"""What two or more weighings of a piece say: how much water is left, and whether it still goes.

The water left comes from the draws that agree with the weighings; whether the weight is steady
comes from the scale alone. Steady is not dry where the room is damp: clay at rest in damp air still
holds water (see *not in this room*).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

HOUR_S: Final = 3600.0
STEADY_FRACTION: Final = 0.002  # of the mass; common practice, no source
APART_S: Final = 12 * HOUR_S

Point = tuple[float, float, float, float]  # instant [s], p10, p50, p90 of the water left


@dataclass(frozen=True, slots=True)
class Change:
    """From the last weighing at least half a day before to the last one.

    lost_fraction : of the last mass, below 0 when it grew heavier; apart_h : hours between them
    """

    lost_fraction: float
    apart_h: float

    @property
    def is_steady(self) -> bool:
        """Whether the two agree as well as a kitchen scale can tell."""
        return abs(self.lost_fraction) <= STEADY_FRACTION


def change(weighings: Sequence[tuple[float, float]]) -> Change | None:
    """Return the last change, or None before there are two weighings half a day apart.

    Parameters
    ----------
    weighings
        (instant [s since 1970], mass [g]) since the piece was last wetted or joined, in any order.
    """
    ordered = sorted(weighings)
    if not ordered:
        return None
    last_s, last_g = ordered[-1]
    earlier = [(at, mass) for at, mass in ordered[:-1] if last_s - at >= APART_S]
    if not earlier:
        return None
    at, mass = earlier[-1]
    return Change((mass - last_g) / last_g, (last_s - at) / HOUR_S)


def left_at(points: Sequence[Point], at_s: float) -> tuple[float, float, float] | None:
    """Return p10, p50 and p90 of the water left at an instant, from the points of a curve.

    1 as pressed to 0 at rest with the room's air; None before the first point and without points.
    """
    if not points or at_s < points[0][0]:
        return None
    after = next((i for i, point in enumerate(points) if point[0] >= at_s), len(points) - 1)
    low, high = points[max(0, after - 1)], points[after]
    span = high[0] - low[0]
    part = min(1.0, max(0.0, (at_s - low[0]) / span)) if span > 0.0 else 0.0
    p10, p50, p90 = (low[i] + part * (high[i] - low[i]) for i in (1, 2, 3))
    return p10, p50, p90


def weighed_left(
    weighings: Sequence[tuple[float, float]],
    points: Sequence[Point],
    *,
    pressed_kg_per_kg: float,
    at_rest_kg_per_kg: float,
) -> list[float | None]:
    """Return the water left by the scale at each weighing, in order of time.

    The first weighing stands on the middle line; from there on every gram that went was water. So
    the squares of a piece that is weighed each hour lie beside the model's line where the two
    differ.

    Parameters
    ----------
    weighings
        (instant [s since 1970], mass [g]) since the piece was last wetted or joined.
    points
        Of the curve, as for `left_at`.
    pressed_kg_per_kg, at_rest_kg_per_kg
        Moistures that count as 1 and as 0. [kg/kg]
    """
    ordered = sorted(weighings)
    began = left_at(points, ordered[0][0]) if ordered else None
    if began is None:
        return [None] * len(ordered)
    span = pressed_kg_per_kg - at_rest_kg_per_kg
    dry_g = ordered[0][1] / (1.0 + at_rest_kg_per_kg + began[1] * span)
    return [(mass_g / dry_g - 1.0 - at_rest_kg_per_kg) / span for _, mass_g in ordered]


def words(left: tuple[float, float, float] | None, last: Change | None) -> str:
    """Return what a screen says under the weighings; "" with nothing to say."""
    said = []
    if left is not None:
        p10, p50, p90 = (round(100.0 * max(0.0, value)) for value in left)
        said.append(f"About {p50} % of the water is left, likely {p10} to {p90} %.")
    if last is not None and last.is_steady:
        share = f"{100.0 * abs(last.lost_fraction):.1f} %"
        said.append(f"Steady: two weighings agree to {share}. In damp air steady is not yet dry.")
    elif last is not None and last.lost_fraction > 0.0:
        said.append(f"It lost {100.0 * last.lost_fraction:.1f} % in {last.apart_h:.0f} h.")
    return " ".join(said)
