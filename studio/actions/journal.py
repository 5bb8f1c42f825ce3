"""Writing the journal: the one place where an act becomes a numbered, chained entry."""

import hashlib
import json
from collections.abc import Iterable, Mapping
from datetime import UTC, datetime
from uuid import UUID

from studio.domain.refusals import Conflict, Missing, Unworkable
from studio.models import Act, JournalEntry, JournalHead, JournalSubject, Note

Subject = tuple[str, UUID]


class CorrectsNothing(Missing):
    code = "corrects-nothing"
    title = "There is no such act to correct."


class AlreadyCorrected(Conflict):
    code = "already-corrected"
    title = "That act was taken back or corrected already."


class CannotTakeBack(Unworkable):
    code = "cannot-take-back"
    title = "A correction cannot be taken back; make the act again."


def write(
    *, act: Act, verb: str, subjects: Iterable[Subject], facts: Mapping[str, object] | None = None
) -> JournalEntry:
    """Append the act to the journal of its studio, inside the caller's transaction.

    Raises `CorrectsNothing`, `AlreadyCorrected` and `CannotTakeBack` when the act it names cannot
    be corrected.
    """
    head = JournalHead.objects.select_for_update().get(studio=act.studio)
    if act.corrects is not None:
        _check_correctable(act, act.corrects)
    body = {
        "id": str(act.id),
        "seq": head.seq + 1,
        "verb": verb,
        "member": str(act.member.pk),
        "device": str(act.device.pk),
        "happened_at": to_ms(act.happened_at),
        "written_at": to_ms(act.written_at),
        "clock_offset_s": act.clock_offset_s,
        "based_on": act.based_on,
        "corrects": str(act.corrects) if act.corrects else None,
        "facts": plain({**(facts or {}), **_note_digest(act)}),
        "as_typed": dict(act.as_typed),
        "subjects": sorted([kind, str(subject)] for kind, subject in subjects),
    }
    digest = chained(head.digest, body)
    entry = JournalEntry.objects.create(
        id=act.id,
        studio=act.studio,
        seq=head.seq + 1,
        verb=verb,
        member=act.member,
        device=act.device,
        happened_at=act.happened_at,
        written_at=act.written_at,
        clock_offset_s=act.clock_offset_s,
        based_on=act.based_on,
        corrects=act.corrects,
        facts=body["facts"],
        as_typed=body["as_typed"],
        previous_digest=head.digest,
        digest=digest,
    )
    JournalSubject.objects.bulk_create(
        JournalSubject(
            entry=entry, kind=kind, subject_id=UUID(subject), happened_at=act.happened_at
        )
        for kind, subject in _pairs(body["subjects"])
    )
    if act.note:
        Note.objects.create(studio=act.studio, entry=entry, text=act.note, sha256=_sha256(act.note))
    JournalHead.objects.filter(pk=head.pk).update(seq=entry.seq, digest=digest)
    return entry


def chained(previous_digest: str, body: Mapping[str, object]) -> str:
    """Return sha256 of the previous digest and the entry's canonical JSON."""
    canonical = json.dumps(body, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    return _sha256(previous_digest + canonical)


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
        case _:
            return value


def _check_correctable(act: Act, corrects: UUID) -> None:
    named = JournalEntry.objects.filter(studio=act.studio, pk=corrects).first()
    if named is None:
        raise CorrectsNothing(f"No act {corrects} in this studio.", corrects=str(corrects))
    if named.verb == "took_back":
        raise CannotTakeBack("That act itself took something back.", corrects=str(corrects))
    earlier = JournalEntry.objects.filter(studio=act.studio, corrects=corrects).first()
    if earlier is not None:
        raise AlreadyCorrected(
            f"{earlier.member.first_name} corrected it already.", by=str(earlier.pk)
        )


def _pairs(rows: object) -> list[tuple[str, str]]:
    assert isinstance(rows, list)
    return [(kind, subject) for kind, subject in rows]


def _note_digest(act: Act) -> dict[str, str]:
    return {"note_sha256": _sha256(act.note)} if act.note else {}


def _sha256(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()
