"""Writing what is so now of moulds: only this module writes the folded columns."""

from typing import Final

from moulds.domain import folds
from moulds.models import (
    Booking,
    Casting,
    Master,
    MasterEvent,
    MouldPart,
    MouldPartEvent,
    MouldWeighing,
    Pressing,
)
from moulds.queries import facts
from moulds.queries.masters import last_said
from studio.actions import reminders
from studio.domain.refusals import Unworkable
from studio.models import Act, JournalEntry

# Acts that made or changed a thing: others may have used it since.
MAKING: Final = frozenset(
    {
        "made_design",
        "changed_design",
        "made_master",
        "made_mould_set",
        "changed_mould_set",
        "poured",
        "gave_up_mould",
    }
)
# The cause of the reminder that a pressing met a booking.
MEETING: Final = "mould_booked"


class MadeForGood(Unworkable):
    code = "made-for-good"
    title = "What was made is changed, not taken back."


def refold_casting(casting: Casting) -> Casting:
    """Lock a casting, fold its counts, states and weights anew, and return it as it is now."""
    casting = Casting.objects.select_for_update().get(pk=casting.pk)
    pressings = facts.pressings_of([casting.pk])[casting.pk]
    weights = folds.weights_of(facts.weighings_of([casting.pk])[casting.pk])
    casting.dry_g, casting.now_g = weights.dry_g, weights.now_g
    casting.weighed_at = weights.weighed_at
    casting.save(update_fields=["dry_g", "now_g", "weighed_at"])
    parts = list(MouldPart.objects.select_for_update().filter(casting=casting))
    changes = facts.state_changes_of(part.pk for part in parts)
    for part in parts:
        part.presses = folds.count_of(part.pk, before=part.presses_before, pressings=pressings)
        part.state, part.state_reason = folds.state_of(changes[part.pk])
    MouldPart.objects.bulk_update(parts, ["presses", "state", "state_reason"])
    return casting


def refold_master(master: Master) -> Master:
    """Lock a master, fold whether it is ready, and return it as it is now."""
    master = Master.objects.select_for_update().get(pk=master.pk)
    said = last_said(master)
    master.is_ready = said is not None and said.is_ready
    master.save(update_fields=["is_ready"])
    return master


def refold_after(*, act: Act, entry: JournalEntry) -> None:
    """Fold anew every casting and master that a corrected entry wrote facts about.

    Call it inside the correction's transaction, after its own entry is written. A booking that is
    taken back is given up. Raises `MadeForGood`.
    """
    if entry.verb in MAKING:
        raise MadeForGood("Change it, or say what became of it.", verb=entry.verb)
    castings = {
        *Pressing.objects.filter(entry=entry).values_list("casting", flat=True),
        *MouldWeighing.objects.filter(entry=entry).values_list("casting", flat=True),
        *MouldPartEvent.objects.filter(entry=entry).values_list("mould_part__casting", flat=True),
    }
    for casting in Casting.objects.filter(pk__in=castings).order_by("pk"):
        refold_casting(casting)
    for set_id in Pressing.objects.filter(entry=entry).values_list("casting__mould_set", flat=True):
        reminders.withdraw(studio=act.studio, object_id=set_id, causes=[MEETING])
    masters = MasterEvent.objects.filter(entry=entry).values("master")
    for master in Master.objects.filter(pk__in=masters):
        refold_master(master)
    Booking.objects.filter(pk=entry.pk, given_up_at=None).update(given_up_at=act.happened_at)
