"""Two stories of one piece, with what each answer would come to."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final
from uuid import UUID

from django.db.models import QuerySet

from pieces.models import Clash
from studio.models import JournalEntry, Member, Studio

from .history import Names

CONSEQUENCES: Final[dict[str, tuple[str, ...]]] = {
    "ended_or_moved": (
        "It ended there; what was told after it did not happen to this piece.",
        "It did not end; it went on as told.",
        "It went on as told, and ended after that.",
    ),
    "two_stages": (
        "What was told first stands; the other did not happen to this piece.",
        "What was told second stands; the other did not happen to this piece.",
        "Both happened, one after the other, with steps between that nobody wrote down.",
    ),
    "two_places": (
        "It is where the first put it.",
        "It is where the second put it.",
        "The first put it there, then the second moved it.",
    ),
    "before_it_began": (
        "It was made earlier than was told.",
        "It was made when told; the other act was not about this piece.",
        "It was made earlier than was told.",
    ),
    "number_taken": (
        "The piece that had the mark first keeps it; this one keeps its suffix.",
        "This piece gets the plain mark; the other gets the suffix.",
        "Both keep their marks as they are now.",
    ),
    # Asked and answered where both loads are seen; here it is only told.
    "two_kilns": (
        "It was in the load that was told first; what the other did is not told of it.",
        "It was in the load that was told second; what the other did is not told of it.",
    ),
}
CHOICES: Final = ("first", "second", "both")


@dataclass(frozen=True, slots=True)
class ClashNow:
    """A clash with its two acts in words, and who is asked."""

    clash: Clash
    acts: tuple[tuple[JournalEntry, str], ...]
    asked: tuple[Member, ...]

    @property
    def choices(self) -> list[dict[str, str]]:
        """What can be answered, and what it comes to."""
        texts = CONSEQUENCES[self.clash.kind]
        return [
            {"choice": choice, "consequence": text}
            for choice, text in zip(CHOICES[: len(texts)], texts, strict=True)
        ]


def of_state(studio: Studio, state: str | None) -> "QuerySet[Clash]":
    """Return the clashes of a studio in one state, or all."""
    rows = Clash.objects.filter(studio=studio)
    if state is not None:
        rows = rows.filter(state=state)
    return rows.select_related("piece__design", "piece__maker", "piece__place")


def shown(clashes: Sequence[Clash]) -> list[ClashNow]:
    """Return clashes (from `of_state`) with acts and people. Six queries, however many."""
    ids = {UUID(act) for clash in clashes for act in clash.act_ids}
    entries = JournalEntry.objects.filter(pk__in=ids).select_related("member", "device")
    by_id = {entry.pk: entry for entry in entries.prefetch_related("notes")}
    names = Names(by_id.values())
    return [_shown(clash, by_id, names) for clash in clashes]


def _shown(clash: Clash, by_id: dict[UUID, JournalEntry], names: Names) -> ClashNow:
    acts = [by_id[UUID(act)] for act in clash.act_ids if UUID(act) in by_id]
    people = [clash.piece.maker, *(entry.member for entry in acts)]
    return ClashNow(
        clash,
        tuple((entry, names.words(entry, clash.piece_id)) for entry in acts),
        tuple(_once(person for person in people if person and not person.is_clockwork)),
    )


def _once(people: Iterable[Member]) -> list[Member]:
    return list({person.pk: person for person in people}.values())
