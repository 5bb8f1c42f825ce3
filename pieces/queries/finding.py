"""Pieces, orders and found ware by a few letters.

A studio's pieces are many, so that the database looks through their folded marks; the designs and
people that a word may mean are few and are looked up first.
"""

from collections.abc import Sequence

from django.db.models import Case, IntegerField, Q, QuerySet, Value, When

from moulds.queries import finding as moulds
from pieces.domain.numbers import SUFFIX_DOT
from pieces.domain.stages import words as state_words
from pieces.models import Commission, FoundPiece, Piece
from studio.domain import finding as domain
from studio.domain.finding import best
from studio.models import Studio
from studio.queries import finding
from studio.queries.finding import LOOKED_THROUGH, MOST_OF_A_KIND, Hit, named, said

from .pieces import listed


def matching(rows: "QuerySet[Piece]", studio: Studio, words: Sequence[str]) -> "QuerySet[Piece]":
    """Return the pieces whose mark, design or maker holds every word. Two queries besides."""
    if not words:
        return rows
    designs, makers = moulds.designs(studio, words), finding.makers(studio, words)
    for word in words:
        rows = rows.filter(
            Q(find_key__contains=_mark(word))
            | Q(design__in=designs[word])
            | Q(maker__in=makers[word])
        )
    return rows


def pieces(studio: Studio, words: Sequence[str]) -> list[Hit]:
    """Return the pieces of these letters, the one of that very mark first. Three queries."""
    mark = _mark(" ".join(words))
    how = Case(
        When(find_key=mark, then=Value(domain.EXACT)),
        When(find_key__startswith=_mark(words[0]), then=Value(domain.BEGINS)),
        default=Value(domain.HOLDS),
        output_field=IntegerField(),
    )
    rows = matching(listed(studio), studio, words).annotate(how=how)
    found = rows.order_by("how", "mark_key", "suffix")[:MOST_OF_A_KIND]
    return [Hit("piece", row.pk, row.shown_mark, _beside(row), row.how) for row in found]


def orders(studio: Studio, words: Sequence[str], *, with_clients: bool) -> list[Hit]:
    """Return the orders of these letters: number, client, what. Contacts are not looked in.

    Without clients nothing is found by whom it is for, and nothing found says so.
    """
    rows = Commission.objects.of(studio).order_by("-taken_at")[:LOOKED_THROUGH]

    def client(row: Commission) -> tuple[str, ...]:
        return (row.client_name,) if with_clients else ()

    def names(row: Commission) -> tuple[str, ...]:
        return row.number, *client(row), row.what

    found = best(rows, words, names, most=MOST_OF_A_KIND)
    return [
        Hit("order", row.pk, row.number, said(*client(row), row.what, row.state), fit)
        for fit, row in found
    ]


def found_ware(studio: Studio, words: Sequence[str]) -> list[Hit]:
    """Return the found ware of these letters that nobody has yet. One query."""
    rows = FoundPiece.objects.of(studio).filter(state=FoundPiece.State.OPEN)
    rows = rows.select_related("place").order_by("-found_at")[:LOOKED_THROUGH]
    found = best(rows, words, _names_of_found, most=MOST_OF_A_KIND)
    return [
        Hit("found", row.pk, row.mark_seen or row.what, said(row.what, _stands(row)), fit)
        for fit, row in found
    ]


def _mark(word: str) -> str:
    """Return the word as it may be a mark: what tells two of one mark apart is not in it."""
    return word.partition(SUFFIX_DOT)[0]


def _beside(row: Piece) -> str:
    state = state_words(row.state, row.cover)
    return said(row.design.noun, state, _stands(row), named(row.maker))


def _names_of_found(row: FoundPiece) -> tuple[str, ...]:
    return row.mark_seen or row.what, row.what, *([row.place.name] if row.place else [])


def _stands(row: Piece | FoundPiece) -> str | None:
    return row.place.name if row.place is not None else None
