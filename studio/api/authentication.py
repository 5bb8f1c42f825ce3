"""Who is calling: a browser's session, a script's token, or a shared phone for somebody."""

from uuid import UUID

from django.contrib.auth.models import AbstractBaseUser, AnonymousUser
from django.utils import timezone
from rest_framework import authentication, exceptions
from rest_framework.request import Request

from studio.actions import devices
from studio.actions.keys import hashed
from studio.models import AccessToken, Device, Member

from .late import DeviceSignedOff, HolderHasLeft

# Under this name a session remembers the device it was registered as.
SESSION_DEVICE = "natch_device"


class CsrfFailed(exceptions.PermissionDenied):
    default_code = "csrf-failed"
    default_detail = "Load the page again and repeat."


class SessionAuthentication(authentication.SessionAuthentication):
    """The session cookie, with Django's CSRF check on every write.

    A session ends with the device it was registered as: so a lost phone is signed off. It lets
    nobody in from then on, and is not forgotten: it says whose the acts are that had not been sent.
    """

    def authenticate(self, request: Request) -> tuple[AbstractBaseUser, None] | None:
        found = super().authenticate(request)
        device_id = request._request.session.get(SESSION_DEVICE) if found else None
        if found and device_id:
            gone = Device.objects.filter(pk=device_id, revoked_at__isnull=False).first()
            if gone is not None:
                raise DeviceSignedOff(gone, _owner_of(gone, found[0]))
        return found

    def enforce_csrf(self, request: Request) -> None:
        try:
            super().enforce_csrf(request)
        except exceptions.PermissionDenied as failed:
            raise CsrfFailed from failed


class TokenAuthentication(authentication.BaseAuthentication):
    """`Authorization: Token …`: only the key's hash is known here."""

    def authenticate(self, request: Request) -> tuple[AbstractBaseUser, AccessToken] | None:
        scheme, _, key = request.headers.get("Authorization", "").partition(" ")
        if scheme.lower() != "token":
            return None
        token = (
            AccessToken.objects.filter(
                key_hash=hashed(key.strip()),
                revoked_at=None,
                member__left_at=None,
                device__revoked_at=None,
            )
            .select_related("member__user", "device")
            .first()
        )
        if token is None or token.member.user is None or not token.member.user.is_active:
            raise exceptions.AuthenticationFailed("That token is not known or was revoked.")
        AccessToken.objects.filter(pk=token.pk).update(used_at=timezone.now())
        return token.member.user, token

    def authenticate_header(self, request: Request) -> str:
        return "Token"


class DeviceAuthentication(authentication.BaseAuthentication):
    """`Authorization: Device …` of a shared phone; `X-Natch-Member` names who holds it now."""

    def authenticate(
        self, request: Request
    ) -> tuple[AbstractBaseUser | AnonymousUser, Device] | None:
        scheme, _, key = request.headers.get("Authorization", "").partition(" ")
        if scheme.lower() != "device":
            return None
        key_hash = hashed(key.strip())
        named = request.headers.get("X-Natch-Member")
        device = devices.shared(key_hash=key_hash, at=timezone.now())
        if device is None:
            gone = devices.signed_off(key_hash=key_hash)
            if gone is not None:
                raise DeviceSignedOff(gone, _holder_of(gone, named))
            raise exceptions.AuthenticationFailed("That phone is not known or was signed off.")
        return (self._holder(device, named) if named else AnonymousUser()), device

    def authenticate_header(self, request: Request) -> str:
        return "Device"

    def _holder(self, device: Device, named: str) -> AbstractBaseUser:
        try:
            member_id = UUID(named)
        except ValueError as error:
            raise exceptions.ParseError("X-Natch-Member is not a UUID.") from error
        holder = (
            Member.objects.filter(pk=member_id, studio=device.studio_id)
            .select_related("studio", "user")
            .first()
        )
        if holder is not None and holder.left_at is not None:
            raise HolderHasLeft(device, holder)
        if holder is None or holder.user is None or not holder.user.is_active:
            raise exceptions.AuthenticationFailed("Nobody of that id is in this studio.")
        return holder.user


def _holder_of(device: Device, named: str | None) -> Member | None:
    """Return who held a phone that was signed off, as it says."""
    try:
        wanted = UUID(named or "")
    except ValueError:
        return None
    people = Member.objects.filter(pk=wanted, studio=device.studio_id, user__isnull=False)
    return people.select_related("studio", "user").first()


def _owner_of(device: Device, user: AbstractBaseUser) -> Member | None:
    """Return whose own phone it was that was signed off."""
    mine = Member.objects.filter(devices=device, user=user.pk)
    return mine.select_related("studio", "user").first()
