"""Loads: opening one for a slot of a kiln, and changing when, where and how it is fired."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any, Final

from django.db import transaction

from firings.domain.cautions import Caution
from firings.domain.cones import read_cone, zero_warning
from firings.domain.load_rules import STATE_WORDS
from firings.models import Kiln, Load, Placement, Programme
from studio.actions import journal, numbers
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, JournalHead, Member

from . import folds

SERIES: Final = "F"
CUTOFF_LEAD: Final = timedelta(hours=2)
EDITABLE: Final = (
    "kiln",
    "programme",
    "starts_at",
    "cutoff_at",
    "watcher",
    "reading_every_min",
    "expected_h",
    "cone",
)
# What changes what was promised to those inside; the rest may change until it is over.
PROMISED: Final = frozenset({"kiln", "cone"})
MOVED_BY: Final = frozenset({"kiln", "starts_at", "cutoff_at"})


class KilnOutOfUse(Conflict):
    code = "kiln-out-of-use"
    title = "That kiln is out of use."


class NumberTaken(Conflict):
    code = "load-number-taken"
    title = "There is a load of that number."


class CutOffTooLate(Unworkable):
    code = "cut-off-too-late"
    title = "The list closes before the kiln is lit."


class TooHotForKiln(Unworkable):
    code = "too-hot-for-kiln"
    title = "That kiln does not go so hot."


class LoadUnderWay(Conflict):
    code = "load-under-way"
    title = "That load cannot be changed any more."


class OtherCone(Conflict):
    code = "cone-of-those-inside"
    title = "There is ware in it that was put on for the other cone."


@dataclass(frozen=True, slots=True)
class LoadGiven:
    """A load somebody opens. Without a cut-off the list closes two hours before it is lit."""

    kiln: Kiln
    kind: str
    cone: str
    starts_at: datetime
    cutoff_at: datetime | None = None
    programme: Programme | None = None
    watcher: Member | None = None
    number: str | None = None
    is_unplanned: bool = False
    more: Mapping[str, Any] = field(default_factory=dict)


@transaction.atomic
def open_load(*, act: Act, given: LoadGiven) -> Load:
    """Open a load for a slot; an unplanned one is written afterwards and may be in any kiln.

    Raises `KilnOutOfUse`, `NumberTaken`, `CutOffTooLate`, `TooHotForKiln` and `UnknownCone`.
    """
    JournalHead.objects.select_for_update().get(studio=act.studio)
    kiln = Kiln.objects.select_for_update().get(pk=given.kiln.pk)
    if kiln.is_out_of_use and not given.is_unplanned:
        raise _out_of_use(kiln)
    _check_heat(kiln, given.programme)
    cutoff_at = given.cutoff_at or given.starts_at - CUTOFF_LEAD
    _check_cutoff(cutoff_at, given.starts_at)
    number = _number(act, given.number)
    journal.write(
        act=act,
        verb="opened_load",
        subjects=[("load", act.id), ("kiln", kiln.pk)],
        facts={"load": number, "kind": given.kind, "is_unplanned": given.is_unplanned},
    )
    return Load.objects.create(
        id=act.id,
        studio=act.studio,
        number=number,
        kiln=kiln,
        kind=given.kind,
        cone=read_cone(given.cone),
        programme=given.programme,
        starts_at=given.starts_at,
        cutoff_at=cutoff_at,
        watcher=given.watcher,
        is_unplanned=given.is_unplanned,
        made_at=act.written_at,
        **given.more,
    )


@transaction.atomic
def change(*, act: Act, load: Load, changes: Mapping[str, Any]) -> Load:
    """Change when, where and how a load is fired; those with ware in it are told by the sweep.

    Raises `LoadUnderWay`, `OtherCone`, `KilnOutOfUse`, `CutOffTooLate` and `TooHotForKiln`.
    """
    given = {name: changes[name] for name in EDITABLE if name in changes}
    if "cone" in given:
        given["cone"] = read_cone(str(given["cone"]))
    journal.write(
        act=act,
        verb="moved_load" if MOVED_BY & given.keys() else "changed_load",
        subjects=[("load", load.pk)],
        facts={"load": load.number, "changed": sorted(given), **_from_to(load, given)},
    )
    load = folds.locked(load)
    _check_may_change(load, given)
    lead = load.starts_at - load.cutoff_at
    for name, value in given.items():
        setattr(load, name, value)
    if load.kiln.is_out_of_use and "kiln" in given:
        raise _out_of_use(load.kiln)
    _check_heat(load.kiln, load.programme)
    if "starts_at" in given and "cutoff_at" not in given:
        load.cutoff_at = load.starts_at - lead
    _check_cutoff(load.cutoff_at, load.starts_at)
    load.revision += 1
    load.save(update_fields=[*EDITABLE, "revision"])
    return load


def warnings(load: Load) -> list[Caution]:
    """Return what looks odd about a load: a cone on the other side of zero."""
    said = zero_warning(load.cone, load.kind)
    return [Caution("cone-and-zero", said)] if said else []


def _check_may_change(load: Load, given: Mapping[str, Any]) -> None:
    is_early = load.state in (Load.State.OPEN, Load.State.SETTLED)
    if load.is_over or (not is_early and (PROMISED | MOVED_BY) & given.keys()):
        raise LoadUnderWay(f"{load.number} is {STATE_WORDS[load.state]}.", state=load.state)
    is_other = "cone" in given and given["cone"] != load.cone
    if is_other and Placement.objects.filter(load=load, removed_at=None).exists():
        raise OtherCone("Take the ware off first, or open another load.", cone=load.cone)


def _check_heat(kiln: Kiln, programme: Programme | None) -> None:
    if programme is not None and programme.top_c > kiln.top_c:
        raise TooHotForKiln(
            f"{programme.name} goes to {programme.top_c:.0f} °C; {kiln.number} reaches "
            f"{kiln.top_c:.0f} °C.",
            top_c=kiln.top_c,
        )


def _check_cutoff(cutoff_at: datetime, starts_at: datetime) -> None:
    if cutoff_at > starts_at:
        detail = "Set it no later than the start."
        error = {"pointer": "#/cutoff_at", "code": CutOffTooLate.code, "detail": detail}
        raise CutOffTooLate(detail, errors=[error])


def _number(act: Act, given: str | None) -> str:
    if given is None:
        return f"{SERIES}-{numbers.take(studio=act.studio, letters=SERIES)}"
    if Load.objects.of(act.studio).filter(number__iexact=given).exists():
        raise NumberTaken(f"{given} is there already.", number=given)
    figures = given.removeprefix(f"{SERIES}-")
    if figures.isascii() and figures.isdigit():
        numbers.pass_over(studio=act.studio, letters=SERIES, number=int(figures))
    return given


def _from_to(load: Load, given: Mapping[str, Any]) -> dict[str, object]:
    return {
        f"{name}_{when}": value
        for name in ("starts_at", "cutoff_at")
        if name in given
        for when, value in (("from", getattr(load, name)), ("to", given[name]))
    }


def _out_of_use(kiln: Kiln) -> KilnOutOfUse:
    return KilnOutOfUse(
        f"{kiln.number} is out of use: {kiln.out_of_use_reason or 'no reason was given'}.",
        kiln=kiln.number,
        reason=kiln.out_of_use_reason,
    )
