"""Times and mould parts in words."""

from collections.abc import Sequence
from datetime import datetime, tzinfo


def clock(moment: datetime, *, zone: tzinfo, beside: datetime) -> str:
    """Return the time of day in `zone`, with the day where it is not that of `beside`."""
    local = moment.astimezone(zone)
    day = local.date()
    base = beside.astimezone(zone).date()
    if day == base:
        return f"{local:%H:%M}"
    if abs((day - base).days) < 7:
        return f"{local:%H:%M} on {local:%A}"
    return f"{local:%H:%M} on {day.day} {local:%B}"


def ordinal(number: int) -> str:
    """Return first, second … tenth, then 11th."""
    words = (
        "first", "second", "third", "fourth", "fifth",
        "sixth", "seventh", "eighth", "ninth", "tenth",
    )  # fmt: skip
    if 1 <= number <= len(words):
        return words[number - 1]
    is_teen = 10 <= number % 100 <= 20
    return f"{number}{'th' if is_teen else {1: 'st', 2: 'nd', 3: 'rd'}.get(number % 10, 'th')}"


def listed(words: Sequence[str]) -> str:
    """Return words as `a`, `a and b`, `a, b and c`."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"
