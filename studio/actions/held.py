"""Acts that came too late: kept as they were sent, until an owner takes them or not."""

from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Final
from uuid import UUID

from django.db import IntegrityError, transaction

from studio.domain.refusals import Conflict
from studio.models import Act, Device, HeldAct, HeldAnswer, Member

from . import journal
from .replays import ActIdTaken

# A phone holds a few weeks of acts at the most; common sense, no source.
MOST_HELD: Final = 500


class HeldEnough(Conflict):
    code = "held-enough"
    title = "More acts than that are not kept for an owner to look at."


class HeldAnsweredAlready(Conflict):
    code = "held-answered-already"
    title = "An owner answered that already."


class HeldNotTaken(Conflict):
    code = "held-not-taken"
    title = "The studio does not take that act."


def hold(
    *,
    act_id: UUID,
    member: Member,
    device: Device,
    why: HeldAct.Why,
    path: str,
    body: Mapping[str, object],
    happened_at: datetime,
    at: datetime,
) -> HeldAct:
    """Keep the act for an owner; the same act sent again is the one kept.

    Raises `ActIdTaken` and `HeldEnough`.
    """
    kept = _kept(act_id, member)
    if kept is not None:
        return kept
    if HeldAct.objects.filter(member=member).count() >= MOST_HELD:
        raise HeldEnough("Ask an owner to write down what is left.", most=MOST_HELD)
    try:
        with transaction.atomic():
            return HeldAct.objects.create(
                id=act_id,
                studio=member.studio,
                member=member,
                device=device,
                why=why,
                path=path,
                body=dict(body),
                happened_at=happened_at,
                written_at=at,
            )
    except IntegrityError:
        # It arrived twice at once: the other one has been kept by now.
        kept = _kept(act_id, member)
        if kept is None:
            raise
        return kept


@transaction.atomic
def answer(
    *,
    act: Act,
    held: HeldAct,
    is_taken: bool,
    send: Callable[[HeldAct], Mapping[str, object] | None],
) -> HeldAnswer:
    """Take the act into the story through `send`, or not; either way what was sent is kept.

    `send` returns None, or the problem for which the studio does not take it. Raises
    `HeldAnsweredAlready`, and `HeldNotTaken` when the act cannot be taken as it was sent.
    """
    held = HeldAct.objects.select_for_update().get(pk=held.pk)
    if HeldAnswer.objects.filter(held=held).exists():
        raise HeldAnsweredAlready("Read the list anew.", held=str(held.pk))
    problem = send(held) if is_taken else None
    if problem is not None:
        raise HeldNotTaken(
            f"{problem.get('title', '')} {problem.get('detail', '')}".strip(), problem=problem
        )
    entry = journal.write(
        act=act,
        verb="answered_held_act",
        subjects=[("member", held.member_id)],
        facts={"held": held.pk, "is_taken": is_taken},
    )
    return HeldAnswer.objects.create(
        id=act.id,
        studio=act.studio,
        entry=entry,
        happened_at=act.happened_at,
        held=held,
        is_taken=is_taken,
    )


def _kept(act_id: UUID, member: Member) -> HeldAct | None:
    held = HeldAct.objects.filter(pk=act_id).first()
    if held is not None and held.member_id != member.pk:
        raise ActIdTaken("Make the act again with an id of its own.")
    return held
