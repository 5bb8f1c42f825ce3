"""Somebody leaves: from a day on they may no longer come in, and all they did stays."""

from datetime import datetime

from django.db import transaction

from studio.domain.refusals import Conflict, NotAllowed
from studio.models import Act, JournalHead, Member
from studio.permissions import Role
from studio.queries import people

from . import journal
from .members import LastOwner


class LeftAlready(Conflict):
    code = "left-already"
    title = "That person has left."


class HasLeft(NotAllowed):
    code = "has-left"
    title = "You have left this studio."


@transaction.atomic
def say(*, act: Act, member: Member, leaves_at: datetime | None) -> Member:
    """Say when the member leaves, or that they stay; a time that has come ends it at once.

    Raises `LastOwner` and `LeftAlready`.
    """
    # Two owners who leave at the same moment must not both succeed.
    JournalHead.objects.select_for_update().get(studio=act.studio)
    member = Member.objects.get(pk=member.pk)
    if member.left_at is not None:
        raise LeftAlready("Invite them anew.", left_at=member.left_at.isoformat())
    if leaves_at is not None:
        _check_an_owner_stays(member)
    member.leaves_at = leaves_at
    if leaves_at is not None and leaves_at <= act.written_at:
        member.left_at = leaves_at
    member.save(update_fields=["leaves_at", "left_at"])
    verb = "stays" if leaves_at is None else "leaves"
    facts = {"leaves_at": leaves_at}
    journal.write(act=act, verb=verb, subjects=[("member", member.pk)], facts=facts)
    return member


def end_due(*, at: datetime) -> int:
    """End the membership of everybody whose day has come; returns how many."""
    due = Member.objects.filter(leaves_at__lte=at, left_at=None)
    for member in due:
        # Their day as said, not the sweep's: what happened before it is still theirs to tell.
        Member.objects.filter(pk=member.pk, left_at=None).update(left_at=member.leaves_at)
    return len(due)


def _check_an_owner_stays(member: Member) -> None:
    owners = people.with_role(member.studio, Role.OWNER)
    staying = [m for m in owners if m.pk != member.pk and m.leaves_at is None]
    if Role.OWNER in member.roles and not staying:
        raise LastOwner("Make somebody else an owner first.", member=str(member.pk))
