"""Plaster: the mix for a volume, the mould's densities, and the water it can hold.

A mix is named by its parts of water to 100 parts of plaster, by mass. Volumes come from a mass
balance: plaster and water add up, and set plaster keeps 18.617 parts of the water as crystal water.

References
----------
.. [1] USG, data sheet IG1365 (No. 1 Pottery Plaster): at 70 parts 1.58 wet, 1.10 dry g/cm³ and 36 %
       absorption, at 74 parts 1.56, 1.06 and 41 %. https://pt.scribd.com/document/261195086
.. [2] USG, "Drying plaster casts": setting takes 18 parts of water.
       https://azmanual.top/manuals/574710
.. [3] Studio handout: cubic inches / 80 = US quarts of water, 2.85 lb of plaster to the quart.
       http://meaganchaneystudios.blogspot.com/2010/08/clay-wedging-table-plaster-mixing.html
.. [4] Density of hemihydrate (2.60-2.75, here 2.63): from memory; with it the
       densities of [1]_ come out within 1 %.
"""

import math
from dataclasses import dataclass
from typing import Final

from studio.domain.refusals import Unworkable

USUAL_PARTS_WATER: Final = 70.0
LEAST_PARTS_WATER: Final = 30.0
MOST_PARTS_WATER: Final = 120.0
# 1.5 H2O to one hemihydrate, from molar masses; [2]_ rounds to 18.
SETTING_PARTS_WATER: Final = 18.617
HEMIHYDRATE_KG_L: Final = 2.63
HEMIHYDRATE_SPREAD_KG_L: Final = (2.60, 2.75)
SMALL_MIX_KG: Final = 0.5  # below this a mix is hard to weigh and soak well; from memory
CUBIC_INCHES_PER_QUART: Final = 80.0
PLASTER_LB_PER_QUART: Final = 2.85
LB_KG: Final = 0.45359237  # exact
US_QUART_L: Final = 0.946352946  # exact
LITRE_OF_WATER_KG: Final = 1.0
# A row further than this from its heading is called wrong; common practice.
HEADING_PARTS: Final = 1.0


class NoSuchMix(Unworkable):
    code = "no-such-mix"
    title = "That is not a mix of plaster and water."


@dataclass(frozen=True, slots=True)
class Mix:
    """Masses of one mix. [kg]"""

    plaster_kg: float
    water_kg: float

    @property
    def parts_water(self) -> float:
        """Parts of water to 100 parts of plaster, by mass."""
        return 100.0 * self.water_kg / self.plaster_kg


@dataclass(frozen=True, slots=True)
class MixAdvice:
    """What to weigh out, between what least and most dense plaster would need.

    `least` and `most` hold the spread of published plaster densities, over-mix included;
    `weigh_out` is `most` rounded up, so that no second small mix is ever needed. `is_small` warns
    of a mix hard to weigh.
    """

    least: Mix
    most: Mix
    weigh_out: Mix
    is_small: bool


def mix_for_volume(
    volume_l: float,
    parts_water: float = USUAL_PARTS_WATER,
    *,
    over_mix_fraction: float = 0.0,
    plaster_kg_l: float = HEMIHYDRATE_KG_L,
) -> Mix:
    """Return the mix that fills a volume.

    Parameters
    ----------
    volume_l
        Volume to fill, above 0, up to 1000. [l]
    parts_water
        Water to 100 of plaster by mass, from 30 to 120.
    over_mix_fraction
        Added for what stays in the bucket, 0 to 1.
    plaster_kg_l
        Density of the plaster's grains. [kg/l]

    Raises
    ------
    NoSuchMix
        When a number lies outside its range.
    """
    _check(volume_l, parts_water, over_mix_fraction)
    slurry_l_per_kg = parts_water / 100.0 / LITRE_OF_WATER_KG + 1.0 / plaster_kg_l
    plaster = volume_l * (1.0 + over_mix_fraction) / slurry_l_per_kg
    return Mix(plaster, plaster * parts_water / 100.0)


