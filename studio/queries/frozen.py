"""Copies as they were given out of hand."""

import hashlib
from typing import Any
from uuid import UUID

from django.db.models import QuerySet

from studio.domain.refusals import Conflict
from studio.models import FrozenCopy, Studio


class NotAsKept(Conflict):
    code = "not-as-kept"
    title = "That copy is not what was kept."


def digest_of(body: bytes) -> str:
    """Return the sha256 of a copy, in hexadecimal digits."""
    return hashlib.sha256(body).hexdigest()


def body_of(copy: FrozenCopy) -> bytes:
    """Return what was given out, byte for byte. Raises `NotAsKept`."""
    body = bytes(copy.body)
    if not digest_of(body) == copy.sha256 == copy.entry.facts.get("sha256"):
        raise NotAsKept("Look for it in a backup; the journal still holds its digest.")
    return body


def copies_of(studio: Studio, subject_id: UUID, *, kind: str) -> "QuerySet[FrozenCopy]":
    """Return the copies of a thing without their bytes, newest first."""
    rows: Any = FrozenCopy.objects.of(studio).filter(subject_id=subject_id, kind=kind)
    found: QuerySet[FrozenCopy] = rows.defer("body").select_related("entry__member")
    return found.order_by("-happened_at", "-known_seq")
