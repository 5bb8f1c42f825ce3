"""What a screen says of covering: no numbers, since the limits are rules of thumb."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from pieces.domain.covering.cracking import Level
from pieces.domain.drying import Cover

CALIBRATED: Final = (
    "How near is a rule of thumb made into a sum, not a measured strength; "
    "plates, boards and joints can warp without it."
)
THICK_MM: Final = 10.0
VERBS: Final = {
    Cover.OPEN: "open",
    Cover.LOOSE: "cover loosely",
    Cover.TUCKED: "wrap",
    Cover.SEALED: "seal",
}


def reason(level: Level, *, thickest_mm: float, cover: Cover, humidity_fraction: float) -> str:
    """Return why a piece is as near to cracking as it is.

    Parameters
    ----------
    level
        The word that is shown.
    thickest_mm
        The section reckoned. [mm]
    cover
        How it stands.
    humidity_fraction
        Of the room's air, 0 to 1.
    """
    if level is Level.LOW:
        return "Skin and inside dry together."
    causes = []
    if thickest_mm >= THICK_MM:
        causes.append(f"{thickest_mm:g} mm thick")
    if cover is Cover.OPEN:
        causes.append("open")
    if humidity_fraction < 0.5:
        causes.append("in dry air")
    said = ", ".join(causes) or "for this clay"
    return f"Its skin dries well before the inside: {said}."


def roles_said(roles: Sequence[str]) -> str:
    """Return `handle and knop`."""
    if len(roles) < 2:
        return "".join(roles)
    return f"{', '.join(roles[:-1])} and {roles[-1]}"


def meeting_words(changes: Sequence[tuple[str, Cover]], *, meets: bool) -> str:
    """Return what brings parts to meet: `(role, cover)` of what is to change now."""
    if not meets:
        return "The parts do not come to leather-hard together: feel them before you join."
    if not changes:
        return "Leather-hard together as they stand."
    told = [f"{VERBS[cover]} the {role}" for role, cover in changes]
    return f"{roles_said(told).capitalize()} now, so that they come to leather-hard together."


def ahead_words(ahead: str, last: str) -> str:
    """Return what to do where one part of a joined piece dries before another."""
    return f"The {ahead} dries before the {last}: cover the {ahead} loosely."
