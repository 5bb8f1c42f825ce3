"""Cut a typed quantity into numbers and unit words.

Nothing here converts. A text such as `5 3/8 in` becomes one `Term`: an exact number and a unit of
the closed list `UNIT_WORDS`. Only two compounds are known, `lb oz` and `ft in`, the larger unit
first.
"""

import re
import unicodedata
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from studio.domain.refusals import Unworkable

LONGEST_TEXT: Final = 64
"""Longest text that is read as a quantity. [characters]"""

UNIT_WORDS: Final[dict[str, str]] = {
    word: unit
    for unit, words in {
        "mm": "mm millimetre millimetres millimeter millimeters",
        "cm": "cm centimetre centimetres centimeter centimeters",
        "m": "m metre metres meter meters",
        "in": "in inch inches \" '' \u2032\u2032 \u201d \u201c",
        "ft": "ft foot feet ' \u2032 \u2019 \u2018",
        "g": "g gram grams gramme grammes",
        "kg": "kg kilo kilos kilogram kilograms",
        "lb": "lb lbs pound pounds",
        "oz": "oz ounce ounces",
        "ml": "ml millilitre millilitres milliliter milliliters",
        "l": "l litre litres liter liters",
        "imp pint": "imppint impt imppt impint impints imppints ukpint ukpints ukpt",
        "us pint": "uspint uspints uspt",
        "imp qt": "impqt impquart impquarts ukqt ukquart ukquarts",
        "us qt": "usqt usquart usquarts",
        "°C": "°c c degc",
        "°F": "°f f degf",
        "%": "% percent",
        "fraction": "fraction",
        "h": "h hr hrs hour hours",
        "min": "min mins minute minutes",
        "d": "d day days",
        "kPa": "kpa",
        "Pa": "pa",
    }.items()
    for word in words.split()
}
TWO_MEANINGS: Final[dict[str, tuple[str, str]]] = {
    "qt": ("imp qt", "us qt"),
    "quart": ("imp qt", "us qt"),
    "quarts": ("imp qt", "us qt"),
    "pt": ("imp pint", "us pint"),
    "pint": ("imp pint", "us pint"),
    "pints": ("imp pint", "us pint"),
}
COMPOUNDS: Final[dict[tuple[str, str], int]] = {("lb", "oz"): 16, ("ft", "in"): 12}
"""Units that may stand together, and how many of the second make one of the first (exact)."""

_SIGN: Final = re.compile(r"\s*([+\-\u2212]?)\s*")
_NUMBER: Final = re.compile(
    r"(?:(?P<whole>[0-9]+)\s+)?(?P<over>[0-9]+)\s*/\s*(?P<under>[0-9]+)(?![0-9.,])|(?P<decimal>[0-9.,]+)"
)
_WORD: Final = re.compile(r"\s*([^0-9+\-\u2212/,]*?)\s*(?=[0-9]|$)")
_DECIMAL: Final = re.compile(r"[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+")


class UnreadableQuantity(Unworkable):
    code = "unreadable-quantity"
    title = "That is not a number with a unit that Natch knows."


class AmbiguousNumber(Unworkable):
    code = "ambiguous-number"
    title = "The comma in that number can mean two things."


class AmbiguousUnit(Unworkable):
    code = "ambiguous-unit"
    title = "That unit has two sizes."


class UnknownUnit(Unworkable):
    code = "unknown-unit"
    title = "Natch does not know that unit."


@dataclass(frozen=True, slots=True)
class Term:
    """One number with its unit; `unit` is None where none was typed."""

    number: Fraction
    unit: str | None


