"""What happens to mould parts besides pressing: chips, mending, loss, and looks at their detail."""

from dataclasses import dataclass
from typing import Final

from django.db import transaction

from moulds.models import Inspection, MouldPart, MouldPartEvent, Pressing
from moulds.queries.castings import pressings_to_check
from studio.actions import journal
from studio.domain.refusals import Unworkable
from studio.models import Act

from .folds import refold_casting

STATE_OF: Final = {
    "chipped": MouldPart.State.CHIPPED,
    "out_of_use": MouldPart.State.OUT_OF_USE,
    "missing": MouldPart.State.MISSING,
    "mended": MouldPart.State.WHOLE,
    "found": MouldPart.State.WHOLE,
}
DAMAGE: Final = frozenset({"chipped", "missing"})  # anybody may say so
CRUMBS: Final = frozenset({"chipped", "out_of_use"})  # plaster may be in what was pressed


class ReasonWanted(Unworkable):
    code = "reason-wanted"
    title = "Say why it is out of use."


@dataclass(frozen=True, slots=True)
class Told:
    """What was said of a mould part, how it is now, and the pressings to look over."""

    event: MouldPartEvent
    mould_part: MouldPart
    to_check: tuple[Pressing, ...]


@transaction.atomic
def tell(*, act: Act, mould_part: MouldPart, kind: str, reason: str = "") -> Told:
    """Record that a mould part was chipped, taken out of use, missed, mended or found.

    Raises `ReasonWanted`.
    """
    if kind == "out_of_use" and not reason.strip():
        error = {"pointer": "#/reason", "code": ReasonWanted.code, "detail": ReasonWanted.title}
        raise ReasonWanted("Others will ask.", errors=[error])
    casting = mould_part.casting
    subjects = [
        ("mould_part", mould_part.pk),
        ("casting", casting.pk),
        ("mould_set", casting.mould_set_id),
    ]
    entry = journal.write(act=act, verb=f"mould_{kind}", subjects=subjects)
    event = MouldPartEvent.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        mould_part=mould_part,
        state=STATE_OF[kind],
        reason=reason.strip(),
    )
    refold_casting(casting)
    mould_part = MouldPart.objects.select_related("casting__mould_set").get(pk=mould_part.pk)
    to_check = pressings_to_check(mould_part, until=act.happened_at) if kind in CRUMBS else []
    return Told(event, mould_part, tuple(to_check))


@transaction.atomic
def inspect(*, act: Act, mould_part: MouldPart, finding: str) -> Inspection:
    """Record a look at the detail of a mould part; a chip that is found is also its state."""
    casting = mould_part.casting
    subjects = [
        ("mould_part", mould_part.pk),
        ("casting", casting.pk),
        ("mould_set", casting.mould_set_id),
    ]
    entry = journal.write(
        act=act, verb="inspected_mould", subjects=subjects, facts={"finding": finding}
    )
    shared = {"studio": act.studio, "entry": entry, "happened_at": act.happened_at}
    inspection = Inspection.objects.create(
        id=act.id, mould_part=mould_part, finding=finding, **shared
    )
    if finding == Inspection.Finding.CHIPPED:
        MouldPartEvent.objects.create(
            id=act.row_id(mould_part.pk),
            mould_part=mould_part,
            state=MouldPart.State.CHIPPED,
            **shared,
        )
        refold_casting(casting)
    return inspection
