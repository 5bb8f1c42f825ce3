"""Who is in a studio."""

from django.contrib.auth.models import User
from django.db.models import Q, QuerySet

from studio.models import AccessToken, Device, Member, Studio
from studio.permissions import Permission, Role, grants_of


def clockwork(studio: Studio) -> tuple[Member, Device]:
    """Return the member without a person for whom sweeps write, and its device."""
    device = Device.objects.select_related("member").get(
        studio=studio, member__user=None, member__isnull=False
    )
    assert device.member is not None
    return device.member, device


def members(studio: Studio) -> "QuerySet[Member]":
    """Return the people who are in the studio now, by first name."""
    return Member.objects.filter(studio=studio, left_at=None, user__isnull=False).order_by(
        "first_name", "id"
    )


def with_role(studio: Studio, role: Role) -> list[Member]:
    """Return the people who hold the role now."""
    # Roles are looked at here, as SQLite cannot ask a JSON list what it contains.
    return [member for member in members(studio) if role in member.roles]


def who_may(studio: Studio, permission: Permission) -> list[Member]:
    """Return the people whose roles include the permission."""
    return [member for member in members(studio) if permission in grants_of(member.roles)]


def memberships(user: User) -> "QuerySet[Member]":
    """Return what the person is where, by the studio's name."""
    return (
        Member.objects.filter(user=user, left_at=None)
        .select_related("studio")
        .order_by("studio__name", "id")
    )


def account_of(member: Member) -> User:
    """Return the account of a person; the clockwork has none."""
    assert member.user is not None
    return member.user


def devices(studio: Studio, *, of: Member | None) -> "QuerySet[Device]":
    """Return the devices of one member, or all that people use, signed-off ones included."""
    used = Device.objects.filter(studio=studio)
    if of is not None:
        return used.filter(member=of)
    return used.filter(Q(is_shared=True) | Q(member__user__isnull=False))


def tokens(studio: Studio, *, of: Member | None) -> "QuerySet[AccessToken]":
    """Return the tokens of one member or of all, revoked ones included."""
    made = AccessToken.objects.filter(studio=studio)
    return made if of is None else made.filter(member=of)
