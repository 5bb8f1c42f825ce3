"""Taking an act back, with all that it did to loads, kilns and pieces."""

from typing import Final

from django.db import transaction

from firings.models import Kiln, Load, Placement
from pieces.actions import retractions
from pieces.actions.retractions import UndoneOtherwise
from studio.actions.journal import CorrectsNothing
from studio.models import Act, JournalEntry

from . import events, folds, placing

# What was opened, moved or set up is changed by an act of its own.
MINDED: Final = frozenset(
    {
        *events.VERBS.values(),
        "put_on_load",
        "read_kiln",
        "read_cones",
        "kiln_out_of_use",
        "kiln_in_use",
        "serviced_kiln",
    }
)


@transaction.atomic
def retract(*, act: Act, may_any: bool) -> JournalEntry:
    """Take the act back that `act.corrects` names, and fold anew all that it told of.

    Ware that it put on a load is taken off again while the load is open. Raises `LoadSettled` and
    what `pieces.actions.retractions.retract` raises.
    """
    named = None
    if act.corrects is not None:
        named = JournalEntry.objects.filter(studio=act.studio, pk=act.corrects).first()
    if named is None:
        raise CorrectsNothing(f"No act {act.corrects} in this studio.", corrects=str(act.corrects))
    is_minded = named.verb in MINDED
    entry = retractions.retract(
        act=act, may_any=may_any, minded=frozenset({"load", "kiln"}) if is_minded else frozenset()
    )
    if is_minded:
        _undo(act, named)
    return entry


def _undo(act: Act, named: JournalEntry) -> None:
    told_of = list(named.subjects.values_list("kind", "subject_id"))
    loads = list(Load.objects.filter(pk__in=[pk for kind, pk in told_of if kind == "load"]))
    if named.verb == "put_on_load":
        _take_off(act, named, loads)
    elif named.verb == "loaded_kiln":
        # What was added while the kiln was loaded leaves the load with its visit.
        added = list(Placement.objects.filter(act_id=named.pk, removed_at=None))
        placing.remove(added, act=act, reason="taken back")
    folds.refold(loads, at=act.written_at)
    if named.verb in ("kiln_out_of_use", "kiln_in_use"):
        for kiln in Kiln.objects.filter(pk__in=[pk for kind, pk in told_of if kind == "kiln"]):
            folds.refold_kiln(kiln)


def _take_off(act: Act, named: JournalEntry, loads: list[Load]) -> None:
    rows = list(Placement.objects.filter(act_id=named.pk, removed_at=None).select_for_update())
    if not rows:
        raise UndoneOtherwise("Nothing of it is on the load any more.", concerns=["load"])
    for load in loads:
        placing.check_open(folds.locked(load))
    placing.remove(rows, act=act, reason="taken back")
