"""What a programme means in time: when it should be how hot, and for how long it takes.

A leg without a rate runs as fast as the kiln goes. That is not known, so 300 °C/h stands for it
(common practice, no source); hours that hold such a leg are a guess.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

START_C: Final = 20.0
AS_FAST_AS_IT_GOES_C_PER_H: Final = 300.0


@dataclass(frozen=True, slots=True)
class Leg:
    """So many degrees an hour to a temperature, then a hold. [°C, °C/h, min]"""

    to_c: float
    rate_c_per_h: float | None
    hold_min: int = 0


def curve(legs: Sequence[Leg], start_c: float = START_C) -> list[tuple[float, float]]:
    """Return (hours since it was lit, °C) at every corner, beginning with the start."""
    hours, now_c = 0.0, start_c
    corners = [(hours, now_c)]
    for leg in legs:
        rate = leg.rate_c_per_h or AS_FAST_AS_IT_GOES_C_PER_H
        hours += abs(leg.to_c - now_c) / rate
        now_c = leg.to_c
        corners.append((hours, now_c))
        if leg.hold_min:
            hours += leg.hold_min / 60.0
            corners.append((hours, now_c))
    return corners


def lasts_h(legs: Sequence[Leg], start_c: float = START_C) -> float | None:
    """Return how long it takes, None when there is no leg. [h]"""
    return curve(legs, start_c)[-1][0] if legs else None


def planned_c(legs: Sequence[Leg], after_h: float, start_c: float = START_C) -> float | None:
    """Return the temperature the programme asks for so many hours in; None before and after it."""
    corners = curve(legs, start_c)
    if not legs or after_h < 0.0 or after_h > corners[-1][0]:
        return None
    for (first_h, first_c), (last_h, last_c) in pairwise(corners):
        if after_h <= last_h:
            share = (after_h - first_h) / (last_h - first_h) if last_h > first_h else 1.0
            return first_c + share * (last_c - first_c)
    return corners[-1][1]
