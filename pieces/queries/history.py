"""The story of a piece for people: from the journal only, what was taken back struck through."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any
from uuid import UUID

from django.db.models import QuerySet

from moulds.models import MouldSet
from pieces.domain.history_words import tell
from pieces.domain.story import Story
from pieces.models import ClashAnswer, Part, Piece
from studio.models import GlazeBatch, JournalEntry, Place
from studio.queries import photos
from studio.queries.journal import is_late, story_of

from .story import stories


@dataclass(frozen=True, slots=True)
class Told:
    """One act about a piece, in words."""

    entry: JournalEntry
    words: str
    note: str | None
    photos: list[UUID]
    is_late: bool
    taken_back_by: JournalEntry | None
    left_out_by: JournalEntry | None
    is_also_said: bool
    is_held: bool


def acts_of(piece: Piece) -> "QuerySet[JournalEntry]":
    """Return the acts about a piece, newest first."""
    return story_of(piece.studio, piece.pk)


def told(
    piece: Piece, entries: Sequence[JournalEntry], *, story: Story | None = None
) -> list[Told]:
    """Return the acts in words. Seven queries, nine more where the story is not given."""
    name = Names(entries)
    story = story or stories([piece])[piece.pk]
    beside, held = {said.act for said in story.also_said}, set(story.held)
    back = corrections(entries)
    out = left_out([piece.pk], entries)
    return [
        Told(
            entry=entry,
            words=name.words(entry, piece.pk),
            note=next((note.text for note in entry.notes.all() if note.text), None),
            photos=photos.ids_of(entry),
            is_late=is_late(entry),
            taken_back_by=back.get(entry.pk),
            left_out_by=out.get((piece.pk, entry.pk)),
            is_also_said=entry.pk in beside,
            is_held=entry.pk in held,
        )
        for entry in entries
    ]


def corrections(entries: Iterable[JournalEntry]) -> dict[UUID, JournalEntry]:
    """Return who took which act back. One query."""
    rows = JournalEntry.objects.filter(corrects__in=[entry.pk for entry in entries])
    return {row.corrects: row for row in rows.select_related("member") if row.corrects}


def left_out(
    pieces: Iterable[UUID], entries: Iterable[JournalEntry]
) -> dict[tuple[UUID, UUID], JournalEntry]:
    """Return by which act somebody settled that an act did not happen to a piece. One query."""
    rows: Any = ClashAnswer.objects.filter(
        clash__piece__in=list(pieces), left_out__in=[entry.pk for entry in entries]
    ).standing()
    named = rows.select_related("clash", "entry__member").order_by("happened_at", "id")
    return {(row.clash.piece_id, row.left_out): row.entry for row in named}


class Names:
    """The names of what entries tell of by id: places, parts, mould sets, glaze. Four queries."""

    def __init__(self, entries: Iterable[JournalEntry]) -> None:
        ids = {found for entry in entries for found in _ids(entry.facts)}
        self.known = {
            str(pk): text
            for rows in (
                Place.objects.filter(pk__in=ids).values_list("pk", "name"),
                Part.objects.filter(pk__in=ids).values_list("pk", "role"),
                MouldSet.objects.filter(pk__in=ids).values_list("pk", "label"),
                GlazeBatch.objects.filter(pk__in=ids).values_list("pk", "label"),
            )
            for pk, text in rows
        }

    def words(self, entry: JournalEntry, piece_id: UUID) -> str:
        """Return what the entry tells of the piece."""
        return tell(entry.verb, entry.facts, piece=str(piece_id), name=self._name)

    def _name(self, value: Any) -> str:
        return self.known.get(str(value), "?")


def _ids(facts: Any) -> set[UUID]:
    match facts:
        case dict():
            return {found for value in facts.values() for found in _ids(value)}
        case list():
            return {found for value in facts for found in _ids(value)}
        case str() if len(facts) == len(str(UUID(int=0))):
            return _uuid(facts)
        case _:
            return set()


def _uuid(text: str) -> set[UUID]:
    try:
        return {UUID(text)}
    except ValueError:
        return set()
