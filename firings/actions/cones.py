"""Witness cones as they were found, the cone that a piece waits for, and its turn for it."""

from collections.abc import Sequence
from dataclasses import dataclass
from uuid import uuid5

from django.db import transaction

from firings.domain.cones import read_cone
from firings.domain.load_rules import ReasonWanted
from firings.models import FiringTicket, Load, QueueTurn, WitnessCone
from pieces.models import Piece
from studio.actions import journal
from studio.models import Act


@dataclass(frozen=True, slots=True)
class ConeGiven:
    """A cone on one shelf; level 1 is the lowest, the hand is that of a clock, None if not read."""

    role: str
    cone: str
    level: int | None = None
    clock_hand: int | None = None
    words: str = ""


@transaction.atomic
def record(*, act: Act, load: Load, cones: Sequence[ConeGiven]) -> list[WitnessCone]:
    """Keep how the cones of a load stood. Raises `UnknownCone`."""
    entry = journal.write(
        act=act,
        verb="read_cones",
        subjects=[("load", load.pk), ("kiln", load.kiln_id)],
        facts={"load": load.number, "cones": len(cones)},
    )
    rows = [
        WitnessCone(
            id=act.id if len(cones) == 1 else uuid5(act.id, f"cone {number}"),
            studio=act.studio,
            entry=entry,
            happened_at=act.happened_at,
            load=load,
            level=given.level,
            role=given.role,
            cone=read_cone(given.cone),
            clock_hand=given.clock_hand,
            words=given.words,
        )
        for number, given in enumerate(cones)
    ]
    WitnessCone.objects.bulk_create(rows)
    return rows


@dataclass(frozen=True, slots=True)
class TicketGiven:
    """Which cone is asked for; of fired ware also what was wrong, and what was mended since."""

    kind: str
    cone: str
    words: str = ""
    fault: str = ""
    mended: Sequence[str] = ()


@transaction.atomic
def ask_for(*, act: Act, piece: Piece, given: TicketGiven) -> FiringTicket:
    """Write which cone a piece waits for in its next firing of a kind. Raises `UnknownCone`."""
    cone, mended = read_cone(given.cone), list(given.mended)
    told_of = {"kind": given.kind, "cone": cone, "fault": given.fault, "mended": mended}
    entry = journal.write(
        act=act,
        verb="asked_for_cone",
        subjects=[("piece", piece.pk)],
        facts={name: value for name, value in told_of.items() if value},
    )
    return FiringTicket.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        piece=piece,
        kind=given.kind,
        cone=cone,
        words=given.words,
        fault=given.fault,
        mended=mended,
    )


@transaction.atomic
def put_first(*, act: Act, piece: Piece, kind: str, reason: str) -> QueueTurn:
    """Set the rule of the queue aside for the next firing of a piece; all can read why.

    Raises `ReasonWanted`.
    """
    if not reason.strip():
        raise ReasonWanted("Whoever waits behind it will ask. Say why.", pointer="#/reason")
    entry = journal.write(
        act=act, verb="put_first", subjects=[("piece", piece.pk)], facts={"kind": kind}
    )
    return QueueTurn.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        piece=piece,
        kind=kind,
        reason=reason.strip(),
    )
