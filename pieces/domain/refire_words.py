"""What was wrong with fired ware, and what was mended before its next firing, in words."""

from collections.abc import Sequence
from typing import Final

FAULTS: Final = {
    "crawled": "crawled",
    "blistered": "blistered",
    "pinholed": "pinholed",
    "crazed": "crazed",
    "underfired": "underfired",
    "thin": "glazed too thin",
    "ran": "ran",
    "colour": "colour not as wanted",
    "other": "another fault",
}
MENDED: Final = {
    "ground": "ground back",
    "washed": "glaze washed off",
    "filled": "holes filled",
    "glazed_again": "glazed again",
    "glazed_thicker": "glazed again thickly",
    "nothing": "nothing mended",
}


def ticket(kind: str, cone: str, fault: str, mended: Sequence[str]) -> str:
    """Return what a piece waits for, and why it is fired again where that was said."""
    said = f"waits for a {kind} firing, cone {cone}"
    why = wrong_and_mended(fault, mended)
    return f"{said}: {why}" if why else said


def wrong_and_mended(fault: str, mended: Sequence[str]) -> str:
    """Return the fault and what was mended, "" where neither was said."""
    done = [MENDED.get(code, code) for code in mended]
    return "; ".join(part for part in (FAULTS.get(fault, fault), ", ".join(done)) if part)
