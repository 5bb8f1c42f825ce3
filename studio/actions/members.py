"""Changing who is what in a studio, and how a member likes to see it."""

from collections.abc import Iterable, Mapping

from django.contrib.auth.hashers import make_password
from django.db import transaction

from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, JournalHead, Member
from studio.permissions import Role
from studio.queries import people

from . import journal


class LastOwner(Conflict):
    code = "last-owner"
    title = "A studio keeps at least one owner."


class HelpsThemselves(Unworkable):
    code = "helps-themselves"
    title = "Nobody is their own helper."


@transaction.atomic
def change(
    *,
    act: Act,
    member: Member,
    roles: Iterable[Role] | None = None,
    helps: Iterable[Member] | None = None,
) -> Member:
    """Give the member other roles, or other makers to help; what is None stays.

    Raises `LastOwner` and `HelpsThemselves`.
    """
    # Two owners who step down at the same moment must not both succeed.
    JournalHead.objects.select_for_update().get(studio=act.studio)
    member = Member.objects.get(pk=member.pk)
    facts: dict[str, object] = {}
    if roles is not None:
        facts["roles"] = member.roles = sorted(set(roles))
        others = [m for m in people.with_role(act.studio, Role.OWNER) if m.pk != member.pk]
        if Role.OWNER not in member.roles and not others:
            raise LastOwner("Make somebody else an owner first.", member=str(member.pk))
        member.save(update_fields=["roles"])
    if helps is not None:
        helped = list(helps)
        if member in helped:
            raise HelpsThemselves("Name other people.", member=str(member.pk))
        member.helps.set(helped)
        facts["helps"] = sorted(str(m.pk) for m in helped)
    journal.write(act=act, verb="changed_member", subjects=[("member", member.pk)], facts=facts)
    return member


@transaction.atomic
def prefer(*, members: Iterable[Member], choices: Mapping[str, object]) -> None:
    """Keep how a person likes to see things, in each of the studios given.

    These are nobody else's matter, so the journal does not tell of them.
    """
    pin = choices.get("pin")
    columns = {name: value for name, value in choices.items() if name != "pin"}
    if isinstance(pin, str):
        columns["pin_hash"] = make_password(pin) if pin else ""
    Member.objects.filter(pk__in=[member.pk for member in members]).update(**columns)
