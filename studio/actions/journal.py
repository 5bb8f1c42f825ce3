"""Writing the journal: the one place where an act becomes a numbered, chained entry."""

from collections.abc import Iterable, Mapping
from typing import Final
from uuid import UUID

from studio.domain.refusals import Conflict, Missing, NotAllowed, Unworkable
from studio.models import Act, JournalEntry, JournalHead, JournalSubject, Note, PhotoOf
from studio.permissions import Role
from studio.queries.chain import chained, plain, sha256, to_ms

Subject = tuple[str, UUID]

TOOK_BACK: Final = "took_back"


class CorrectsNothing(Missing):
    code = "corrects-nothing"
    title = "There is no such act to correct."


class AlreadyCorrected(Conflict):
    code = "already-corrected"
    title = "That act was taken back or corrected already."


class CannotTakeBack(Unworkable):
    code = "cannot-take-back"
    title = "A correction cannot be taken back; make the act again."


class CorrectsAnother(Unworkable):
    code = "corrects-another"
    title = "A correction tells the same kind of thing as the act it corrects."


class NotYoursToCorrect(NotAllowed):
    code = "not-yours-to-correct"
    title = "Only who told it, or an owner, can correct it."


def write(
    *, act: Act, verb: str, subjects: Iterable[Subject], facts: Mapping[str, object] | None = None
) -> JournalEntry:
    """Append the act to the journal of its studio, inside the caller's transaction.

    Raises `CorrectsNothing`, `AlreadyCorrected`, `CannotTakeBack`, `CorrectsAnother` and
    `NotYoursToCorrect` when the act it names cannot be corrected by this one.
    """
    head = JournalHead.objects.select_for_update().get(studio=act.studio)
    if act.corrects is not None:
        _check_correctable(act, act.corrects, verb)
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
        "facts": plain({**(facts or {}), **_said_with(act)}),
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
        Note.objects.create(studio=act.studio, entry=entry, text=act.note, sha256=sha256(act.note))
    PhotoOf.objects.bulk_create(
        PhotoOf(studio=act.studio, entry=entry, happened_at=act.happened_at, photo=photo)
        for photo in act.photos
    )
    JournalHead.objects.filter(pk=head.pk).update(seq=entry.seq, digest=digest)
    return entry


def _check_correctable(act: Act, corrects: UUID, verb: str) -> None:
    named = JournalEntry.objects.filter(studio=act.studio, pk=corrects).first()
    if named is None:
        raise CorrectsNothing(f"No act {corrects} in this studio.", corrects=str(corrects))
    if named.verb == TOOK_BACK:
        raise CannotTakeBack("That act itself took something back.", corrects=str(corrects))
    earlier = JournalEntry.objects.filter(studio=act.studio, corrects=corrects).first()
    if earlier is not None:
        raise AlreadyCorrected(
            f"{earlier.member.first_name} corrected it already.", by=str(earlier.pk)
        )
    if verb != TOOK_BACK:
        _check_replaceable(act, named, verb)


def _check_replaceable(act: Act, named: JournalEntry, verb: str) -> None:
    """Let an act stand for another only where the same action folds what both told of anew."""
    if named.verb != verb:
        raise CorrectsAnother(f"{verb} cannot stand for {named.verb}; take that back instead.")
    if named.member_id != act.member.pk and Role.OWNER not in act.member.roles:
        raise NotYoursToCorrect(f"{named.member.first_name} told it; ask them, or the owner.")


def _pairs(rows: object) -> list[tuple[str, str]]:
    assert isinstance(rows, list)
    return [(kind, subject) for kind, subject in rows]


def _said_with(act: Act) -> dict[str, object]:
    """Return what the entry holds of a note and of photos: digests and ids, as those may go."""
    facts: dict[str, object] = {"note_sha256": sha256(act.note)} if act.note else {}
    return {**facts, "photos": [photo.pk for photo in act.photos]} if act.photos else facts
