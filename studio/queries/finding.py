"""People and places by a few letters. They are few, so that they are looked through here."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal
from uuid import UUID

from studio.domain.finding import best
from studio.models import Member, Place, Studio

from .people import members

Kind = Literal["piece", "order", "mould", "place", "load", "person", "found"]

MOST_OF_A_KIND = 50
# Of what grows with the years, the newest so many are looked through.
LOOKED_THROUGH = 5_000


@dataclass(frozen=True, slots=True)
class Hit:
    """Something that was found: what it is called, what is said beside it, how well it fits."""

    kind: Kind
    id: UUID
    name: str
    words: str
    fit: int


def said(*parts: str | None) -> str:
    """Return what stands beside a name, without what is not known."""
    return " \u00b7 ".join(part for part in parts if part)


def named(member: Member | None) -> str | None:
    """Return a person told apart from another of the same first name."""
    return None if member is None else f"{member.first_name} {member.initials}"


def people(studio: Studio, words: Sequence[str]) -> list[Hit]:
    """Return the people of these letters. One query."""
    found = best(members(studio), words, _names_of_person, most=MOST_OF_A_KIND)
    return [
        Hit("person", row.pk, row.first_name, said(row.initials, row.full_name), fit)
        for fit, row in found
    ]


def makers(studio: Studio, words: Sequence[str]) -> dict[str, list[UUID]]:
    """Return for each word the people, those who left included, that it may mean. One query."""
    rows = list(Member.objects.of(studio).filter(user__isnull=False))
    return {word: [row.pk for _, row in _fitting_people(rows, word)] for word in words}


def places(studio: Studio, words: Sequence[str]) -> list[Hit]:
    """Return the rooms, racks and shelves of these letters. One query."""
    rows = Place.objects.of(studio).select_related("parent").order_by("order", "name")
    found = best(rows, words, lambda row: (row.name, row.get_kind_display()), most=MOST_OF_A_KIND)
    return [
        Hit("place", row.pk, row.name, said(row.kind, row.parent.name if row.parent else None), fit)
        for fit, row in found
    ]


def _names_of_person(row: Member) -> tuple[str, ...]:
    return row.first_name, row.full_name, row.initials


def _fitting_people(rows: list[Member], word: str) -> list[tuple[int, Member]]:
    return best(rows, [word], _names_of_person, most=len(rows))
