"""How the built front end is served: the content policy, what may be cached, and for how long."""

from collections.abc import Callable, MutableMapping
from typing import Final

from django.http import HttpRequest, HttpResponse

POLICY: Final = "; ".join(
    (
        "default-src 'self'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "style-src 'self'",
        "img-src 'self' blob: data:",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
        "form-action 'self'",
    )
)
ALWAYS_ASKED_FOR: Final = ("/sw.js", "/manifest.webmanifest")


class ContentPolicyMiddleware:
    """Give every answer the content policy, files and errors included."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        response = self.get_response(request)
        response.headers.setdefault("Content-Security-Policy", POLICY)
        response.headers.setdefault(
            "Permissions-Policy", "camera=(self), microphone=(), geolocation=()"
        )
        return response


def never_changes(path: str, url: str) -> bool:
    """Say whether a file's name carries a digest of what is in it."""
    return url.startswith("/assets/")


def add_headers(headers: MutableMapping[str, str], path: str, url: str) -> None:
    """Have the service worker and the manifest asked for anew each time."""
    if url in ALWAYS_ASKED_FOR:
        headers["Cache-Control"] = "no-cache"
