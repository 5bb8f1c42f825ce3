"""What a screen says of covering: no numbers, since the limits are rules of thumb."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
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


@dataclass(frozen=True, slots=True)
class Driver:
    """The part whose skin is nearest to cracking, and how it stands.

    role : empty where the piece is one part
    thinnest_mm : where the part is uneven; None where its sections are alike
    """

    role: str
    thickest_mm: float
    cover: Cover
    humidity_fraction: float
    thinnest_mm: float | None = None


@dataclass(frozen=True, slots=True)
class Lead:
    """A joined part that dries ahead of another; `mm` is its section."""

    ahead: str
    mm: float
    last: str


def reason(level: Level, driver: Driver, lead: Lead | None) -> str:
    """Return why a piece is as near to cracking as it is: which part, and what makes it so.

    `level` is that of the skin of the `driver` by itself; `lead` is a part that pulls at its joint.
    """
    said = []
    if lead is not None:
        said.append(f"The {lead.ahead}, {lead.mm:g} mm, dries ahead of the {lead.last}.")
    if level is not Level.LOW:
        said.append(_skin(driver))
    return " ".join(said) or "Skin and inside dry together."


def _skin(driver: Driver) -> str:
    causes = []
    if driver.thinnest_mm is not None:
        causes.append(f"uneven, {driver.thinnest_mm:g} to {driver.thickest_mm:g} mm")
    elif driver.thickest_mm >= THICK_MM:
        causes.append(f"{driver.thickest_mm:g} mm thick")
    if driver.cover is Cover.OPEN:
        causes.append("open")
    if driver.humidity_fraction < 0.5:
        causes.append("in dry air")
    said = ", ".join(causes) or "for this clay"
    if driver.role:
        return f"The skin of the {driver.role} dries well before its inside: {said}."
    return f"Its skin dries well before the inside: {said}."


def step_words(cover: Cover, roles: Sequence[str] = ()) -> str:
    """Return `cover loosely`, or of some parts only `cover the handle loosely`."""
    if not roles:
        return VERBS[cover]
    verb, *how = VERBS[cover].split()
    return " ".join([verb, "the", roles_said(roles), *how])


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
    told = [step_words(cover, [role]) for role, cover in changes]
    return f"{roles_said(told).capitalize()} now, so that they come to leather-hard together."
