"""The pieces of lines of orders, as sets: a fixed number of queries, however many lines."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any
from uuid import UUID

from django.db.models import Q, QuerySet

from pieces.domain import sets as reckoning
from pieces.domain.order_words import AHEAD, counted
from pieces.domain.sets import ANY, Counts, Level, Member
from pieces.domain.stages import WORDS
from pieces.models import CommissionLine, Match, Piece, SetRecipe

Pair = tuple[UUID, UUID]


@dataclass(frozen=True)
class LineNow:
    """One line with its recipe, its pieces (in the order of their marks) and who stands with whom.

    `matches` are the pairs that stand, the newest first, with the gap of the seat where measured.
    """

    line: CommissionLine
    recipe: Sequence[SetRecipe]
    pieces: Sequence[Piece]
    matches: Mapping[Pair, float | None] = field(default_factory=dict)

    @cached_property
    def wanted(self) -> dict[str, int]:
        """How many pieces of each role make a set."""
        return {row.role: row.count for row in self.recipe}

    @cached_property
    def members(self) -> list[Member]:
        """The pieces as the reckoning of sets takes them."""
        return [
            Member(
                piece.pk,
                self.role_of(piece),
                reckoning.level_of(piece.stage, piece.state, is_in_doubt=piece.has_clash),
            )
            for piece in self.pieces
        ]

    @cached_property
    def counts(self) -> Counts:
        """What the line has come to, in sets."""
        return reckoning.counts(self.wanted, self.members, list(self.matches))

    @cached_property
    def groups(self) -> list[tuple[UUID, ...]]:
        """The live pieces of the recipe, those that were matched together."""
        live = [m for m in self.members if m.level != Level.LOST and m.role is not None]
        return reckoning.groups_of(self.wanted, live, list(self.matches))

    @cached_property
    def set_of(self) -> dict[UUID, int]:
        """Which set, from 1, a live piece is counted in."""
        live = [m for m in self.members if m.level != Level.LOST and m.role is not None]
        whole = reckoning.sets_of(self.wanted, live, self.groups)
        return {pk: number for number, pks in enumerate(whole, start=1) for pk in pks}

    @property
    def set_size(self) -> int:
        """Pieces in a set."""
        return sum(self.wanted.values()) or 1

    @property
    def damaged(self) -> int:
        """How many live pieces ask for a decision."""
        return sum(piece.is_damaged and piece.stage != "lost" for piece in self.pieces)

    @property
    def sentence(self) -> str:
        """How the line stands, in words."""
        return counted(
            self.line.wanted_sets, self.counts, set_size=self.set_size, ahead=self._ahead()
        )

    def role_of(self, piece: Piece) -> str | None:
        """Return the role of a piece in a set; None where the recipe does not ask for it."""
        if not self.recipe:
            return ANY
        return next((r.role for r in self.recipe if r.design_id == piece.design_id), None)

    def partners_of(self, piece: Piece) -> list[tuple[Piece, float | None]]:
        """Return the pieces that a piece was matched with and stands with, and the gap."""
        group = next((set(g) for g in self.groups if piece.pk in g), set())
        gaps = {frozenset(pair): gap for pair, gap in self.matches.items()}
        return [
            (other, gaps.get(frozenset((piece.pk, other.pk))))
            for other in self.pieces
            if other.pk in group - {piece.pk}
        ]

    def _ahead(self) -> tuple[int, str]:
        """Return how many unfinished pieces came furthest past the first firing, in words."""
        if self.set_size > 1:
            return 0, ""
        states = [piece.state for piece in self.pieces if not piece.has_clash]
        furthest = next((state for state in AHEAD if state in states), None)
        return (states.count(furthest), WORDS[furthest]) if furthest else (0, "")


def lines_now(lines: "QuerySet[CommissionLine]") -> list[LineNow]:
    """Return lines as they are now. Four queries."""
    rows = list(lines.select_related("commission"))
    ids = [row.pk for row in rows]
    recipes: dict[UUID, list[SetRecipe]] = defaultdict(list)
    for recipe in SetRecipe.objects.filter(line__in=ids).select_related("design").order_by("role"):
        recipes[recipe.line_id].append(recipe)
    pieces: dict[UUID, list[Piece]] = defaultdict(list)
    held = Piece.objects.filter(line__in=ids, is_undone=False)
    for piece in held.select_related("design", "place", "maker").order_by("mark_key", "suffix"):
        if piece.line_id is not None:
            pieces[piece.line_id].append(piece)
    known = matches_of(piece.pk for own in pieces.values() for piece in own)
    found = []
    for row in rows:
        own = {piece.pk for piece in pieces[row.pk]}
        matches = {pair: gap for pair, gap in known.items() if own.issuperset(pair)}
        found.append(LineNow(row, recipes[row.pk], pieces[row.pk], matches))
    return found


def line_of(piece: Piece) -> LineNow | None:
    """Return the line a piece is promised to. Four queries."""
    rows = lines_now(CommissionLine.objects.filter(pk=piece.line_id)) if piece.line_id else []
    return rows[0] if rows else None


def matches_of(pieces: Iterable[UUID]) -> dict[Pair, float | None]:
    """Return the pairs that stand, newest first, in which one of the pieces is. One query.

    What was said last of a pair holds.
    """
    ids = list(pieces)
    rows: Any = Match.objects.filter(Q(first__in=ids) | Q(second__in=ids)).standing()
    said: dict[frozenset[UUID], Match] = {}
    for row in rows.order_by("-happened_at", "-entry__seq"):
        said.setdefault(frozenset((row.first_id, row.second_id)), row)
    return {
        (row.first_id, row.second_id): row.seat_gap_mm
        for row in said.values()
        if row.kind == Match.Kind.MATCHED
    }
