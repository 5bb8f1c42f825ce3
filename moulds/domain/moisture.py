"""Free water in a plaster mould: from a weighing, from pressings, and in words.

Free water is given as a fraction of what the mould can hold: 0 bone dry, 1 full as just set.
Handbooks give it per dry mass instead; 5-15 % there is 0.12-0.35 here.

References
----------
.. [1] Times of the first, second and third fill of one slip mould: 30, 35, 40 min and 3, 3.5, 4
       min; of another 50, 60 min and 4, 4.5 min; dry after 5 fills.
       https://hot-clay.com/terracotta-casting-slip.html
"""

from dataclasses import dataclass
from typing import Final, Literal

from studio.domain.refusals import Unworkable

DrynessWord = Literal["unknown", "dry", "usable", "rest"]

# Free water per dry mass at 70 parts of water to 100 of plaster.
USUAL_CAPACITY_FRACTION: Final = 0.43
USUAL_DRY_BELOW: Final = 0.05
USUAL_USABLE_BELOW: Final = 0.15
PRESSES_BEFORE_REST: Final = 5  # [1]_; a setting of the studio
# A weighing may miss the dry mass by 2 %; common practice, no source.
LIGHTEST_FRACTION: Final = -0.05
WETTEST_FRACTION: Final = 1.3  # all pores full is 1.1 at 70 parts, and water stands on the skin
FILLS_IN_TABLE: Final = 5
SLOWING_PER_FILL: Final = 1 / 6  # 30 -> 35 -> 40 min [1]_
LEAST_RATIO: Final = 1.125  # 4 -> 4.5 min [1]_
MOST_RATIO: Final = 1.2  # 50 -> 60 min [1]_
# For press moulds, which the table is not about; common practice, no source.
RATIO_SPREAD: Final = 0.05


class LighterThanDry(Unworkable):
    code = "mould-lighter-than-dry"
    title = "The mould cannot weigh less than when dry."


class HeavierThanSoaked(Unworkable):
    code = "mould-heavier-than-soaked"
    title = "The mould cannot hold that much water."


class NotAWeight(Unworkable):
    code = "not-a-weight"
    title = "A weight must be above nought."


class WetterThanPressed(Unworkable):
    code = "clay-wetter-after-pressing"
    title = "Clay cannot leave a mould wetter than it went in."


@dataclass(frozen=True, slots=True)
class Release:
    """Hours until a part lets go. `least_h` and `most_h` are the spread of the published ratios."""

    least_h: float
    likely_h: float
    most_h: float


def free_water_fraction(
    now_g: float, dry_g: float, capacity_fraction: float = USUAL_CAPACITY_FRACTION
) -> float:
    """Return the free water as a fraction of capacity; may be a little above 1, never below 0.

    Parameters
    ----------
    now_g, dry_g
        Mass now, and when dry; both above 0. [g]
    capacity_fraction
        Free water that the mould can hold, per dry mass, above 0.

    Raises
    ------
    NotAWeight
        When a number is not above 0.
    LighterThanDry, HeavierThanSoaked
        When the weighing is impossible; it can be taken again.
    """
    if not (now_g > 0 and dry_g > 0 and capacity_fraction > 0):
        raise NotAWeight("Give the mould's weight now and when dry.", now_g=now_g, dry_g=dry_g)
    fraction = (now_g - dry_g) / (capacity_fraction * dry_g)
    if fraction < LIGHTEST_FRACTION:
        raise LighterThanDry(
            f"{now_g:g} g is less than its dry weight, {dry_g:g} g. Is this the whole mould?",
            now_g=now_g,
            dry_g=dry_g,
        )
    if fraction > WETTEST_FRACTION:
        most_g = dry_g * (1 + WETTEST_FRACTION * capacity_fraction)
        raise HeavierThanSoaked(
            f"Soaked through it weighs about {most_g:.0f} g, not {now_g:g} g. Is clay still in it?",
            now_g=now_g,
            most_g=round(most_g),
        )
    return max(fraction, 0.0)


