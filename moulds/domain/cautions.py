"""Something worth saying beside an act that was accepted."""

from dataclasses import dataclass

from .words import ordinal


@dataclass(frozen=True, slots=True)
class Caution:
    """A warning: a code for screens and a sentence for people. It never holds an act back."""

    code: str
    detail: str


FIRST_PRESS = Caution(
    "first-press-may-stick", "First press of a new casting: it may stick. Open it with patience."
)
CHIPPED = Caution(
    "mould-chipped", "A part of it is chipped: look for plaster crumbs, they pop out after firing."
)
RETIRED = Caution(
    "casting-retired", "That casting was poured anew; this press counts on the old one."
)
OUT_OF_USE = Caution(
    "mould-out-of-use", "A part of it was out of use; the press counts all the same."
)
MISSING = Caution("mould-missing", "A part of it was called missing; say found if it is back.")
EDGE_OF_USE = Caution(
    "mould-wet", "It is wetter than the studio presses in: expect it to stick and to be slow."
)
KEEP_COOL = Caution(
    "keep-mould-cool",
    "Dry moulds below 45 °C, strapped together: hotter plaster crumbles, single parts warp.",
)


def wants_rest(press: int, rest_after: int) -> Caution:
    """Return the word about a press, the nth since dry, that is the last one or beyond it."""
    if press <= rest_after:
        return Caution("mould-wants-rest", "That is the last press before it should dry.")
    which = ordinal(press).capitalize()
    detail = f"{which} press since dry, and it should rest after {rest_after}: let it dry now."
    return Caution("mould-wants-rest", detail)


def wall_over_limit(role: str, thickest_mm: float, limit_mm: float) -> Caution:
    """Return the warning about a section above the studio's limit. [mm]"""
    return Caution(
        "wall-over-limit",
        f"{role}: {thickest_mm:g} mm is thicker than the studio fires without extra drying "
        f"({limit_mm:g} mm).",
    )
