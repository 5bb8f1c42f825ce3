"""Weights that cannot be, and what was probably meant."""

from typing import Final

from moulds.domain.moisture import (
    HeavierThanSoaked,
    LighterThanDry,
    NotAWeight,
    free_water_fraction,
)

POUND_G: Final = 453.59237  # exact
OUNCE_G: Final = 28.349523125  # exact
# A digit too few or too many, kilograms, pounds, ounces.
SLIPS: Final = (10.0, 0.1, 1000.0, POUND_G, OUNCE_G, 100.0, 0.01)
MOST_MEANT_FRACTION: Final = 1.0  # a guess is offered only where the mould could hold that water


def likely_meant_g(mass_g: float, *, dry_g: float, capacity_fraction: float) -> float | None:
    """Return the weight that was probably meant by an impossible one, None if no slip fits. [g]

    Parameters
    ----------
    mass_g, dry_g
        What was said, and the dry weight, both above 0. [g]
    capacity_fraction
        Free water that the mould can hold, per dry mass, above 0.
    """
    for slip in SLIPS:
        meant_g = mass_g * slip
        try:
            fraction = free_water_fraction(meant_g, dry_g, capacity_fraction)
        except (LighterThanDry, HeavierThanSoaked, NotAWeight):
            continue
        if fraction <= MOST_MEANT_FRACTION:
            return round(meant_g, 1)
    return None
