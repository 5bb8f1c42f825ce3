"""Moulds and designs by a few letters."""

from collections.abc import Sequence
from uuid import UUID

from moulds.models import Design, MouldSet
from studio.domain.finding import best
from studio.models import Studio
from studio.queries.finding import MOST_OF_A_KIND, Hit, named, said


def designs(studio: Studio, words: Sequence[str]) -> dict[str, list[UUID]]:
    """Return for each word the designs that it may mean. One query."""
    rows = list(Design.objects.of(studio))
    return {
        word: [row.pk for _, row in best(rows, [word], _names_of_design, most=len(rows))]
        for word in words
    }


def mould_sets(studio: Studio, words: Sequence[str]) -> list[Hit]:
    """Return the moulds of these letters: their label, what they make, where they stand."""
    rows = MouldSet.objects.of(studio).select_related("makes__design", "place", "owner")
    found = best(rows.order_by("label"), words, _names_of_set, most=MOST_OF_A_KIND)
    return [
        Hit("mould", row.pk, row.label, said(_made(row), _stands(row), named(row.owner)), fit)
        for fit, row in found
    ]


def _names_of_design(row: Design) -> tuple[str, ...]:
    return row.name, row.noun


def _names_of_set(row: MouldSet) -> tuple[str, ...]:
    return row.label, row.makes.design.name, row.makes.design.noun, row.makes.role


def _made(row: MouldSet) -> str:
    design, role = row.makes.design, row.makes.role
    return design.name if role == design.noun else f"{design.name}, {role}"


def _stands(row: MouldSet) -> str | None:
    return row.place.name if row.place is not None else None
