"""Whether a mould may take another pressing, in words, with the reason.

A forecast never calls a mould dry: words come from the scale, made worse by the pressings since, or
from counting pressings where nobody weighs.
"""

from collections.abc import Collection
from dataclasses import dataclass
from typing import Final, Literal

from moulds.domain.folds import SinceDry, Weights
from moulds.domain.moisture import (
    DrynessWord,
    dry_basis,
    dryness_word,
    dryness_word_by_presses,
    fraction_after_pressing,
    presses_until,
    water_given_off_g,
)
from moulds.domain.wear import Wear
from moulds.domain.words import listed

Basis = Literal["weighed", "reckoned", "presses", "nothing"]
AdviceCode = Literal["press", "weigh", "look", "rest", "mend", "find", "recast", "pour"]

# Clay goes in at 23 % and leaves at 17 % water of its wet mass: 65 g from 900 g. Common practice.
MOISTURE_IN: Final = dry_basis(0.23)
MOISTURE_OUT: Final = dry_basis(0.17)
FULL: Final = 1.0


@dataclass(frozen=True, slots=True)
class Limits:
    """The studio's limits, fractions of capacity, and the presses before a rest."""

    dry_below: float
    usable_below: float
    rest_after: int


@dataclass(frozen=True, slots=True)
class Dryness:
    """How damp a casting is, and how that is known.

    `free_water_fraction` is of capacity, None where nobody weighed. `presses_left` are those until
    it should rest, None where they cannot be reckoned.
    """

    word: DrynessWord
    free_water_fraction: float | None
    presses_since_dry: int
    basis: Basis
    presses_left: int | None = None


@dataclass(frozen=True, slots=True)
class Advice:
    """What to do with a mould next, and why."""

    code: AdviceCode
    reason: str


def dryness_of(
    weights: Weights,
    since: SinceDry,
    *,
    limits: Limits,
    capacity_fraction: float,
    clay_g: float | None,
) -> Dryness:
    """Return how damp a casting is.

    Parameters
    ----------
    weights, since
        What the scale said, and the pressings since it was dry.
    limits
        The studio's limits.
    capacity_fraction
        Free water that the mould can hold, per dry mass, above 0.
    clay_g
        Clay of one pressing, above 0, None where unknown. All of its water is counted as taken by
        the plaster, which is the most there can be. [g]
    """
    water_g = _water_g(clay_g)
    if weights.dry_g is None or weights.now_g is None:
        return _by_presses(since, limits)
    weighed = (weights.now_g - weights.dry_g) / (capacity_fraction * weights.dry_g)
    fraction = max(weighed, 0.0)
    basis: Basis = "weighed"
    if since.unweighed:
        basis = "reckoned" if water_g else "presses"
        taken_g = since.unweighed * (water_g or 0.0)
        fraction = min(
            fraction_after_pressing(fraction, taken_g, weights.dry_g, capacity_fraction),
            max(fraction, FULL),
        )
    word = dryness_word(fraction, dry_below=limits.dry_below, usable_below=limits.usable_below)
    if basis == "presses":
        word = _wetter(word, dryness_word_by_presses(since.count, rest_after=limits.rest_after))
    left = (
        presses_until(fraction, limits.usable_below, water_g, weights.dry_g, capacity_fraction)
        if water_g
        else None
    )
    return Dryness(word, fraction, since.count, basis, left)


def wants_rest(press: int, dryness: Dryness, *, rest_after: int) -> bool:
    """Return whether a press, the nth since dry, is the last that should go in."""
    return press >= rest_after or dryness.word == "rest"


def say_dryness(dryness: Dryness) -> str:
    """Return the sentence about dampness that a screen shows."""
    presses = say_presses(dryness.presses_since_dry)
    fraction = dryness.free_water_fraction
    if fraction is None:
        if dryness.basis == "nothing":
            return "never weighed"
        return f"not weighed, {presses}"
    about = "about " if dryness.basis != "weighed" else ""
    return f"{about}{100 * fraction:.1f} % free water, {presses}"


def say_presses(count: int) -> str:
    """Return the pressings since dry in words."""
    if count == 0:
        return "no press since dry"
    return f"{count} {'press' if count == 1 else 'presses'} since dry"


def advise(
    dryness: Dryness,
    wear: Wear,
    *,
    part_states: Collection[tuple[str, str]],
    usable_from: str | None = None,
) -> Advice:
    """Return what to do with a mould next.

    Parameters
    ----------
    dryness, wear
        Its dampness and its wear.
    part_states
        `(name, state)` of its parts.
    usable_from
        When it is likely to be dry enough, in words; None where that cannot be said.
    """
    for state, code, words in (
        ("missing", "find", "Missing"),
        ("out_of_use", "mend", "Out of use"),
    ):
        names = [name for name, its in part_states if its == state]
        if names:
            return Advice(code, f"{words}: {listed(names)}.")  # type: ignore[arg-type]
    if wear.word == "at its limit":
        return Advice("recast", f"{wear.pressings} pressings: at the limit the studio set.")
    if dryness.word == "rest":
        likely = f" Usable {usable_from}." if usable_from else ""
        return Advice("rest", f"Let it dry: {say_dryness(dryness)}.{likely}")
    if any(its == "chipped" for _, its in part_states):
        return Advice("look", "Chipped: look at the edge before each press, crumbs pop out later.")
    if wear.word == "look at its detail":
        return Advice("look", f"{wear.pressings} pressings: look at its detail.")
    if dryness.word == "unknown":
        return Advice("weigh", "Nobody weighed it: weigh it when dry, and now.")
    return Advice("press", f"{dryness.word.capitalize()}: {say_dryness(dryness)}.")


def _by_presses(since: SinceDry, limits: Limits) -> Dryness:
    if since.last_at is None:
        return Dryness("unknown", None, 0, "nothing")
    word = dryness_word_by_presses(since.count, rest_after=limits.rest_after)
    return Dryness(word, None, since.count, "presses", max(limits.rest_after - since.count, 0))


def _water_g(clay_g: float | None) -> float | None:
    if not clay_g:
        return None
    return water_given_off_g(clay_g, moisture_in=MOISTURE_IN, moisture_out=MOISTURE_OUT)


def _wetter(word: DrynessWord, other: DrynessWord) -> DrynessWord:
    order: tuple[DrynessWord, ...] = ("unknown", "dry", "usable", "rest")
    return max(word, other, key=order.index)
