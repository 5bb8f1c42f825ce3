"""Lead and cadmium given off by ware for food: which limits it falls under, what a report says.

Nothing here certifies. It reads what a laboratory wrote against the limits of the law and says so
in words; the law of the place, and whoever signs, come first.

.. [1] The Materials and Articles in Contact with Food (Wales) Regulations 2012 (WSI 2012/2705),
   part 4 and schedule 3: https://legislation.gov.uk/wsi/2012/2705/part/4 and
   https://legislation.gov.uk/wsi/2012/2705/schedule/3; England, Scotland and Northern Ireland have
   sister rules.
.. [2] Council Directive 84/500/EEC, article 2, as the practical guide to food contact materials of
   the European Commission prints it (page 118): the same limits.
"""

from dataclasses import dataclass
from typing import Final, Literal

Unit = Literal["mg_per_dm2", "mg_per_l"]
Contact = Literal["table", "cooking", "storage"]
Code = Literal["within", "over", "not_tested", "not_told"]

UNITS: Final[dict[Unit, str]] = {"mg_per_dm2": "mg/dm²", "mg_per_l": "mg/l"}
FLAT_UP_TO_MM: Final = 25.0  # [1]_, [2]_: "does not exceed 25 mm", so 25 mm itself is flat
STORAGE_ABOVE_L: Final = 3.0  # [1]_, [2]_: "more than three litres", so 3 litres are not
JURISDICTION: Final = (
    "Wales: Materials and Articles in Contact with Food (Wales) Regulations 2012, part 4. England, "
    "Scotland and Northern Ireland have sister rules; the limits are those of Directive 84/500/EEC."
)
SOURCES: Final = (
    "https://legislation.gov.uk/wsi/2012/2705/part/4",
    "https://legislation.gov.uk/wsi/2012/2705/schedule/3",
)
HOW_TESTED: Final = (
    "4 % acetic acid by volume, 22 ± 2 °C, 24 ± 0.5 h, in the dark where cadmium is looked for."
)
VERDICTS: Final[dict[Code, str]] = {
    "within": "within the limits of the report",
    "over": "over",
    "not_tested": "not tested",
    "not_told": "not told: the laboratory looked no lower than above the limit",
}


@dataclass(frozen=True, slots=True)
class Limits:
    """What may be given off by one category of ware; both figures in `unit`."""

    name: Literal["flat", "fillable", "cooking"]
    words: str
    lead: float
    cadmium: float
    unit: Unit


FLAT: Final = Limits("flat", "not fillable, or at most 25 mm deep", 0.8, 0.07, "mg_per_dm2")
FILLABLE: Final = Limits("fillable", "other fillable ware", 4.0, 0.3, "mg_per_l")
COOKING: Final = Limits(
    "cooking", "cooking ware, or storage of more than 3 litres", 1.5, 0.1, "mg_per_l"
)


@dataclass(frozen=True, slots=True)
class Ware:
    """The vessel as finished: inside depth in mm, capacity in ml; what is not known is None."""

    depth_mm: float | None = None
    volume_ml: float | None = None
    contact: Contact = "table"


@dataclass(frozen=True, slots=True)
class Figure:
    """One result; `is_below` where the laboratory wrote "less than"."""

    value: float
    is_below: bool = False

    def plus(self, other: "Figure") -> "Figure":
        """Return the sum; what holds a "less than" is itself at most that much."""
        return Figure(self.value + other.value, self.is_below or other.is_below)


@dataclass(frozen=True, slots=True)
class Released:
    """Lead and cadmium of one test, in the same unit."""

    lead: Figure
    cadmium: Figure


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a report says of ware in one category."""

    code: Code
    limits: Limits | None
    released: Released | None

    @property
    def words(self) -> str:
        """Return the verdict in words, with the limits it was held against."""
        said = VERDICTS[self.code]
        if self.limits is None:
            return said
        return f"{said} ({limits_words(self.limits)})"


def limits_of(ware: Ware) -> Limits | None:
    """Return the limits that ware falls under, or None where its depth is not known.

    Raises
    ------
    ValueError
        When a depth or a volume is negative.
    """
    depth_mm, volume_ml = ware.depth_mm, ware.volume_ml
    if (depth_mm is not None and depth_mm < 0) or (volume_ml is not None and volume_ml < 0):
        raise ValueError(ware)
    if ware.contact == "cooking":
        return COOKING
    if volume_ml is not None and ware.contact == "storage" and volume_ml > STORAGE_ABOVE_L * 1000:
        return COOKING
    if depth_mm is None:
        return None
    return FLAT if depth_mm <= FLAT_UP_TO_MM else FILLABLE


def with_lid(vessel: Released, lid_mg: Released, *, limits: Limits, size: float) -> Released:
    """Return what vessel and lid give off together, on the vessel's area or volume.

    Parameters
    ----------
    vessel
        Results of the vessel, in the unit of `limits`.
    lid_mg
        What the inside of the lid gave off, tested apart. [mg]
    limits
        The limits of the vessel: the lid has none of its own [1]_.
    size
        The vessel's volume where the limits are per litre [l], else its area. [dm²]

    Raises
    ------
    ValueError
        When `size` is not above nought.
    """
    if not size > 0:
        raise ValueError(size)
    lead = Figure(lid_mg.lead.value / size, lid_mg.lead.is_below)
    cadmium = Figure(lid_mg.cadmium.value / size, lid_mg.cadmium.is_below)
    return Released(vessel.lead.plus(lead), vessel.cadmium.plus(cadmium))


def judged(limits: Limits | None, released: Released | None, *, unit: Unit | None) -> Verdict:
    """Return what the results say against the limits; results in another unit say nothing."""
    if limits is None or released is None or unit != limits.unit:
        return Verdict("not_tested", limits, None)
    pairs = ((released.lead, limits.lead), (released.cadmium, limits.cadmium))
    if any(figure.value > most and not figure.is_below for figure, most in pairs):
        return Verdict("over", limits, released)
    if any(figure.value > most for figure, most in pairs):
        return Verdict("not_told", limits, released)
    return Verdict("within", limits, released)


def limits_words(limits: Limits) -> str:
    """Return limits as a line of text."""
    return (
        f"{limits.words}: lead at most {limits.lead:g}, cadmium at most {limits.cadmium:g} "
        f"{UNITS[limits.unit]}"
    )


def figure_words(figure: Figure, unit: str) -> str:
    """Return a result as the laboratory wrote it."""
    return f"{'< ' if figure.is_below else ''}{figure.value:.3g} {unit}"
