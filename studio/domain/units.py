"""Read what a person typed into the number that a column holds.

`tokens` cuts the text; pint 0.25 converts one number in one unit and never sees a whole string,
because it reads `5 3/8 in` as 1.875 in and `6,5 mm` as 65 mm. The inch (25.4 mm) and the pound
(453.59237 g) are exact (international yard and pound agreement, 1959); the US liquid quart is 57.75
cubic inches and the imperial quart 1.1365225 l (NIST Handbook 44, appendix C).
"""

import math
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any, Final

from studio.domain.refusals import Unworkable
from studio.domain.tokens import Term, cut

LENGTH: Final = "a length"
MASS: Final = "a mass"
VOLUME: Final = "a volume"
TEMPERATURE: Final = "a temperature"
SHARE: Final = "a share"
TIME: Final = "a length of time"
PRESSURE: Final = "a pressure"


@dataclass(frozen=True, slots=True)
class Unit:
    """How people write a unit, how pint calls it, what it measures, which numbers are believed."""

    shown: str
    pint_name: str
    measures: str
    least: float
    most: float


# The limits are common sense, no source: they stop a slip such as 1e9, not an unusual pot.
TARGETS: Final[dict[str, Unit]] = {
    "mm": Unit("mm", "millimeter", LENGTH, -100_000, 100_000),
    "cm": Unit("cm", "centimeter", LENGTH, -10_000, 10_000),
    "m": Unit("m", "meter", LENGTH, -100, 100),
    "in": Unit("in", "inch", LENGTH, -4_000, 4_000),
    "ft": Unit("ft", "foot", LENGTH, -330, 330),
    "g": Unit("g", "gram", MASS, 0, 10_000_000),
    "kg": Unit("kg", "kilogram", MASS, 0, 10_000),
    "lb": Unit("lb", "pound", MASS, 0, 22_000),
    "oz": Unit("oz", "ounce", MASS, 0, 352_000),
    "ml": Unit("ml", "milliliter", VOLUME, 0, 10_000_000),
    "l": Unit("l", "liter", VOLUME, 0, 10_000),
    "imp_pint": Unit("imp pint", "imperial_pint", VOLUME, 0, 17_000),
    "us_pint": Unit("us pint", "pint", VOLUME, 0, 21_000),
    "imp_qt": Unit("imp qt", "imperial_quart", VOLUME, 0, 8_500),
    "us_qt": Unit("us qt", "quart", VOLUME, 0, 10_500),
    "c": Unit("°C", "degree_Celsius", TEMPERATURE, -273.15, 2_000),
    "f": Unit("°F", "degree_Fahrenheit", TEMPERATURE, -459.67, 3_632),
    "fraction": Unit("fraction", "dimensionless", SHARE, -1_000, 1_000),
    "percent": Unit("%", "percent", SHARE, -100_000, 100_000),
    "h": Unit("h", "hour", TIME, 0, 876_600),
    "min": Unit("min", "minute", TIME, 0, 52_596_000),
    "d": Unit("d", "day", TIME, 0, 36_525),
    "kpa": Unit("kPa", "kilopascal", PRESSURE, 0, 10_000),
    "pa": Unit("Pa", "pascal", PRESSURE, 0, 10_000_000),
}
"""Units by the suffix of columns and JSON names: `wall_mm`, `air_c`, `humidity_fraction`."""

_TARGET_OF: Final = {unit.shown: name for name, unit in TARGETS.items()}


class NotANumber(Unworkable):
    code = "not-a-number"
    title = "That is not a number."


class WrongDimension(Unworkable):
    code = "wrong-dimension"
    title = "That measures something else."


class OutOfRange(Unworkable):
    code = "out-of-range"
    title = "That number cannot be right."


@dataclass(frozen=True, slots=True)
class Typed:
    """A number in the unit asked for, and the text where it was more than a plain number.

    `as_typed` is None for a number, and for the text of a bare number with a decimal point.
    """

    value: float
    as_typed: str | None


def read(
    given: object, into: str = "mm", *, least: float | None = None, most: float | None = None
) -> Typed:
    """Return `given` as a number in the unit named `into`.

    Parameters
    ----------
    given
        A number, taken to be in `into`, or a text with or without a unit: `3/8 in`, `6,5 mm`.
    into
        A key of `TARGETS`.
    least, most
        Narrower limits of this field, both allowed values. [in `into`]

    Raises
    ------
    ValueError
        When `into` is not a target: the caller has a bug.
    UnreadableQuantity, AmbiguousNumber, AmbiguousUnit, UnknownUnit, NotANumber
        When the text cannot be read.
    WrongDimension
        When the unit measures something else than the field does.
    OutOfRange
        When the number is beyond the limits.
    """
    if into not in TARGETS:
        raise ValueError(f"{into!r} is not a unit of a column.")
    if isinstance(given, str):
        value, is_plain = _from_text(given, into)
        typed = None if is_plain else given.strip()
    else:
        value, typed = _from_number(given), None
    _check_range(value, into, least, most)
    return Typed(value, typed)


def convert(value: float, unit: str, into: str) -> float:
    """Return `value`, in `unit`, as a number in `into`: keys of `TARGETS` that measure the same."""
    if unit == into:
        return value
    here = _registry().Quantity(value, _pint_unit(TARGETS[unit].pint_name))
    return float(here.to(_pint_unit(TARGETS[into].pint_name)).magnitude)


def _from_text(text: str, into: str) -> tuple[float, bool]:
    terms = cut(text)
    units = [into if term.unit is None else _TARGET_OF[term.unit] for term in terms]
    wanted, measured = TARGETS[into].measures, TARGETS[units[0]].measures
    if measured != wanted:
        raise WrongDimension(
            f"{text.strip()} is {measured}; here {wanted} is wanted, in {TARGETS[into].shown}.",
            typed=text,
            given=measured,
            wanted=wanted,
        )
    value = math.fsum(
        convert(_as_float(term.number), unit, into) for term, unit in zip(terms, units, strict=True)
    )
    return value, _is_plain(terms, text)


def _is_plain(terms: list[Term], text: str) -> bool:
    bare = text.strip().lstrip("+-\u2212")
    return len(terms) == 1 and terms[0].unit is None and not set(bare) - set("0123456789.")


def _as_float(number: Fraction) -> float:
    try:
        return float(number)
    except OverflowError:
        raise OutOfRange("That number is too large to be kept.") from None


def _from_number(given: object) -> float:
    if isinstance(given, bool) or not isinstance(given, int | float):
        raise NotANumber("Give a number, or a text with a number and its unit.")
    try:
        value = float(given)
    except OverflowError:
        raise OutOfRange("That number is too large to be kept.") from None
    if not math.isfinite(value):
        raise NotANumber("Give a finite number.")
    return value


def _check_range(value: float, into: str, least: float | None, most: float | None) -> None:
    unit = TARGETS[into]
    low = unit.least if least is None else least
    high = unit.most if most is None else most
    if not low <= value <= high:
        raise OutOfRange(
            f"{value:g} {unit.shown} is outside {low:g} to {high:g} {unit.shown}.",
            value=value,
            least=low,
            most=high,
            unit=unit.shown,
        )


@cache
def _registry() -> Any:
    # The registry takes half a second: only a process that meets a foreign unit pays for it.
    import pint

    return pint.UnitRegistry()


@cache
def _pint_unit(name: str) -> Any:
    return _registry().Unit(name)
