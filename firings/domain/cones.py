"""Witness cones: their order, what they need, what a bent one says, and which may share a load.

A cone is a name, never a number: 06 is some 220 °C cooler than 6. The chart [1]_ holds for the rate
of the last 100 °C. Between its rates the temperature goes with the logarithm of the rate, within
1.3 °C of a kinetic fit at 30 and 100 °C/h for all cones but 7, 3 and 014 (worked out from the
chart itself).

.. [1] Orton, temperature equivalents of self-supporting large cones at 15, 60 and 150 °C/h. Read in
   stored copies: 60 and 150 °C/h up to cone 10 and 15 °C/h of 019 to 08 and of 5 to 10
   (http://potters.org/subject81597.htm and retailers' pages). 15 °C/h of 07 to 4 is from memory.
.. [2] The older chart with cone 6 at 1222 °C: http://www.mauipotter.com/resources_cone_chart.html
"""

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from studio.domain.refusals import Conflict, Unworkable

CHART: Final = "Orton self-supporting large cones, °C at 15, 60 and 150 °C/h over the last 100 °C"
OTHER_CHART: Final = (
    "An older chart, still copied widely, prints 1222 °C for cone 6 at 150 °C/h; on this one that "
    "is its value at 60 °C/h."
)  # [2]_
CHART_RATES: Final = (15.0, 60.0, 150.0)
CONES_C: Final[dict[str, tuple[float | None, float, float]]] = {
    "022": (None, 586, 590),
    "021": (None, 600, 617),
    "020": (None, 626, 638),
    "019": (656, 678, 695),
    "018": (686, 715, 734),
    "017": (705, 738, 763),
    "016": (742, 772, 796),
    "015": (750, 791, 818),
    "014": (757, 807, 838),
    "013": (807, 837, 861),
    "012": (843, 861, 882),
    "011": (857, 875, 894),
    "010": (891, 903, 915),
    "09": (907, 920, 930),
    "08": (922, 942, 956),
    "07": (962, 976, 987),
    "06": (981, 998, 1013),
    "05": (1021, 1031, 1044),
    "04": (1046, 1063, 1077),
    "03": (1071, 1086, 1104),
    "02": (1078, 1102, 1122),
    "01": (1093, 1119, 1138),
    "1": (1109, 1137, 1154),
    "2": (1112, 1142, 1164),
    "3": (1115, 1152, 1170),
    "4": (1141, 1162, 1183),
    "5": (1159, 1186, 1207),
    "6": (1185, 1222, 1243),
    "7": (1201, 1239, 1257),
    "8": (1211, 1249, 1271),
    "9": (1224, 1260, 1280),
    "10": (1251, 1285, 1305),
}
"""°C at each of `CHART_RATES`; [1]_."""

CONES: Final = (*CONES_C, "11", "12", "13", "14")
"""All cones, coldest first. Those above 10 have no temperature here: no copy of them was read."""

DOUBT_OF_READING_C: Final = 2.0
"""How far a value between the chart's rates may be off; common practice, no source. [°C]"""

HANDS: Final = (
    "upright",
    "just leaning",
    "at 2 o'clock",
    "half down, at 3 o'clock",
    "at 4 o'clock",
    "nearly down, at 5 o'clock",
    "down, tip level with its base",
    "flat, past its base",
)
_LARGEST_BISQUE: Final = "01"
_WRITTEN: Final = re.compile(r"(?:cone|c|△|\^)?\s*([0oO]?\d{1,2})", re.IGNORECASE)


class UnknownCone(Unworkable):
    code = "unknown-cone"
    title = "There is no such cone."


class MixedCones(Conflict):
    code = "mixed-cones"
    title = "One load fires to one cone."


@dataclass(frozen=True, slots=True)
class Needed:
    """What a cone needs to go down, as a value and a range, by which chart. [°C]

    `is_beyond_chart` says that the rate lies outside the chart and the nearest of its rates stands.
    """

    celsius: float
    low_c: float
    high_c: float
    chart: str
    is_beyond_chart: bool


@dataclass(frozen=True, slots=True)
class PeakVerdict:
    """How a peak compares with what the cone needs; `short_by_c` is 0 when it is enough."""

    needed: Needed
    short_by_c: float
    words: str


@dataclass(frozen=True, slots=True)
class WareCone:
    """The cone that a piece waits for, and the hottest one its body bears; None where unknown."""

    id: str
    name: str
    cone: str | None
    top_cone: str | None = None


@dataclass(frozen=True, slots=True)
class Doubt:
    """Something about one piece that a person should look at."""

    id: str
    code: str
    detail: str


def read_cone(text: str) -> str:
    """Return the cone that somebody typed, as its chart writes it; `O6` is read as 06.

    Raises `UnknownCone`, and says what may have been meant.
    """
    found = _WRITTEN.fullmatch(text.strip())
    cone = "" if found is None else found[1].replace("o", "0").replace("O", "0")
    if cone in CONES:
        return cone
    raise UnknownCone(
        f"{text.strip()[:20] or 'Nothing'} is no cone. They go from 022 up to 01, then 1 to 14.",
        pointer="#/cone",
    )


def rank(cone: str) -> int:
    """Return how hot a cone is among all, from 0. Raises `ValueError` for what is none."""
    return CONES.index(cone)


