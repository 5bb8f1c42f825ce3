"""Who is calling: a browser's session, or a script's token."""

import hashlib

from django.contrib.auth.models import AbstractBaseUser
from django.utils import timezone
from rest_framework import authentication, exceptions
from rest_framework.request import Request

from studio.models import AccessToken


class CsrfFailed(exceptions.PermissionDenied):
    default_code = "csrf-failed"
    default_detail = "Load the page again and repeat."


class SessionAuthentication(authentication.SessionAuthentication):
    """The session cookie, with Django's CSRF check on every write."""

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


def hashed(key: str) -> str:
    """Return the sha256 under which a key is kept: long and random, so it needs no salt."""
    return hashlib.sha256(key.encode()).hexdigest()
