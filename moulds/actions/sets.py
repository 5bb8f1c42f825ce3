"""Mould sets: a label on a shelf that stands for one clay part."""

from collections.abc import Mapping
from typing import Any

from django.db import transaction

from moulds.domain.wear import wear_of
from moulds.models import DesignPart, MouldSet
from studio.actions import journal
from studio.domain.refusals import Conflict
from studio.models import Act, Member, Place

EDITABLE = (
    "label",
    "owner",
    "place",
    "plaster_mm",
    "inspect_at_presses",
    "retire_at_presses",
    "is_hump",
    "rest_after_presses",
    "release_h",
)


class SetTaken(Conflict):
    code = "mould-set-taken"
    title = "There is a mould set of that label."


@transaction.atomic
def make(
    *,
    act: Act,
    label: str,
    makes: DesignPart,
    owner: Member | None = None,
    place: Place | None = None,
    **habits: Any,
) -> MouldSet:
    """Make a mould set without a casting; without an owner it is the studio's.

    `habits` are the other editable columns. Raises `SetTaken` and `NoSuchLife`.
    """
    _check_label(act, label)
    made = MouldSet(
        id=act.id, studio=act.studio, label=label, makes=makes, owner=owner, place=place, **habits
    )
    _check_life(made)
    subjects = [("mould_set", made.pk), ("design", makes.design_id)]
    journal.write(act=act, verb="made_mould_set", subjects=subjects)
    made.save(force_insert=True)
    return made


@transaction.atomic
def edit(*, act: Act, mould_set: MouldSet, changes: Mapping[str, Any]) -> MouldSet:
    """Change a set's label, owner, place or habits. Raises `SetTaken` and `NoSuchLife`."""
    row = MouldSet.objects.select_for_update().get(pk=mould_set.pk)
    if changes.get("label", row.label) != row.label:
        _check_label(act, changes["label"])
    for name in EDITABLE:
        if name in changes:
            setattr(row, name, changes[name])
    _check_life(row)
    journal.write(
        act=act,
        verb="changed_mould_set",
        subjects=[("mould_set", row.pk)],
        facts={"changed": sorted(changes), "place": row.place_id, "owner": row.owner_id},
    )
    row.revision += 1
    row.save()
    return row


def _check_label(act: Act, label: str) -> None:
    if MouldSet.objects.of(act.studio).filter(label=label).exists():
        raise SetTaken(f"{label} is there already.", label=label)


def _check_life(row: MouldSet) -> None:
    wear_of(0, inspect_at=row.inspect_at_presses, retire_at=row.retire_at_presses)
