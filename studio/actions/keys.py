"""Keys that are shown once: made at random, kept only as a hash."""

import hashlib
import secrets

from studio.domain.refusals import Conflict
from studio.models import Act, JournalEntry, JournalHead


class KeyShownAlready(Conflict):
    code = "key-shown-already"
    title = "That key was shown once and is not kept."


def make(prefix: str) -> str:
    """Return a new key of 256 random bits."""
    return prefix + secrets.token_urlsafe(32)


def hashed(key: str) -> str:
    """Return the sha256 under which a key is kept; keys are random, so no salt is needed."""
    return hashlib.sha256(key.encode()).hexdigest()


def claim(act: Act) -> None:
    """Refuse an act heard before, inside the caller's transaction.

    An answer that holds a key is not kept, so such an act cannot be answered twice. Raises
    `KeyShownAlready`.
    """
    JournalHead.objects.select_for_update().get(studio=act.studio)
    if JournalEntry.objects.filter(pk=act.id).exists():
        raise KeyShownAlready("Make another one with an id of its own.", id=str(act.id))
