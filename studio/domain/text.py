"""Names and notes that people type, and text in tables that programs open.

Control characters and characters that turn the line's direction are refused, not dropped: nothing
that was typed is lost silently. What a table program would take for a sum is defused with an
apostrophe, and `fused` undoes exactly that.

References
----------
.. [1] OWASP, "CSV Injection": cells that begin with = + - @ tab or carriage return, full-width
       signs too. https://owasp.org/www-community/attacks/CSV_Injection (full-width signs from
       memory)
"""

import re
import unicodedata
from typing import Final

from studio.domain.refusals import Unworkable

LONGEST_NAME: Final = 120
LONGEST_NOTE: Final = 4_000
_TURNING: Final = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
_SUM_SIGNS: Final = "=+\\-\u2212@\t\r\n\uff1d\uff0b\uff0d\uff20"
_A_SUM: Final = re.compile(f"'*[{_SUM_SIGNS}]")
_DEFUSED_SUM: Final = re.compile(f"''*[{_SUM_SIGNS}]")


class ControlCharacter(Unworkable):
    code = "control-character"
    title = "There is a character in it that cannot be shown."


class TooLong(Unworkable):
    code = "too-long"
    title = "That is too long."


class NothingWritten(Unworkable):
    code = "nothing-written"
    title = "There is nothing in it."


def clean_name(text: str, *, most: int = LONGEST_NAME) -> str:
    """Return a name on one line: NFC, outer blanks off, inner runs of blanks made one.

    Raises
    ------
    NothingWritten
        When only blanks are left.
    ControlCharacter
        When it holds a line break, another control character or a lone surrogate.
    TooLong
        When more than `most` characters are left.
    """
    _check_characters(text, allowed="")
    name = unicodedata.normalize("NFC", " ".join(text.split()))
    if not any(_is_visible(char) for char in name):
        raise NothingWritten("Give it a name.")
    return _check_length(name, most)


def clean_note(text: str, *, most: int = LONGEST_NOTE) -> str:
    r"""Return a note: NFC, line ends made `\\n`, else as typed, blanks and all. May be empty.

    Raises
    ------
    ControlCharacter
        When it holds a control character other than tab and line end, or a lone surrogate.
    TooLong
        When it has more than `most` characters.
    """
    note = text.replace("\r\n", "\n").replace("\r", "\n")
    _check_characters(note, allowed="\t\n")
    return _check_length(unicodedata.normalize("NFC", note), most)


def defused(text: str) -> str:
    """Return a text cell that no table program takes for a sum [1]_. For columns of text only.

    A text that looks defused already gets one apostrophe more, so that `fused` is its exact
    inverse.
    """
    return f"'{text}" if _A_SUM.match(text) else text


def fused(cell: str) -> str:
    """Return the text whose `defused` form `cell` is; any other cell as it stands."""
    return cell[1:] if _DEFUSED_SUM.match(cell) else cell


def _check_characters(text: str, *, allowed: str) -> None:
    for place, char in enumerate(text, start=1):
        if char not in allowed and (unicodedata.category(char) in ("Cc", "Cs") or char in _TURNING):
            raise ControlCharacter(
                f"Character {place} (U+{ord(char):04X}) cannot be shown; take it out.",
                place=place,
                code_point=f"U+{ord(char):04X}",
            )


def _is_visible(char: str) -> bool:
    return not char.isspace() and unicodedata.category(char) != "Cf"


def _check_length(text: str, most: int) -> str:
    if len(text) > most:
        raise TooLong(
            f"At most {most} characters fit; this has {len(text) - most} more.",
            most=most,
            length=len(text),
        )
    return text