def cut(text: str) -> list[Term]:
    """Return the one or two terms of `text`.

    A sign belongs to the whole text, so both terms of a compound carry it.

    Raises
    ------
    UnreadableQuantity
        When the text is empty, too long, or is not sign, number, unit.
    AmbiguousNumber
        When a comma stands before exactly three digits, or with another comma or a point.
    AmbiguousUnit, UnknownUnit
        When the unit word has two sizes, or is not in the closed list.
    """
    plain = _plain(text)
    opening = _SIGN.match(plain)
    assert opening is not None  # every part of the pattern may be empty
    sign, at = -1 if opening[1] in ("-", "\u2212") else 1, opening.end()
    terms: list[Term] = []
    while at < len(plain):
        found = _NUMBER.match(plain, at)
        word = _WORD.match(plain, found.end()) if found else None
        if found is None or word is None:
            raise UnreadableQuantity(f"{_short(text)} is not a number, then a unit.", typed=text)
        terms.append(Term(sign * _number(found, text), _unit(word[1], text)))
        at = word.end()
    if not terms:
        raise UnreadableQuantity(f"{_short(text)} has no number in it.", typed=text)
    _check_compound(terms, text)
    return terms


def _plain(text: str) -> str:
    if len(text) > LONGEST_TEXT:
        raise UnreadableQuantity(
            f"A quantity is at most {LONGEST_TEXT} characters long; this has {len(text)}."
        )
    # The look-alike º would fold into the letter o.
    return "".join(map(_folded, text.replace("\u00ba", "°"))).replace("\u2044", "/").strip()


def _folded(char: str) -> str:
    """Fold one character, but never glue 5½ into 51/2 nor 5² into 52."""
    folded = unicodedata.normalize("NFKC", char)
    kind = unicodedata.decomposition(char).partition(" ")[0]
    if kind == "<fraction>":
        return f" {folded} "
    return char if any("0" <= c <= "9" for c in folded) and kind != "<wide>" else folded


def _number(found: re.Match[str], text: str) -> Fraction:
    if found["decimal"] is not None:
        return _decimal(found["decimal"], text)
    over, under = int(found["over"]), int(found["under"])
    if under == 0:
        raise UnreadableQuantity(f"{_short(text)} divides by nought.", typed=text)
    if found["whole"] is None:
        return Fraction(over, under)
    if over >= under:
        raise UnreadableQuantity(
            f"{_short(text)}: the fraction after a whole number must be less than one.", typed=text
        )
    return int(found["whole"]) + Fraction(over, under)


def _decimal(digits: str, text: str) -> Fraction:
    commas, points = digits.count(","), digits.count(".")
    if commas and (commas + points > 1 or len(digits.partition(",")[2]) == 3):
        raise AmbiguousNumber(
            f"{_short(text)}: is the comma a decimal comma, or does it part the thousands? "
            "Write it with a point, or without a comma.",
            typed=text,
        )
    if not _DECIMAL.fullmatch(digits):
        raise UnreadableQuantity(f"{_short(text)} is not a number.", typed=text)
    return Fraction(digits.replace(",", ".").rstrip("."))


def _unit(word: str, text: str) -> str | None:
    squeezed = "".join(word.casefold().replace(".", "").split())
    if not squeezed:
        return None
    if squeezed in TWO_MEANINGS:
        first, second = TWO_MEANINGS[squeezed]
        raise AmbiguousUnit(
            f"{_short(text)}: write {first} or {second}; the two differ by a fifth.",
            typed=text,
            choices=[first, second],
        )
    if squeezed not in UNIT_WORDS:
        raise UnknownUnit(f"{_short(text)}: the unit {_short(word)} is not known.", typed=text)
    return UNIT_WORDS[squeezed]


def _check_compound(terms: list[Term], text: str) -> None:
    if len(terms) == 1:
        return
    pair = (terms[0].unit or "", terms[1].unit or "")
    if len(terms) > 2 or pair not in COMPOUNDS:
        raise UnreadableQuantity(
            f"{_short(text)}: only pounds with ounces, or feet with inches, may stand together, "
            "the larger first.",
            typed=text,
        )
    if terms[0].number.denominator != 1 or abs(terms[1].number) >= COMPOUNDS[pair]:
        raise UnreadableQuantity(
            f"{_short(text)}: give whole {pair[0]}, then fewer than {COMPOUNDS[pair]} {pair[1]}.",
            typed=text,
        )


def _short(text: str) -> str:
    return f"\u201c{text if len(text) <= 40 else text[:39] + '…'}\u201d"
