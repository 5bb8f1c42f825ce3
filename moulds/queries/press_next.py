"""What could be pressed now, driest first."""

from collections.abc import Collection, Iterable
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from moulds.domain.readiness import say_dryness
from moulds.models import DesignPart, MouldPart
from studio.models import Studio

from . import sets
from .sets import SetNow

ORDER = ("dry", "usable", "unknown")
WORDS = {MouldPart.State.OUT_OF_USE: "is out of use", MouldPart.State.MISSING: "is missing"}


@dataclass(frozen=True, slots=True)
class PressRow:
    """A set that is free and damp enough to speak of, and whether to press it."""

    now: SetNow
    may_press: bool
    reason: str


def press_next(studio: Studio, *, at: datetime, busy: Collection[UUID]) -> list[PressRow]:
    """Return the sets to press next: dry, then usable, then never weighed, then those held back.

    Left out: castings with clay in them (`busy`, their ids), sets that rest wet, lack a part, or
    are chipped and therefore watched. A set whose design waits for another part's mould comes last.
    Ten queries at most, however many sets.
    """
    everything = sets.now_of(sets.all_of(studio), studio=studio, at=at, with_looks=False)
    partners = _unfit_partners(studio, everything)
    rows = []
    for row in everything:
        if row.casting is None or row.casting.pk in busy or row.unfit or row.is_chipped:
            continue
        if row.dryness.word == "rest":
            continue
        held = partners.get(row.mould_set.makes_id)
        reason = held or f"{row.dryness.word}: {say_dryness(row.dryness)}"
        rows.append(PressRow(row, may_press=held is None, reason=reason))
    return sorted(rows, key=_order)


def _unfit_partners(studio: Studio, everything: Iterable[SetNow]) -> dict[UUID, str]:
    """Return why pressing a clay part leads nowhere: another of its design has no fit mould."""
    by_part: dict[UUID, list[SetNow]] = {}
    for row in everything:
        if row.casting is not None:
            by_part.setdefault(row.mould_set.makes_id, []).append(row)
    stuck: dict[UUID, list[tuple[UUID, SetNow]]] = {}
    required = DesignPart.objects.filter(studio=studio, is_required=True, pk__in=by_part)
    for part_id, design_id in required.values_list("pk", "design_id"):
        rows = by_part[part_id]
        if all(row.unfit for row in rows):
            stuck.setdefault(design_id, []).extend((part_id, row) for row in rows)
    found: dict[UUID, str] = {}
    for rows in by_part.values():
        makes = rows[0].mould_set.makes
        others = [row for part_id, row in stuck.get(makes.design_id, ()) if part_id != makes.pk]
        if others:
            found[makes.pk] = _say(others)
    return found


def _say(others: list[SetNow]) -> str:
    ordered = sorted(others, key=lambda row: (row.unfit != "out_of_use", row.mould_set.label))
    first, *more = [
        f"{row.mould_set.label} {WORDS[MouldPart.State(str(row.unfit))]}" for row in ordered
    ]
    return "; ".join([f"its partner {first}", *more])


def _order(row: PressRow) -> tuple[bool, int, str]:
    return not row.may_press, ORDER.index(row.now.dryness.word), row.now.mould_set.label
