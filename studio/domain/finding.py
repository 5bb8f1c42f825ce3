"""Finding by a few letters: accents, case and characters nobody sees make no difference.

`folded` is what two texts share that a person would call the same word; a search compares folded
with folded. The phone folds in the same way (`frontend/src/domain/folded.ts`).
"""

import unicodedata
from collections.abc import Callable, Iterable, Sequence
from typing import Final, TypeVar

Row = TypeVar("Row")

MOST_WORDS: Final = 8
# Letters with a stroke or a tail, which no decomposition takes apart.
_PLAIN: Final = str.maketrans(
    {
        "\u00e6": "ae",
        "\u0153": "oe",
        "\u00f8": "o",
        "\u0142": "l",
        "\u0111": "d",
        "\u00f0": "d",
        "\u00fe": "th",
        "\u0131": "i",
        "\u2019": "'",
    }
)
# Besides the format characters and the marks over letters: fillers that print as nothing.
_FILLERS: Final = frozenset("\u115f\u1160\u2800")
_DROPPED: Final = frozenset({"Mn", "Cf", "Cc", "Cs"})

EXACT, BEGINS, HOLDS = range(3)
"""How well a thing was named: by its whole name, by its beginning, by some of its words."""


def folded(text: str) -> str:
    """Return a text without case, accents and unseen characters, its blanks made one."""
    apart = unicodedata.normalize("NFKD", unicodedata.normalize("NFKD", text).casefold())
    seen = (
        " " if char.isspace() else char
        for char in apart.translate(_PLAIN)
        if char.isspace() or not (unicodedata.category(char) in _DROPPED or char in _FILLERS)
    )
    return " ".join("".join(seen).split())


def words_of(asked: str) -> list[str]:
    """Return the words that were asked for, folded; none where nothing was asked."""
    return folded(asked).split()[:MOST_WORDS]


def fit(words: Sequence[str], name: str, *others: str) -> int | None:
    """Return `EXACT`, `BEGINS` or `HOLDS`; None where a word is nowhere in the name or the rest."""
    texts = [folded(name), *map(folded, others)]
    if not words or not all(any(word in text for text in texts) for word in words):
        return None
    if texts[0] == " ".join(words):
        return EXACT
    return BEGINS if texts[0].startswith(words[0]) else HOLDS


def best(
    rows: Iterable[Row], words: Sequence[str], names: Callable[[Row], Sequence[str]], *, most: int
) -> list[tuple[int, Row]]:
    """Return how well they fit and the rows that fit best, else in the order given.

    The first of `names` is what a thing is called; the others may hold the words too.
    """
    fitting = [(fit(words, *names(row)), row) for row in rows]
    found = [(how, row) for how, row in fitting if how is not None]
    return sorted(found, key=lambda one: one[0])[:most]
