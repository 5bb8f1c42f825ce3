"""Signing in and out."""

from typing import Any

from django.conf import settings
from django.contrib.auth import authenticate, login, logout
from django.http import HttpRequest
from django.utils import timezone
from drf_spectacular.utils import extend_schema
from rest_framework import serializers
from rest_framework.exceptions import Throttled
from rest_framework.permissions import AllowAny, BasePermission, IsAuthenticated
from rest_framework.request import Request
from rest_framework.response import Response
from rest_framework.views import APIView

from studio.actions import sign_in

from .authentication import SESSION_DEVICE
from .me import MeOut, me_of
from .problems import SignInWrong


class SignInIn(serializers.Serializer[Any]):
    username = serializers.CharField(max_length=150)
    password = serializers.CharField(max_length=1000, trim_whitespace=False, write_only=True)


class SessionView(APIView):
    """The session of a browser: its cookie, and the CSRF cookie that goes with it."""

    def get_permissions(self) -> list[BasePermission]:
        return [AllowAny() if self.request.method == "POST" else IsAuthenticated()]

    def perform_authentication(self, request: Request) -> None:
        # Who signs in need not be anybody yet, and an old cookie must not stand in the way.
        if request.method != "POST":
            super().perform_authentication(request)

    @extend_schema(operation_id="session_begin", request=SignInIn, responses=MeOut)
    def post(self, request: Request) -> Response:
        """Sign in; after five wrong passwords for a name from one address, wait."""
        shape = SignInIn(data=request.data)
        shape.is_valid(raise_exception=True)
        username = shape.validated_data["username"]
        address = address_of(request._request)
        wait = sign_in.count_try(username=username, address=address, at=timezone.now())
        if wait is not None:
            raise Throttled(wait=wait.total_seconds(), detail="Too many wrong passwords.")
        user = authenticate(request._request, **shape.validated_data)
        if user is None:
            raise SignInWrong
        sign_in.forget_tries(username=username, address=address)
        login(request._request, user)
        # The same person again keeps their session, and must not keep a phone that was signed off.
        request._request.session.pop(SESSION_DEVICE, None)
        request.user, request.auth = user, None
        return Response(me_of(request))

    @extend_schema(operation_id="session_end", responses={204: None})
    def delete(self, request: Request) -> Response:
        """Sign out."""
        logout(request._request)
        return Response(status=204)


def address_of(request: HttpRequest) -> str:
    """Return the caller's address; behind a proxy, the one that the proxy itself added last."""
    if getattr(settings, "SECURE_PROXY_SSL_HEADER", None):
        forwarded = request.headers.get("X-Forwarded-For", "").rpartition(",")[2].strip()
        if forwarded:
            return forwarded
    return str(request.META.get("REMOTE_ADDR", ""))
