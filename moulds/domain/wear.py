"""Wear of a mould, in words, and the pressings that are left in it.

The studio sets two counts for each mould set: look at its detail after `inspect_at` pressings, make
it anew at `retire_at`. No life of a press mould has been published that would stand here as a
default; one maker's slip moulds last about 100 casts
(https://hkpraiskon.com/factory-tour/mold-making), which is another use.
"""

import math
from dataclasses import dataclass
from typing import Final, Literal

from scipy.special import gamma, gammaincc

from studio.domain.refusals import Unworkable

WearWord = Literal["unknown", "fresh", "wearing", "look at its detail", "at its limit"]
FRESH_SHARE: Final = 0.5  # of `inspect_at`; common practice, no source
MOST_WORN: Final = 500.0  # (pressings / life) ** shape beyond which exp() would overflow


class NoSuchLife(Unworkable):
    code = "no-such-mould-life"
    title = "Those counts of pressings do not go together."


@dataclass(frozen=True, slots=True)
class Wear:
    """How worn a mould is.

    `pressings_left` is None where the studio has set no `retire_at`; `looks_again_at` is the count
    at which its detail is looked at next, None where no `inspect_at` is set or the limit comes
    first.
    """

    word: WearWord
    pressings: int
    pressings_left: int | None
    looks_again_at: int | None


def wear_of(
    pressings: int,
    *,
    inspect_at: int | None,
    retire_at: int | None,
    found_sound_at: int | None = None,
) -> Wear:
    """Return the wear of a mould part after `pressings`.

    Parameters
    ----------
    pressings
        Pressings so far, those before the record began included. Not negative.
    inspect_at, retire_at
        The studio's own counts, `inspect_at` not above `retire_at`; None where not set.
    found_sound_at
        Count at the last inspection that found the detail sound; the next is due as many pressings
        later as half of `inspect_at`.

    Raises
    ------
    ValueError
        When `pressings` is negative.
    NoSuchLife
        When `inspect_at` is above `retire_at`, or one of them is not above 0.
    """
    if pressings < 0:
        raise ValueError("pressings must not be negative.")
    _check_life(inspect_at, retire_at)
    look_at = _next_look(inspect_at, found_sound_at)
    return Wear(
        word=_word(pressings, inspect_at, look_at, retire_at),
        pressings=pressings,
        pressings_left=None if retire_at is None else max(retire_at - pressings, 0),
        looks_again_at=_before(look_at, retire_at),
    )


def survival_fraction(pressings: float, *, life: float, shape: float = 3.0) -> float:
    """Return the share of such moulds still in use after `pressings` (Weibull).

    `life` is the count by which 63 % have failed, above 0; `shape` above 1 means that wear, not
    chance, ends them.
    """
    return math.exp(-((pressings / life) ** shape))


def expected_left(pressings: float, *, life: float, shape: float = 3.0) -> float:
    """Return the mean number of pressings a mould still gives, having stood `pressings` (Weibull).

    Parameters
    ----------
    pressings
        Pressings so far, not negative.
    life
        Count by which 63 % of such moulds have failed, above 0; the studio's `retire_at` is a fair
        guess.
    shape
        Weibull shape, above 0. The default 3 is from memory.

    Raises
    ------
    ValueError
        When an argument lies outside its range.
    """
    if not (pressings >= 0 and life > 0 and shape > 0):
        raise ValueError("pressings >= 0, life > 0 and shape > 0 are needed.")
    worn = (pressings / life) ** shape
    if worn > MOST_WORN:  # the incomplete gamma function has run out of digits; its tail is known
        return float(life / shape * worn ** (1 / shape - 1))
    tail = gamma(1 / shape) * gammaincc(1 / shape, worn)
    return float(life / shape * tail * math.exp(worn))


def left_with_chance(chance: float, pressings: float, *, life: float, shape: float = 3.0) -> float:
    """Return how many pressings more a mould gives with at least this chance (Weibull).

    Parameters
    ----------
    chance
        Above 0, up to 1: 0.9 gives the count that nine moulds in ten still reach.
    pressings, life, shape
        As for `expected_left`.

    Raises
    ------
    ValueError
        When an argument lies outside its range.
    """
    if not (0 < chance <= 1 and pressings >= 0 and life > 0 and shape > 0):
        raise ValueError("0 < chance <= 1, pressings >= 0, life > 0 and shape > 0 are needed.")
    worn = (pressings / life) ** shape
    return float(life * (worn - math.log(chance)) ** (1 / shape) - pressings)


def _word(
    pressings: int, inspect_at: int | None, look_at: int | None, retire_at: int | None
) -> WearWord:
    if retire_at is not None and pressings >= retire_at:
        return "at its limit"
    if inspect_at is None or look_at is None:
        return "unknown"
    if pressings >= look_at:
        return "look at its detail"
    return "fresh" if pressings < FRESH_SHARE * inspect_at else "wearing"


def _next_look(inspect_at: int | None, found_sound_at: int | None) -> int | None:
    if inspect_at is None or found_sound_at is None:
        return inspect_at
    return max(inspect_at, found_sound_at + math.ceil(inspect_at / 2))


def _before(look_at: int | None, retire_at: int | None) -> int | None:
    return None if look_at is None or (retire_at is not None and look_at >= retire_at) else look_at


def _check_life(inspect_at: int | None, retire_at: int | None) -> None:
    if any(count is not None and count <= 0 for count in (inspect_at, retire_at)):
        raise NoSuchLife("Counts of pressings start at 1.")
    if inspect_at is not None and retire_at is not None and inspect_at > retire_at:
        raise NoSuchLife(
            f"Look at its detail at {inspect_at} comes after its limit, {retire_at}.",
            inspect_at=inspect_at,
            retire_at=retire_at,
        )
