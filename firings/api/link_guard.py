"""What every answer to a link has: who guesses waits, and nobody keeps it or passes it on."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Final

from django.http import HttpRequest, HttpResponseBase
from django.utils import timezone
from rest_framework.exceptions import Throttled

from firings.actions import guesses
from firings.actions.shares import LinkUnknown
from studio.api.session import address_of

HEADERS: Final = {
    "Cache-Control": "no-store",
    "Referrer-Policy": "no-referrer",
    "X-Robots-Tag": "noindex, nofollow, noarchive",
}


@contextmanager
def guarded(request: HttpRequest) -> Iterator[None]:
    """Look at a link inside this: `LinkUnknown` counts as a guess; too many raise `Throttled`."""
    address, at = address_of(request), timezone.now()
    wait = guesses.wait_of(address=address, at=at)
    if wait is not None:
        raise Throttled(wait.total_seconds())
    try:
        yield
    except LinkUnknown:
        wait = guesses.count(address=address, at=at)
        if wait is not None:
            raise Throttled(wait.total_seconds()) from None
        raise


def hushed(answer: HttpResponseBase) -> HttpResponseBase:
    """Return the answer so that it is kept nowhere, found by no search and told to no page."""
    for name, value in HEADERS.items():
        answer[name] = value
    return answer
