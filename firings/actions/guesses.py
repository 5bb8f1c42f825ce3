"""Slowing down whoever guesses links: per address, and over all addresses together.

An address is kept as a hash for as long as it is counted, and no longer. Where all addresses
together guess too often, guesses are still told to wait, but a link that is one still opens.
"""

import hashlib
from datetime import datetime, timedelta
from ipaddress import IPv6Address, ip_address
from typing import Final

from studio.models import SignInTry

# First figures, no source: a person who mistypes a link tries it a few times.
WITHIN: Final = timedelta(minutes=15)
MOST_OF_ONE: Final = 20
MOST_OF_ALL: Final = 600
_KIND: Final = "link:"


def wait_of(*, address: str, at: datetime) -> timedelta | None:
    """Return how long an address has yet to wait before any link from it is looked at."""
    return _wait({"key": _key(address)}, MOST_OF_ONE, at)


def count(*, address: str, at: datetime) -> timedelta | None:
    """Count a link that is none; return how long to wait where there were too many of all."""
    SignInTry.objects.filter(key__startswith=_KIND, tried_at__lte=at - WITHIN).delete()
    wait = _wait({"key__startswith": _KIND}, MOST_OF_ALL, at)
    if wait is None:
        SignInTry.objects.create(key=_key(address), tried_at=at)
    return wait


def _wait(which: dict[str, str], most: int, at: datetime) -> timedelta | None:
    since = SignInTry.objects.filter(tried_at__gt=at - WITHIN, **which).order_by("-tried_at")
    tries = list(since.values_list("tried_at", flat=True)[:most])
    return tries[-1] + WITHIN - at if len(tries) == most else None


def _key(address: str) -> str:
    return (_KIND + hashlib.sha256(_whose(address).encode()).hexdigest())[:64]


def _whose(address: str) -> str:
    """Return the address, of IPv6 the half that a household has: it may choose the other half."""
    try:
        found = ip_address(address)
    except ValueError:
        return address
    return found.packed[:8].hex() if isinstance(found, IPv6Address) else address
