"""Clay bodies and plaster: the figures the drying model needs, each with where it comes from.

Every figure carries a `Mark`, kept as data so that a screen can say how much it is worth. None of
the bodies was measured: they are centres to start from, and a studio's own weighings move them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields
from enum import StrEnum
from types import MappingProxyType
from typing import Final


class Mark(StrEnum):
    """Where a figure comes from."""

    MEMORY = "M"  # common knowledge of the trade or the textbooks, not looked up
    CALIBRATED = "C"  # set so that the model meets a rule of thumb
    PUBLISHED = "P"  # looked up; the source is named beside it
    OWN = "O"  # measured or set by the studio

    @property
    def words(self) -> str:
        """Return the mark in words a screen can print."""
        return _WORDS[self]


_WORDS: Final = {
    Mark.MEMORY: "from memory",
    Mark.CALIBRATED: "set to meet a rule of thumb",
    Mark.PUBLISHED: "published",
    Mark.OWN: "the studio's own",
}

#: Unit of every figure of a body; "" is a ratio of water to dry clay by mass or a pure number.
UNITS: Final[Mapping[str, str]] = MappingProxyType(
    {
        "pressed_kg_per_kg": "kg/kg dry",
        "demould_kg_per_kg": "kg/kg dry",
        "leather_opens_kg_per_kg": "kg/kg dry",
        "leather_closes_kg_per_kg": "kg/kg dry",
        "shrinkage_ends_kg_per_kg": "kg/kg dry",
        "bisque_kg_per_kg": "kg/kg dry",
        "diffusivity_m2_s": "m²/s",
        "diffusivity_slope": "",
        "isotherm_scale_kg_per_kg": "kg/kg dry",
        "isotherm_power": "",
        "drying_shrinkage_fraction": "",
        "grain_density_kg_m3": "kg/m³",
        "activation_j_mol": "J/mol",
    }
)

_FIRST_MARKS: Final[Mapping[str, Mark]] = MappingProxyType(
    {
        name: Mark.CALIBRATED
        if name.startswith(("demould", "leather", "shrinkage_ends", "bisque"))
        else Mark.MEMORY
        for name in UNITS
    }
)


@dataclass(frozen=True, slots=True)
class Body:
    """What a clay body is to the drying model.

    Moistures are water by mass of *dry* clay [kg/kg]. The diffusivity is
    D = diffusivity_m2_s x exp(diffusivity_slope (X - 0.20)) at 20 °C, with an Arrhenius factor of
    `activation_j_mol`; the isotherm is Oswin's, X = scale (a/(1-a))^power. `marks` names the
    `Mark` of every figure; a figure the studio overrides should carry `Mark.OWN`.

    Raises
    ------
    ValueError
        When a figure is not positive or the stages are not in falling order of moisture.
    """

    name: str
    pressed_kg_per_kg: float
    demould_kg_per_kg: float
    leather_opens_kg_per_kg: float
    leather_closes_kg_per_kg: float
    shrinkage_ends_kg_per_kg: float
    bisque_kg_per_kg: float
    diffusivity_m2_s: float
    diffusivity_slope: float
    isotherm_scale_kg_per_kg: float
    isotherm_power: float
    drying_shrinkage_fraction: float
    grain_density_kg_m3: float
    activation_j_mol: float = 20_000.0
    marks: Mapping[str, Mark] = field(
        default_factory=lambda: _FIRST_MARKS, compare=False, repr=False
    )

    def __post_init__(self) -> None:
        """Refuse figures no clay has."""
        for each in fields(self):
            if each.name in UNITS and not float(getattr(self, each.name)) > 0.0:
                raise ValueError(f"{each.name} must be above 0.")
        falling = (
            self.demould_kg_per_kg,
            self.leather_opens_kg_per_kg,
            self.leather_closes_kg_per_kg,
            self.shrinkage_ends_kg_per_kg,
            self.bisque_kg_per_kg,
        )
        if list(falling) != sorted(falling, reverse=True):
            raise ValueError("The moistures of the stages must fall from demould to bisque.")

    @property
    def dry_density_kg_m3(self) -> float:
        """Return dry clay per volume of wet clay as pressed. [kg/m³]"""
        return 1.0 / (1.0 / self.grain_density_kg_m3 + self.pressed_kg_per_kg / 1000.0)

    def at_rest_kg_per_kg(self, humidity_fraction: float) -> float:
        """Return the moisture at which clay rests in air of `humidity_fraction` (0 to <1)."""
        if not 0.0 <= humidity_fraction < 1.0:
            raise ValueError("humidity_fraction must lie from 0 to below 1.")
        odds = humidity_fraction / (1.0 - humidity_fraction)
        return float(self.isotherm_scale_kg_per_kg * odds**self.isotherm_power)

    def figures(self) -> list[tuple[str, float, str, Mark]]:
        """Return (name, value, unit, mark) of every figure, in a fixed order for a screen."""
        return [
            (name, float(getattr(self, name)), unit, self.marks.get(name, Mark.MEMORY))
            for name, unit in UNITS.items()
        ]


RED_EARTHENWARE: Final = Body(
    "red earthenware",
    0.25,
    0.215,
    0.205,
    0.150,
    0.110,
    0.030,
    2.0e-9,
    10.0,
    0.015,
    0.45,
    0.065,
    2650.0,
)
WHITE_EARTHENWARE: Final = Body(
    "white earthenware",
    0.25,
    0.215,
    0.200,
    0.145,
    0.110,
    0.025,
    2.5e-9,
    10.0,
    0.010,
    0.45,
    0.060,
    2620.0,
)
GROGGED_STONEWARE: Final = Body(
    "grogged stoneware",
    0.23,
    0.200,
    0.190,
    0.140,
    0.100,
    0.025,
    4.0e-9,
    9.0,
    0.010,
    0.45,
    0.055,
    2600.0,
)
SMOOTH_STONEWARE: Final = Body(
    "smooth stoneware",
    0.25,
    0.215,
    0.205,
    0.150,
    0.110,
    0.025,
    2.2e-9,
    10.0,
    0.011,
    0.45,
    0.065,
    2600.0,
)
PORCELAIN: Final = Body(
    "porcelain", 0.26, 0.228, 0.215, 0.165, 0.130, 0.020, 3.0e-9, 9.0, 0.007, 0.45, 0.060, 2600.0
)
TERRACOTTA_CRANK: Final = Body(
    "terracotta crank",
    0.22,
    0.192,
    0.180,
    0.130,
    0.090,
    0.025,
    5.0e-9,
    8.0,
    0.010,
    0.45,
    0.045,
    2620.0,
)

#: The first bodies by a key a table can keep.
BODIES: Final[Mapping[str, Body]] = MappingProxyType(
    {
        body.name.replace(" ", "_"): body
        for body in (
            RED_EARTHENWARE,
            WHITE_EARTHENWARE,
            GROGGED_STONEWARE,
            SMOOTH_STONEWARE,
            PORCELAIN,
            TERRACOTTA_CRANK,
        )
    }
)

#: What the figures lean on, for the page that shows sources.
SOURCES: Final = (
    "Leather-hard at about 15 % (wet basis, 0.176 dry): Wikipedia, Leather-hard.",
    "Diffusivity: textbook exercises use 5e-10 and 1.29e-8 m²/s; 2e-9 lies between them.",
    "Linear drying shrinkage of kaolin 3 to 10 %: a kaolin supplier's figures.",
    "Plaster: USG Pottery Plaster data sheet IG1365, 1060 kg/m³ dry, 41 % absorption.",
    "Plaster uptake 0.20 g/cm² in the first minute: USG ceramic-industry manual.",
    "Moisture limits of the stages and cover factors: set to meet rules of thumb.",
)
