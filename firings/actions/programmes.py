"""Programmes: ways to fire, with a name."""

from collections.abc import Mapping, Sequence
from typing import Any, Final
from uuid import UUID, uuid5

from django.db import transaction

from firings.domain.cones import read_cone
from firings.models import Programme, Segment
from studio.actions import journal
from studio.domain.refusals import Conflict
from studio.models import Act

EDITABLE: Final[tuple[str, ...]] = ("name", "kind", "cone", "top_c")


class ProgrammeTaken(Conflict):
    code = "programme-taken"
    title = "There is a programme of that name."


@transaction.atomic
def make(
    *, act: Act, fields: Mapping[str, Any], segments: Sequence[Mapping[str, Any]]
) -> Programme:
    """Make a programme. Raises `ProgrammeTaken` and `UnknownCone`."""
    journal.write(act=act, verb="made_programme", subjects=[("programme", act.id)])
    _check_name(act, str(fields["name"]), None)
    given = {**fields, "cone": read_cone(str(fields["cone"]))}
    programme = Programme.objects.create(id=act.id, studio=act.studio, **given)
    _write(act, programme, segments)
    return programme


@transaction.atomic
def edit(
    *,
    act: Act,
    programme: Programme,
    changes: Mapping[str, Any],
    segments: Sequence[Mapping[str, Any]] | None = None,
) -> Programme:
    """Change a programme; segments, where given, stand for all it had.

    Raises `ProgrammeTaken` and `UnknownCone`.
    """
    changed = sorted([*changes, *([] if segments is None else ["segments"])])
    journal.write(
        act=act,
        verb="changed_programme",
        subjects=[("programme", programme.pk)],
        facts={"changed": changed},
    )
    programme = Programme.objects.select_for_update().get(pk=programme.pk)
    if "name" in changes:
        _check_name(act, str(changes["name"]), programme.pk)
    for name in EDITABLE:
        if name in changes:
            value = read_cone(str(changes[name])) if name == "cone" else changes[name]
            setattr(programme, name, value)
    programme.revision += 1
    programme.save()
    if segments is not None:
        programme.segments.all().delete()
        _write(act, programme, segments)
    return programme


def _write(act: Act, programme: Programme, segments: Sequence[Mapping[str, Any]]) -> None:
    Segment.objects.bulk_create(
        Segment(
            id=uuid5(act.id, f"segment {order}"),
            studio=act.studio,
            programme=programme,
            order=order,
            **row,
        )
        for order, row in enumerate(segments, start=1)
    )


def _check_name(act: Act, name: str, own: UUID | None) -> None:
    same = Programme.objects.of(act.studio).filter(name__iexact=name)
    if {row.pk for row in same} - {own}:
        raise ProgrammeTaken(f"{name} is there already.", name=name)
