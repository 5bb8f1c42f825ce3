"""Who is in a studio."""

from django.db.models import QuerySet

from studio.models import Device, Member, Studio
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
