"""Sizes of one piece from the model to the finished ware.

Shrinkage is linear and a fraction of the earlier length, the plastic basis of ASTM C326-09 (clause
from memory; scope at https://m.mydoc123.com/p-466295.html). Stages multiply and never add. Clay
shrinks unevenly: thickness and rims may differ from the length by 0.5-2 points, and batches by
0.5-1 point (from memory), so show sizes with a band.

References
----------
.. [1] Divide, do not add: "Math for Potters",
       https://ceramicartsnetwork.org/pottery-making-illustrated
.. [2] Plaster expands on setting, once in every generation: USG IG526 "Plasters and gypsum cements
       for the ceramic industry", https://azmanual.top/manuals/574730; 0.21 % at most at 70 parts of
       water, USG IG1365, https://pt.scribd.com/document/261195086
"""

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from studio.domain.refusals import Unworkable

MOST_SHRINKAGE: Final = 0.40  # no body shrinks so much and holds; common practice, no source
USUAL_SHRINKAGE: Final = (0.04, 0.20)
LEAST_MEANT: Final = 0.01
USUAL_PLASTER_EXPANSION: Final = 0.002  # makers print 0.13-0.21 % [2]_
MOST_PLASTER_EXPANSION: Final = 0.05


class ShrinkageOutOfRange(Unworkable):
    code = "shrinkage-out-of-range"
    title = "No clay shrinks like that."


class NotASize(Unworkable):
    code = "not-a-size"
    title = "A size must be above nought."


class LongerThanBefore(Unworkable):
    code = "bar-grew"
    title = "A test bar cannot be longer than at the stage before."


@dataclass(frozen=True, slots=True)
class Shrinkages:
    """Linear shrinkage of each stage, as a fraction of the length at the stage before."""

    drying: float
    bisque: float
    glaze: float

    @property
    def total(self) -> float:
        """From wet to finished, as a fraction of the wet length."""
        return combine(self.drying, self.bisque, self.glaze)


@dataclass(frozen=True, slots=True)
class Sizes:
    """One length at each stage. [mm]"""

    wet_mm: float
    dry_mm: float
    bisque_mm: float
    finished_mm: float


@dataclass(frozen=True, slots=True)
class Enlargement:
    """What to make the model, and where the tempting sum would end.

    `factor` is model over finished. The tempting sum adds the percentage: it makes the model
    `tempting_mm`, whose ware is `tempting_finishes_mm`, `short_mm` too small. `is_unusual` warns of
    a shrinkage outside 4-20 %.
    """

    model_mm: float
    factor: float
    tempting_mm: float
    tempting_finishes_mm: float
    short_mm: float
    is_unusual: bool


def combine(*shrinkages: float) -> float:
    """Return the shrinkage of stages that follow one another, 0 for none.

    Raises `ShrinkageOutOfRange` when one of them is below 0 or from 0.40 up.
    """
    kept = 1.0
    for shrinkage in shrinkages:
        kept *= 1.0 - check_shrinkage(shrinkage)
    return 1.0 - kept


def later_stage(total: float, earlier: float) -> float:
    """Return what shrinks after `earlier`, so that both together make `total`.

    Raises `ShrinkageOutOfRange` when `earlier` is more than `total`, or one is out of range.
    """
    return check_shrinkage(1.0 - (1.0 - check_shrinkage(total)) / (1.0 - check_shrinkage(earlier)))


def check_shrinkage(shrinkage: float) -> float:
    """Return `shrinkage` if it lies from 0 to below 0.40.

    Raises
    ------
    ShrinkageOutOfRange
        Otherwise; its fact `did_you_mean` holds the fraction that a slip was likely to mean, or
        None.
    """
    if 0.0 <= shrinkage < MOST_SHRINKAGE:
        return shrinkage
    meant = _meant(shrinkage)
    hint = "" if meant is None else f" Did you mean {meant:.4g} ({100 * meant:.4g} %)?"
    raise ShrinkageOutOfRange(
        f"Shrinkage runs from 0 to below {MOST_SHRINKAGE:.0%}; this says {shrinkage:.4g}.{hint}",
        shrinkage=shrinkage,
        did_you_mean=meant,
    )


def from_bar(wet_mm: float, dry_mm: float, bisque_mm: float, finished_mm: float) -> Shrinkages:
    """Return the shrinkages of a test bar from its four lengths. [mm]

    Raises
    ------
    NotASize
        When a length is not above 0.
    LongerThanBefore
        When the bar grew.
    ShrinkageOutOfRange
        When a stage shrinks by 40 % or more.
    """
    lengths = [_check_size(length) for length in (wet_mm, dry_mm, bisque_mm, finished_mm)]
    shares = []
    for before, after in itertools.pairwise(lengths):
        if after > before:
            raise LongerThanBefore(f"{after:g} mm after {before:g} mm.", before=before, after=after)
        shares.append(check_shrinkage(1.0 - after / before))
    return Shrinkages(*shares)


