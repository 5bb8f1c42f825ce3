"""What a studio learns from its own looks: a lesson for each part, a belief from all of them.

A lesson is a pure function of facts: 256 draws of the first belief, integrated from the pressing to
the last look in the air that was measured. So the belief can be told again from the journal to the
last bit, whatever order its acts came in.
"""

from __future__ import annotations

import hashlib
import math
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Final
from uuid import UUID

from django.db import transaction

from pieces.domain.drying import Batch, Problem, ensemble, simulate
from pieces.domain.learning import FIRST, Groups, StudioBelief, learn
from pieces.domain.learning import Lesson as Taught
from pieces.domain.learning.keeping import kept, restored
from pieces.domain.learning.looks import Look, asked, counted, digest, ordered
from pieces.models import Learned, Lesson
from pieces.queries import air, drying, looks
from pieces.queries.drying import WetPart
from studio.models import ClayBody, JournalEntry, Studio
from studio.queries import journal

DRAWS: Final = 256
HOUR_S: Final = 3600
SEES_AIR: Final = ("read_climate", "answered_reading")


@dataclass(frozen=True, slots=True)
class Lore:
    """What a studio believes, and how many looks at each clay it rests on."""

    belief: StudioBelief
    checks: Mapping[str, int]

    def knows_room(self, groups: Groups) -> bool:
        """Return whether anything was learned of the air in the room of these groups."""
        return groups.room_air in self.belief.names


@dataclass(frozen=True, slots=True)
class _Question:
    part: WetPart
    looks: tuple[Look, ...]
    problem: Problem
    groups: Groups
    key: str

    @property
    def last_s(self) -> float:
        return max(look.at_s for look in self.looks)

    @property
    def air_known_to(self) -> datetime | None:
        measured_s = self.problem.climate.measured_to_s
        return datetime.fromtimestamp(measured_s, tz=UTC) if measured_s is not None else None


def relearn(*, studio: Studio, at: datetime) -> Lore:
    """Take what was written since the last time into the belief; quick when nothing was."""
    row = Learned.objects.filter(studio=studio).first()
    seq = journal.highest_seq(studio)
    if row is not None and row.seq == seq:
        return _lore(row)
    with transaction.atomic():
        is_other = _renew(studio, since=row.seq if row is not None else 0, at=at)
        if row is not None and not is_other:
            # What was written teaches nothing: the lessons are what they were, so is the belief.
            Learned.objects.filter(pk=row.pk).update(seq=seq)
            return _lore(row)
        belief, checks = _folded(studio)
        Learned.objects.update_or_create(
            studio=studio,
            defaults={
                "seq": seq,
                "belief": belief.to_json(),
                "digest": belief.digest(),
                "checks": checks,
                "learned_at": at,
            },
        )
    return Lore(belief, checks)


def lore_of(studio: Studio) -> Lore:
    """Return what is believed as last learned; the first belief where nothing was yet."""
    row = Learned.objects.filter(studio=studio).first()
    return _lore(row) if row is not None else Lore(FIRST, {})


def groups_to_be(studio: Studio, drying_body: str, place_id: UUID | None, lore: Lore) -> Groups:
    """Return what something not pressed yet would share: the best known clay of that kind."""
    bodies = ClayBody.objects.of(studio).filter(drying_body=drying_body)
    clays = [str(pk) for pk in bodies.order_by("pk").values_list("pk", flat=True)]
    clay = max(clays, key=lambda clay: lore.checks.get(clay, 0), default=drying_body)
    room = looks.rooms(studio).get(place_id, "") if place_id is not None else ""
    return Groups(clay, room)


def _lore(row: Learned) -> Lore:
    return Lore(StudioBelief.from_json(row.belief), row.checks)


def told_again(*, studio: Studio, at: datetime) -> StudioBelief:
    """Return the belief told anew from the facts, without looking at what was kept."""
    found = looks.looks_of(studio)
    questions = _questions(studio, _telling(found), at)
    taught = _taught(questions)
    pairs = zip(questions, taught, strict=True)
    belief = FIRST
    for _, lesson in sorted(pairs, key=lambda pair: _order(pair[0].part)):
        belief = learn(belief, lesson)
    return belief


def _order(part: WetPart) -> tuple[datetime, str]:
    return part.begun_at, str(part.part_id)


def _telling(found: Mapping[UUID, Sequence[Look]]) -> dict[UUID, tuple[Look, ...]]:
    """Leave out parts of which nothing is known but one weighing."""
    return {part: tuple(ordered(seen)) for part, seen in found.items() if counted(seen) > 0}


