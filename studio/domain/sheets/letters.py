"""Every character of a text in a face that has it, in the order in which it is read.

What no face has is printed as its code point. Characters that only steer (joiners, overrides of
direction) are left out, so that a name cannot turn the line round it. Hebrew and Arabic are put in
the order of the eye; Arabic letters are not joined.
"""

import re
import unicodedata
from collections.abc import Iterator
from functools import cache
from html import escape
from pathlib import Path
from typing import Final

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

FOLDER: Final = Path(__file__).parent / "face"
REGULAR: Final = "NatchPaper"
BOLD: Final = "NatchPaper-Bold"
MORE: Final = "NatchPaper-More"
FILES: Final = {
    REGULAR: "natch-paper-regular.ttf",
    BOLD: "natch-paper-bold.ttf",
    MORE: "dejavu-sans-more.ttf",
}
# A stretch of right-to-left letters, with the spaces and marks between them.
_RIGHT_TO_LEFT: Final = re.compile(r"[\u0590-\u06ff](?:[\u0590-\u06ff \u00a0'’-]*[\u0590-\u06ff])?")
_STEERING: Final = frozenset({"Cf", "Cc", "Cs", "Co"})


@cache
def faces() -> dict[str, frozenset[int]]:
    """Make the faces known to the printer, once; return which characters each has."""
    found = {}
    for name, file in FILES.items():
        font = TTFont(name, str(FOLDER / file))
        pdfmetrics.registerFont(font)
        found[name] = frozenset(font.face.charToGlyph)
    return found


def marked_up(text: str, *, face: str = REGULAR) -> str:
    """Return a text as the printer reads it: escaped, each stretch in a face that has it."""
    lines = (_line(line, face) for line in printable(text).split("\n"))
    return "<br/>".join(lines)


def plain(text: str) -> str:
    """Return a text for the title of a file: one line without steering characters."""
    return " ".join(printable(text).split())


def printable(text: str) -> str:
    """Return a text without what only steers; line ends stay, tabs become spaces."""
    text = unicodedata.normalize("NFC", text.replace("\r\n", "\n").replace("\t", " "))
    return "".join(c for c in text if c == "\n" or unicodedata.category(c) not in _STEERING)


def _line(text: str, face: str) -> str:
    seen = _RIGHT_TO_LEFT.sub(lambda stretch: stretch[0][::-1], text)
    return "".join(_tagged(stretch, chosen, face) for chosen, stretch in _stretches(seen, face))


def _tagged(text: str, chosen: str, face: str) -> str:
    said = escape(text, quote=True)
    return said if chosen == face else f'<font name="{chosen}">{said}</font>'


def _stretches(text: str, face: str) -> Iterator[tuple[str, str]]:
    """Yield stretches of the text with the face of each."""
    known, held, current = faces(), "", face
    for character in text:
        chosen, shown = face, character
        if ord(character) not in known[face]:
            has_more = ord(character) in known[MORE]
            chosen, shown = (MORE, character) if has_more else (face, f"[U+{ord(character):04X}]")
        if chosen != current and held:
            yield current, held
            held = ""
        current, held = chosen, held + shown
    if held:
        yield current, held
