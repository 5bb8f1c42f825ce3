"""Which pieces stand together: said by a person, or planned as sets."""

from collections import defaultdict
from collections.abc import Sequence
from itertools import pairwise
from uuid import UUID, uuid5

from django.db import transaction

from pieces.models import CommissionLine, Match, Piece
from pieces.queries import sets as queries
from studio.actions import journal
from studio.domain.ids import uuid7
from studio.domain.refusals import Conflict, Unworkable
from studio.models import Act, ClayBody, JournalHead, Member, Place

from . import planning
from .order_rows import open_one
from .planning import Planned
from .shapes import PieceGiven, Warned


class WithItself(Unworkable):
    code = "with-itself"
    title = "A piece does not stand with itself."


class NotMatched(Conflict):
    code = "not-matched"
    title = "Those pieces were not matched."


class NoRecipe(Unworkable):
    code = "no-recipe"
    title = "That line does not say what makes a set."


class NotWholeSets(Unworkable):
    code = "not-whole-sets"
    title = "Those pieces do not make whole sets."


@transaction.atomic
def match(
    *, act: Act, first: Piece, second: Piece, seat_gap_mm: float | None = None
) -> tuple[Match, list[Warned]]:
    """Record that two pieces stand together; return it, and whom it leaves alone.

    Raises `WithItself`.
    """
    if first.pk == second.pk:
        raise WithItself(f"Name two pieces, not {first.shown_mark} twice.")
    JournalHead.objects.select_for_update().get(studio=act.studio)
    made = _record(act, Match.Kind.MATCHED, first, second, seat_gap_mm)
    return made, _left_alone(first, second)


@transaction.atomic
def part(*, act: Act, first: Piece, second: Piece) -> Match:
    """Record that two pieces stand together no more. Raises `NotMatched`."""
    JournalHead.objects.select_for_update().get(studio=act.studio)
    pairs = {frozenset(pair) for pair in queries.matches_of([first.pk])}
    if frozenset((first.pk, second.pk)) not in pairs:
        raise NotMatched(f"{first.shown_mark} and {second.shown_mark} were not matched.")
    return _record(act, Match.Kind.PARTED, first, second, None)


@transaction.atomic
def plan_sets(
    *,
    act: Act,
    line: CommissionLine,
    count: int,
    named: Sequence[tuple[UUID, str, str | None]] = (),
    maker: Member | None = None,
    body: ClayBody | None = None,
    place: Place | None = None,
) -> tuple[Planned, int]:
    """Plan the pieces of `count` sets of a line, matched set by set; return also the matches.

    `named` gives some or all pieces an id and a mark: (id, role, mark), in the order of the sets.
    Raises `CommissionClosed`, `NoRecipe`, `NotWholeSets`, and what planning refuses.
    """
    commission = open_one(line.commission)
    recipe = list(line.recipe.select_related("design__body").order_by("role"))
    if not recipe:
        raise NoRecipe("Say what makes a set of it first, or plan the pieces one by one.")
    waiting: dict[str, list[tuple[UUID, str | None]]] = defaultdict(list)
    for pk, role, mark in named:
        waiting[role].append((pk, mark))
    wrong = sorted(
        role
        for role, rows in waiting.items()
        if len(rows) > count * sum(row.count for row in recipe if row.role == role)
    )
    if wrong:
        raise NotWholeSets(f"More of {', '.join(wrong)} than {count} sets hold.", roles=wrong)
    given = []
    for _ in range(count):
        for row in recipe:
            for _ in range(row.count):
                pk, mark = waiting[row.role].pop(0) if waiting[row.role] else (uuid7(), None)
                given.append(
                    PieceGiven(
                        pk,
                        row.design,
                        mark=mark,
                        maker=maker or commission.maker,
                        body=body,
                        use=commission.use,
                        line=line,
                    )
                )
    planned = planning.plan(act=act, pieces=given, place=place)
    return planned, len(together(act=act, line=line, pieces=planned.pieces))


def together(*, act: Act, line: CommissionLine, pieces: Sequence[Piece]) -> list[Match]:
    """Match pieces planned by one act, as far as they make whole sets, in the order given."""
    recipe = {row.design_id: row.count for row in line.recipe.all()}
    waiting: dict[UUID, list[Piece]] = defaultdict(list)
    for piece in pieces:
        waiting[piece.design_id].append(piece)
    if not recipe:
        return []
    whole = min(len(waiting[design]) // count for design, count in recipe.items())
    rows = []
    for number in range(whole):
        one = [
            piece
            for design, count in recipe.items()
            for piece in waiting[design][number * count : (number + 1) * count]
        ]
        rows += [_row(act, Match.Kind.MATCHED, *pair) for pair in pairwise(one)]
    return Match.objects.bulk_create(rows)


def _record(act: Act, kind: str, first: Piece, second: Piece, seat_gap_mm: float | None) -> Match:
    journal.write(
        act=act,
        verb=kind,
        subjects=[("piece", first.pk), ("piece", second.pk)],
        facts={"pieces": [first.pk, second.pk], "seat_gap_mm": seat_gap_mm},
    )
    row = _row(act, kind, first, second)
    row.id, row.seat_gap_mm = act.id, seat_gap_mm
    row.save(force_insert=True)
    return row


def _row(act: Act, kind: str, first: Piece, second: Piece) -> Match:
    return Match(
        id=uuid5(act.row_id(first.pk), str(second.pk)),
        studio=act.studio,
        entry_id=act.id,
        happened_at=act.happened_at,
        kind=kind,
        first=first,
        second=second,
    )


def _left_alone(first: Piece, second: Piece) -> list[Warned]:
    """Say which pieces were matched with one of the two before, and are not in its set now."""
    both = {first.pk, second.pk}
    others = {pk for pair in queries.matches_of(both) for pk in pair} - both
    left = Piece.objects.filter(pk__in=others, design__in=(first.design_id, second.design_id))
    left = left.exclude(stage="lost").order_by("mark_key")
    marks = ", ".join(piece.shown_mark for piece in left)
    if not marks:
        return []
    return [Warned("matched-before", f"Matched before with {marks}: the newest match counts.")]
