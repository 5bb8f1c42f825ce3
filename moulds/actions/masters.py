"""Masters: the enlarged models that moulds are cast from."""

from django.db import transaction

from moulds.models import Design, DesignPart, Master, MasterEvent
from studio.actions import journal
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act

from . import folds


class MasterTaken(Conflict):
    code = "master-taken"
    title = "There is a master of that label."


class PartOfAnother(Unworkable):
    code = "part-of-another-design"
    title = "That part belongs to another design."


@transaction.atomic
def make(
    *, act: Act, label: str, design: Design, part: DesignPart | None = None, is_ready: bool = False
) -> Master:
    """Note a master of a design, or of one part of it.

    Raises `MasterTaken` and `PartOfAnother`.
    """
    if part is not None and part.design_id != design.pk:
        raise PartOfAnother(f"{part.role} is no part of {design.name}.")
    if Master.objects.of(act.studio).filter(label=label).exists():
        raise MasterTaken(f"{label} is there already.", label=label)
    subjects = [("master", act.id), ("design", design.pk)]
    entry = journal.write(
        act=act, verb="made_master", subjects=subjects, facts={"is_ready": is_ready}
    )
    master = Master.objects.create(
        id=act.id, studio=act.studio, label=label, design=design, part=part, is_ready=is_ready
    )
    if is_ready:
        MasterEvent.objects.create(
            id=act.row_id(master.pk),
            studio=act.studio,
            entry=entry,
            happened_at=act.happened_at,
            master=master,
            is_ready=True,
        )
    return master


@transaction.atomic
def say(*, act: Act, master: Master, is_ready: bool, reason: str = "") -> MasterEvent:
    """Record that a master became ready, or is lost."""
    subjects = [("master", master.pk), ("design", master.design_id)]
    verb = "master_ready" if is_ready else "master_lost"
    entry = journal.write(act=act, verb=verb, subjects=subjects)
    event = MasterEvent.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        master=master,
        is_ready=is_ready,
        reason=reason,
    )
    folds.refold_master(master)
    return event
