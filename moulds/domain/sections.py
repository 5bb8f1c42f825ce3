"""The sections of a clay part: which can be believed.

The limits are common practice, no source: under 1 mm no slab can be pressed, over 80 mm none of
this ware is solid. A wall over 80 mm that somebody confirms is taken, as it may be meant; one over
300 mm never is.
"""

from collections.abc import Container
from dataclasses import dataclass
from typing import Final

from studio.domain.refusals import Unworkable

LEAST_MM: Final = 1.0
MOST_MM: Final = 80.0
MOST_CONFIRMED_MM: Final = 300.0


class NoSuchSection(Unworkable):
    code = "no-such-section"
    title = "No clay part has such a section."


@dataclass(frozen=True, slots=True)
class Section:
    """The thickest and thinnest wall of one part, as pressed. [mm]"""

    role: str
    thickest_mm: float
    thinnest_mm: float


def check_section(section: Section, *, pointer: str = "#", confirmed: Container[str] = ()) -> None:
    """Refuse a section that cannot be.

    Parameters
    ----------
    section
        Walls from 1 to 80 mm, the thinnest not above the thickest. [mm]
    pointer
        JSON pointer of the part, for naming the field.
    confirmed
        JSON pointers of the walls that are meant, however thick.

    Raises
    ------
    NoSuchSection
        When a wall lies outside the range, or thinnest and thickest are the wrong way round.
    """
    for name, wall_mm in (
        ("thickest_mm", section.thickest_mm),
        ("thinnest_mm", section.thinnest_mm),
    ):
        most_mm = MOST_CONFIRMED_MM if f"{pointer}/{name}" in confirmed else MOST_MM
        if not LEAST_MM <= wall_mm <= most_mm:
            raise _refused(
                f"{section.role}: a wall is {LEAST_MM:g} to {most_mm:g} mm, not {wall_mm:g}."
                f"{_meant(wall_mm)}",
                pointer=f"{pointer}/{name}",
            )
    if section.thinnest_mm > section.thickest_mm:
        raise _refused(
            f"{section.role}: thinnest {section.thinnest_mm:g} mm is above thickest "
            f"{section.thickest_mm:g} mm.",
            pointer=f"{pointer}/thinnest_mm",
        )


def _meant(wall_mm: float) -> str:
    tenth = wall_mm / 10
    if not LEAST_MM <= tenth <= MOST_MM:
        return ""
    if_so = " If not, confirm it." if wall_mm <= MOST_CONFIRMED_MM else ""
    return f" Did you mean {tenth:g}?{if_so}"


def _refused(detail: str, *, pointer: str) -> NoSuchSection:
    error = {"pointer": pointer, "code": NoSuchSection.code, "detail": detail}
    return NoSuchSection(detail, errors=[error])
