"""Who belongs to a studio: joining it, by its founding or by an invitation."""

from collections.abc import Iterable
from dataclasses import dataclass

from django.contrib.auth.models import User

from studio.domain.refusals import Conflict
from studio.models import Member, Studio
from studio.permissions import Role


@dataclass(frozen=True, slots=True)
class Person:
    """Somebody with an account, as a studio is to know them."""

    user: User
    first_name: str
    full_name: str
    initials: str
    email: str = ""


class InitialsTaken(Conflict):
    code = "initials-taken"
    title = "Somebody here has those initials."


class AlreadyMember(Conflict):
    code = "already-member"
    title = "That person is in this studio already."


def enter(*, studio: Studio, person: Person, roles: Iterable[Role]) -> Member:
    """Make the person a member, inside the caller's transaction.

    Raises `AlreadyMember` and `InitialsTaken`.
    """
    if Member.objects.of(studio).filter(user=person.user).exists():
        raise AlreadyMember(f"{person.first_name} is a member already.")
    if Member.objects.of(studio).filter(initials=person.initials).exists():
        raise InitialsTaken("Choose other initials.", initials=person.initials)
    return Member.objects.create(
        studio=studio,
        user=person.user,
        first_name=person.first_name,
        full_name=person.full_name,
        initials=person.initials,
        email=person.email,
        roles=sorted(str(role) for role in roles),
    )