def enlarge(
    finished_mm: float,
    shrinkage: float,
    *,
    plaster_expansions: Sequence[float] = (),
    model_dries: float = 0.0,
) -> Enlargement:
    """Return the size of the model for a finished size [1]_.

    Parameters
    ----------
    finished_mm
        Size wanted of the finished ware, above 0. [mm]
    shrinkage
        Total linear shrinkage, wet to finished, 0 to below 0.40.
    plaster_expansions
        One setting expansion for each generation of plaster between model and ware [2]_: block,
        case and working mould are three. Each from 0 to 0.05; empty leaves plaster out of the sum.
    model_dries
        What a model of wet clay shrinks before it is moulded; 0 for one of plaster, wood or oil
        clay.

    Raises
    ------
    NotASize, ShrinkageOutOfRange
        When a number lies outside its range.
    """
    kept = 1.0 - check_shrinkage(shrinkage)
    scale = kept * _growth(plaster_expansions) * (1.0 - check_shrinkage(model_dries))
    wanted = _check_size(finished_mm)
    tempting = wanted * (1.0 + shrinkage)
    low, high = USUAL_SHRINKAGE
    return Enlargement(
        model_mm=wanted / scale,
        factor=1.0 / scale,
        tempting_mm=tempting,
        tempting_finishes_mm=tempting * scale,
        short_mm=wanted - tempting * scale,
        is_unusual=not low <= shrinkage <= high,
    )


def sizes_from_wet(wet_mm: float, by: Shrinkages) -> Sizes:
    """Return one length at each stage. Bisque loads hold dry sizes, glaze loads bisque sizes."""
    dry = _check_size(wet_mm) * (1.0 - by.drying)
    bisque = dry * (1.0 - by.bisque)
    return Sizes(wet_mm, dry, bisque, bisque * (1.0 - by.glaze))


def sizes_from_finished(finished_mm: float, by: Shrinkages) -> Sizes:
    """Return one length at every stage, from the finished one."""
    return sizes_from_wet(_check_size(finished_mm) / (1.0 - by.total), by)


def wet_volume_ml(finished_ml: float, shrinkage: float) -> float:
    """Return the inside volume to press for a finished capacity; the hollow shrinks like the body.
    [ml]

    Raises `NotASize` or `ShrinkageOutOfRange`.
    """
    return _check_size(finished_ml) / finished_volume_fraction(shrinkage)


def finished_volume_fraction(shrinkage: float) -> float:
    """Return finished volume over wet volume, for the same shrinkage every way."""
    return (1.0 - check_shrinkage(shrinkage)) ** 3


def linear_from_volume(volume_shrinkage: float) -> float:
    """Return the linear shrinkage from that of volume, 0 to below 0.784.

    Raises `ShrinkageOutOfRange` outside.
    """
    if not 0.0 <= volume_shrinkage < 1.0:
        raise ShrinkageOutOfRange("Shrinkage of volume runs from 0 to below 1.")
    return check_shrinkage(1.0 - math.cbrt(1.0 - volume_shrinkage))


def off_finished(
    finished_mm: float, shrinkage: float, *, generations: int, plaster_expansion: float = 0.0
) -> list[float]:
    """Return the finished sizes when each mould is taken off finished ware of the one before. [mm]

    The nth answer is the nth generation; the master is lost and every generation is smaller.

    Raises
    ------
    ValueError
        When `generations` is negative.
    NotASize, ShrinkageOutOfRange
        When a number lies outside its range.
    """
    if generations < 0:
        raise ValueError("generations must not be negative.")
    step = (1.0 - check_shrinkage(shrinkage)) * _growth([plaster_expansion])
    return [_check_size(finished_mm) * step**n for n in range(1, generations + 1)]


def _growth(expansions: Sequence[float]) -> float:
    for expansion in expansions:
        if not 0.0 <= expansion <= MOST_PLASTER_EXPANSION:
            raise ShrinkageOutOfRange(
                f"Plaster expands by 0 to {MOST_PLASTER_EXPANSION:.0%}; this says {expansion:.4g}.",
                plaster_expansion=expansion,
                did_you_mean=None,
            )
    return math.prod(1.0 + expansion for expansion in expansions)


def _meant(shrinkage: float) -> float | None:
    """Undo the likely slips: 1.12 for 0.12 (the factor), 12 for 0.12 and 112 for 1.12 (percent)."""
    for candidate in (shrinkage - 1.0, shrinkage / 100.0, shrinkage / 100.0 - 1.0, -shrinkage):
        if LEAST_MEANT <= candidate < MOST_SHRINKAGE:
            return round(candidate, 6)
    return None


def _check_size(size: float) -> float:
    if not 0.0 < size < math.inf:
        raise NotASize("Give a size above nought.", size=size)
    return size
