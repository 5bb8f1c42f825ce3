"""Small ordinals in words."""

from typing import Final

_WORDS: Final = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth")


def ordinal(number: int) -> str:
    """Return 1 as "first", 2 as "second"; from the ninth on "9th".

    Raises
    ------
    ValueError
        When the number is below 1.
    """
    if number < 1:
        raise ValueError("An ordinal is at least 1.")
    if number <= len(_WORDS):
        return _WORDS[number - 1]
    tail = "th" if 10 <= number % 100 <= 20 else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{tail}"
