"""Does a report cover this piece: the same glaze batch, fired alike, ware of the same limits.

A report is about what the laboratory had on its bench. It speaks for other ware only where that
was dipped in the same batch, fired to the same cone in the same kiln, and falls under the same
limits; for a vessel that wears a lid, only where the inside of the lid was tested too.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final, Literal
from uuid import UUID

from pieces.domain.order_words import day
from studio.domain.food_contact import Limits, Verdict

Code = Literal[
    "display",
    "no_limits",
    "no_vessel",
    "no_load",
    "not_fired",
    "no_batch",
    "no_report",
    "lid_not_tested",
    "within",
    "over",
    "not_told",
    "not_tested",
]

SAID: Final[dict[Code, str]] = {
    "display": "for display only, not for food",
    "no_limits": "not covered yet: nobody said how deep it is inside",
    "no_vessel": "not covered yet: the lid stands with no vessel",
    "no_load": "not covered yet: no glaze load",
    "no_batch": "not covered: nobody said which glaze batch it was dipped in",
}


@dataclass(frozen=True, slots=True)
class Firing:
    """A glaze firing as far as it matters for what is given off."""

    load: str
    kiln: str
    cone: str

    @property
    def words(self) -> str:
        return f"cone {self.cone} in {self.kiln}"

    def is_like(self, other: "Firing") -> bool:
        """Say whether ware of both was fired alike: to one cone, in one kiln."""
        return (self.kiln, self.cone) == (other.kiln, other.cone)


@dataclass(frozen=True, slots=True)
class Batch:
    """A glaze batch by its id, with its label."""

    id: UUID
    label: str


@dataclass(frozen=True, slots=True)
class Glazed:
    """What is known of one piece: its dips (None: nobody said which batch) and its last firing.

    `limits` are the vessel's, also of its lid. `booked` is the glaze load it is put on.
    """

    is_display: bool
    limits: Limits | None
    dips: Sequence[Batch | None]
    fired: Firing | None
    booked: str = ""
    is_lid: bool = False
    has_vessel: bool = True
    has_lid: bool = False


@dataclass(frozen=True, slots=True)
class Report:
    """What a laboratory wrote, as far as it can speak for other ware."""

    id: UUID
    batch: UUID | None
    firing: Firing | None
    verdict: Verdict
    has_lid: bool
    reported_on: date


@dataclass(frozen=True, slots=True)
class Coverage:
    """Whether reports speak for a piece, and what they say."""

    code: Code
    words: str
    reports: tuple[UUID, ...] = ()

    @property
    def is_within(self) -> bool:
        return self.code == "within"


def coverage(piece: Glazed, reports: Sequence[Report]) -> Coverage:
    """Return what the reports say of a piece; every batch it was dipped in wants one.

    Of several reports that speak for a batch the newest counts.
    """
    missing = _missing(piece)
    if missing is not None:
        return missing
    newest_first = sorted(reports, key=lambda report: report.reported_on, reverse=True)
    used: list[Report] = []
    for batch in dict.fromkeys(piece.dips):
        assert batch is not None  # asked in _missing
        found = _speaking(batch, piece, newest_first)
        if isinstance(found, Coverage):
            return found
        used.append(found)
    worst = max(used, key=lambda report: _BAD[report.verdict.code])
    said = f"{worst.verdict.words}, report of {day(worst.reported_on)}"
    return Coverage(worst.verdict.code, said, tuple(report.id for report in used))


def _speaking(batch: Batch, piece: Glazed, newest_first: Sequence[Report]) -> Report | Coverage:
    """Return the newest report that speaks for a batch on this piece, or what is wanting."""
    firing, limits = piece.fired, piece.limits
    assert firing is not None
    assert limits is not None
    about = [
        report
        for report in newest_first
        if report.batch == batch.id
        and report.verdict.limits == limits
        and report.firing is not None
        and report.firing.is_like(firing)
    ]
    if not about:
        words = f"not tested: no report for {batch.label}, {firing.words}, {limits.words}"
        return Coverage("no_report", words)
    if not (piece.is_lid or piece.has_lid):
        return about[0]
    with_lid = [report for report in about if report.has_lid]
    words = f"not tested: the report for {batch.label} has no lid, which is tested apart"
    return with_lid[0] if with_lid else Coverage("lid_not_tested", words, (about[0].id,))


_BAD: Final = {"within": 0, "not_tested": 1, "not_told": 2, "over": 3}


def _missing(piece: Glazed) -> Coverage | None:
    if piece.is_display:
        return _plain("display")
    if piece.is_lid and not piece.has_vessel:
        return _plain("no_vessel")
    if piece.fired is None:
        if piece.booked:
            return Coverage("not_fired", f"not covered yet: {piece.booked} is not drawn")
        return _plain("no_load")
    if not piece.dips or None in piece.dips:
        return _plain("no_batch")
    return _plain("no_limits") if piece.limits is None else None


def _plain(code: Code) -> Coverage:
    return Coverage(code, SAID[code])