def _renew(studio: Studio, *, since: int, at: datetime) -> bool:
    """Bring the lessons up to what is written by now; return whether any is another one."""
    found = _telling(looks.looks_of(studio))
    gone, _ = Lesson.objects.of(studio).exclude(part_id__in=found).delete()
    rows = {row.part_id: row for row in Lesson.objects.of(studio)}
    touched = _touched(studio, since, rows)
    questions = _questions(
        studio,
        {part: seen for part, seen in found.items() if part in touched or part not in rows},
        at,
    )
    stale = [q for q in questions if _is_stale(q, rows.get(q.part.part_id))]
    for question, lesson in zip(stale, _taught(stale), strict=True):
        told, answers = kept(lesson)
        Lesson.objects.update_or_create(
            part_id=question.part.part_id,
            defaults={
                "studio": studio,
                "piece_id": question.part.piece_id,
                "pressed_at": question.part.begun_at,
                "last_look_at": datetime.fromtimestamp(question.last_s, tz=UTC),
                "air_known_to": question.air_known_to,
                "key": question.key,
                "looks": counted(question.looks),
                "told": told,
                "answers": answers,
            },
        )
    return bool(gone or stale)


def _is_stale(question: _Question, row: Lesson | None) -> bool:
    return row is None or row.key != question.key


def _touched(studio: Studio, since: int, rows: Mapping[UUID, Lesson]) -> set[UUID]:
    """Return the lessons that something written since may have changed."""
    fresh = JournalEntry.objects.of(studio).filter(seq__gt=since)
    pieces = set(
        fresh.filter(subjects__kind="piece").values_list("subjects__subject_id", flat=True)
    )
    castings = fresh.filter(subjects__kind__in=("casting", "mould_set")).exists()
    readings = fresh.filter(verb__in=SEES_AIR).values_list("facts", "happened_at")
    from_at = [_first_at(facts, at) for facts, at in readings]
    earliest = min(from_at, default=None)
    return {
        part
        for part, row in rows.items()
        if row.piece_id in pieces or castings or (earliest is not None and _rests_on(row, earliest))
    }


def _rests_on(row: Lesson, earliest: datetime) -> bool:
    """Whether air read from `earliest` on is air of the lesson, or replaces what was forecast."""
    is_foreseen = row.air_known_to is None or row.air_known_to < row.last_look_at
    return is_foreseen or row.last_look_at + timedelta(hours=1) >= earliest


def _first_at(facts: Mapping[str, object], happened_at: datetime) -> datetime:
    said = facts.get("first_at")
    # An answer about a reading does not say which hours it is of: any lesson may hold them.
    return datetime.fromisoformat(str(said)) if said else happened_at - timedelta(days=3650)


def _questions(
    studio: Studio, found: Mapping[UUID, tuple[Look, ...]], at: datetime
) -> list[_Question]:
    if not found:
        return []
    parts = drying.parts_told(studio, found)
    room_of = looks.rooms(studio)
    since = min(part.begun_at for part in parts)
    last_s = max(look.at_s for seen in found.values() for look in seen)
    until = datetime.fromtimestamp(max(last_s, at.timestamp()), tz=UTC) + timedelta(hours=2)
    skies = air.Skies(studio=studio, since=since, at=at, until=until)
    made = []
    for part in parts:
        seen = tuple(look for look in found[part.part_id] if look.at_s >= part.begun_at.timestamp())
        if seen:
            made.append(_question(part, seen, skies, room_of))
    return made


def _question(
    part: WetPart, seen: tuple[Look, ...], skies: air.Skies, room_of: Mapping[UUID, str]
) -> _Question:
    sky = skies.over(part.stays, since=part.begun_at)
    groups = groups_of(part, seen, room_of)
    problem = part.problem(sky.climate, FIRST.of_piece(groups))
    end_s = _end_s(seen)
    air_key = sky.digest(datetime.fromtimestamp(end_s, tz=UTC))
    said = repr((problem.key(end_s), air_key, digest(seen), groups))
    return _Question(part, seen, problem, groups, hashlib.sha256(said.encode()).hexdigest())


def groups_of(part: WetPart, seen: Sequence[Look], room_of: Mapping[UUID, str]) -> Groups:
    """Return what a part shares with others: its clay, the room it stands in, who touched it."""
    places = [place for _, place in part.stays if place is not None]
    touchers = dict.fromkeys(look.who for look in seen if look.kind != "weighed")
    room = room_of.get(places[-1], "") if places else ""
    return Groups(part.clay, room, tuple(sorted(touchers)))


def _end_s(seen: Sequence[Look]) -> float:
    return math.ceil(max(look.at_s for look in seen) / HOUR_S) * HOUR_S


def _taught(questions: Sequence[_Question]) -> list[Taught]:
    """Integrate the draws of all questions in one call; return what the looks say of them."""
    if not questions:
        return []
    made = tuple(ensemble(question.problem, DRAWS) for question in questions)
    until = tuple(_end_s(question.looks) for question in questions)
    run = simulate(Batch(made, until, keeps_track=True))
    return [
        Taught.of(question.groups, after, asked(question.looks, question.problem, [track]))
        for question, after, track in zip(questions, run.after, run.tracks, strict=True)
    ]


def _folded(studio: Studio) -> tuple[StudioBelief, dict[str, int]]:
    belief, checks = FIRST, Counter[str]()
    rows = Lesson.objects.of(studio).order_by("pressed_at")
    for row in sorted(rows, key=lambda row: (row.pressed_at, str(row.part_id))):
        lesson = restored(row.told, bytes(row.answers))
        belief = learn(belief, lesson)
        checks[lesson.groups.body] += row.looks
    return belief, dict(checks)
