"""What a call may do by the way it came: in person, by a token, or on a shared phone."""

from rest_framework.permissions import SAFE_METHODS
from rest_framework.request import Request

from studio.actions import devices
from studio.domain.refusals import NotAllowed
from studio.models import AccessToken, Device, Member
from studio.permissions import (
    ON_SHARED_PHONE,
    WITH_PIN,
    Permission,
    Role,
    Standing,
    grants_of,
)

from .late import ForReview


class NotInPerson(NotAllowed):
    code = "not-in-person"
    title = "That is done in person only."


class NotOnSharedPhone(NotAllowed):
    code = "not-on-shared-phone"
    title = "That is not shown on a shared phone."


class PinNeeded(NotAllowed):
    code = "pin-needed"
    title = "On a shared phone that takes your PIN."


def standing_of(request: Request, member: Member) -> Standing:
    """Return what the member may do by this call.

    Raises `PinNotSet`, `PinWrong` and `DeviceLocked` when a PIN came with it.
    """
    roles = frozenset(member.roles)
    granted = grants_of(roles)
    match request.auth:
        case AccessToken() as token:
            named = {Permission(name) for name in token.grants}
            return Standing(roles=roles, grants=granted & named)
        case Device() as device:
            return _on_shared_phone(request, device, member, roles, granted & ON_SHARED_PHONE)
        case ForReview(device=device) if device.is_shared:
            return Standing(roles=roles, grants=granted & ON_SHARED_PHONE)
        case _:
            return Standing(roles=roles, grants=granted)


def _on_shared_phone(
    request: Request,
    device: Device,
    member: Member,
    roles: frozenset[str],
    granted: frozenset[Permission],
) -> Standing:
    pin = request.headers.get("X-Natch-Pin")
    guarded = granted & WITH_PIN
    if request.method in SAFE_METHODS or not guarded:
        return Standing(roles=roles, grants=granted)
    if not pin:
        plain = roles - {Role.OWNER}
        return Standing(roles=plain, grants=granted - WITH_PIN, after_pin=guarded)
    devices.prove(device=device, member=member, pin=pin)
    return Standing(roles=roles, grants=granted)


def device_of(request: Request, member: Member) -> Device | None:
    """Return what a refused call of the member came from, as far as it says."""
    match request.auth:
        case Device() as shared:
            return shared
        case AccessToken(device=device) | ForReview(device=device):
            return device
        case _:
            return devices.named(request.headers.get("X-Natch-Device"), of=member)
