"""Whether a mass can be true of a piece: clay only loses water until it is fired or glazed.

Pressed clay of 20 to 26 % water on the wet basis keeps more than 0.7 of its mass until it is bone
dry, and about 0.65 after firing (common practice, no source; see `studio.domain.units` for the
ounce). Hand-pressed ware varies by a few per cent about the drawn mass, so the drawn mass judges
with a wider tolerance than a weighing does.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

LEAST_OF_PRESSED: Final = 0.4
USUAL_LEAST_OF_PRESSED: Final = 0.6
# 26 % of water on the wet basis leaves 0.74; 0.03 less for the scale (common practice, no source).
LEAST_OF_RAW: Final = 0.71
HEAVIER_THAN_WEIGHED: Final = 0.02
HEAVIER_THAN_DRAWN: Final = 0.10
ROSE: Final = 0.01
MOST_G: Final = 200_000.0
# What a number means when the wrong unit was read or typed: its factor into grams.
SLIPS: Final = (("kg", 1000.0), ("oz", 28.349523125), ("lb", 453.59237))


@dataclass(frozen=True, slots=True)
class Verdict:
    """Whether the mass can be true, what to say, and what may have been meant. [g]"""

    is_possible: bool
    code: str = ""
    detail: str = ""
    meant_g: float | None = None


def judge(
    mass_g: float,
    *,
    drawn_g: float | None,
    first_g: float | None,
    last_g: float | None,
    is_raw: bool,
    expected_g: float | None = None,
) -> Verdict:
    """Judge a mass against what the piece can weigh.

    Parameters
    ----------
    mass_g
        The mass on the scale, above 0. [g]
    drawn_g
        The clay of the parts made so far, by the design. [g]
    first_g, last_g
        The first and the last weighing since the newest part was pressed. [g]
    is_raw
        Whether the piece is neither fired nor glazed.
    expected_g
        What the last weighing has come down to by now if it dries as slowly as is likely; None
        where nothing was reckoned: then the last weighing itself. [g]

    Returns
    -------
    The verdict; a possible mass may still carry a word of warning (`mass-rose`). Raw clay below
    what it weighs bone dry is only warned of, as people turn and cut clay away.
    """
    if mass_g > MOST_G:
        return Verdict(False, "too-heavy", f"{mass_g:g} g is more than anybody lifts.")
    pressed_g, slack = (first_g, HEAVIER_THAN_WEIGHED) if first_g else (drawn_g, HEAVIER_THAN_DRAWN)
    if pressed_g and mass_g < LEAST_OF_PRESSED * pressed_g:
        return _too_light(mass_g, pressed_g)
    if pressed_g and is_raw and mass_g > (1.0 + slack) * pressed_g:
        return _too_heavy(mass_g, pressed_g, measured=bool(first_g))
    least_g = LEAST_OF_RAW * (pressed_g or 0.0) * (1.0 if first_g else 1.0 - HEAVIER_THAN_DRAWN)
    if is_raw and mass_g < least_g:
        return _lighter_than_dry(mass_g, least_g)
    if last_g and is_raw:
        return _beside_the_last(mass_g, last_g, min(last_g, expected_g or last_g))
    return Verdict(True)


def slowest_mass_g(
    last: tuple[float, float],
    at_s: float,
    left: Sequence[tuple[float, float]],
    *,
    pressed_kg_per_kg: float,
    at_rest_kg_per_kg: float,
) -> float:
    """Return what a piece comes down to from its last weighing along one line of water left. [g]

    Parameters
    ----------
    last
        The last weighing: instant [s since 1970], mass [g].
    at_s
        When it is weighed again. [s since 1970]
    left
        Instants and the water left, 1 as pressed to 0 at rest; not empty.
    pressed_kg_per_kg, at_rest_kg_per_kg
        Moistures that count as 1 and as 0. [kg/kg]
    """
    times, shares = np.array(left).T
    then, now = np.interp([last[0], at_s], times, shares)
    span = pressed_kg_per_kg - at_rest_kg_per_kg
    ratio = (1.0 + at_rest_kg_per_kg + now * span) / (1.0 + at_rest_kg_per_kg + then * span)
    return float(last[1] * ratio)


def _beside_the_last(mass_g: float, last_g: float, expected_g: float) -> Verdict:
    if mass_g > (1.0 + ROSE) * last_g:
        rise = 100.0 * (mass_g / last_g - 1.0)
        return Verdict(
            True,
            "mass-rose",
            f"{rise:.1f} % heavier than last time: weigh it again, unless it was wetted.",
        )
    if mass_g > (1.0 + ROSE) * expected_g:
        over = 100.0 * (mass_g / expected_g - 1.0)
        return Verdict(
            True,
            "mass-above-trend",
            f"{over:.1f} % heavier than it should be by now, even if it dries slowly: "
            "weigh it again, unless it was wetted.",
        )
    return Verdict(True)


def _too_light(mass_g: float, pressed_g: float) -> Verdict:
    meant_g = _meant(mass_g, pressed_g)
    detail = f"{mass_g:g} g is too light: the clay weighed about {pressed_g:.0f} g when pressed."
    if meant_g is not None:
        detail += f" Did you mean {meant_g:.0f} g?"
    return Verdict(False, "too-light", detail, meant_g)


def _lighter_than_dry(mass_g: float, least_g: float) -> Verdict:
    return Verdict(
        True,
        "lighter-than-dry",
        f"{mass_g:g} g is less than that clay weighs bone dry, about {least_g:.0f} g or more: "
        "weigh it again, unless clay was cut away.",
    )


def _too_heavy(mass_g: float, pressed_g: float, *, measured: bool) -> Verdict:
    source = "when first weighed" if measured else "by the design"
    detail = f"{mass_g:g} g is heavier than when pressed ({pressed_g:.0f} g {source})."
    meant_g = next(
        (mass_g / factor for _, factor in SLIPS if _is_usual(mass_g / factor, pressed_g)), None
    )
    if meant_g is not None:
        detail += f" Did you mean {meant_g:.0f} g?"
    elif measured:
        detail += " Where that was the slip, take it back first."
    return Verdict(False, "heavier-than-pressed", detail, meant_g)


def _meant(mass_g: float, pressed_g: float) -> float | None:
    return next(
        (mass_g * factor for _, factor in SLIPS if _is_usual(mass_g * factor, pressed_g)), None
    )


def _is_usual(mass_g: float, pressed_g: float) -> bool:
    return USUAL_LEAST_OF_PRESSED * pressed_g <= mass_g <= (1 + HEAVIER_THAN_DRAWN) * pressed_g