def dryness_word(
    fraction: float | None,
    *,
    dry_below: float = USUAL_DRY_BELOW,
    usable_below: float = USUAL_USABLE_BELOW,
) -> DrynessWord:
    """Return the studio's word for a free water fraction; a limit belongs to the wetter word."""
    if fraction is None:
        return "unknown"
    if fraction < dry_below:
        return "dry"
    return "usable" if fraction < usable_below else "rest"


def dryness_word_by_presses(
    presses_since_dry: int | None, *, rest_after: int = PRESSES_BEFORE_REST
) -> DrynessWord:
    """Return the word for a mould nobody has weighed, from its pressings since it was last dry."""
    if presses_since_dry is None:
        return "unknown"
    if presses_since_dry == 0:
        return "dry"
    return "usable" if presses_since_dry < rest_after else "rest"


def dry_basis(wet_basis: float) -> float:
    """Return water per dry clay from water per wet clay, 0 to below 1."""
    if not 0 <= wet_basis < 1:
        raise ValueError("wet_basis must lie from 0 to below 1.")
    return wet_basis / (1 - wet_basis)


def water_given_off_g(clay_g: float, *, moisture_in: float, moisture_out: float) -> float:
    """Return the water that clay leaves to plaster and air between pressing and release. [g]

    Parameters
    ----------
    clay_g
        Clay as pressed, above 0. [g]
    moisture_in, moisture_out
        Water per dry clay when pressed and when released.

    Raises
    ------
    NotAWeight
        When `clay_g` is not above 0.
    WetterThanPressed
        When the clay would leave wetter than it came.
    """
    if not clay_g > 0:
        raise NotAWeight("Give the weight of the clay.", clay_g=clay_g)
    if not 0 <= moisture_out <= moisture_in:
        raise WetterThanPressed(
            f"Pressed at {moisture_in:.0%}, released at {moisture_out:.0%} of dry clay.",
            moisture_in=moisture_in,
            moisture_out=moisture_out,
        )
    return clay_g / (1 + moisture_in) * (moisture_in - moisture_out)


def fraction_after_pressing(
    fraction: float,
    water_g: float,
    dry_g: float,
    capacity_fraction: float = USUAL_CAPACITY_FRACTION,
) -> float:
    """Return the free water fraction after plaster has taken `water_g` more."""
    return fraction + water_g / (capacity_fraction * dry_g)


def presses_until(
    fraction: float,
    limit: float,
    water_g: float,
    dry_g: float,
    capacity_fraction: float = USUAL_CAPACITY_FRACTION,
) -> int:
    """Return how many whole pressings bring the mould no further than `limit`, if it never rests.

    `fraction` and `limit` are free water fractions; `water_g`, above 0, goes into plaster each
    time.
    """
    room = (limit - fraction) * capacity_fraction * dry_g
    return max(int(room / water_g + 1e-9), 0)


def release_of_press(first_h: float, press: int) -> Release | None:
    """Return when the nth press since dry lets go, if the first does after `first_h`.

    Scaled from a published table of slip castings [1]_, so only a ratio and a guess. None beyond
    the fifth: the table says to dry the mould first.

    Raises
    ------
    ValueError
        When `first_h` is not above 0 or `press` is below 1.
    """
    if not first_h > 0 or press < 1:
        raise ValueError("first_h must be above 0 and press at least 1.")
    if press > FILLS_IN_TABLE:
        return None
    more = press - 1
    if not more:
        return Release(first_h, first_h, first_h)
    return Release(
        least_h=first_h * LEAST_RATIO**more * (1 - RATIO_SPREAD),
        likely_h=first_h * (1 + SLOWING_PER_FILL * more),
        most_h=first_h * MOST_RATIO**more * (1 + RATIO_SPREAD),
    )
