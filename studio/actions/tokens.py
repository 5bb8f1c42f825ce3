"""Named keys for scripts and sensors."""

from collections.abc import Iterable
from typing import Final

from django.db import transaction

from studio.domain.refusals import NotAllowed
from studio.models import AccessToken, Act, Device
from studio.permissions import Permission

from . import journal, keys

SHOWN_LETTERS: Final = 8


class GrantsTooWide(NotAllowed):
    code = "grants-too-wide"
    title = "A token cannot do more than you can."


@transaction.atomic
def make(
    *, act: Act, name: str, grants: Iterable[Permission], held: frozenset[Permission]
) -> tuple[AccessToken, str]:
    """Make a token with some of the grants its maker holds, and the key that is shown once.

    Raises `GrantsTooWide` and `KeyShownAlready`.
    """
    wanted = frozenset(grants)
    if beyond := wanted - held:
        raise GrantsTooWide("Leave out what your role does not include.", beyond=sorted(beyond))
    keys.claim(act)
    key = keys.make("nt_")
    device = Device.objects.create(
        studio=act.studio, member=act.member, name=name, added_at=act.written_at
    )
    token = AccessToken.objects.create(
        id=act.id,
        studio=act.studio,
        member=act.member,
        device=device,
        name=name,
        prefix=key[:SHOWN_LETTERS],
        key_hash=keys.hashed(key),
        grants=sorted(wanted),
        made_at=act.written_at,
    )
    subjects = [("member", act.member.pk), ("device", device.pk)]
    facts = {"token": token.pk, "grants": token.grants}
    journal.write(act=act, verb="made_token", subjects=subjects, facts=facts)
    return token, key


@transaction.atomic
def revoke(*, act: Act, token: AccessToken) -> None:
    """End the token and the device that stood for it; doing it twice changes nothing."""
    if token.revoked_at is not None:
        return
    AccessToken.objects.filter(pk=token.pk).update(revoked_at=act.written_at)
    Device.objects.filter(pk=token.device_id).update(revoked_at=act.written_at)
    subjects = [("member", token.member_id), ("device", token.device_id)]
    journal.write(act=act, verb="revoked_token", subjects=subjects, facts={"token": token.pk})
