"""Writing what is so now: only this module writes the folded columns of pieces, parts, clashes."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from uuid import UUID, uuid5

from django.db import transaction

from pieces.domain import numbers, stages
from pieces.domain.story import Fact, Now, Story
from pieces.models import Clash, ClashAnswer, Part, Piece
from pieces.models.facts import PieceFact
from pieces.queries import story as queries
from studio.actions import journal
from studio.actions.journal import Subject
from studio.models import Act, JournalEntry, JournalSubject

from . import order

COLUMNS = (
    "stage",
    "state",
    "since_at",
    "begun_at",
    "touched_at",
    "place",
    "cover",
    "cover_since_at",
    "is_damaged",
    "grade",
    "has_interrupted_bisque",
    "look_again_at",
    "has_clash",
    "is_undone",
    "mark_key",
    "suffix",
)
PART_COLUMNS = ("state", "pressed_at", "out_at", "joined_at", "ended_at", "look_again_at", "cover")


def locked(pieces: Iterable[Piece]) -> list[Piece]:
    """Lock the pieces, in one order whoever asks, and return them as they are now."""
    ids = {piece.pk for piece in pieces}
    rows = Piece.objects.filter(pk__in=ids).select_for_update(of=("self",)).order_by("pk")
    return list(rows.select_related("design", "maker"))


@transaction.atomic
def append(
    *,
    act: Act,
    rows: Sequence[PieceFact],
    verb: str,
    facts: Mapping[str, object],
    subjects: Iterable[Subject] = (),
    entry: JournalEntry | None = None,
) -> dict[UUID, Story]:
    """Journal, lock, check, append and fold: what every act about pieces does.

    An upper app that wrote the journal already gives its `entry`. Raises `StageOutOfOrder` and
    `BeforeItBegan`.
    """
    # The journal's head is the first lock of every writer, so that no two wait for each other.
    if entry is None:
        told_of = [*(("piece", row.piece_id) for row in rows), *subjects]
        journal.write(act=act, verb=verb, subjects=dict.fromkeys(told_of), facts=facts)
    pieces = locked(row.piece for row in rows)
    tellings = queries.tellings(pieces)
    new: dict[UUID, list[Fact]] = {}
    for row in rows:
        row.entry_id = act.id
        new.setdefault(row.piece_id, []).append(queries.fact_of(row, act.device.pk))
    order.check(act=act, pieces=pieces, tellings=tellings, new=new)
    for model in dict.fromkeys(type(row) for row in rows):
        model.objects.bulk_create(row for row in rows if type(row) is model)
    folded = {piece.pk: tellings[piece.pk].story(*new.get(piece.pk, ())) for piece in pieces}
    _write(pieces, folded, at=act.written_at)
    if act.corrects is not None:
        elsewhere = pieces_told_of(act.corrects) - {piece.pk for piece in pieces}
        refold(Piece.objects.filter(pk__in=elsewhere), at=act.written_at)
    return folded


def pieces_told_of(entry_id: UUID) -> set[UUID]:
    """Return the pieces that an act told of."""
    subjects = JournalSubject.objects.filter(entry=entry_id, kind="piece")
    return set(subjects.values_list("subject_id", flat=True))


@transaction.atomic
def refold(pieces: Iterable[Piece], *, at: datetime) -> dict[UUID, Story]:
    """Lock the pieces, fold what was told of them anew, and write what is so now."""
    rows = locked(pieces)
    folded = queries.stories(rows)
    _write(rows, folded, at=at)
    return folded


def clash_id(piece: Piece, first: UUID, second: UUID) -> UUID:
    """Return the id of the clash of two acts about a piece, whoever finds it."""
    return uuid5(piece.pk, ",".join(sorted((str(first), str(second)))))


def _write(pieces: Sequence[Piece], folded: Mapping[UUID, Story], *, at: datetime) -> None:
    in_doubt = _keep_clashes(pieces, folded, at)
    for piece in pieces:
        now = folded[piece.pk].now
        piece.has_clash = piece.pk in in_doubt
        if now is None:
            _undo(piece)
        else:
            _take_over(piece, now)
    Piece.objects.bulk_update(pieces, COLUMNS)
    _write_parts(pieces, folded)


def _take_over(piece: Piece, now: Now) -> None:
    piece.stage, piece.state = now.spot
    piece.since_at, piece.begun_at, piece.touched_at = now.since_at, now.begun_at, now.touched_at
    piece.place_id = now.place
    piece.cover, piece.cover_since_at = now.cover, now.cover_since_at
    piece.is_damaged, piece.grade = now.is_damaged, now.grade
    piece.has_interrupted_bisque = now.has_interrupted_bisque
    piece.look_again_at = now.look_again_at
    if piece.is_undone:
        _claim_mark(piece)
    piece.is_undone = False


def _undo(piece: Piece) -> None:
    """Leave a piece whose making was taken back out of every list, and free its mark."""
    piece.is_undone = True
    piece.stage, piece.state = stages.TO_PRESS
    piece.mark_key = f"~{piece.pk.hex}"


def _claim_mark(piece: Piece) -> None:
    key = numbers.mark_key(piece.mark)
    same = Piece.objects.filter(studio=piece.studio_id, mark_key=key)
    taken = set(same.exclude(pk=piece.pk).values_list("suffix", flat=True))
    piece.mark_key = key
    piece.suffix = numbers.free_suffix(taken) if piece.suffix in taken else piece.suffix


def _write_parts(pieces: Sequence[Piece], folded: Mapping[UUID, Story]) -> None:
    changed = []
    for part in Part.objects.filter(piece__in=[piece.pk for piece in pieces]):
        now = folded[part.piece_id].parts[part.pk]
        values = {name: getattr(now, name) for name in PART_COLUMNS}
        if any(getattr(part, name) != value for name, value in values.items()):
            for name, value in values.items():
                setattr(part, name, value)
            changed.append(part)
    Part.objects.bulk_update(changed, PART_COLUMNS)


def _keep_clashes(pieces: Sequence[Piece], folded: Mapping[UUID, Story], at: datetime) -> set[UUID]:
    """Open, close and open again the clashes that the fold found; return the pieces in doubt."""
    known = {clash.pk: clash for clash in Clash.objects.filter(piece__in=pieces)}
    found: set[UUID] = set()
    for piece in pieces:
        for clash in folded[piece.pk].clashes:
            pk = clash_id(piece, clash.first, clash.second)
            found.add(pk)
            if pk not in known:
                known[pk] = Clash(
                    id=pk,
                    studio_id=piece.studio_id,
                    piece=piece,
                    kind=clash.kind,
                    act_ids=[str(clash.first), str(clash.second)],
                    opened_at=at,
                )
            known[pk].stands_meanwhile = dict(zip(("stage", "state"), clash.stands, strict=True))
    answered = set(
        ClashAnswer.objects.filter(clash__in=known).standing().values_list("clash_id", flat=True)
    )
    for pk, row in known.items():
        row.state = _state(row, is_found=pk in found, is_answered=pk in answered)
    Clash.objects.bulk_create(
        known.values(),
        update_conflicts=True,
        unique_fields=["id"],
        update_fields=["state", "stands_meanwhile"],
    )
    return {row.piece_id for row in known.values() if row.state == Clash.State.OPEN}


def _state(clash: Clash, *, is_found: bool, is_answered: bool) -> str:
    if is_answered:
        return Clash.State.ANSWERED
    # A number given twice is no matter of the fold: it stays open until somebody answers.
    is_open = is_found or clash.kind == "number_taken"
    return Clash.State.OPEN if is_open else Clash.State.GONE
