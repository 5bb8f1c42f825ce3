"""The usual cautions, in the words shown where the act happens.

They remind; they do not judge. Local codes and the sheets of whoever sold the material come first.
"""

from typing import Final

DUST: Final = (
    "Dry clay dust holds silica: clean up wet, never sweep or sand dry, and wear a fitted dust "
    "mask when mixing dry."
)
COLOURANT: Final = (
    "Stains and oxides: gloves, no dust, no food near by. The sheet that came with the stain says "
    "what is in it; keep it with the batch."
)
GLAZE: Final = (
    "Glaze in powder is dust: weigh and mix it with a fitted mask and gloves, wipe up wet, no food "
    "near by. The sheets that came with the materials say what is in them."
)
DRY_ENOUGH: Final = (
    "A forecast is not a test. Weigh or touch before firing: damp ware bursts in the kiln."
)


def of_clay(*, own: str, is_coloured: bool) -> list[str]:
    """Return what to say beside a clay or a batch: its own caution first."""
    return [*([own] if own else []), *([COLOURANT] if is_coloured else []), DUST]


def of_glaze(*, own: str) -> list[str]:
    """Return what to say beside a glaze batch: its own caution first."""
    return [*([own] if own else []), GLAZE]


def joined(lists: list[list[str]]) -> list[str]:
    """Return the cautions of several clays, each once, in the order in which they come."""
    return list(dict.fromkeys(caution for cautions in lists for caution in cautions))
