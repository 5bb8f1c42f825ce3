"""How a kiln ages, in words: firings and hot hours since a change, ohms, cones that go hotter.

Nothing here judges whether a kiln may be used; it says what its book says. That elements want
changing once their resistance is a tenth over new is a handbook habit [1]_, as are 100 to 200
firings a set [1]_; makers report 70 with long soaks, 150 to 160 mixed and over 400 of low fire
[2]_.

.. [1] https://plumestudio.nz/pages/how-long-will-elements-last
.. [2] http://community.ceramicartsdaily.org/topic/16050-my-thoughts-on-element-life/
.. [3] A sensor that drifts reads low, so that the kiln runs hot:
   https://hotkilns.com/check-thermocouple-calibration
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Final, Literal

from firings.domain.cautions import Caution
from firings.domain.cones import bend_fraction

Leaning = Literal["hot", "cool", "on", ""]

CHANGE_AT_OVER_NEW: Final = 0.10  # [1]_
NEAR_OVER_NEW: Final = 0.08
"""A little before a tenth, so that elements are at hand; common practice, no source."""

HABIT: Final = "Handbooks change elements at +10 %."
USUAL_FIRINGS: Final = (100, 200)  # [1]_
AGREEING: Final = 2
FLAT_HAND: Final = 7


@dataclass(frozen=True, slots=True)
class Fired:
    """One load of a kiln: when it ended, its hot hours, whether it counts as a firing."""

    ended_at: datetime
    hot_h: float
    counts: bool


@dataclass(frozen=True, slots=True)
class Age:
    """Firings and hot hours of elements or of a sensor; `since` is None for what was taken over."""

    firings: int
    hot_h: float
    since: datetime | None


@dataclass(frozen=True, slots=True)
class Ohms:
    """By how much the elements' resistance lay over that of new ones, 0.04 for 4 %."""

    measured_at: datetime
    over_new_fraction: float


@dataclass(frozen=True, slots=True)
class Shelf:
    """A cone as it was found on a shelf: guide, firing or guard, and the hand of a clock."""

    role: str
    clock_hand: int | None


def age(
    fired: Sequence[Fired],
    *,
    changed_at: datetime | None,
    firings_before: int,
    hot_hours_before: float,
) -> Age:
    """Return the age of a part that was changed at `changed_at`; None: never since it was taken
    over with so many firings and hot hours.

    A load that did not fire adds its hot hours and no firing.
    """
    mine = [one for one in fired if changed_at is None or one.ended_at >= changed_at]
    is_new = changed_at is not None
    return Age(
        firings=sum(one.counts for one in mine) + (0 if is_new else firings_before),
        hot_h=sum(one.hot_h for one in mine) + (0.0 if is_new else hot_hours_before),
        since=changed_at,
    )


def leaning(cones: Sequence[Shelf]) -> Leaning:
    """Return how a load went by its cones: hot, cool, or on; "" where none was read.

    Hot: a firing cone lies past its base, or a guard cone leans. Cool: a firing cone stands above
    4 o'clock, or a guide cone is not down. Common practice, no source.
    """
    read = [(one.role, one.clock_hand) for one in cones if one.clock_hand is not None]
    if not read:
        return ""
    if any(
        (role == "firing" and hand == FLAT_HAND) or (role == "guard" and bend_fraction(hand) > 0.0)
        for role, hand in read
    ):
        return "hot"
    short = {"firing": 4.0 / 6.0, "guide": 1.0}
    if any(bend_fraction(hand) < short.get(role, 0.0) for role, hand in read):
        return "cool"
    return "on"


def trend(leanings: Sequence[Leaning]) -> Leaning:
    """Return the trend of the last loads, the newest last: two must agree before it is one."""
    last = [one for one in leanings if one][-AGREEING:]
    if len(last) < AGREEING or len(set(last)) > 1:
        return ""
    return last[0]


def notes(
    *, elements: Age, ohms: Sequence[Ohms], leanings: Sequence[Leaning]
) -> tuple[Caution, ...]:
    """Return what a technician should know of a kiln's age, the gravest first."""
    said: list[Caution] = []
    last = ohms[-1].over_new_fraction if ohms else None
    if last is not None and last >= CHANGE_AT_OVER_NEW:
        said.append(Caution("ohms-high", f"Ohms {_percent(last)} over new. {HABIT}"))
    elif last is not None and last >= NEAR_OVER_NEW:
        said.append(Caution("ohms-near", f"Ohms {_percent(last)} over new. {HABIT}"))
    match trend(leanings):
        case "hot":
            detail = (
                "Getting hotter: the cones of the last two loads went too far. A sensor that "
                "drifts reads low; look at it, and go by cones."
            )
            said.append(Caution("getting-hotter", detail))
        case "cool":
            detail = "Getting cooler: the cones of the last two loads did not go down."
            said.append(Caution("getting-cooler", detail))
    if elements.firings >= USUAL_FIRINGS[0]:
        low, high = USUAL_FIRINGS
        detail = f"{elements.firings} firings on these elements; {low} to {high} are usual."
        said.append(Caution("elements-old", detail))
    return tuple(said)


def ohms_words(ohms: Sequence[Ohms]) -> str:
    """Return the course of the resistance: "+4 %, then +7 % over new"."""
    if not ohms:
        return ""
    course = ", then ".join(_percent(one.over_new_fraction) for one in ohms[-3:])
    return f"{course} over new"


def age_words(found: Age) -> str:
    """Return an age as one line."""
    return f"{firings_words(found)}, {found.hot_h:.0f} h hot"


def firings_words(found: Age) -> str:
    """Return how many firings there were."""
    return f"{found.firings} firing{'' if found.firings == 1 else 's'}"


def _percent(fraction: float) -> str:
    return f"{fraction * 100.0:+.0f} %"
