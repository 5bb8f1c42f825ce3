"""From what people wrote down to what the draws are asked: each look with every draw's answer."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from pieces.domain.drying import Problem, Track
from pieces.domain.drying.problem import Stage
from pieces.domain.drying.windows import limits_kg_per_kg
from pieces.domain.learning.likelihood import Feel, Limits, Seen, StillInMould, Touched, Weighed

Floats = NDArray[np.float64]


class LookKind(StrEnum):
    """What somebody did to know."""

    WEIGHED = "weighed"
    TOUCHED = "touched"
    NOT_YET = "not_yet"


@dataclass(frozen=True, slots=True)
class Look:
    """One look at one part, as it was written down.

    at_s : instant [s since 1970]; who : whose hand
    mass_g : on the scale; feel : in a word; each where the kind has one
    """

    at_s: float
    who: str
    kind: LookKind
    mass_g: float = 0.0
    feel: str = ""


def digest(looks: Sequence[Look]) -> str:
    """Return what tells these looks from any others; "" where there are none."""
    if not looks:
        return ""
    return hashlib.sha256(repr(sorted(looks, key=repr)).encode()).hexdigest()


def ordered(looks: Sequence[Look], since_s: float = -np.inf) -> list[Look]:
    """Return the looks from an instant on, in order of time."""
    return sorted((look for look in looks if look.at_s >= since_s), key=lambda look: look.at_s)


def counted(looks: Sequence[Look]) -> int:
    """Return how many looks say something: a weighing only from the second on."""
    weighed = sum(look.kind is LookKind.WEIGHED for look in looks)
    return len(looks) - min(weighed, 1)


def asked(looks: Sequence[Look], problem: Problem, tracks: Sequence[Track]) -> tuple[Seen, ...]:
    """Return what each draw says of every look.

    Parameters
    ----------
    looks
        Of one part, in any order; those before its pressing are left out.
    problem
        What the draws were integrated for.
    tracks
        One after another in time, together from the pressing to the last look.
    """
    by_stage = limits_kg_per_kg(problem)
    limits = Limits(
        by_stage[Stage.DEMOULD],
        by_stage[Stage.JOIN_OPENS],
        by_stage[Stage.JOIN_CLOSES],
        by_stage[Stage.BISQUE],
    )
    found: list[Seen] = []
    first: tuple[float, Floats] | None = None
    for look in ordered(looks, problem.pressed_at_s):
        mean, dampest = _at(tracks, look.at_s)
        if look.kind is LookKind.TOUCHED:
            found.append(Touched(Feel(look.feel), look.who, limits, mean, dampest))
        elif look.kind is LookKind.NOT_YET:
            found.append(StillInMould(look.who, limits, mean))
        elif first is None:
            first = look.mass_g, 1.0 + mean
        else:
            found.append(Weighed(look.mass_g / first[0], (1.0 + mean) / first[1]))
    return tuple(found)


def _at(tracks: Sequence[Track], at_s: float) -> tuple[Floats, Floats]:
    """Return mean and dampest moisture of each draw at an instant, by straight lines."""
    track = next((each for each in tracks if each.at_s[-1] >= at_s), tracks[-1])
    high = int(np.clip(np.searchsorted(track.at_s, at_s), 0, len(track.at_s) - 1))
    low = max(0, high - 1)
    span = track.at_s[high] - track.at_s[low]
    part = float(np.clip((at_s - track.at_s[low]) / span, 0.0, 1.0)) if span > 0.0 else 0.0
    rows = (track.mean_kg_per_kg, track.dampest_kg_per_kg)
    mean, dampest = (row[low] + part * (row[high] - row[low]) for row in rows)
    return mean, dampest
