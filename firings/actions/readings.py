"""Readings of a kiln, kept as given: what looks odd is asked about and left out of every sum."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from uuid import UUID, uuid5

from django.db import transaction

from firings.domain.readings import Judged, gate
from firings.models import KilnReading, Load
from studio.actions import journal
from studio.models import Act, JournalHead

from . import folds, telling


@dataclass(frozen=True, slots=True)
class ReadingGiven:
    """What a kiln showed, and what it was set to. [°C]"""

    taken_at: datetime
    reading_c: float
    set_c: float | None = None
    words: str = ""


@dataclass(frozen=True, slots=True)
class Recorded:
    """Rows kept, a judgement each, and how many readings were here already."""

    rows: list[KilnReading]
    judged: list[Judged]
    repeated: int


@transaction.atomic
def record(*, act: Act, load: Load, readings: Sequence[ReadingGiven]) -> Recorded:
    """Keep readings of one load; the same reading again is the same reading.

    Whoever watches, the technicians and the owners are told at once of one over the kiln's top.
    The caller has checked that none is of the future. Raises what the journal refuses to correct.
    """
    JournalHead.objects.select_for_update().get(studio=act.studio)
    known = _known(load, act.corrects)
    unique = list({_key(given): given for given in readings}.values())
    fresh = [given for given in unique if _key(given) not in known]
    judged = [gate(given.reading_c, load.kiln.top_c) for given in fresh]
    entry = journal.write(
        act=act,
        verb="read_kiln",
        subjects=[("load", load.pk), ("kiln", load.kiln_id)],
        facts={
            "load": load.number,
            "readings": len(fresh),
            "repeated": len(readings) - len(fresh),
            "odd": sum(each.verdict in ("asked", "out_of_range") for each in judged),
            **({"reading_c": fresh[0].reading_c} if len(fresh) == 1 else {}),
        },
    )
    rows = [
        KilnReading(
            id=_row_id(act, given, is_alone=len(readings) == 1),
            studio=act.studio,
            entry=entry,
            happened_at=given.taken_at,
            load=load,
            reading_c=given.reading_c,
            set_c=given.set_c,
            words=given.words,
            use=verdict.verdict,
            why=verdict.detail,
            instead_c=verdict.instead_c,
        )
        for given, verdict in zip(fresh, judged, strict=True)
    ]
    KilnReading.objects.bulk_create(rows, batch_size=500)
    folds.refold([load], at=act.written_at)
    hottest = max(
        (row for row in rows if row.use == KilnReading.Use.OVER_TOP),
        key=lambda row: row.reading_c,
        default=None,
    )
    if hottest is not None:
        telling.over_top(load, hottest, at=act.written_at)
    return Recorded(rows, judged, len(readings) - len(fresh))


def _known(load: Load, corrected: UUID | None) -> set[tuple[float, float, float | None]]:
    rows: Any = KilnReading.objects.filter(load=load).standing().exclude(entry=corrected)
    return {(row.happened_at.timestamp(), row.reading_c, row.set_c) for row in rows}


def _key(given: ReadingGiven) -> tuple[float, float, float | None]:
    return given.taken_at.timestamp(), given.reading_c, given.set_c


def _row_id(act: Act, given: ReadingGiven, *, is_alone: bool) -> UUID:
    return act.id if is_alone else uuid5(act.id, repr(_key(given)))
