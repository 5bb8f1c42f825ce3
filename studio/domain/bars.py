"""Shrinkage read off a test bar: a line of known length, measured again after each stage.

All shrinkages are linear. Drying and total are of the wet length, as ASTM C326 reckons them (form
of the calculation from memory); bisque and glaze are of the length before that stage, so that
stages multiply and never add: total = 1 - (1 - drying)(1 - bisque)(1 - glaze).
"""

from dataclasses import dataclass
from typing import Final

from studio.domain.refusals import Unworkable

MOST_FRACTION: Final = 0.40  # nothing workable shrinks by more; common sense, no source
USUAL_FRACTIONS: Final = (0.04, 0.20)  # common practice, no source
GROWTH_FRACTION: Final = 0.003  # two readings of one line differ by as much; common practice


class ImpossibleLength(Unworkable):
    code = "impossible-length"
    title = "A bar cannot have that length."


class ImpossibleShrinkage(Unworkable):
    code = "impossible-shrinkage"
    title = "No clay shrinks like that."


@dataclass(frozen=True, slots=True)
class Shrinkages:
    """What one bar tells, each None where a length is missing. [fraction, 0 to 0.4]"""

    drying_fraction: float | None
    bisque_fraction: float | None
    glaze_fraction: float | None
    total_fraction: float | None


def shrinkages(
    *, wet_mm: float, dry_mm: float | None, bisque_mm: float | None, fired_mm: float | None
) -> Shrinkages:
    """Return the shrinkage of each stage and of all.

    Lengths in mm, in the order of the stages; a length that was not taken is None.

    Raises
    ------
    ImpossibleLength
        When a length is not positive, longer than the one before it, or under 0.6 of the wet one;
        its `field` names the length.
    """
    named = {"wet_mm": wet_mm, "dry_mm": dry_mm, "bisque_mm": bisque_mm, "fired_mm": fired_mm}
    _check(named, wet_mm)
    return Shrinkages(
        drying_fraction=_lost(wet_mm, dry_mm),
        bisque_fraction=_lost(dry_mm, bisque_mm),
        glaze_fraction=_lost(bisque_mm, fired_mm),
        total_fraction=_lost(wet_mm, fired_mm),
    )


def check_fraction(value: float, *, field: str) -> float:
    """Return a shrinkage that can be, from 0 to below 0.4.

    Raises
    ------
    ImpossibleShrinkage
        With `did_you_mean` where a slip of the point or of the percent explains it.
    """
    if 0.0 <= value < MOST_FRACTION:
        return value
    least, most = USUAL_FRACTIONS
    slips = (value / 100.0, value - 1.0, value / 100.0 - 1.0)
    meant = next((round(slip, 6) for slip in slips if least <= slip <= most), None)
    asked = f" Did you mean {meant:.3g}, which is {meant * 100:.3g} %?" if meant else ""
    raise ImpossibleShrinkage(
        f"A shrinkage lies from 0 to below {MOST_FRACTION:g}, not {value:g}.{asked}",
        pointer=f"#/{field}",
        did_you_mean=meant,
    )


def _check(named: dict[str, float | None], wet_mm: float) -> None:
    before_name, before = "", 0.0
    for name, length in named.items():
        if length is None:
            continue
        if not length > 0.0:
            raise ImpossibleLength("A length is more than 0 mm.", pointer=f"#/{name}")
        if before and length > before * (1.0 + GROWTH_FRACTION):
            raise ImpossibleLength(
                f"{length:g} mm is longer than the {before:g} mm of {before_name}.",
                pointer=f"#/{name}",
            )
        if length < wet_mm * (1.0 - MOST_FRACTION):
            raise ImpossibleLength(
                f"From {wet_mm:g} to {length:g} mm would be more than 40 %.", pointer=f"#/{name}"
            )
        before_name, before = name, length


def _lost(before_mm: float | None, after_mm: float | None) -> float | None:
    if before_mm is None or after_mm is None:
        return None
    return max(0.0, 1.0 - after_mm / before_mm)
