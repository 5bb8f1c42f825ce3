"""Copies as they were given out of hand, and what was heard about their subject since."""

import hashlib
from collections.abc import Iterable
from typing import Any
from uuid import UUID

from django.db.models import QuerySet

from studio.models import FrozenCopy, JournalEntry, Studio


def digest_of(body: bytes) -> str:
    """Return the sha256 of a copy, in hexadecimal digits."""
    return hashlib.sha256(body).hexdigest()


def is_whole(copy: FrozenCopy) -> bool:
    """Say whether the copy is still what its journal entry says was given out."""
    return bool(digest_of(bytes(copy.body)) == copy.sha256 == copy.entry.facts.get("sha256"))


def copies_of(studio: Studio, subject_id: UUID, *, kind: str) -> "QuerySet[FrozenCopy]":
    """Return the copies of a thing without their bytes, newest first."""
    rows: Any = FrozenCopy.objects.of(studio).filter(subject_id=subject_id, kind=kind)
    found: QuerySet[FrozenCopy] = rows.defer("body").select_related("entry__member")
    return found.order_by("-happened_at", "-known_seq")


def heard_since(copy: FrozenCopy, subjects: Iterable[UUID]) -> "QuerySet[JournalEntry]":
    """Return the acts about some things that were heard after the copy was made, oldest first."""
    rows = JournalEntry.objects.filter(studio=copy.studio_id, seq__gt=copy.known_seq)
    told = rows.filter(subjects__subject_id__in=list(subjects)).distinct()
    return told.select_related("member", "device").order_by("happened_at", "seq")
