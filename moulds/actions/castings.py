"""Pouring: a mould set gets a new casting, and the one before it is laid aside."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from uuid import UUID

from django.db import transaction
from django.db.models import Max

from moulds.domain.cautions import FIRST_PRESS, Caution
from moulds.domain.lineage import from_fired
from moulds.domain.moisture import USUAL_CAPACITY_FRACTION
from moulds.models import Casting, Master, MouldPart, MouldSet, Pressing
from moulds.queries.castings import pressings_to_look_over
from moulds.queries.masters import was_ready
from studio.actions import journal
from studio.domain.ids import uuid7
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, Member


class MasterOfAnother(Unworkable):
    code = "master-of-another-part"
    title = "That master is of something else."


class MasterNotReady(Conflict):
    code = "master-not-ready"
    title = "There is no master to pour from."


class GenerationTaken(Conflict):
    code = "generation-taken"
    title = "The master has a casting of that number."


class NoBlocks(Unworkable):
    code = "casting-without-parts"
    title = "A casting has at least one mould part, each with a name of its own."


class CastFromFired(Unworkable):
    code = "cast-from-fired-piece"
    title = "A mould taken from a fired piece is not the same mould."


@dataclass(frozen=True, slots=True)
class Block:
    """One mould part to be: `presses_before` taken over from earlier notes, on whose word."""

    name: str
    presses_before: int = 0
    said_by: Member | None = None
    id: UUID | None = None


@dataclass(frozen=True, slots=True)
class Poured:
    """The new casting, what to mind, the casting laid aside and its pressings to look over."""

    casting: Casting
    cautions: tuple[Caution, ...] = ()
    laid_aside: Casting | None = None
    to_check: tuple[Pressing, ...] = ()


@transaction.atomic
def pour(
    *,
    act: Act,
    mould_set: MouldSet,
    master: Master,
    blocks: Sequence[Block],
    generation: int | None = None,
    poured_at: datetime | None = None,
    capacity_fraction: float = USUAL_CAPACITY_FRACTION,
    is_in_use: bool = True,
) -> Poured:
    """Record a casting: counts start at what was taken over, generations go on by master.

    Raises `MasterOfAnother`, `MasterNotReady`, `GenerationTaken` and `NoBlocks`.
    """
    mould_set = MouldSet.objects.select_for_update().get(pk=mould_set.pk)
    master = Master.objects.select_for_update().get(pk=master.pk)
    poured_at = poured_at or act.happened_at
    _check_master(mould_set, master, poured_at)
    _check_blocks(blocks)
    number = _generation(master, generation)
    before = Casting.objects.filter(mould_set=mould_set, is_in_use=True).first()
    subjects = [("casting", act.id), ("mould_set", mould_set.pk), ("master", master.pk)]
    if before is not None and is_in_use:
        subjects.append(("casting", before.pk))
        Casting.objects.filter(pk=before.pk).update(is_in_use=False)
    facts = {"generation": number, "poured_at": poured_at, "blocks": len(blocks)}
    journal.write(act=act, verb="poured", subjects=subjects, facts=facts)
    casting = Casting.objects.create(
        id=act.id,
        studio=act.studio,
        mould_set=mould_set,
        master=master,
        generation=number,
        poured_at=poured_at,
        is_in_use=is_in_use,
        capacity_fraction=capacity_fraction,
    )
    _add_blocks(act, casting, blocks)
    laid_aside = before if is_in_use else None
    is_new = not any(block.presses_before for block in blocks)
    return Poured(
        casting=casting,
        cautions=(FIRST_PRESS,) if is_new else (),
        laid_aside=laid_aside,
        to_check=tuple(pressings_to_look_over(laid_aside, until=act.happened_at))
        if laid_aside
        else (),
    )


def refuse_fired(mould_set: MouldSet, *, fired_mm: float | None) -> None:
    """Raise `CastFromFired`, with what the size would become and the model to make instead."""
    body = mould_set.makes.design.body
    shrinkage = body.total_shrinkage_fraction if body else None
    master = "Make a model first and call it a new master."
    if shrinkage is None:
        raise CastFromFired(f"It would come out smaller by the clay's shrinkage. {master}")
    if fired_mm is None:
        raise CastFromFired(
            f"It would come out {100 * shrinkage:.1f} % smaller. {master}",
            shrinkage_fraction=shrinkage,
        )
    sizes = from_fired(fired_mm, shrinkage)
    raise CastFromFired(
        f"{fired_mm:.1f} mm fired would come out {sizes.would_become_mm:.1f} mm. Enlarge first: "
        f"{sizes.model_mm:.1f} mm model, as a new master.",
        shrinkage_fraction=shrinkage,
        fired_mm=fired_mm,
        would_become_mm=round(sizes.would_become_mm, 1),
        model_mm=round(sizes.model_mm, 1),
    )


def _check_master(mould_set: MouldSet, master: Master, poured_at: datetime) -> None:
    is_of_part = master.part_id in (None, mould_set.makes_id)
    if master.design_id != mould_set.makes.design_id or not is_of_part:
        raise MasterOfAnother(
            f"{master.label} does not give what {mould_set.label} makes.", master=master.label
        )
    if not was_ready(master, poured_at):
        raise MasterNotReady(f"{master.label} was not ready then.", master=master.label)


def _check_blocks(blocks: Sequence[Block]) -> None:
    names = [block.name for block in blocks]
    if not names or len(set(names)) < len(names):
        raise NoBlocks("Name each mould part once.", names=names)


def _generation(master: Master, given: int | None) -> int:
    castings = Casting.objects.filter(master=master)
    if given is None:
        highest: int | None = castings.aggregate(highest=Max("generation"))["highest"]
        return (highest or 0) + 1
    taken = castings.filter(generation=given).select_related("mould_set").first()
    if taken is not None:
        raise GenerationTaken(
            f"Generation {given} of {master.label} is {taken.mould_set.label}.", generation=given
        )
    return given


def _add_blocks(act: Act, casting: Casting, blocks: Sequence[Block]) -> None:
    MouldPart.objects.bulk_create(
        MouldPart(
            id=block.id or uuid7(),
            studio=act.studio,
            casting=casting,
            name=block.name,
            order=order,
            presses_before=block.presses_before,
            presses_before_by=(block.said_by or act.member) if block.presses_before else None,
            presses=block.presses_before,
        )
        for order, block in enumerate(blocks)
    )
