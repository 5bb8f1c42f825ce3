"""How well something explains what somebody saw: likelihoods of one number that forgive a slip.

Each look is told in one or two `Factor`s: a number that every draw predicts (a mean moisture, a
moisture at the dampest point, a ratio of masses) and the log likelihood of that number. A weighing
is heavy-tailed with a share of outliers; a touch is a step on an ordered scale, blurred by the
hand, with a share of mis-taps. Both forgive gross errors only: a small plausible one moves the
answer, which is why odd weighings are asked about before they come here.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtr

Floats = NDArray[np.float64]

# From memory, tried in the simulated studios.
WEIGHING_SD: Final = 0.003  # of a mass by the mass before, kitchen scale and handling
OUTLIER_SHARE: Final = 0.05
OUTLIER_SPAN: Final = 0.25  # masses by the first one lie within 0.77 to 1.02
STUDENT_DEGREES: Final = 4.0
TOUCH_SD: Final = 0.008  # [kg/kg]
MIS_TAP_SHARE: Final = 0.04


class Feel(StrEnum):
    """What a hand says of clay in the air, from wet to dry."""

    SOFT = "soft"
    LEATHER_HARD = "leather_hard"
    TOO_STIFF = "too_stiff"
    BONE_DRY = "bone_dry"


@dataclass(frozen=True, slots=True)
class Limits:
    """Moistures of a body at which a hand changes its word, in falling order. [kg/kg]"""

    demould: float
    leather_opens: float
    leather_closes: float
    bisque: float


@dataclass(frozen=True, slots=True)
class Factor:
    """One number and what was seen of it.

    predicted : (draws,), the number by each draw
    who : whose touch moves it (the number less the touch is what counts), or nobody's
    steps : (wetter, drier) of a touch [kg/kg], infinite where there is none
    ratio : of masses, where the look is a weighing; then `steps` says nothing
    """

    predicted: Floats
    who: str | None = None
    steps: tuple[float, float] = (math.inf, -math.inf)
    ratio: float | None = None

    def log_likelihood(self, number: Floats) -> Floats:
        """Return the log likelihood of `number`, of any shape."""
        return _mass(self.ratio, number) if self.ratio is not None else _step(self.steps, number)


@dataclass(frozen=True, slots=True)
class Weighed:
    """A mass by the piece's first one, and what each draw makes of it.

    ratio : measured, above 0; predicted : (draws,). Raises `ValueError` for a ratio that no two
    weighings have.
    """

    ratio: float
    predicted: Floats

    def __post_init__(self) -> None:
        """Refuse a ratio that no two weighings have."""
        if not (math.isfinite(self.ratio) and self.ratio > 0.0):
            raise ValueError("ratio must be finite and above 0.")

    @property
    def factors(self) -> tuple[Factor, ...]:
        """Return what was seen, number by number."""
        return (Factor(self.predicted, ratio=self.ratio),)


@dataclass(frozen=True, slots=True)
class Touched:
    """A hand's word on clay in the air.

    who : whose hand; its touch says how much wetter than usual the clay is when it changes its
    word [kg/kg]
    mean, dampest : (draws,), moisture of each draw at that moment [kg/kg]
    """

    feel: Feel
    who: str
    limits: Limits
    mean: Floats
    dampest: Floats

    @property
    def factors(self) -> tuple[Factor, ...]:
        """Return what was seen, number by number: first the mean, then the dampest point."""
        opens, closes = self.limits.leather_opens, self.limits.leather_closes
        match self.feel:
            case Feel.SOFT:
                return (Factor(self.mean, self.who, (math.inf, opens)),)
            case Feel.LEATHER_HARD:
                return (Factor(self.mean, self.who, (opens, closes)),)
            case Feel.TOO_STIFF:
                return (
                    Factor(self.mean, self.who, (closes, -math.inf)),
                    Factor(self.dampest, self.who, (math.inf, self.limits.bisque)),
                )
            case Feel.BONE_DRY:
                return (Factor(self.dampest, self.who, (self.limits.bisque, -math.inf)),)


@dataclass(frozen=True, slots=True)
class StillInMould:
    """Somebody tried a mould and said *not yet*. Fields as of `Touched`."""

    who: str
    limits: Limits
    mean: Floats

    @property
    def factors(self) -> tuple[Factor, ...]:
        """Return what was seen: the clay held more water than lets it go."""
        return (Factor(self.mean, self.who, (math.inf, self.limits.demould)),)


Seen = Weighed | Touched | StillInMould


def _mass(ratio: float, predicted: Floats) -> Floats:
    degrees = STUDENT_DEGREES
    scaled = (ratio - predicted) / WEIGHING_SD
    constant = math.gamma((degrees + 1.0) / 2.0) / (
        math.gamma(degrees / 2.0) * math.sqrt(degrees * math.pi) * WEIGHING_SD
    )
    inlier = constant * (1.0 + scaled**2 / degrees) ** (-(degrees + 1.0) / 2.0)
    mixed: Floats = np.log((1.0 - OUTLIER_SHARE) * inlier + OUTLIER_SHARE / OUTLIER_SPAN)
    return mixed


def _step(steps: tuple[float, float], moisture: Floats) -> Floats:
    """Return the log chance that a hand finds clay between two steps; four words on the scale."""
    wetter, drier = steps
    share = ndtr((wetter - moisture) / TOUCH_SD) - ndtr((drier - moisture) / TOUCH_SD)
    forgiven: Floats = np.log((1.0 - MIS_TAP_SHARE) * share + MIS_TAP_SHARE / len(Feel))
    return forgiven