def advise_mix(
    volume_l: float,
    parts_water: float = USUAL_PARTS_WATER,
    *,
    over_mix_fraction: float = 0.0,
    step_kg: float = 0.01,
) -> MixAdvice:
    """Return the mix for a volume as a spread, and rounded up to whole `step_kg` of plaster.

    Ranges and `NoSuchMix` are those of `mix_for_volume`.
    """
    least, most = (
        mix_for_volume(
            volume_l, parts_water, over_mix_fraction=over_mix_fraction, plaster_kg_l=density
        )
        for density in HEMIHYDRATE_SPREAD_KG_L
    )
    plaster = math.ceil(most.plaster_kg / step_kg - 1e-9) * step_kg
    weigh_out = Mix(plaster, plaster * parts_water / 100.0)
    return MixAdvice(least, most, weigh_out, is_small=plaster < SMALL_MIX_KG)


def mix_by_handout(volume_in3: float) -> Mix:
    """Return what the handout's rule [3]_ weighs out for a volume. [in³]

    Its mix is 73 parts of water, not 70, because a US quart of water weighs 2.09 lb; and it makes
    about a tenth too much.

    Raises
    ------
    NoSuchMix
        When the volume is not above 0 and finite.
    """
    if not 0.0 < volume_in3 < math.inf:
        raise NoSuchMix("The volume must be above 0 cubic inches.")
    quarts = volume_in3 / CUBIC_INCHES_PER_QUART
    return Mix(
        plaster_kg=quarts * PLASTER_LB_PER_QUART * LB_KG,
        water_kg=quarts * US_QUART_L * LITRE_OF_WATER_KG,
    )


def is_wrongly_headed(mix: Mix, headed_parts: float) -> bool:
    """Return whether a chart's row is more than one part of water from its heading."""
    return abs(mix.parts_water - headed_parts) > HEADING_PARTS


def wet_density_kg_l(parts_water: float) -> float:
    """Return the density of the mould just set, full of water, for 30 to 120 parts. [kg/l]"""
    return (100.0 + parts_water) / _volume_per_100(parts_water)


def dry_density_kg_l(parts_water: float) -> float:
    """Return the density of the dry mould, for 30 to 120 parts. [kg/l]"""
    return (100.0 + SETTING_PARTS_WATER) / _volume_per_100(parts_water)


def dry_mass_kg(volume_l: float, parts_water: float = USUAL_PARTS_WATER) -> float:
    """Return what a mould of `volume_l` of plaster weighs when dry. [kg]

    Raises `NoSuchMix` for a volume outside 0 to 1000 l or a mix outside 30 to 120 parts.
    """
    _check(volume_l, parts_water, 0.0)
    return volume_l * dry_density_kg_l(parts_water)


def free_water_after_set_fraction(parts_water: float) -> float:
    """Return the water that setting leaves free, per dry mass of the mould: 0.433 at 70 parts."""
    _volume_per_100(parts_water)
    return (parts_water - SETTING_PARTS_WATER) / (100.0 + SETTING_PARTS_WATER)


def capacity_fraction(parts_water: float = USUAL_PARTS_WATER) -> float:
    """Return the free water a mould can hold, per its dry mass, to two figures: 0.43 at 70 parts.

    Two figures, because makers measure less (36 % at 70 parts [1]_): some pores stay closed. A
    weighing of the mould when soaked is better than this.

    Raises
    ------
    NoSuchMix
        When the mix lies outside 30 to 120 parts.
    """
    return round(free_water_after_set_fraction(parts_water), 2)


def _volume_per_100(parts_water: float) -> float:
    _check(1.0, parts_water, 0.0)
    return 100.0 / HEMIHYDRATE_KG_L + parts_water / LITRE_OF_WATER_KG


def _check(volume_l: float, parts_water: float, over_mix_fraction: float) -> None:
    if not 0.0 < volume_l <= 1000.0:
        raise NoSuchMix("The volume must be above 0, up to 1000 litres.", volume_l=volume_l)
    if not LEAST_PARTS_WATER <= parts_water <= MOST_PARTS_WATER:
        raise NoSuchMix(
            f"A mix has {LEAST_PARTS_WATER:g} to {MOST_PARTS_WATER:g} of water to 100 of plaster.",
            parts_water=parts_water,
        )
    if not 0.0 <= over_mix_fraction <= 1.0:
        raise NoSuchMix("Mix at most as much again to spare.", over_mix_fraction=over_mix_fraction)
