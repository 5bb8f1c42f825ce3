"""Sections of a piece, what its faces meet, and the schedule of those meetings.

A section is the part of a piece that is last to dry, reduced to one dimension: a flat wall (two
faces), a rod or a lump (one outer surface). Rims, corners and feet dry sooner than it says.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import pairwise
from typing import Final

THINNEST_M: Final = 0.001
THICKEST_M: Final = 0.080
FEW_NODES: Final = 9
MANY_NODES: Final = 17
FEW_NODES_UP_TO_M: Final = 0.012

# Calibrated to rules of thumb: open, hours; loosely covered, days; tight, weeks.
BOARD_FACTOR: Final = 0.1  # a face lying on a ware board
HOLLOW_FACTOR: Final = 0.4  # the inside of a hollow form
PLASTER_CAPACITY_KG_M3: Final = 435.0  # 1060 kg/m³ x 41 %, USG data sheet IG1365
PLASTER_DIFFUSIVITY_M2_S: Final = 2.8e-7  # from uptake in the first minute, USG manual
CONTACT_KG_M2_S: Final = 1.5e-4  # per unit of saturation; calibrated: release after some hours


class Shape(StrEnum):
    """The shape of a section."""

    FLAT = "flat"
    ROD = "rod"
    LUMP = "lump"


class Cover(StrEnum):
    """How a piece is covered."""

    OPEN = "open"
    LOOSE = "loose"
    TUCKED = "tucked"
    SEALED = "sealed"

    @property
    def factor(self) -> float:
        """Return the share of open-air evaporation that is left under this cover, 0 to 1."""
        return _COVER_FACTORS[self]


_COVER_FACTORS: Final = {
    Cover.OPEN: 1.0,
    Cover.LOOSE: 0.3,
    Cover.TUCKED: 0.05,
    Cover.SEALED: 0.02,
}


@dataclass(frozen=True, slots=True)
class Section:
    """The thickest section of a piece or part, as pressed.

    Parameters
    ----------
    shape
        Flat wall, rod or lump.
    thickest_m
        Thickness of a wall, diameter of a rod or lump, 0.001 to 0.080. [m]
    inside_factor
        Openness of a wall's inner face out of the mould: 0.4 in a hollow form, 0.1 on a board,
        1 standing free. Unused for rods and lumps.
    open_fraction
        Share of a rod's or lump's surface that meets the air, above 0 to 1.

    Raises
    ------
    ValueError
        When a figure lies outside its range.
    """

    shape: Shape
    thickest_m: float
    inside_factor: float = HOLLOW_FACTOR
    open_fraction: float = 1.0

    def __post_init__(self) -> None:
        """Refuse what the model does not reach."""
        if not THINNEST_M <= self.thickest_m <= THICKEST_M:
            raise ValueError(f"thickest_m must lie from {THINNEST_M} to {THICKEST_M}.")
        if not 0.0 <= self.inside_factor <= 1.0:
            raise ValueError("inside_factor must lie from 0 to 1.")
        if not 0.0 < self.open_fraction <= 1.0:
            raise ValueError("open_fraction must lie above 0 and up to 1.")

    def open_below(self) -> Section:
        """Return it with air at the face that lies down; the hollow of a form stays what it is."""
        lies_down = self.shape is Shape.FLAT and self.inside_factor <= BOARD_FACTOR
        return replace(self, inside_factor=1.0) if lies_down else self

    @property
    def nodes(self) -> int:
        """Return the number of nodes that keeps crossing times within about 1 %."""
        thin = self.thickest_m <= FEW_NODES_UP_TO_M and self.shape is not Shape.LUMP
        return FEW_NODES if thin else MANY_NODES

    @property
    def power(self) -> int:
        """Return m of r^m in the diffusion equation: 0 wall, 1 rod, 2 lump."""
        return {Shape.FLAT: 0, Shape.ROD: 1, Shape.LUMP: 2}[self.shape]

    @property
    def depth_m(self) -> float:
        """Return the length the grid spans: thickness of a wall, radius of the others. [m]"""
        return self.thickest_m if self.shape is Shape.FLAT else 0.5 * self.thickest_m


@dataclass(frozen=True, slots=True)
class Plaster:
    """A mould (or plaster bat) behind one face, taken as one well-mixed node.

    Parameters
    ----------
    free_water_fraction
        Water in the plaster when the clay is laid on it, as a fraction of what it can hold, 0 to 1;
        None: the water it has by then (a cover laid over a filled mould changes nothing in it).
    thickness_m
        Thickness behind the clay. [m]
    capacity_kg_m3
        Water it can hold. [kg/m³]
    outside_factor
        Openness of the plaster's far side to the room, 0 to 1.

    Raises
    ------
    ValueError
        When a figure lies outside its range.
    """

    free_water_fraction: float | None
    thickness_m: float = 0.030
    capacity_kg_m3: float = PLASTER_CAPACITY_KG_M3
    outside_factor: float = 1.0

    def __post_init__(self) -> None:
        """Refuse figures no mould has."""
        water = self.free_water_fraction
        if water is not None and not 0.0 <= water <= 1.0:
            raise ValueError("free_water_fraction must lie from 0 to 1.")
        if not (self.thickness_m > 0.0 and self.capacity_kg_m3 > 0.0):
            raise ValueError("thickness_m and capacity_kg_m3 must be above 0.")
        if not 0.0 <= self.outside_factor <= 1.0:
            raise ValueError("outside_factor must lie from 0 to 1.")

    @property
    def holds_kg_m2(self) -> float:
        """Return the water a square metre of it can hold. [kg/m²]"""
        return self.thickness_m * self.capacity_kg_m3

    @property
    def conductance_kg_m2_s(self) -> float:
        """Return the flow into it per unit of difference in saturation. [kg/(m² s)]"""
        through = self.thickness_m / (3.0 * PLASTER_DIFFUSIVITY_M2_S * self.capacity_kg_m3)
        return 1.0 / (through + 1.0 / CONTACT_KG_M2_S)


@dataclass(frozen=True, slots=True)
class Face:
    """What one face meets: air (with an openness, 0 shut to 1 open), or plaster."""

    factor: float = 1.0
    plaster: Plaster | None = None

    def __post_init__(self) -> None:
        """Refuse an openness outside 0 to 1."""
        if not 0.0 <= self.factor <= 1.0:
            raise ValueError("factor must lie from 0 to 1.")


@dataclass(frozen=True, slots=True)
class FaceEvent:
    """From `at_s` on the faces meet `inner` and `outer`, until the next event.

    `at_s` is elapsed time, seconds since 1970 in UTC, taken to the whole second. Rods and lumps
    have no inner face; theirs is ignored. An event with plaster sets that plaster's water, unless
    its `free_water_fraction` is None. `is_covered` says that the openness of the faces is a
    cover's, which lets through more or less than is usual (f_C).
    """

    at_s: float
    inner: Face
    outer: Face
    is_covered: bool = False


def in_mould(
    at_s: float,
    section: Section,
    plaster: Plaster,
    *,
    other_face: float = 1.0,
    cover: Cover = Cover.OPEN,
) -> FaceEvent:
    """Return the event of pressing: one face on plaster, the other open by `other_face`.

    A rod or lump lies in plaster all round. A cover over the filled mould slows both the clay's
    open face and the plaster's far side.
    """
    covered = Plaster(
        plaster.free_water_fraction,
        plaster.thickness_m,
        plaster.capacity_kg_m3,
        plaster.outside_factor * cover.factor,
    )
    against = Face(0.0, covered)
    is_covered = cover is not Cover.OPEN
    if section.shape is Shape.FLAT:
        return FaceEvent(at_s, Face(other_face * cover.factor), against, is_covered)
    return FaceEvent(at_s, Face(0.0), against, is_covered)


def out_of_mould(
    at_s: float, section: Section, *, cover: Cover = Cover.OPEN, bat: Plaster | None = None
) -> FaceEvent:
    """Return the event of standing in the air under `cover`: demoulded, covered, uncovered.

    On a plaster `bat` the inner face of a wall lies on it; rods and lumps touch it too little.
    """
    is_covered = cover is not Cover.OPEN
    if section.shape is Shape.FLAT and bat is not None:
        return FaceEvent(at_s, Face(0.0, bat), Face(cover.factor), is_covered)
    if section.shape is Shape.FLAT:
        inner = Face(section.inside_factor * cover.factor)
        return FaceEvent(at_s, inner, Face(cover.factor), is_covered)
    return FaceEvent(at_s, Face(0.0), Face(section.open_fraction * cover.factor), is_covered)


def checked_events(events: Sequence[FaceEvent]) -> tuple[FaceEvent, ...]:
    """Return `events` if they can be a schedule, else raise `ValueError`.

    The first event is the pressing; instants rise strictly when taken to whole seconds.
    """
    if not events:
        raise ValueError("A schedule needs at least one event, the pressing.")
    instants = [round(event.at_s) for event in events]
    if any(later <= sooner for sooner, later in pairwise(instants)):
        raise ValueError("Events must be sorted and at least a second apart.")
    for sooner, event in zip((None, *events), events, strict=False):
        for side in ("inner", "outer"):
            now: Face = getattr(event, side)
            was: Face | None = getattr(sooner, side) if sooner else None
            goes_on = now.plaster is not None and now.plaster.free_water_fraction is None
            if goes_on and (was is None or was.plaster is None):
                raise ValueError("free_water_fraction must be given when clay meets plaster.")
    return tuple(events)
