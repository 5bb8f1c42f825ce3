"""Slowing down whoever guesses passwords."""

import hashlib
from datetime import datetime, timedelta
from typing import Final

from studio.models import SignInTry

MOST_TRIES: Final = 5
WITHIN: Final = timedelta(minutes=15)


def count_try(*, username: str, address: str, at: datetime) -> timedelta | None:
    """Count one try, and return how long to wait when there were too many; None lets it through.

    A try is counted before the password is looked at, so that many at once get no more than their
    number; the right password forgets them (`forget_tries`).
    """
    key = _key(username, address)
    SignInTry.objects.filter(tried_at__lte=at - WITHIN).delete()
    counted = SignInTry.objects.create(key=key, tried_at=at)
    tries = list(
        SignInTry.objects.filter(key=key).order_by("tried_at", "pk").values_list("tried_at", "pk")
    )
    if counted.pk in {pk for _, pk in tries[:MOST_TRIES]}:
        return None
    counted.delete()
    return tries[0][0] + WITHIN - at


def forget_tries(*, username: str, address: str) -> None:
    """Begin to count anew, after the right password."""
    SignInTry.objects.filter(key=_key(username, address)).delete()


def _key(username: str, address: str) -> str:
    # Hashed, as what people type into the name field is sometimes their password.
    return hashlib.sha256(f"{username.casefold()}\n{address}".encode()).hexdigest()
