"""What an answer leaves out: money for who is shown no prices; all private things in the shed."""

import re
from collections.abc import Iterable, Mapping
from typing import Final

NAMES: Final = frozenset(
    {"email", "telephone", "address", "client_contact", "client_words", "currency"}
)
ENDS: Final = ("_email", "_telephone", "_address")
# Every order has one, so that its shape stays when it is left blank.
BLANKED: Final = frozenset({"client_name"})
LEFT_OUT: Final = "[left out here]"

# In whatever people wrote themselves: an e-mail address, a telephone number, an amount of money.
# A number that goes on in letters or dashes is an id, and one that begins neither with + nor with 0
# is a date or a count. No telephone number has more than 15 figures (ITU-T E.164).
_EMAIL: Final = r"[\w.+-]+@[\w-]+(?:\.[\w-]+)+"
_TELEPHONE: Final = r"(?<![\w+:.-])(?:\+\d|0\d)(?:[ ()-]{0,2}\d){6,13}(?![\w-])"
_MONEY: Final = r"[£€$]\s?\d+(?:[.,]\d+)*|\b\d+(?:[.,]\d+)*\s?(?:GBP|EUR|USD|pounds?|euros?)\b"
_PATTERNS: Final = (_EMAIL, _TELEPHONE, _MONEY)


def cut(answer: object, words: Iterable[str] = ()) -> object:
    """Return the answer without what a shared phone does not show, however deep it lies.

    What goes by its name goes whole; in all other text the `words` are left out, and whatever looks
    like a contact or an amount.
    """
    # The longest first, so that a whole name goes before a part of it.
    named = [rf"(?<!\w){re.escape(word)}(?!\w)" for word in sorted(words, key=len, reverse=True)]
    return _cut(answer, re.compile("|".join([*named, *_PATTERNS])))


def without_money(answer: object) -> object:
    """Return the answer without any sum of money in it, however deep it lies."""
    match answer:
        case Mapping():
            return {
                name: without_money(inner) for name, inner in answer.items() if not _is_money(name)
            }
        case list() | tuple():
            return [without_money(inner) for inner in answer]
        case _:
            return answer


def _cut(answer: object, private: re.Pattern[str]) -> object:
    match answer:
        case Mapping():
            return {
                name: "" if name in BLANKED else _cut(inner, private)
                for name, inner in answer.items()
                if not _is_hidden(name)
            }
        case list() | tuple():
            return [_cut(inner, private) for inner in answer]
        case str():
            return private.sub(LEFT_OUT, answer)
        case _:
            return answer


def _is_hidden(name: object) -> bool:
    return isinstance(name, str) and (name in NAMES or name.endswith(ENDS) or _is_money(name))


def _is_money(name: object) -> bool:
    # Money is whole minor units of a currency, and every name of it says so.
    return isinstance(name, str) and (name == "minor" or "_minor" in name)
