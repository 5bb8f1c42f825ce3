"""Sets: how many whole ones a heap of pieces makes, a jar with its lid, two brackets.

Pieces that somebody matched stay together; the newest word counts first, and one that would give a
set too many of a role is left out. What is not matched stands for any other piece of its role. The
sets are as many as can be made: found by trying the ways in which groups fill a set, from the
largest number of sets that the roles allow at all.

A piece counts by how far it is, and a group by its least advanced piece, so that a finished jar
whose lid still dries makes no finished set with somebody else's lid.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import IntEnum
from functools import cache
from typing import Final
from uuid import UUID

Vector = tuple[int, ...]
ANY: Final = ""


class Level(IntEnum):
    """How far a piece is; only LOST pieces are in no set."""

    LOST = 0
    PLANNED = 1
    IN_DOUBT = 2
    MADE = 3
    FINISHED = 4
    DELIVERED = 5


LEVELS: Final = {
    "model": Level.PLANNED,
    "mould": Level.PLANNED,
    "finished": Level.FINISHED,
    "delivered": Level.DELIVERED,
    "lost": Level.LOST,
}


@dataclass(frozen=True, slots=True)
class Member:
    """A piece of a line: its role in a set (None where the recipe has no such thing)."""

    id: UUID
    role: str | None
    level: Level


@dataclass(frozen=True, slots=True)
class Counts:
    """What a line has come to. Sets, but `pieces`, `lost_pieces` and `outside_pieces` in pieces.

    `made` sets are past `to_press` and not in doubt; `finished` ones are among them, `delivered`
    ones among the finished. `in_doubt` and `planned` sets come on top of `made`.
    """

    delivered: int
    finished: int
    made: int
    in_doubt: int
    planned: int
    pieces: int
    lost_pieces: int
    outside_pieces: int


def level_of(stage: str, state: str, *, is_in_doubt: bool) -> Level:
    """Return how far a piece at a spot of the job is.

    Two stories about it leave a piece in doubt wherever it is, unless it is only planned.
    """
    level = LEVELS.get(stage, Level.PLANNED if state == "to_press" else Level.MADE)
    return Level.IN_DOUBT if is_in_doubt and level != Level.PLANNED else level


def counts(
    recipe: Mapping[str, int], members: Iterable[Member], matches: Sequence[tuple[UUID, UUID]]
) -> Counts:
    """Return what the pieces of one line come to.

    Parameters
    ----------
    recipe
        How many pieces of each role make a set, at least 1 each. Empty: any piece is a set.
    members
        The pieces, each once.
    matches
        Pairs that stand together, the newest first.

    Returns
    -------
    The counts.
    """
    members = list(members)
    live = [member for member in members if member.level != Level.LOST]
    placed = [member for member in live if member.role is not None]
    groups = groups_of(recipe, placed, matches)
    level = {member.id: member.level for member in placed}

    def sets_from(least: Level) -> int:
        far = [group for group in groups if min(level[pk] for pk in group) >= least]
        return len(sets_of(recipe, placed, far))

    all_sets, known = sets_from(Level.PLANNED), sets_from(Level.IN_DOUBT)
    made = sets_from(Level.MADE)
    return Counts(
        delivered=sets_from(Level.DELIVERED),
        finished=sets_from(Level.FINISHED),
        made=made,
        in_doubt=known - made,
        planned=all_sets - known,
        pieces=len(live),
        lost_pieces=len(members) - len(live),
        outside_pieces=len(live) - len(placed),
    )


def groups_of(
    recipe: Mapping[str, int], members: Sequence[Member], matches: Sequence[tuple[UUID, UUID]]
) -> list[tuple[UUID, ...]]:
    """Return the pieces in groups that stay together, most of them alone.

    A match that names no piece here, or would give a group more of a role than a set holds, is left
    out.
    """
    quota = dict(recipe) or {ANY: 1}
    role = {member.id: (member.role or ANY) if recipe else ANY for member in members}
    group = {pk: [pk] for pk in role}
    for first, second in matches:
        if first not in group or second not in group or group[first] is group[second]:
            continue
        both = [*group[first], *group[second]]
        held = Counter(role[pk] for pk in both)
        if all(count <= quota.get(name, 0) for name, count in held.items()):
            for pk in both:
                group[pk] = both
    unique = {id(pks): tuple(pks) for pks in group.values()}
    return list(unique.values())


def sets_of(
    recipe: Mapping[str, int], members: Sequence[Member], groups: Sequence[tuple[UUID, ...]]
) -> list[tuple[UUID, ...]]:
    """Return as many whole sets as the groups make, each the ids of its pieces.

    Where several groups would do, the most advanced go first.
    """
    if not recipe:
        return list(groups)
    roles = tuple(sorted(recipe))
    role = {member.id: member.role for member in members}
    level = {member.id: member.level for member in members}
    by_kind: dict[Vector, list[tuple[UUID, ...]]] = defaultdict(list)
    for group in groups:
        held = Counter(role[pk] for pk in group)
        by_kind[tuple(held[name] for name in roles)].append(group)
    for rows in by_kind.values():
        rows.sort(key=lambda group: min(level[pk] for pk in group), reverse=True)
    quota = tuple(recipe[name] for name in roles)
    chosen = _fill(quota, {kind: len(rows) for kind, rows in by_kind.items()})
    taken = {kind: iter(rows) for kind, rows in by_kind.items()}
    return [
        tuple(pk for kind in pattern for pk in next(taken[kind]))
        for pattern, times in chosen
        for _ in range(times)
    ]


def _fill(quota: Vector, held: Mapping[Vector, int]) -> tuple[tuple[tuple[Vector, ...], int], ...]:
    """Return which groupings to make how often, so that the sets are as many as can be.

    Whole groups are sets already; the others are tried by ways of filling a set, largest groups
    first, with the number that the roles allow as the bound.
    """
    whole = held.get(quota, 0)
    first = (((quota,), whole),) if whole else ()
    kinds = tuple(sorted((k for k in held if k != quota and any(k)), key=sum, reverse=True))
    patterns = tuple(_patterns(quota, kinds))
    start = tuple(held[kind] for kind in kinds)
    return (*first, *_best(quota, kinds, patterns, start))


def _patterns(quota: Vector, kinds: Sequence[Vector]) -> Iterable[tuple[Vector, ...]]:
    """Yield each multiset of kinds that fills a set, those of few large groups first."""

    def extend(rest: Vector, begin: int) -> Iterable[tuple[Vector, ...]]:
        if not any(rest):
            yield ()
            return
        for number in range(begin, len(kinds)):
            left = tuple(r - k for r, k in zip(rest, kinds[number], strict=True))
            if min(left) >= 0:
                for more in extend(left, number):
                    yield (kinds[number], *more)

    yield from sorted(extend(quota, 0), key=len)


def _best(
    quota: Vector,
    kinds: Sequence[Vector],
    patterns: Sequence[tuple[Vector, ...]],
    start: Vector,
) -> tuple[tuple[tuple[Vector, ...], int], ...]:
    uses = [tuple(Counter(pattern)[kind] for kind in kinds) for pattern in patterns]

    def most(left: Vector) -> int:
        totals = [
            sum(n * kind[role] for n, kind in zip(left, kinds, strict=True))
            for role in range(len(quota))
        ]
        return min(total // wanted for total, wanted in zip(totals, quota, strict=True))

    @cache
    def search(number: int, left: Vector) -> tuple[int, tuple[int, ...]]:
        if number == len(uses):
            return 0, ()
        use = uses[number]
        limit = min(n // u for n, u in zip(left, use, strict=True) if u)
        bound = most(left)
        best: tuple[int, tuple[int, ...]] = (-1, ())
        for times in range(limit, -1, -1):
            rest = tuple(n - times * u for n, u in zip(left, use, strict=True))
            made, how = search(number + 1, rest)
            if times + made > best[0]:
                best = (times + made, (times, *how))
            if best[0] >= bound:
                break
        return best

    _, times = search(0, start)
    return tuple((p, n) for p, n in zip(patterns, times, strict=True) if n)
