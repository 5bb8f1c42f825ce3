"""The chain of digests through a journal: what a digest is made of, and where it breaks."""

import hashlib
import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Final
from uuid import UUID

from django.db import DEFAULT_DB_ALIAS

from studio.models import JournalEntry, JournalHead, Studio

WRITTEN_OUT_FROM: Final = 1e16


@dataclass(frozen=True, slots=True)
class Fault:
    """Where a journal is not what was written, and how."""

    seq: int
    what: str


def faults(studio: Studio, *, using: str = DEFAULT_DB_ALIAS) -> list[Fault]:
    """Return every place where the journal of a studio is not as it was written; [] when whole."""
    return list(_faults(studio, using))


def _faults(studio: Studio, using: str) -> Iterator[Fault]:
    head = JournalHead.objects.using(using).get(studio=studio)
    seq, digest = 0, ""
    entries = JournalEntry.objects.using(using).filter(studio=studio).order_by("seq")
    for entry in entries.prefetch_related("subjects", "notes").iterator(chunk_size=500):
        if entry.seq != seq + 1:
            yield Fault(seq + 1, "missing")
        if entry.previous_digest != digest:
            yield Fault(entry.seq, "does not follow the one before")
        if entry.digest != chained(entry.previous_digest, body_of(entry)):
            yield Fault(entry.seq, "changed")
        said = {note.sha256 for note in entry.notes.all()}
        if said != {entry.facts[name] for name in ("note_sha256",) if name in entry.facts}:
            yield Fault(entry.seq, "note missing or not its own")
        kept = [note for note in entry.notes.all() if note.blanked_at is None]
        if any(sha256(note.text) != note.sha256 for note in kept):
            yield Fault(entry.seq, "note changed")
        seq, digest = entry.seq, entry.digest
    if (head.seq, head.digest) != (seq, digest):
        yield Fault(head.seq, "end missing")


def chained(previous_digest: str, body: Mapping[str, object]) -> str:
    """Return sha256 of the previous digest and the entry's canonical JSON."""
    canonical = json.dumps(body, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    return sha256(previous_digest + canonical)


def body_of(entry: JournalEntry) -> dict[str, object]:
    """Return what the digest of a stored entry was made of."""
    subjects = sorted([s.kind, str(s.subject_id)] for s in entry.subjects.all())
    return {
        "id": str(entry.pk),
        "seq": entry.seq,
        "verb": entry.verb,
        "member": str(entry.member_id),
        "device": str(entry.device_id),
        "happened_at": to_ms(entry.happened_at),
        "written_at": to_ms(entry.written_at),
        "clock_offset_s": entry.clock_offset_s,
        "based_on": entry.based_on,
        "corrects": str(entry.corrects) if entry.corrects else None,
        "facts": entry.facts,
        "as_typed": entry.as_typed,
        "subjects": subjects,
    }


def to_ms(moment: datetime) -> str:
    """Return the instant as RFC 3339 in UTC with milliseconds."""
    return moment.astimezone(UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z")


def plain(value: object) -> object:
    """Return the value as it reads back from a JSON column: ids and instants become text."""
    match value:
        case UUID():
            return str(value)
        case datetime():
            return to_ms(value)
        case Mapping():
            return {str(key): plain(inner) for key, inner in value.items()}
        case list() | tuple():
            return [plain(inner) for inner in value]
        case float():
            # PostgreSQL keeps no sign of nought and writes large numbers out as whole ones.
            return int(value) if abs(value) >= WRITTEN_OUT_FROM else value + 0.0
        case _:
            return value


def sha256(text: str) -> str:
    """Return the digest of a text, in hexadecimal."""
    return hashlib.sha256(text.encode()).hexdigest()