def needed(cone: str, rate_c_per_h: float) -> Needed:
    """Return the temperature at which a cone is down.

    Parameters
    ----------
    cone
        One of `CONES`.
    rate_c_per_h
        Rate of the last 100 °C, positive. [°C/h]

    Returns
    -------
    The value of the chart, or one between two of its rates. Outside its rates, the nearest one.

    Raises
    ------
    ValueError
        When the rate is not positive and finite.
    UnknownCone
        When the chart has no value for the cone.
    """
    if not (math.isfinite(rate_c_per_h) and rate_c_per_h > 0.0):
        raise ValueError("A rate is above 0 °C/h.")
    if cone not in CONES_C:
        raise UnknownCone(f"The chart has no temperature for cone {cone}.", pointer="#/cone")
    known = [
        (rate, celsius)
        for rate, celsius in zip(CHART_RATES, CONES_C[cone], strict=True)
        if celsius is not None
    ]
    (slowest, _), (fastest, _) = known[0], known[-1]
    rate = min(max(rate_c_per_h, slowest), fastest)
    at = next(place for place, (upper, _) in enumerate(known) if rate <= upper)
    if rate == known[at][0]:
        low = high = celsius = known[at][1]
    else:
        celsius, low, high = _between(known[at - 1], known[at], rate)
    return Needed(celsius, low, high, CHART, is_beyond_chart=rate != rate_c_per_h)


def judge_peak(cone: str, peak_c: float, rate_c_per_h: float) -> PeakVerdict:
    """Return whether a firing without a hold brings the cone down, by the chart. [°C], [°C/h]"""
    wanted = needed(cone, rate_c_per_h)
    short_by_c = max(0.0, wanted.celsius - peak_c)
    if short_by_c == 0.0:
        words = f"Cone {cone} goes down at {wanted.celsius:.0f} °C; {peak_c:.0f} °C is enough."
    else:
        words = (
            f"{short_by_c:.0f} °C short of cone {cone}, which needs {wanted.celsius:.0f} °C "
            f"at {rate_c_per_h:g} °C an hour."
        )
    return PeakVerdict(wanted, short_by_c, words)


def zero_warning(cone: str, kind: str) -> str | None:
    """Return what to say when a cone looks like its namesake on the other side of zero.

    `kind` is that of the load. Only a bisque above cone 01 is asked about: zero cones are ordinary
    in glaze firings of earthenware.
    """
    twin = f"0{cone}"
    if kind != "bisque" or rank(cone) <= rank(_LARGEST_BISQUE) or twin not in CONES_C:
        return None
    cool = needed(twin, 60.0).celsius
    if cone not in CONES_C:
        return f"Cone {twin} or cone {cone}? Cone {twin} is about {cool:.0f} °C."
    hot = needed(cone, 60.0).celsius
    return (
        f"Cone {twin} or cone {cone}? Cone {twin} is about {cool:.0f} °C, cone {cone} about "
        f"{hot:.0f} °C: {hot - cool:.0f} °C apart."
    )


def hand_words(hand: int | None) -> str:
    """Return how a cone stands, from the hand of a clock (12 or 0 upright, 6 down, 7 flat).

    A cone that leans to the left points at 8 to 11 and is read as in a mirror.
    """
    return "not read" if hand is None else HANDS[_hour(hand)]


def bend_fraction(hand: int) -> float:
    """Return how far a cone has gone down, from 0 upright to 1 with its tip level or past."""
    return min(_hour(hand), 6) / 6.0


def check_cones(load_cone: str, wares: Sequence[WareCone]) -> tuple[Doubt, ...]:
    """Return what to look at before these pieces share a load.

    Raises
    ------
    MixedCones
        When a piece waits for another cone, or its body does not bear the load's: one cone to a
        load, and a body never goes hotter than it bears (common practice, no source).
    """
    others = [ware for ware in wares if ware.cone is not None and ware.cone != load_cone]
    if others:
        said = ", ".join(f"{ware.name} waits for cone {ware.cone}" for ware in others)
        raise MixedCones(
            f"The load fires to cone {load_cone}; {said}.",
            wanted=load_cone,
            others={ware.id: ware.cone for ware in others},
        )
    weak = [
        ware
        for ware in wares
        if ware.top_cone is not None and rank(ware.top_cone) < rank(load_cone)
    ]
    if weak:
        said = ", ".join(f"the body of {ware.name} bears cone {ware.top_cone}" for ware in weak)
        raise MixedCones(
            f"The load fires to cone {load_cone}; {said} at most.",
            wanted=load_cone,
            others={ware.id: ware.top_cone for ware in weak},
        )
    return tuple(doubt for ware in wares for doubt in _doubts(ware))


def _doubts(ware: WareCone) -> list[Doubt]:
    doubts = []
    if ware.cone is None:
        doubts.append(Doubt(ware.id, "cone-unknown", f"Nobody said which cone {ware.name} wants."))
    if ware.top_cone is None:
        doubts.append(
            Doubt(ware.id, "body-unknown", f"How hot the body of {ware.name} may go is not known.")
        )
    return doubts


def _between(
    slower: tuple[float, float], faster: tuple[float, float], rate: float
) -> tuple[float, float, float]:
    """Return the value by logarithm of the rate, and the range over it and a straight line."""
    (slow, low_c), (fast, high_c) = slower, faster
    by_log = low_c + (high_c - low_c) * math.log(rate / slow) / math.log(fast / slow)
    by_line = low_c + (high_c - low_c) * (rate - slow) / (fast - slow)
    low, high = sorted((by_log, by_line))
    return by_log, low - DOUBT_OF_READING_C, high + DOUBT_OF_READING_C


def _hour(hand: int) -> int:
    if not 0 <= hand <= 12:
        raise ValueError("The hand of a clock points at 0 to 12.")
    return hand if hand < len(HANDS) else 12 - hand
