"""Inviting somebody by a link, and taking it."""

import contextlib
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.contrib.auth.models import User
from django.db import IntegrityError, transaction

from studio.domain.ids import uuid7
from studio.domain.refusals import Conflict, Missing
from studio.models import Act, Invitation, JournalHead, Member
from studio.permissions import Role

from . import devices, journal, keys
from .people import Person, enter


class InvitationUnknown(Missing):
    code = "invitation-unknown"
    title = "That invitation is not known."


class InvitationEnded(Conflict):
    code = "invitation-ended"
    title = "That invitation can no longer be taken."


class UsernameTaken(Conflict):
    code = "username-taken"
    title = "Somebody has that name already."


@dataclass(frozen=True, slots=True)
class NewAccount:
    """The name and password somebody chooses to sign in with."""

    username: str
    password: str


@dataclass(frozen=True, slots=True)
class Newcomer:
    """Whoever takes an invitation: with an account already, or with a new one."""

    account: User | NewAccount
    first_name: str
    full_name: str
    initials: str


@transaction.atomic
def invite(
    *, act: Act, roles: Iterable[Role], email: str, valid_for: timedelta
) -> tuple[Invitation, str]:
    """Make a link that one person can take once, and its token, which is shown once.

    Raises `KeyShownAlready`.
    """
    keys.claim(act)
    token = keys.make("")
    invitation = Invitation.objects.create(
        id=act.id,
        studio=act.studio,
        email=email,
        roles=sorted(set(roles)),
        token_hash=keys.hashed(token),
        invited_by=act.member,
        invited_at=act.written_at,
        expires_at=act.written_at + valid_for,
    )
    facts = {"invitation": invitation.pk, "roles": invitation.roles}
    journal.write(act=act, verb="invited", subjects=[("member", act.member.pk)], facts=facts)
    return invitation, token


@transaction.atomic
def withdraw(*, act: Act, invitation: Invitation) -> None:
    """End an invitation before it is taken; doing it twice changes nothing.

    Raises `InvitationEnded` when somebody took it.
    """
    held = Invitation.objects.select_for_update().get(pk=invitation.pk)
    if held.taken_by_id is not None:
        raise InvitationEnded("Somebody took it.", member=str(held.taken_by_id))
    if held.withdrawn_at is not None:
        return
    Invitation.objects.filter(pk=held.pk).update(withdrawn_at=act.written_at)
    subjects = [("member", act.member.pk)]
    facts = {"invitation": held.pk}
    journal.write(act=act, verb="withdrew_invitation", subjects=subjects, facts=facts)


def at_hand(*, token: str, at: datetime) -> Invitation:
    """Return the open invitation of that link.

    Raises `InvitationUnknown` and `InvitationEnded`.
    """
    invitation = (
        Invitation.objects.filter(token_hash=keys.hashed(token)).select_related("studio").first()
    )
    if invitation is None:
        raise InvitationUnknown("Check that the whole link was copied.")
    if invitation.taken_by_id is not None:
        raise InvitationEnded("It was taken already; sign in instead.", why="taken")
    if invitation.withdrawn_at is not None:
        raise InvitationEnded("It was withdrawn; ask for another one.", why="withdrawn")
    if invitation.expires_at <= at:
        raise InvitationEnded("Its time is over; ask for another one.", why="expired")
    return invitation


@transaction.atomic
def accept(*, token: str, newcomer: Newcomer, at: datetime) -> Member:
    """Make the holder of the link a member, with an account of their own where they have none.

    Raises what `at_hand` raises, `UsernameTaken`, `AlreadyMember` and `InitialsTaken`.
    """
    studio = at_hand(token=token, at=at).studio
    # Whoever takes the same link, or the same initials, at the same moment waits here.
    JournalHead.objects.select_for_update().get(studio=studio)
    invitation = at_hand(token=token, at=at)
    person = Person(
        user=newcomer.account if isinstance(newcomer.account, User) else _made(newcomer.account),
        first_name=newcomer.first_name,
        full_name=newcomer.full_name,
        initials=newcomer.initials,
        email=invitation.email,
    )
    roles = [Role(role) for role in invitation.roles]
    member = enter(studio=studio, person=person, roles=roles)
    Invitation.objects.filter(pk=invitation.pk).update(taken_by=member)
    device = devices.browser_of(member=member, at=at)
    act = Act(
        id=uuid7(), studio=studio, member=member, device=device, happened_at=at, written_at=at
    )
    facts = {"invitation": invitation.pk, "roles": member.roles}
    journal.write(act=act, verb="joined_studio", subjects=[("member", member.pk)], facts=facts)
    return member


def _made(account: NewAccount) -> User:
    if not User.objects.filter(username__iexact=account.username).exists():
        with contextlib.suppress(IntegrityError), transaction.atomic():
            return User.objects.create_user(username=account.username, password=account.password)
    raise UsernameTaken("Choose another name to sign in with.", username=account.username)
